/** House rules from another manuscript, on the command line. */
import { mkdir, readFile, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { folderWith, run } from './run.ts';

const house = (strip: string) => `\`\`\`measure\nhouse: { binding strip: ${strip} }\n\`\`\`\n`;
const quilt = (use: string, strip = '2¼"') =>
  `\`\`\`measure\nuse: ${use}\nfinished: 36" x 48"\nbinding: { grain: straight }\n\`\`\`\n\nCut the binding strips ${strip} wide.\n`;

const OUTSIDE = '“../house.md” leads out of the workspace';

it('counts from the folder of the manuscript, wherever the program runs', async () => {
  const folder = await folderWith({ 'house.md': house('2 1/2"'), 'wall/a.md': quilt('../house.md') });
  const { status, stdout } = await run(folder, ['proof', '--quiet', 'wall/a.md']);

  expect(status).toBe(1);
  expect(stdout.replace(/\s+/g, ' ')).toContain(
    'The width of the binding strip is 2½", not 2¼": the house file house.md says 2 1/2" under “binding strip”.',
  );
});

it('is corrected by the rules of the other file, which stays as it is', async () => {
  const folder = await folderWith({ 'house.md': house('2 1/2"'), 'a.md': quilt('house.md') });
  const { status } = await run(folder, ['proof', '--fix', '.']);

  expect(status).toBe(0);
  expect(await readFile(join(folder, 'a.md'), 'utf8')).toBe(quilt('house.md', '2½"'));
  expect(await readFile(join(folder, 'house.md'), 'utf8')).toBe(house('2 1/2"'));
});

it('takes the folder that holds .git for the workspace, and nothing above it', async () => {
  const folder = await folderWith({ 'house.md': house('2 1/4"'), 'line/a.md': quilt('../house.md') });
  const inside = await run(folder, ['proof', 'line']);
  await mkdir(join(folder, 'line', '.git'));
  const outside = await run(folder, ['proof', 'line']);

  expect(inside.status).toBe(0);
  expect(outside.status).toBe(1);
  expect(outside.stdout).toContain(OUTSIDE);
});

it('takes the folder in which it runs for the workspace where there is no .git', async () => {
  const folder = await folderWith({ 'house.md': house('2 1/4"'), 'line/a.md': quilt('../house.md') });
  const { status, stdout } = await run(join(folder, 'line'), ['proof', 'a.md']);

  expect(status).toBe(1);
  expect(stdout).toContain(OUTSIDE);
});

it('takes the folder of a manuscript that stands elsewhere for its workspace', async () => {
  const folder = await folderWith({
    'house.md': house('2 1/4"'),
    'a.md': quilt('house.md'),
    'here/note.md': '',
  });

  expect((await run(join(folder, 'here'), ['proof', '../a.md'])).status).toBe(0);
});

it('follows no link out of the workspace', async () => {
  const elsewhere = await folderWith({ 'house.md': house('9"') });
  const folder = await folderWith({ 'a.md': quilt('link.md') });
  await symlink(join(elsewhere, 'house.md'), join(folder, 'link.md'));
  const { status, stdout } = await run(folder, ['proof', 'a.md']);

  expect(status).toBe(1);
  expect(stdout).toContain('“link.md” leads out of the workspace');
});

it('says of a file that is no text that it cannot be read', async () => {
  const folder = await folderWith({ 'a.md': quilt('picture.md'), 'picture.md': new Uint8Array([0, 1, 2]) });
  const { stdout } = await run(folder, ['proof', 'a.md']);

  expect(stdout).toContain('“picture.md” cannot be read: it is no text file in UTF-8.');
});

it('reads what a folder that uses itself says, and tells of the circle', async () => {
  const folder = await folderWith({
    'a.md': quilt('b.md'),
    'b.md': '```measure\nuse: a.md\nhouse: { binding strip: 2 1/4" }\n```\n',
  });
  const { status, stdout } = await run(folder, ['proof', 'a.md']);

  expect(status).toBe(1);
  expect(stdout.replace(/\s+/g, ' ')).toContain('in a circle: b.md → a.md → b.md.');
});
