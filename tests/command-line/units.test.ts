import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, run } from './run.ts';

const manuscript = [
  '# Buoys',
  '',
  '```measure',
  'finished: 36" x 48"',
  '```',
  '',
  'Bind 168" <!-- = finished.edge --> of edge.',
  '',
].join('\r\n');

describe('units', () => {
  it('adds metric equivalents, and removes them again without a trace', async () => {
    const folder = await folderWith({ 'wall.md': manuscript });
    const file = join(folder, 'wall.md');

    expect(await run(folder, ['units', 'wall.md', '--add', 'metric'])).toEqual({
      status: 0,
      stdout: '1 line of wall.md revised.\n',
      stderr: '',
    });
    expect(await readFile(file, 'utf8')).toContain(
      'Bind 168" <!-- = finished.edge --> (426.5 cm) of edge.\r\n',
    );

    expect((await run(folder, ['units', 'wall.md', '--remove'])).status).toBe(0);
    expect(await readFile(file, 'utf8')).toBe(manuscript);
  });

  it('shows what it would change in a folder, tells what is left with status 1, and writes nothing in a dry run', async () => {
    const folder = await folderWith({ 'wall.md': manuscript, 'ties.md': 'Ties are 24" (28") long.\n' });

    expect(await run(folder, ['units', '.', '--add', 'metric', '--dry-run'])).toEqual({
      status: 1,
      stdout: [
        'ties.md:1: This is one of a list of lengths, which would be hard to read with an equivalent for each.',
        'ties.md:1: This is one of a list of lengths, which would be hard to read with an equivalent for each.',
        'ties.md stays as it is.',
        '   7 - Bind 168" <!-- = finished.edge --> of edge.',
        '     + Bind 168" <!-- = finished.edge --> (426.5 cm) of edge.',
        '1 line of wall.md would be revised.',
        '',
      ].join('\n'),
      stderr: '',
    });
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(manuscript);
  });

  it.each([
    [['--add', 'inch'], 'This manuscript is written in inches; add the metric equivalents instead.'],
    [['--add', 'metric', '--remove'], 'Say one of --add metric, --add inch and --remove.'],
    [[], 'Say one of --add metric, --add inch and --remove.'],
  ])('cannot run with %j, and says why', async (options, message) => {
    const folder = await folderWith({ 'wall.md': manuscript });

    expect(await run(folder, ['units', 'wall.md', ...options])).toEqual({
      status: 2,
      stdout: '',
      stderr: `measure-twice: ${message}\n`,
    });
  });
});
