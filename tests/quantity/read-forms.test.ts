/**
 * Every form of the catalogue of number forms in pattern manuscripts, with the traps that it names.
 * The sentences are our own.
 */
import { describe, expect, test } from 'vitest';
import { findNumbers } from '../../core/quantity/read.ts';
import { token, tokens } from './tokens.ts';

type Row = readonly [text: string, ...tokens: string[]];

const FORMS: Readonly<Record<string, readonly Row[]>> = {
  'an inch mark': [
    ['6½" strips', '6½" = 13/2 in'],
    ['a 3-1/4" square and a 9" block', '3-1/4" = 13/4 in', '9" = 9 in'],
    ['5" squares', '5" = 5 in'],
    ['11”” x 20”', '11” = 11 in', '20” = 20 in'],
    ['5½” x 9”', '5½” = 11/2 in', '9” = 9 in'],
    ['2 ¼“ strips', '2 ¼“ = 9/4 in ?'],
    ["4″ and 4'' and 4′′ and 4’’", '4″ = 4 in', "4'' = 4 in", '4′′ = 4 in', '4’’ = 4 in'],
    ['4’x4”', '4 = 4', '4” = 4 in'],
  ],
  'a count in digits': [
    ['14 squares', '14 = 14'],
    ['18 3½" squares', '18 = 18', '3½" = 7/2 in'],
    ['1,200 hexagons', '1,200 = 1200'],
    ['cut 4. Then sew', '4 = 4'],
    ['2 dozen squares', '2 dozen = 24'],
  ],
  'a count in words': [
    ['sew two strips', 'two = 2'],
    ['thirty-two segments, Thirty two rows', 'thirty-two = 32', 'Thirty two = 32'],
    ['One hundred and twenty squares', 'One hundred and twenty = 120'],
    ['two hundred fifty and a hundred', 'two hundred fifty = 250', 'a hundred = 100'],
    ['a dozen, half a dozen, two dozen', 'a dozen = 12', 'half a dozen = 6', 'two dozen = 24'],
    ['sew a pair of strips', 'a pair = 2 ~'],
    ['Three 4" squares', 'Three = 3', '4" = 4 in'],
    ['one of each and another', 'one = 1 ~', 'another = 1 ~'],
    ['both, once, twice', 'both = 2 ~', 'once = 1 ~', 'twice = 2 ~'],
    ['twenty five-inch squares', 'twenty = 20 ?', 'five-inch = 5 in'],
    ['six three-inch strips', 'six = 6', 'three-inch = 3 in'],
    ['someone weighs tenderly', ...[]],
  ],
  'names with number words inside': [
    ['two half-square triangles', 'two = 2'],
    ['one quarter-square triangle', 'one = 1 ~'],
    ['eight half-square triangle units', 'eight = 8'],
    ['a fat quarter, a quarter turn, cut in half, cut into quarters'],
    ['double-fold binding, half-hexagons'],
    ['a nine-patch and a Nine Patch', 'nine = 9 ~', 'Nine = 9 ~'],
    ['four-sided, two-tone', 'four = 4 ~', 'two = 2 ~'],
    ['4 9-patch blocks', '4 = 4', '9 = 9 ~'],
    ['cut two halves', 'two = 2'],
  ],
  'a pair of sizes': [
    ['2½" x 8½"', '2½" = 5/2 in', '8½" = 17/2 in'],
    ['19 in x 24 in', '19 in = 19 in', '24 in = 24 in'],
    ['30cm x 45cm', '30cm = 30 cm', '45cm = 45 cm'],
    ['40 inches by 52 inches', '40 inches = 40 in', '52 inches = 52 in'],
    ['14" x19" and 18x24cm', '14" = 14 in', '19" = 19 in', '18 = 18', '24cm = 24 cm'],
    ['10x16" batting', '10 = 10', '16" = 16 in'],
    ['2-1/2×18-1/2"', '2-1/2 = 5/2 ?', '18-1/2" = 37/2 in'],
    ['4½" x WOF and 3×42" and WOF x 6 inch', '4½" = 9/2 in', '3 = 3', '42" = 42 in', '6 inch = 6 in'],
    ['2½" x 9½."', '2½" = 5/2 in', '9½." = 19/2 in ?'],
  ],
  yardage: [
    ['⅝ yard', '⅝ yard = 5/8 yd'],
    ['1 1/4 yds', '1 1/4 yds = 5/4 yd'],
    ['2-1/3 yards', '2-1/3 yards = 7/3 yd'],
    ['3yds backing', '3yds = 3 yd'],
    ['¾ yard total', '¾ yard = 3/4 yd'],
    ['1 yd. of red', '1 yd. = 1 yd'],
    ['5--1/4-yard pieces', '5 = 5 ?', '1/4-yard = 1/4 yd'],
    ['1-3⁄4 yards', '1-3⁄4 yards = 7/4 yd'],
    ['in the backyard'],
  ],
  'a fraction behind a hyphen': [
    ['3-7/8"', '3-7/8" = 31/8 in'],
    ['12-1/2" squares', '12-1/2" = 25/2 in'],
    ['7-1/4', '7-1/4 = 29/4'],
    ['2-7/8×30" strips', '2-7/8 = 23/8 ?', '30" = 30 in'],
    ['9-3/4"-long ribbons', '9-3/4" = 39/4 in ?'],
    ['2 -1⁄2" by 18- 1⁄2"', '2 -1⁄2" = 5/2 in ?', '18- 1⁄2" = 37/2 in ?'],
    ['1-1/4-inch', '1-1/4-inch = 5/4 in'],
    ['5-3-/4-inch', '5-3-/4-inch = 23/4 in ?'],
  ],
  'a count, a dash and a size': [
    ['8--3-1/2" squares', '8 = 8', '3-1/2" = 7/2 in'],
    ['6 – 4½" squares', '6 = 6', '4½" = 9/2 in'],
    ['5 -- 2x9" strips', '5 = 5', '2 = 2', '9" = 9 in'],
    ['30-6" squares', '30 = 30', '6" = 6 in'],
    ['4—-2×20" strips', '4 = 4', '2 = 2', '20" = 20 in'],
    ['12-5" squares', '12 = 12', '5" = 5 in'],
    ['6--3/4" strips', '6 = 6 ?', '3/4" = 3/4 in'],
    ['30-6-1/2" strips', '30 = 30', '6-1/2" = 13/2 in'],
    ['11 - 1 1/2" squares', '11 = 11', '1 1/2" = 3/2 in'],
  ],
  'a count in brackets': [
    ['Cut (9) 3" x WOF strips', '9 = 9', '3" = 3 in'],
    ['recut into (72) 2½" squares', '72 = 72', '2½" = 5/2 in'],
    ['twelve (12) squares, 6 (Six) strips', 'twelve = 12', '12 = 12', '6 = 6', 'Six = 6'],
    ['(12 G) and B2 and (H)', '12 = 12', '2 = 2 ~'],
  ],
  'a fraction character': [
    ['4½" and ⅓ yard and ¼" seam', '4½" = 9/2 in', '⅓ yard = 1/3 yd', '¼" = 1/4 in'],
    ['4 ½"', '4 ½" = 9/2 in ?'],
    ['2\u00a0½\u2009" and 3\u20091/2"', '2\u00a0½\u2009" = 5/2 in ?', '3\u20091/2" = 7/2 in'],
    ['2¹⁄₁₆" and ⅟16"', '2¹⁄₁₆" = 33/16 in', '⅟16" = 1/16 in'],
  ],
  'a decimal': [
    ['2.5" strips, an 8.25" block', '2.5" = 5/2 in', '8.25" = 33/4 in'],
    ['1.10m and 6.25 yards', '1.10m = 11/10 m', '6.25 yards = 25/4 yd'],
    ['.5" seam', '.5" = 1/2 in'],
    ['3. 5" squares', '3 = 3', '5" = 5 in'],
    ['2,5 cm and 1,25 m', '2,5 cm = 5/2 cm', '1,25 m = 5/4 m'],
    ['sizes 2,5 or 7', '2 = 2', '5 = 5', '7 = 7'],
    ['version 1.2.3', '1 = 1 ~', '2 = 2 ~', '3 = 3 ~'],
  ],
  'a fraction behind a space': [
    ['2 1/2" strips', '2 1/2" = 5/2 in'],
    ['6 2 1/2" strips', '6 = 6', '2 1/2" = 5/2 in'],
    ['2\n1/2"', '2\n1/2" = 5/2 in'],
    ['2 12 triangles', '2 = 2', '12 = 12'],
  ],
  'a unit in words': [
    ['a 10.5 inch square', '10.5 inch = 21/2 in'],
    ['2-3/4-inch-wide strips', '2-3/4-inch = 11/4 in ?'],
    ['1-inch x 7-inch', '1-inch = 1 in', '7-inch = 7 in'],
    ['a quarter-inch foot', 'quarter-inch = 1/4 in'],
    ['6 feet, 6 ft and one foot', '6 feet = 6 ft', '6 ft = 6 ft', 'one foot = 1 ft'],
    [
      '1 meter, 2 metres, 3 Mtr, 5 cms, 6 mm, 5m',
      '1 meter = 1 m',
      '2 metres = 2 m',
      '3 Mtr = 3 m',
      '5 cms = 5 cm',
      '6 mm = 6 mm',
      '5m = 5 m',
    ],
    ['10\ninches', '10\ninches = 10 in'],
  ],
  'in, the unit, and in, the preposition': [
    ['12½in (32cm)', '12½in = 25/2 in', '32cm = 32 cm'],
    ['cut 5 in half, 20 in total, 4 in each row', '5 = 5', '20 = 20', '4 = 4'],
    ['cut 8 in teal', '8 = 8 ?'],
    ['4 in. wide, 2 in strips', '4 in. = 4 in', '2 in = 2 in'],
    ['five in all', 'five = 5'],
  ],
  'two units side by side': [
    ['2.4m (2⅝yd)', '2.4m = 12/5 m', '2⅝yd = 21/8 yd'],
    ['70cm or ¾ yard', '70cm = 70 cm', '¾ yard = 3/4 yd'],
    ['2.4m/3yd', '2.4m = 12/5 m', '3yd = 3 yd'],
  ],
  'old ways of writing fractions': [
    ['6.1/4"', '6.1/4" = 25/4 in'],
    ['5 & 1/2 inch', '5 & 1/2 inch = 11/2 in'],
    [
      'eight and a half inches by twelve inches',
      'eight and a half inches = 17/2 in',
      'twelve inches = 12 in',
    ],
    ['half an inch, a quarter inch', 'half an inch = 1/2 in', 'quarter inch = 1/4 in'],
    [
      'a quarter of an inch, three-quarters of a yard',
      'a quarter of an inch = 1/4 in',
      'three-quarters of a yard = 3/4 yd',
    ],
    ['three quarter yard, one half yard', 'three quarter yard = 3/4 yd', 'one half yard = 1/2 yd'],
    [
      '2 and a half yards, one-and-a-half-inch',
      '2 and a half yards = 5/2 yd',
      'one-and-a-half-inch = 3/2 in',
    ],
    ['half the strips', 'half = 1/2 ~'],
    ['twenty or twenty-one inches', 'twenty = 20', 'twenty-one inches = 21 in'],
    ['TWO AND THREE-QUARTER INCHES', 'TWO AND THREE-QUARTER INCHES = 11/4 in'],
  ],
  'what only looks like a fraction': [
    ['44/45"-wide', '44 = 44', '45" = 45 in'],
    ['43/44"', '43 = 43', '44" = 44 in'],
    ['size 80/12 needle', '80 = 80', '12 = 12'],
    ['60/8 or 70/10 needle', '60 = 60', '8 = 8', '70 = 70', '10 = 10'],
    ['12/20/30 blocks', '12 = 12', '20 = 20', '30 = 30'],
    ['6/14/19', '6 = 6', '14 = 14', '19 = 19'],
    ['1/8th of a circle, 1st border', '1/8th = 1/8', '1st = 1'],
    ['1/0 and 0/0', '1 = 1', '0 = 0', '0 = 0', '0 = 0'],
  ],
  'a damaged fraction': [
    ['31/2" strips', '31/2" = 31/2 in ?'],
    ['41⁄ 4 "', '41⁄ 4 " = 41/4 in ?'],
    ['2^3⁄4"', '2^3⁄4" = 11/4 in ?'],
    ['⁄ yard and ½n', '½ = 1/2 ~'],
  ],
  'a range or an approximation': [
    ['10-12" and 42-44"', '10 = 10', '12" = 12 in', '42 = 42', '44" = 44 in'],
    ['8"-9", 1½ to 3 inches', '8" = 8 in', '9" = 9 in', '1½ = 3/2', '3 inches = 3 in'],
  ],
  'a number inside a quotation': [
    ['the clue “Row 5” comes next', '5 = 5 ?'],
    ['she said "cut 5" squares first", then', '5" = 5 in'],
    ['Make 9 "Star" blocks', '9 = 9'],
    ['9 "x 12 "', '9 " = 9 in', '12 " = 12 in'],
  ],
  'not a quantity': [
    ['40118-22 and 41207R', '40118 = 40118', '22 = 22', '41207 = 41207 ~'],
    ['60° at 100%', '60 = 60', '100 = 100'],
    ['2-ply, 320-grit', '2 = 2 ~', '320 = 320 ~'],
    ["2's and 3's", '2 = 2', '3 = 3'],
    ['F-1', '1 = 1'],
  ],
};

for (const [form, rows] of Object.entries(FORMS)) {
  describe(`Reading ${form}`, () => {
    test.each(rows.map(([text, ...expected]) => ({ text, expected })))(
      'reads $text',
      ({ text, expected }) => {
        expect(tokens(text)).toEqual(expected);
      },
    );
  });
}

describe('The other reading of an ambiguous number', () => {
  test.each([
    ['31/2"', ['31/2" = 7/2 in']],
    ['6--3/4"', ['6--3/4" = 27/4 in']],
    ['2 ¾"', ['2 = 2', '¾" = 3/4 in']],
    ['9-3/4"-long', ['9 = 9', '3/4" = 3/4 in']],
    ['8 in teal', ['8 in = 8 in']],
    ['1,200 m', ['1,200 m = 6/5 m']],
    ['twenty five-inch', ['twenty five-inch = 25 in']],
    ['“Row 5”', ['5” = 5 in']],
    ['9½."', ['9½ = 19/2']],
  ])('of %s is %j', (text, expected) => {
    expect(findNumbers(text)[0]?.alternative?.map((number) => token(number, text))).toEqual(expected);
  });
});
