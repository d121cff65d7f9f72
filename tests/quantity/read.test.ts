import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VULGAR_FRACTIONS } from '../../core/quantity/characters.ts';
import { rational, toFractionText } from '../../core/quantity/rational.ts';
import {
  findNumbers,
  readCount,
  readDimensions,
  readLength,
  readNumberAt,
} from '../../core/quantity/read.ts';
import { tokens } from './tokens.ts';

/** Pieces that numbers are made of, and what may touch them. */
const PIECES = [
  ...'0123456789/⁄∕-–—.,&^ \n"″”“\'xX×()½⅝⅟¹₈°%#$',
  ...[
    '--',
    '1/2',
    ' and ',
    ' a ',
    ' of an ',
    'half',
    'quarter',
    'three',
    'twenty',
    'hundred',
    'dozen',
    'one',
  ],
  ...[
    'inch',
    'in',
    'in.',
    'yd',
    'yards',
    'cm',
    'm',
    'mm',
    'strips',
    'é',
    '🧵',
    '\u00a0',
    '\u2009',
    'by',
    'th',
  ],
];
const hostile = fc.array(fc.constantFrom(...PIECES), { maxLength: 40 }).map((pieces) => pieces.join(''));

describe('Finding numbers', () => {
  test('never overlaps, keeps the order, and slices the numeral and its mark', () => {
    fc.assert(
      fc.property(fc.oneof(hostile, fc.string({ unit: 'binary' })), (text) => {
        let end = 0;
        for (const number of findNumbers(text)) {
          const { start, numeralEnd, notation, value } = number;
          expect(start).toBeGreaterThanOrEqual(end);
          expect(numeralEnd).toBeGreaterThan(start);
          expect(text.slice(numeralEnd, number.end)).toBe(notation.gap + notation.mark);
          expect(number.ambiguous).toBe(number.alternative !== undefined);
          expect(value.s >= 0n).toBe(true);
          end = number.end;
        }
        expect(end).toBeLessThanOrEqual(text.length);
      }),
      { numRuns: 2000 },
    );
  });

  test('agrees with reading at each start', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        for (const number of findNumbers(text)) expect(readNumberAt(text, number.start)).toEqual(number);
      }),
    );
  });

  test('finds every digit that is not part of an absurdly long run', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const numbers = findNumbers(text);
        for (const { index } of text.matchAll(/(?<!\d)\d{1,6}(?!\d)/g)) {
          expect(numbers.some(({ start, end }) => start <= index && index < end)).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('reads no number where a zero is the denominator', () => {
    expect(tokens('1/0" and 3⁄0 yd')).toEqual(['1 = 1', '0" = 0 in', '3 = 3', '0 yd = 0 yd']);
  });

  test('takes no run of more than twelve digits for a number', () => {
    expect(tokens(`${'9'.repeat(12)} and ${'9'.repeat(13)}`)).toEqual(['999999999999 = 999999999999']);
    expect(tokens(`${'9'.repeat(1_000_000)} 7`)).toEqual(['7 = 7']);
  });

  test('goes through long runs of anything that numbers are made of', () => {
    for (const piece of [
      '1-',
      '1/',
      '1 ',
      '1.',
      '1,',
      ' ',
      'one ',
      'twenty-',
      '½',
      '"',
      '1"',
      '“a 1',
      '- ',
      '\n1',
      'a ',
    ]) {
      const text = piece.repeat(20_000);
      expect(findNumbers(text).at(-1)?.end ?? 0).toBeLessThanOrEqual(text.length);
    }
  });
});

describe('Vulgar fraction characters', () => {
  // Source: Unicode Character Database, DerivedNumericValues.txt; the last three columns of the names list.
  test.each([
    ['\u00bc', '1/4'],
    ['\u00bd', '1/2'],
    ['\u00be', '3/4'],
    ['\u2150', '1/7'],
    ['\u2151', '1/9'],
    ['\u2152', '1/10'],
    ['\u2153', '1/3'],
    ['\u2154', '2/3'],
    ['\u2155', '1/5'],
    ['\u2156', '2/5'],
    ['\u2157', '3/5'],
    ['\u2158', '4/5'],
    ['\u2159', '1/6'],
    ['\u215a', '5/6'],
    ['\u215b', '1/8'],
    ['\u215c', '3/8'],
    ['\u215d', '5/8'],
    ['\u215e', '7/8'],
    ['\u2189', '0'],
  ])('%s is %s', (glyph, value) => {
    expect(findNumbers(glyph).map((number) => toFractionText(number.value))).toEqual([value]);
  });

  test('mean what their compatibility decomposition means', () => {
    // Source: Unicode Standard, fraction slash: digits, U+2044, digits form one fraction. The platform's own NFKC
    // gives those digits for each character.
    for (const [glyph, [n, d]] of VULGAR_FRACTIONS) expect(glyph.normalize('NFKC')).toBe(`${n}\u2044${d}`);
  });

  test('are read before any compatibility normalisation, which would make 2½ into 21⁄2', () => {
    const text = '2½"';
    expect(readLength(text)).toMatchObject({ value: rational(5, 2) });
    expect(findNumbers(text.normalize('NFKC')).map(({ value }) => toFractionText(value))).toEqual(['21/2']);
  });
});

