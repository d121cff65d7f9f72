import { describe, expect, it } from 'vitest';
import type { Row } from '../../core/draft/row.ts';
import { settle } from '../../core/draft/row.ts';
import { blockRows } from '../../core/draft/rows/blocks.ts';
import { borderRows } from '../../core/draft/rows/borders.ts';
import { FINISHED_ROW, LAYER_ROWS } from '../../core/draft/rows/finished.ts';
import { FINISHING_ROWS } from '../../core/draft/rows/finishing.ts';
import { HOUSE_ROWS } from '../../core/draft/rows/house.ts';
import { GRID_ROWS, SASHING_ROWS } from '../../core/draft/rows/layout.ts';
import { patternFrom } from '../../core/draft/scaffold.ts';
import { readText } from '../../core/draft/text.ts';
import { readManuscript } from '../../core/manuscript/manuscript.ts';

const NAMES = [
  'fabrics: { cream: cream print, D: harbour wall }',
  'blocks: { Star: { finished: 1" } }',
  'layout: { grid: 1 x 1 }',
];
const scaffold = (borders: number) =>
  patternFrom(
    [...NAMES, 'borders:', ...Array.from({ length: borders }, () => '  - { finished: 1" }')].join('\n'),
  );

function given(row: Row, source: string, borders: number): string | undefined {
  const settled = settle(row, row.find(readText(readManuscript(source), scaffold(borders))));
  return settled && 'text' in settled ? settled.text : undefined;
}

const ROWS: readonly (readonly [row: Row, borders: number])[] = [
  ...[...HOUSE_ROWS, ...SASHING_ROWS, ...GRID_ROWS, ...FINISHING_ROWS, FINISHED_ROW, ...LAYER_ROWS].map(
    (row) => [row, 1] as const,
  ),
  ...blockRows('Star', 1).map((row) => [row, 1] as const),
  ...blockRows('Star', 2).map((row) => [row, 1] as const),
  ...borderRows(0, 1).map((row) => [row, 1] as const),
  ...borderRows(0, 2).map((row) => [row, 2] as const),
];

describe('A row of the draft', () => {
  it.each(ROWS.map(([row, borders]) => ({ title: row.title, row, borders })))(
    'takes $title from its example, and nothing from its counterexample',
    ({ row, borders }) => {
      expect(given(row, row.example, borders)).toBe(row.gives);
      expect(given(row, row.counterexample, borders)).toBeUndefined();
    },
  );

  it('takes neither of two values that differ, and names the places of both', () => {
    const source = 'The binding strips are cut 2¼" wide.\n\nCut 7 binding strips 2½" wide.';
    const row = FINISHING_ROWS.find(({ path }) => path.join('.') === 'binding.strip') as Row;
    const settled = settle(row, row.find(readText(readManuscript(source), scaffold(1))));

    expect(settled).toMatchObject({
      message: 'The manuscript tells the cut width of the binding strips twice, as 2 1/4" and as 2 1/2".',
      places: [
        { start: source.indexOf('2¼'), says: 'Here it is 2 1/4".' },
        { start: source.indexOf('2½'), says: 'Here it is 2 1/2".' },
      ],
    });
  });
});
