/** What the README and DEVELOPERS.md call by name exists: commands, options, scripts, files and rooms. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import manifest from '../../package.json' with { type: 'json' };
import { createProgram } from '../../server/command-line/program.ts';

const repository = join(import.meta.dirname, '../..');
const readme = readFileSync(join(repository, 'README.md'), 'utf8');
const developers = readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8');

describe('The README', () => {
  const { commands } = createProgram(() => {});
  const shown = commands
    .flatMap((command) => [command, ...command.commands])
    .flatMap(({ options }) => options.filter(({ hidden }) => !hidden));

  it('names every command of the program', () => {
    for (const command of commands) expect(readme).toContain(`\`measure-twice ${command.name()}`);
  });

  it('names every option of the program, and no other', () => {
    const named = [...readme.matchAll(/`(?:measure-twice [a-z ]*)?(--[a-z-]+)/g)].map(([, option]) => option);
    const known = [...shown.map(({ long }) => long), '--help'];

    expect([...new Set(named)].sort()).toEqual([...new Set(known)].sort());
  });

  it('names commands of the editor as the editor shows them', () => {
    const titles = manifest.contributes.commands.map(({ category, title }) => `${category}: ${title}`);
    const named = [...readme.matchAll(/\*(Measure Twice: [^*]+)\*/g)].map(([, title]) => title);

    expect(named).not.toEqual([]);
    expect(titles).toEqual(expect.arrayContaining(named));
  });
});

describe.each([
  ['The README', readme],
  ['DEVELOPERS.md', developers],
])('%s', (_, text) => {
  it('names scripts that package.json has', () => {
    const named = [...text.matchAll(/npm run ([\w:]+)/g)].map(([, script]) => script);

    expect(named).not.toEqual([]);
    expect(Object.keys(manifest.scripts)).toEqual(expect.arrayContaining(named));
  });
});

describe('DEVELOPERS.md', () => {
  const map = /^## The map\n+```\n([\s\S]*?)^```$/m.exec(developers)?.[1] ?? '';

  it('shows every folder of the house on its map, and every room of core', () => {
    const drawn = [...map.matchAll(/^( *)([\w-]+)\//gm)].map(
      ([, indent, name]) => `${indent ? 'core/' : ''}${name}`,
    );
    const folders = (path: string) =>
      readdirSync(join(repository, path), { withFileTypes: true })
        .filter((entry) => entry.isDirectory() && !/^\.|^node_modules$|^dist$/.test(entry.name))
        .map(({ name }) => name);

    expect(drawn.sort()).toEqual([...folders('.'), ...folders('core').map((room) => `core/${room}`)].sort());
  });

  it('names files and folders that are there', () => {
    const paths = [...developers.matchAll(/`((?:core|server|client|shared|tests|\.ci|\.vscode)\/[^`\s]*)`/g)]
      .map(([, path]) => path ?? '')
      .filter((path) => !path.includes('NAME'));

    expect(paths.length).toBeGreaterThan(20);
    expect(paths.filter((path) => !existsSync(join(repository, path)))).toEqual([]);
  });
});
