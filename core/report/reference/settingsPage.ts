/** The page of the settings in the editor, written from their list. */

import { plain } from '../plainMarkdown.ts';
import { code, type Page, page, table } from './markdown.ts';

/** One setting: its values with what each of them means, in the same order. */
export interface SettingWords {
  readonly values: readonly string[];
  readonly default: string;
  readonly description: string;
  readonly meanings: readonly string[];
}

/** @param section the name under which editors keep all of them */
export function settingsPage(section: string, settings: Readonly<Record<string, SettingWords>>): Page {
  return page(
    'settings.md',
    '# Settings',
    'In VS Code they stand in the settings under Measure Twice. Other editors send them to the language server as the ' +
      `section ${code(section)}.`,
    ...Object.entries(settings).flatMap(([name, { values, default: usual, description, meanings }]) => [
      `## ${section}.${name}`,
      plain(description),
      table(
        ['Value', 'What it does'],
        values.map((value, index) => [
          value === usual ? `${code(value)}, if you choose nothing` : code(value),
          plain(meanings[index] ?? ''),
        ]),
      ),
    ]),
  );
}
