/** The manifest says nothing that the code does not hold. */

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { COMMANDS } from '../../shared/messages.ts';
import { readSettings, SECTION, SETTINGS, type Setting } from '../../shared/settings.ts';

const repository = join(import.meta.dirname, '../..');

describe('The settings', () => {
  it('stand in the manifest as they stand in the list', () => {
    const expected = Object.entries<Setting>(SETTINGS).map(([name, setting]) => [
      `${SECTION}.${name}`,
      {
        type: 'string',
        enum: setting.values,
        default: setting.default,
        description: setting.description,
        enumDescriptions: setting.meanings,
        scope: 'window',
      },
    ]);

    expect(manifest.contributes.configuration.properties).toEqual(Object.fromEntries(expected));
  });

  it('have a meaning for every value, and a default among them', () => {
    for (const setting of Object.values<Setting>(SETTINGS)) {
      expect(setting.meanings).toHaveLength(setting.values.length);
      expect(setting.values).toContain(setting.default);
    }
  });

  it('keep their defaults when a client sends nothing, or something else', () => {
    for (const section of [undefined, null, 'hint', {}, { unaccounted: true }, { unaccounted: 'loud' }]) {
      expect(readSettings(section)).toEqual({ unaccounted: 'off' });
    }
    expect(readSettings({ unaccounted: 'hint', more: 1 })).toEqual({ unaccounted: 'hint' });
  });
});

describe('The manifest', () => {
  it('gives a title to every command of the server, and to no other', () => {
    const { commands } = manifest.contributes;

    expect(commands.map(({ command }) => command)).toEqual(Object.values(COMMANDS));
    expect(commands.map(({ category, title }) => `${category}: ${title}`)).toEqual([
      'Measure Twice: Proofread This Manuscript',
      'Measure Twice: Proofread the Workspace',
      'Measure Twice: Restate All Numbers of This Manuscript',
      'Measure Twice: Restate All Numbers of Manuscripts That Share This House File',
      'Measure Twice: Restate All Numbers of the Workspace',
      'Measure Twice: Sign Off This Manuscript',
    ]);
  });

  it('ships its icon and its grammar', () => {
    const [grammar] = manifest.contributes.grammars;
    for (const file of [manifest.icon, grammar?.path ?? ''])
      expect(existsSync(join(repository, file))).toBe(true);
    expect(manifest.files).toEqual(expect.arrayContaining([manifest.icon, 'client/grammar/*.json']));
  });

  it('needs nothing installed beside it: everything is bundled', () => {
    expect(manifest).not.toHaveProperty('dependencies');
  });
});
