import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, run } from './run.ts';

const runner = '# Row\n\nThe quilt finishes at 16" × 48".\n\nCut 4 strips 2½" wide for the binding.\n';

describe('draft', () => {
  it('prints a block with the lines that it is taken from, and writes nothing', async () => {
    const folder = await folderWith({ 'row.md': runner });

    expect(await run(folder, ['draft', 'row.md'])).toEqual({
      status: 0,
      stdout: [
        '```measure',
        'pattern: Row  # line 1: “Row”',
        'finished: 16" x 48"  # line 3: “The quilt finishes at 16" × 48".”',
        'binding:',
        '  strip: 2 1/2"  # line 5: “Cut 4 strips 2½" wide for the binding.”',
        '```',
        '',
      ].join('\n'),
      stderr: '',
    });
    expect(await readFile(join(folder, 'row.md'), 'utf8')).toBe(runner);
  });

  it('writes the block behind the title when asked to, and never over one that is there', async () => {
    const folder = await folderWith({ 'row.md': runner });
    expect((await run(folder, ['draft', 'row.md', '--write'])).status).toBe(0);
    const written = await readFile(join(folder, 'row.md'), 'utf8');

    expect(written).toMatch(/^# Row\n\n```measure\npattern: Row .*\n[\s\S]*\n```\n\nThe quilt finishes/);
    expect(await run(folder, ['draft', 'row.md', '--write'])).toEqual({
      status: 2,
      stdout: '',
      stderr: 'measure-twice: row.md has a measure block already; it was left as it is.\n',
    });
    expect(await readFile(join(folder, 'row.md'), 'utf8')).toBe(written);
  });

  it('tells what is left open with both lines, and ends with status 1', async () => {
    const folder = await folderWith({ 'row.md': `${runner}\nThe 4 binding strips are 2¼" wide.\n` });
    const { status, stderr } = await run(folder, ['draft', 'row.md']);

    expect(status).toBe(1);
    expect(stderr).toBe(
      'row.md:5: The manuscript tells the cut width of the binding strips twice, as 2 1/2" and as 2 1/4". Line 7: Here it is 2 1/4".\n',
    );
  });

  it('says so when the text speaks of no quilt', async () => {
    const folder = await folderWith({ 'notes.md': '# Notes\n\nSee page 3.\n' });

    expect(await run(folder, ['draft', 'notes.md'])).toEqual({
      status: 2,
      stdout: '',
      stderr: 'measure-twice: notes.md says nothing that a measure block could hold.\n',
    });
  });
});
