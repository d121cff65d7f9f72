import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nounEdit } from '../../core/quantity/nouns.ts';
import { type Rational, rational, toFractionText } from '../../core/quantity/rational.ts';
import { findNumbers } from '../../core/quantity/read.ts';
import { writeInches, writeLike, writeMetric, writeYards } from '../../core/quantity/write.ts';

/** The first number of the text, rewritten; the text around it stays. */
function rewritten(text: string, value: Rational): string | undefined {
  const [number] = findNumbers(text);
  if (!number) throw new Error(`no number in ${text}`);
  const written = writeLike(value, number, text);
  return written === undefined ? undefined : text.slice(0, number.start) + written + text.slice(number.end);
}

describe('Writing a value like the old one', () => {
  test.each([
    ['2½"', '9/4', '2¼"'],
    ['2½"', '33/16', '2 1/16"'],
    ['2 ½"', '33/16', '2 1/16"'],
    ['2-½"', '33/16', '2-1/16"'],
    ['2½"', '3', '3"'],
    ['2½"', '3/4', '¾"'],
    ['½"', '5/4', '1¼"'],
    ['2-1/2”', '17/4', '4-1/4”'],
    ['2-1⁄2"', '17/4', '4-1⁄4"'],
    ['2 1/2 in.', '17/4', '4 1/4 in.'],
    ['2\n1/2"', '17/4', '4 1/4"'],
    ['2¹⁄₂"', '33/16', '2¹⁄₁₆"'],
    ['5 & 1/2 inch', '17/4', '4 & 1/4 inch'],
    ['6.1/4"', '17/4', '4.1/4"'],
    ['2^3⁄4"', '17/4', '4-1⁄4"'],
    ['2 -1⁄2"', '17/4', '4-1⁄4"'],
    ['31/2"', '17/4', '4 1/4"'],
    ['2.5"', '9/4', '2.25"'],
    ['2.5"', '3', '3"'],
    ['1.10m', '3', '3.00m'],
    ['.5"', '1/4', '.25"'],
    ['.5"', '5/4', '1.25"'],
    ['2,5 cm', '29/4', '7,25 cm'],
    ['57 cm', '115/2', '57.5 cm'],
    ['1,200 squares', '2400', '2,400 squares'],
    ['1200 squares', '2400', '2400 squares'],
    ['900 squares', '1000', '1,000 squares'],
    ['2 dozen squares', '36', '3 dozen squares'],
    ['2 dozen squares', '30', '30 squares'],
    ['seven strips', '8', 'eight strips'],
    ['Seven strips', '21', 'Twenty-one strips'],
    ['SEVEN STRIPS', '8', 'EIGHT STRIPS'],
    ['one hundred and twenty', '145', 'one hundred and forty-five'],
    ['one hundred twenty', '145', 'one hundred forty-five'],
    ['seven strips', '1200', '1,200 strips'],
    ['eight and a half inches', '27/4', 'six and three-quarters inches'],
    ['2 and a half yards', '13/4', '3 and a quarter yards'],
    ['half an inch', '3/4', 'three-quarters of an inch'],
    ['half an inch', '3/2', 'one and a half inches'],
    ['a quarter of an inch', '1/2', 'half of an inch'],
    ['half-inch', '3/4', 'three-quarter-inch'],
    ['quarter inch', '3/8', 'three-eighth inch'],
    ['two-inch strips', '5/2', 'two-and-a-half-inch strips'],
    ['two inches', '1/2', 'half an inch'],
    ['half an inch', '0', 'zero inches'],
    ['three-quarters of a yard', '0', 'zero yards'],
    ['half-inch', '0', 'zero-inch'],
    ['2-1/4-inch strips', '5/2', '2-1/2-inch strips'],
    ['1st border', '2', '2nd border'],
    ['1st border', '12', '12th border'],
  ])('%s becomes, for %s, %s', (text, value, expected) => {
    const [n = '', d = '1'] = value.split('/');
    expect(rewritten(text, rational(BigInt(n), BigInt(d)))).toBe(expected);
  });

  test.each([
    ['1 yard of red', 2, '2 yards of red'],
    ['2 yards of red', 1, '1 yard of red'],
    ['¾ yard backing', 2, '2 yards backing'],
    ['2 1/2 yard of red', 3, '3 yard of red'],
    ['3 yd of red', 1, '1 yd of red'],
    ['3 yds of red', 1, '1 yd of red'],
    ['3 Yds. of red', 1, '1 Yd. of red'],
    ['1 inch wide', 2, '2 inches wide'],
    ['1 inch strips', 2, '2 inch strips'],
    ['1 INCH WIDE', 2, '2 INCHES WIDE'],
    ['1 foot', 2, '2 feet'],
    ['3 metres', 1, '1 metre'],
  ])('%s becomes, for %i, %s: the unit as the author inflects it', (text, value, expected) => {
    expect(rewritten(text, rational(value))).toBe(expected);
  });

  test('takes the way of writing a fraction from the text where the number itself shows none', () => {
    expect(rewritten('3" and 2-1/2"', rational(7, 4))).toBe('1-3/4" and 2-1/2"');
    expect(rewritten('3" and 2½"', rational(7, 4))).toBe('1¾" and 2½"');
    expect(rewritten('3" and 4"', rational(7, 4))).toBe('1¾" and 4"');
    expect(rewritten('1/2" and 4-1/2"', rational(7, 4))).toBe('1-3/4" and 4-1/2"');
  });

  test('keeps the characters where the value stays', () => {
    expect(rewritten('2.50"', rational(5, 2))).toBe('2.50"');
    expect(rewritten('31/2"', rational(31, 2))).toBe('31/2"');
  });

  test.each([
    ['2.5"', rational(1, 3)],
    ['eight and a half', rational(101, 12)],
    ['2½"', rational(5, 127)],
    ['2½"', rational(-1)],
  ])('gives up rather than write %s as something inexact', (text, value) => {
    expect(rewritten(text, value)).toBeUndefined();
  });
});