describe('Reading one length', () => {
  // 1 yd = 36 in; 1 in = 2.54 cm exactly: addendum to National Bureau of Standards Circular 572 (1960).
  test.each([
    ['2 1/4"', '9/4'],
    ['2¼"', '9/4'],
    ['2-1/4 in', '9/4'],
    ['2.25 inches', '9/4'],
    ['127 cm', '50'],
    ['25.4 mm', '1'],
    ['2,54 cm', '1'],
    ['1 1/8 yd', '81/2'],
    ['0.9144 m', '36'],
    ['2 ft', '24'],
    [' half a yard ', '18'],
    ['5″', '5'],
    ["5''", '5'],
    ['5 in.', '5'],
  ])('reads %s as %s in', (text, inches) => {
    const read = readLength(text);
    expect('problem' in read ? read.problem : toFractionText(read.inches)).toBe(inches);
  });

  test('allows zero only where it is asked for', () => {
    expect(readLength('0"')).toEqual({ problem: 'A length must be more than nothing, and 0" is not.' });
    expect(readLength('0"', { zero: true })).toMatchObject({ value: rational(0), unit: 'in' });
  });

  test.each([
    ['', 'A length is missing here.'],
    ['36', '36 has no unit; write 36" for inches, or 36 cm.'],
    ['-3"', 'A length cannot be negative, as -3" is.'],
    ['wide', '“wide” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
    ['2" x 3"', '“2" x 3"” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
    ['2" strips', '“2" strips” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
    ['6--3/4"', '“6--3/4"” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
    ['31/2"', '31/2" can be read in two ways; put a space between the whole number and the fraction.'],
    ['1/0"', '“1/0"” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
    ['1001 yd', '1001 yd is longer than 1,000 yards; check the number and its unit.'],
    [
      '1'.repeat(13).concat('"'),
      '“1111111111111"” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.',
    ],
  ])('refuses %j with a plain sentence', (text, problem) => {
    expect(readLength(text)).toEqual({ problem });
  });
});

describe('Reading one count', () => {
  test.each([
    ['12', 12],
    ['twelve', 12],
    ['one', 1],
    ['1,200', 1200],
    ['a dozen', 12],
    ['0', 0],
  ])('reads %s', (text, count) => {
    expect(readCount(text)).toMatchObject({ value: rational(count) });
  });

  test.each([
    ['', 'A count is missing here.'],
    ['2 1/2', 'A count is a whole number, and 2 1/2 is not one.'],
    ['2.0', 'A count is a whole number, and 2.0 is not one.'],
    ['12"', '“12"” is a length; a count is a whole number without a unit.'],
    ['many', '“many” cannot be read as a count; write a whole number, such as 12.'],
    ['1st', '“1st” cannot be read as a count; write a whole number, such as 12.'],
    ['12 strips', '“12 strips” cannot be read as a count; write a whole number, such as 12.'],
    ['-4', 'A count cannot be negative, as -4 is.'],
    ['2,000,000', 'A count of 2,000,000 is too large to be meant.'],
  ])('refuses %j with a plain sentence', (text, problem) => {
    expect(readCount(text)).toEqual({ problem });
  });
});

describe('Reading a width and a length', () => {
  test.each([
    ['36" x 48"', '36 in', '48 in'],
    ['36"×48"', '36 in', '48 in'],
    ['36" X 48"', '36 in', '48 in'],
    ['36 inches by 48 inches', '36 in', '48 in'],
    ['2½ x 4½"', '5/2 in', '9/2 in'],
    ['7 cm x 14 cm', '7 cm', '14 cm'],
    ['10x16"', '10 in', '16 in'],
    ['1 yd x 30"', '1 yd', '30 in'],
  ])('reads %s', (text, width, length) => {
    const read = readDimensions(text);
    if ('problem' in read) throw new Error(read.problem);
    const sides = [read.width, read.length].map(({ value, unit }) => `${toFractionText(value)} ${unit}`);
    expect(sides).toEqual([width, length]);
  });

  test.each([
    ['36"', '“36"” cannot be read as a width and a length; write it as 36" x 48".'],
    ['36" x 48" x 2"', '“36" x 48" x 2"” cannot be read as a width and a length; write it as 36" x 48".'],
    ['36" and 48"', '“36" and 48"” cannot be read as a width and a length; write it as 36" x 48".'],
    ['36 x 48', '36 has no unit; write 36" for inches, or 36 cm.'],
    ['36" x 0"', 'A length must be more than nothing, and 0" is not.'],
  ])('refuses %s with a plain sentence', (text, problem) => {
    expect(readDimensions(text)).toEqual({ problem });
  });
});
