import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, run } from './run.ts';

const manuscript = [
  '# Buoys',
  '',
  '```measure',
  'sizes: [wall, throw]',
  'finished: { wall: 36" x 48", throw: 54" x 66" }',
  '```',
  '',
  'Bind 168" (240") <!-- = finished.edge --> of edge.',
  '',
].join('\n');

describe('size', () => {
  it('adds a size with its computed numbers, and drops it again without a trace', async () => {
    const folder = await folderWith({ 'wall.md': manuscript });
    const file = join(folder, 'wall.md');
    const added = await run(folder, ['size', 'add', 'wall.md', 'twin', '--set', 'finished=72" x 90"']);

    expect(added).toEqual({ status: 0, stdout: '3 lines of wall.md revised.\n', stderr: '' });
    expect(await readFile(file, 'utf8')).toContain(
      'Bind 168" (240", 324") <!-- = finished.edge --> of edge.',
    );

    expect((await run(folder, ['size', 'drop', 'wall.md', 'twin'])).status).toBe(0);
    expect(await readFile(file, 'utf8')).toBe(manuscript);
  });

  it('tells what is left to write, and ends with status 1', async () => {
    const folder = await folderWith({ 'wall.md': manuscript });

    expect(await run(folder, ['size', 'add', 'wall.md', 'crib', '--first'])).toEqual({
      status: 1,
      stdout: [
        'wall.md:5: Here a finished size or shape is missing: write it in place of the mark.',
        'wall.md:8: Here something is missing for the size “crib”: write it in place of the mark.',
        '3 lines of wall.md revised.',
        '',
      ].join('\n'),
      stderr: '',
    });
  });

  it('shows what it would change and writes nothing when asked for a dry run', async () => {
    const folder = await folderWith({ 'wall.md': manuscript });
    const { stdout } = await run(folder, ['size', 'rename', 'wall.md', 'wall', 'mini', '--dry-run']);

    expect(stdout).toBe(
      [
        '   4 - sizes: [wall, throw]',
        '     + sizes: [mini, throw]',
        '',
        '   5 - finished: { wall: 36" x 48", throw: 54" x 66" }',
        '     + finished: { mini: 36" x 48", throw: 54" x 66" }',
        '2 lines of wall.md would be revised.',
        '',
      ].join('\n'),
    );
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(manuscript);
  });

  it('puts sizes in another order', async () => {
    const folder = await folderWith({ 'wall.md': manuscript });
    const { status } = await run(folder, ['size', 'order', 'wall.md', 'throw', 'wall']);

    expect(status).toBe(0);
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toContain(
      'Bind 240" (168") <!-- = finished.edge -->',
    );
  });

  it.each([
    [['size', 'drop', 'wall.md', 'twin'], 'The pattern has no size “twin”. Its sizes are wall and throw.\n'],
    [['size', 'drop', 'lost.md', 'twin'], 'Cannot read lost.md: there is no such file or folder.\n'],
    [['size', 'drop', '.', 'twin'], 'Name one file; . is a folder.\n'],
  ])('writes nothing and ends with status 2 when it cannot do %j', async (args, stderr) => {
    const folder = await folderWith({ 'wall.md': manuscript, 'other.md': manuscript });

    expect(await run(folder, args)).toEqual({ status: 2, stdout: '', stderr: `measure-twice: ${stderr}` });
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(manuscript);
  });
});