describe('Writing and reading again', () => {
  const whole = fc.integer({ min: 0, max: 999 });
  const part = fc.constantFrom(
    [0, 1],
    [1, 2],
    [1, 3],
    [2, 3],
    [1, 4],
    [3, 4],
    [1, 8],
    [5, 8],
    [3, 16],
    [15, 16],
  );
  // Nothing is no measure that an author states, and "zero inches" is no way to write it.
  const values = fc
    .tuple(whole, part)
    .map(([n, [a = 0, b = 1]]) => rational(n).add(rational(a, b)))
    .filter((value) => value.n !== 0n);
  const likes = fc.constantFrom(
    ...[
      '5"',
      '5 in.',
      '5 yards',
      '57 cm',
      '2½"',
      '2 ½”',
      '2-½"',
      '½"',
      '3/4 yd',
      '2 3/4 yd',
      '2-3/4"',
      '2-3⁄4"',
    ],
    ...[
      '2¹⁄₄"',
      '2.5"',
      '.5"',
      '2,5 cm',
      'two-inch',
      'two inches',
      'eight and a half inches',
      'half an inch',
    ],
    ...[
      '2 and a half yards',
      'a quarter of a yard',
      'three-quarters inch',
      '5 & 1/2 inches',
      '6.1/4"',
      '31/2"',
    ],
    ...['1,200 mm', 'half-yard', 'TWO INCHES', 'one-inch', '2 -1⁄2"', '⅟16"', '2 dozen'],
  );

  test('gives the value and the unit back, for every form', () => {
    fc.assert(
      fc.property(values, likes, (value, text) => {
        const [number] = findNumbers(text);
        const written = number && writeLike(value, number, text);
        if (written === undefined) return;
        const again = findNumbers(written);
        expect(again.map((each) => `${toFractionText(each.value)} ${each.unit}`)).toEqual([
          `${toFractionText(value)} ${number?.unit}`,
        ]);
        expect(again[0]?.end).toBe(written.length);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('The noun behind a count', () => {
  const edited = (text: string, value: number): string => {
    const [count] = findNumbers(text);
    const edit = count && nounEdit(text, count, rational(value));
    return edit ? text.slice(0, edit.start) + edit.text + text.slice(edit.end) : text;
  };

  test.each([
    ['1 strip', 2, '1 strips'],
    ['2 strips', 1, '2 strip'],
    ['Cut (1) 2½" × WOF strip', 3, 'Cut (1) 2½" × WOF strips'],
    ['Cut (1) 2½" strip', 3, 'Cut (1) 2½" strips'],
    ['2 binding strips', 1, '2 binding strip'],
    ['2 strip sets', 1, '2 strip set'],
    ['1 half-square triangle', 4, '1 half-square triangles'],
    ['2 HSTs', 1, '2 HST'],
    ['One Block', 2, 'One Blocks'],
    ['2 SASHES', 1, '2 SASH'],
  ])('%s, corrected to %i, reads %s', (text, value, expected) => {
    expect(edited(text, value)).toBe(expected);
  });

  test.each([
    ['2 strips', 3],
    ['1 of the strips', 2],
    ['1 from each square', 2],
    ['1 spool', 2],
    ['1. Sew 2 strips', 2],
    ['2 strip', 1],
  ])('%s stays for %i', (text, value) => {
    expect(edited(text, value)).toBe(text);
  });
});

describe('Values in messages', () => {
  test.each([
    [writeInches(rational(9, 4)), '2¼"'],
    [writeInches(rational(49, 16)), '3 1/16"'],
    [writeInches(rational(1, 16)), '1/16"'],
    [writeInches(rational(40)), '40"'],
    [writeInches(rational(0)), '0"'],
    [writeInches(rational(8796, 100)), '87.96"'],
    [writeInches(rational(-9, 4)), '−2¼"'],
    [writeInches(rational(9, 4), 'ascii'), '2 1/4"'],
    [writeInches(rational(9, 4), 'decimal'), '2.25"'],
    [writeYards(rational(9, 8)), '1⅛ yd'],
    [writeYards(rational(1, 3)), '⅓ yd'],
    [writeMetric(rational(57), 'cm'), '57 cm'],
    [writeMetric(rational(115, 2), 'cm'), '57.5 cm'],
    [writeMetric(rational(1, 20), 'm'), '0.05 m'],
    [writeMetric(rational(1, 3), 'm'), '0.33 m'],
  ])('%s', (written, expected) => {
    expect(written).toBe(expected);
  });
});
