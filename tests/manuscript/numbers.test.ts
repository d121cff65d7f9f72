import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../core/manuscript/read.ts';
import { toFractionText } from '../../core/quantity/rational.ts';
import { hostileMarkdown } from './hostile.ts';

/** Each number as `text: kind value unit`. */
function numbersOf(source: string): string[] {
  return readManuscript(source).numbers.map(
    ({ text, kind, value, unit }) => `${text}: ${kind} ${toFractionText(value)}${unit ? ` ${unit}` : ''}`,
  );
}

describe('The kind of a number', () => {
  test.each([
    ['Cut (7) 2¼" × WOF strips', ['7: count 7', '2¼": length 9/4 in']],
    ['Finished quilt: 36" × 48"', ['36": size 36 in', '48": size 48 in']],
    ['1⅛ yd of plum, 0.5 m of teal', ['1⅛ yd: yardage 9/8 yd', '0.5 m: yardage 1/2 m']],
    ['half of the strips', ['half: fraction-of 1/2']],
    ['½ of the strips, 1/8th of a circle', ['½: fraction-of 1/2', '1/8th: fraction-of 1/8']],
    ['a scant ¼ all round', ['¼: length 1/4']],
    ['Step 4: cut 57 cm', ['4: other 4', '57 cm: length 57 cm']],
    ['1 yd x 30" piece', ['1 yd: size 1 yd', '30": size 30 in']],
  ])('in: %s', (source, expected) => {
    expect(numbersOf(source)).toEqual(expected);
  });
});

describe('A unit that two numbers share', () => {
  test.each([
    ['10x16" batting', ['10: size 10 in', '16": size 16 in']],
    ['2½ × 4½" pieces', ['2½: size 5/2 in', '4½": size 9/2 in']],
    ['2½" × 4½ pieces', ['2½": size 5/2 in', '4½: size 9/2 in']],
    ['18x24cm', ['18: size 18 cm', '24cm: size 24 cm']],
    ['44/45"-wide fabric', ['44: length 44 in', '45": length 45 in']],
    ['42-44" of fabric', ['42: length 42 in', '44": length 44 in']],
    ['1½ to 3 inches', ['1½: length 3/2 in', '3 inches: length 3 in']],
    ['twenty or twenty-one inches', ['twenty: length 20 in', 'twenty-one inches: length 21 in']],
    ['Cut 8 rectangles 3½ x 6½', ['8: count 8', '3½: size 7/2', '6½: size 13/2']],
    ['11”” x 20”', ['11”: size 11 in', '20”: size 20 in']],
    ['12" wide x 20" long', ['12": size 12 in', '20": size 20 in']],
    ['18" x 22" x 2"', ['18": size 18 in', '22": size 22 in', '2": size 2 in']],
    ['**10** x *16*" batting', ['10: size 10 in', '16": size 16 in']],
  ])('in: %s', (source, expected) => {
    expect(numbersOf(source)).toEqual(expected);
  });

  test.each([
    ['12-5" squares', ['12: count 12', '5": length 5 in']],
    ['30-6" squares', ['30: count 30', '6": length 6 in']],
    ['2-5" squares', ['2: count 2', '5": length 5 in']],
    ['4 or 5" squares', ['4: count 4', '5": length 5 in']],
    ['18 3½" squares', ['18: count 18', '3½": length 7/2 in']],
    ['12/20" piece', ['12: count 12', '20": length 20 in']],
  ])('is not shared in: %s', (source, expected) => {
    expect(numbersOf(source)).toEqual(expected);
  });
});

describe('A sign between a number and a size', () => {
  test.each([
    ['6 x 2½" strips', ['6: count 6', '2½": length 5/2 in']],
    ['2 x 3.5" by 9.5" rectangles', ['2: count 2', '3.5": size 7/2 in', '9.5": size 19/2 in']],
    ['5 -- 2x9" strips', ['5: count 5', '2: size 2 in', '9": size 9 in']],
    ['(4) 2 x 9" strips', ['4: count 4', '2: size 2 in', '9": size 9 in']],
    ['9×22" piece', ['9: size 9 in', '22": size 22 in']],
    ['3×42" strips', ['3: size 3 in', '42": size 42 in']],
    ['2 x 9" rectangles', ['2: size 2 in', '9": size 9 in']],
  ])('is read in: %s', (source, expected) => {
    expect(numbersOf(source)).toEqual(expected);
  });

  test.each([
    ['set the blocks 5 x 7', 'grid', 'count'],
    ['cut 3 x 5 rectangles', 'size', 'size'],
    ['| Cut size |\n|---|\n| 3 x 5 |', 'size', 'size'],
    ['| Setting |\n|---|\n| 3 x 5 |', 'grid', 'count'],
  ])('without a unit in %j makes a %s', (source, group, kind) => {
    const numbers = readManuscript(source).numbers;
    expect(numbers.map((number) => [number.group?.kind, number.kind])).toEqual([
      [group, kind],
      [group, kind],
    ]);
  });

  test('makes no size of a long chain', () => {
    expect(readManuscript('2 x '.repeat(500)).numbers.every(({ group }) => group === undefined)).toBe(true);
  });
});

describe('The place of a number', () => {
  test('is that of its characters', () => {
    const source = '\ufeff# Top\r\n\r\n> Cut **2**½" and\r\n> &frac12;&quot; strips';
    const places = readManuscript(source).numbers.map(({ ranges }) =>
      ranges.map(({ start, end }) => source.slice(start, end)),
    );
    expect(places).toEqual([['2', '½"'], ['&frac12;&quot;']]);
  });

  test('never overlaps that of another, whatever the Markdown', () => {
    fc.assert(
      fc.property(hostileMarkdown, (source) => {
        let end = 0;
        const overlapping: string[] = [];
        for (const { ranges, text, passage, written } of readManuscript(source).numbers) {
          if (text !== passage.text.slice(written.start, written.end)) overlapping.push(text);
          for (const range of ranges) {
            if (range.start < end || range.end <= range.start) overlapping.push(text);
            end = range.end;
          }
        }
        expect(overlapping).toEqual([]);
        expect(end).toBeLessThanOrEqual(source.length);
      }),
      { numRuns: 600 },
    );
  });
});
