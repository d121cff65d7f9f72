/** The keys of the JSON report are a promise to other programs. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, manuscript, run } from './run.ts';

async function report(folder: string, ...args: string[]) {
  const { stdout } = await run(folder, ['proof', '--format', 'json', ...args]);
  return JSON.parse(stdout);
}

describe('The JSON report', () => {
  it('has exactly the promised keys and values', async () => {
    const folder = await folderWith({ 'patterns/wall.md': manuscript('160"') });
    const start = { line: 7, column: 6, offset: 57 };
    const end = { line: 7, column: 10, offset: 61 };

    expect(await report(folder)).toEqual({
      version: 1,
      documents: [
        {
          path: 'patterns/wall.md',
          numbers: [
            {
              text: '160"',
              start,
              end,
              kind: 'length',
              value: '160',
              unit: 'in',
              size: null,
              account: 'wrong',
              figure: 'finished.edge',
              expected: '168"',
              code: 'wrong-figure',
              slip: null,
            },
          ],
          findings: [
            {
              code: 'wrong-figure',
              severity: 'error',
              message: expect.stringContaining('168", not 160"'),
              start,
              end,
              fixes: [
                {
                  title: expect.any(String),
                  preferred: true,
                  edits: [{ start, end: expect.anything(), text: expect.any(String) }],
                },
              ],
            },
          ],
          coverage: {
            verified: 0,
            wrong: 1,
            stale: 0,
            short: 0,
            generous: 0,
            unaccounted: 0,
            notMeasurement: 0,
          },
        },
      ],
      summary: {
        documents: 1,
        verified: 0,
        wrong: 1,
        stale: 0,
        short: 0,
        generous: 0,
        unaccounted: 0,
        notMeasurement: 0,
      },
    });
  });

  it('gives places in UTF-16 code units of the file as it is, byte order mark and CR LF included', async () => {
    const text = `\ufeff🧵 2½" wide\r\n\r\n${manuscript('*160*"').replaceAll('\n', '\r\n')}`;
    const folder = await folderWith({ 'wall.md': text });
    const { documents } = await report(folder);
    const source = await readFile(join(folder, 'wall.md'), 'utf8');
    const { numbers } = documents[0];

    expect(source).toBe(text);
    expect(numbers.map(({ text }: { text: string }) => text)).toEqual(['2½"', '160"']);
    expect(source.slice(numbers[0].start.offset, numbers[0].end.offset)).toBe('2½"');
    expect(numbers[0].start).toEqual({ line: 1, column: 5, offset: 4 });
    expect(source.slice(numbers[1].start.offset, numbers[1].end.offset)).toBe('160*"');
    expect(numbers[1].start.line).toBe(9);
  });

  it('names the size that a number is tied to', async () => {
    const text = [
      '```measure',
      'sizes: [wall, throw]',
      'finished: { wall: 36" x 48", throw: 54" x 72" }',
      '```',
      '',
      'The edge of the throw is 252" <!-- = finished.edge @ throw -->.',
    ].join('\n');
    const folder = await folderWith({ 'quilt.md': text });
    const { documents } = await report(folder);

    expect(documents[0].numbers).toMatchObject([
      { figure: 'finished.edge', size: 'throw', account: 'verified' },
    ]);
  });
});

describe('read', () => {
  it('shows every number with what it was read as, and why', async () => {
    const folder = await folderWith({
      'wall.md': '```measure\nfinished: 36" x 48"\n```\n\nIt finishes 36" wide. See step 3.\n',
    });
    const { status, stdout } = await run(folder, ['read', 'wall.md']);

    expect(status).toBe(0);
    expect(stdout.split('\n')).toEqual([
      '  5 │ It finishes 36" wide. See step 3.',
      '      36"  The finished width: 36". 36" is right.',
      expect.stringMatching(/^ {11}Why: .*“wide” beside it/),
      '      3    Not a measurement: step number.',
      '',
      '2 numbers in wall.md, of which 1 is read as a figure of the pattern.',
      '',
    ]);
  });

  it('gives the same to other programs', async () => {
    const folder = await folderWith({
      'wall.md':
        '```measure\nfinished: 36" x 48"\n```\n\nIt is 36" <!-- = finished.width --> wide. Buy 1⅛ yd of it.\n',
    });
    const { stdout } = await run(folder, ['read', 'wall.md', '--format', 'json']);

    expect(JSON.parse(stdout)).toEqual({
      version: 1,
      path: 'wall.md',
      numbers: [
        {
          text: '36"',
          start: { line: 5, column: 7, offset: 42 },
          end: { line: 5, column: 10, offset: 45 },
          kind: 'length',
          value: '36',
          unit: 'in',
          account: 'verified',
          figure: 'finished.width',
          title: 'The finished width',
          size: null,
          values: { '': '36"' },
          because: ['a tag behind the number names it'],
        },
        {
          text: '1⅛ yd',
          start: { line: 5, column: 47, offset: 82 },
          end: { line: 5, column: 52, offset: 87 },
          kind: 'yardage',
          value: '9/8',
          unit: 'yd',
          account: 'unaccounted',
          figure: null,
          title: null,
          size: null,
          values: {},
          because: [],
        },
      ],
    });
  });

  it('says when there is no number', async () => {
    const folder = await folderWith({ 'note.md': 'No number.' });

    expect((await run(folder, ['read', 'note.md'])).stdout).toBe('note.md holds no number.\n');
  });
});
