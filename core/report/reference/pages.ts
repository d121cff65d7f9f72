/** All pages of the reference, written from the tables and schemas that the program itself follows. */
import { blockPage } from './blockPage.ts';
import { figuresPage } from './figuresPage.ts';
import { findingPages } from './findingPages.ts';
import { type Page, page } from './markdown.ts';
import { type SettingWords, settingsPage } from './settingsPage.ts';

export interface SettingsSection {
  /** The name under which editors keep the settings. */
  readonly section: string;
  readonly settings: Readonly<Record<string, SettingWords>>;
}

export function referencePages({ section, settings }: SettingsSection): Page[] {
  return [index(), blockPage(), figuresPage(), ...findingPages(), settingsPage(section, settings)];
}

function index(): Page {
  return page(
    'README.md',
    '# Reference',
    [
      '- [The measure block](measure-block.md): how to say what a pattern is, entry by entry.',
      '- [Figures](figures.md): every number that the program can compute, with an example and its working.',
      '- [Findings](findings.md): everything that the program can say about a manuscript, and what to do about it.',
      '- [Settings](settings.md): what can be chosen in an editor.',
    ].join('\n'),
  );
}
