/** Numerals in digits: integers, decimals, fractions and mixed numbers, without their unit marks. */
import {
  BREAK,
  bySignAt,
  HYPHEN,
  isBySignBefore,
  isDigit,
  isLetter,
  LONG_DASH,
  matchAt,
  SPACE,
} from './characters.ts';
import { type FractionText, isProper, readFraction, splitLostSpace } from './fractions.ts';
import { readMark } from './marks.ts';
import type { NumeralStyle } from './notation.ts';
import { type Rational, rational } from './rational.ts';
import { isMetric } from './units.ts';
import { readDozen, readFractionTail } from './words.ts';

export interface Numeral {
  readonly start: number;
  readonly end: number;
  readonly value: Rational;
  readonly style: NumeralStyle;
  readonly weak: boolean;
  readonly ordinal: string;
  /** Whether "of an inch" may follow, and the unit "in" is likelier than the preposition. */
  readonly fractional: boolean;
  readonly alternative?: readonly Numeral[];
}

/** A longer run of digits is an identifier or a mistake, not a number. */
export const MOST_DIGITS = 12;

const INTEGER = /(?:[1-9]\d{0,2}(?:,\d{3}){1,3}(?!\d)|\d+)/y;
const DECIMALS = /\.(\d+)/y;
const DECIMAL_COMMA = /,(\d{1,4})(?!\d)/y;
const LEADING_POINT = /\.\d/y;
const ORDINAL = /(?:st|nd|rd|th)(?![\p{L}\d_])/iuy;
const TIGHT_LONG_DASH = new RegExp(LONG_DASH, 'y');
const HYPHEN_LETTER = new RegExp(`${HYPHEN}\\p{L}`, 'uy');

/** What may stand between a whole number and its fraction, the likeliest first. */
const JOINERS = [
  '',
  HYPHEN,
  `${BREAK}?&${BREAK}?`,
  `${BREAK}and${BREAK}`,
  '\\.',
  '\\^',
  BREAK,
  `${SPACE}${HYPHEN}`,
  `${HYPHEN}${SPACE}`,
].map((joiner) => new RegExp(joiner, 'iy'));

/** The end of the digits that start at `offset`: where a reader goes on when they are no number. */
export function skipDigits(text: string, offset: number): number {
  let end = offset;
  while (isDigit(text[end])) end++;
  return end;
}

/** The numeral in digits or fraction characters that starts exactly at `offset`. */
export function readNumeral(text: string, offset: number): Numeral | undefined {
  if (!isDigit(text[offset])) return readPointed(text, offset) ?? readPureFraction(text, offset);
  if (isDigit(text[offset - 1])) return undefined;
  const integer = matchAt(INTEGER, text, offset)?.[0] ?? '';
  const digits = integer.replaceAll(',', '');
  if (digits.length > MOST_DIGITS) return undefined;
  const whole: Whole = {
    start: offset,
    end: offset + integer.length,
    value: BigInt(digits),
    grouped: integer.includes(','),
  };
  return (
    (whole.grouped ? undefined : readPureFraction(text, offset)) ??
    readMixed(text, whole) ??
    readDecimal(text, whole) ??
    readInteger(text, whole)
  );
}

interface Whole {
  readonly start: number;
  readonly end: number;
  readonly value: bigint;
  readonly grouped: boolean;
}

/** `¾`, `3/4`, and `31/2` with the space that got lost as its other reading. */
function readPureFraction(text: string, offset: number): Numeral | undefined {
  const written = readFraction(text, offset);
  if (!written) return undefined;
  const { numerator, denominator, style, end } = written;
  const value = rational(numerator, denominator);
  const numeral = finish(text, offset, end, value, { form: 'fraction', fraction: style }, true);
  if (isProper(written)) return numeral;
  const lost = splitLostSpace(written);
  if (lost) {
    const mixed = rational(lost.whole).add(rational(lost.numerator, lost.denominator));
    const joined: NumeralStyle = { form: 'mixed', joiner: '', fraction: style, grouped: false };
    return { ...numeral, alternative: [finish(text, offset, end, mixed, joined, true)] };
  }
  if (style.slash !== '/') return numeral;
  // `5/4 yd` is a fraction, `80/12` are two labels: the denominator and a unit mark tell.
  const marked = readMark(text, end, { fractional: true, words: false }) !== undefined;
  return marked && [2n, 3n, 4n, 8n, 16n].includes(denominator) ? numeral : undefined;
}

/** `2-1/4`, `2 1/4`, `5 & 1/2`, `2½`, `6.1/4`, `2 and a half`. */
function readMixed(text: string, whole: Whole): Numeral | undefined {
  if (isPartOfDecimal(text, whole.start)) return undefined;
  for (const expression of JOINERS) {
    const joiner = matchAt(expression, text, whole.end)?.[0];
    if (joiner === undefined) continue;
    const start = whole.end + joiner.length;
    if (joiner === '' && isDigit(text[start])) continue;
    const written = readFraction(text, start);
    if (!written || !isProper(written)) continue;
    return mixedNumeral(text, whole, joiner, start, written);
  }
  const tail = readFractionTail(text, whole.end);
  if (!tail) return undefined;
  const joiner = matchAt(/\s+and\s+/iy, text, whole.end)?.[0] ?? ' and ';
  const value = tail.value.add(rational(whole.value));
  const fraction = { kind: 'words', slash: '/' } as const;
  return finish(
    text,
    whole.start,
    tail.end,
    value,
    { form: 'mixed', joiner, fraction, grouped: whole.grouped },
    true,
  );
}

function mixedNumeral(
  text: string,
  whole: Whole,
  joiner: string,
  start: number,
  written: FractionText,
): Numeral {
  const { end, style, numerator, denominator } = written;
  const part = rational(numerator, denominator);
  const mixed: NumeralStyle = { form: 'mixed', joiner, fraction: style, grouped: whole.grouped };
  const numeral = finish(text, whole.start, end, part.add(rational(whole.value)), mixed, true);
  if (!written.damaged && !mayBeCountAndSize(text, joiner, style.kind, end)) return numeral;
  const count = integerNumeral(text, whole);
  return {
    ...numeral,
    alternative: [count, finish(text, start, end, part, { form: 'fraction', fraction: style }, true)],
  };
}

const NEVER_SPLIT = /^(?:|\.|\s*&\s*)$/;
const LONG_OR_WIDE = new RegExp(`${HYPHEN}(?:long|wide|deep|yard|inch)`, 'iy');
const HEAD = 40;

/**
 * Whether the whole number may be a count and the fraction a size of its own: `2-7/8×30" strips`,
 * `9-3/4"-long ribbons`, `2 ¾" strips`, and every joiner that is a slip.
 */
function mayBeCountAndSize(text: string, joiner: string, kind: string, end: number): boolean {
  if (NEVER_SPLIT.test(joiner)) return false;
  if (joiner.length === 1 && joiner !== '^' && joiner.trim() !== '') {
    const mark = readMark(text.slice(end, end + HEAD), 0, { fractional: true, words: false });
    const next = end + (mark?.end ?? 0);
    const by = bySignAt(text, text[next] === ' ' ? next + 1 : next) > 0;
    return by || (mark?.unit === 'in' && matchAt(LONG_OR_WIDE, text, next) !== undefined);
  }
  return joiner.trim() !== '' || kind === 'glyph';
}

function readDecimal(text: string, whole: Whole): Numeral | undefined {
  if (isPartOfDecimal(text, whole.start)) return undefined;
  const point = matchAt(DECIMALS, text, whole.end);
  if (point) return decimalNumeral(text, whole, '.', point[1] ?? '', true);
  const comma = whole.grouped ? undefined : matchAt(DECIMAL_COMMA, text, whole.end);
  if (!comma) return undefined;
  const end = whole.end + comma[0].length;
  const unit = readMark(text, end, { fractional: true, words: false })?.unit;
  return unit && isMetric(unit) ? decimalNumeral(text, whole, ',', comma[1] ?? '', true) : undefined;
}

/** `.5`, where nothing that a point could belong to stands before it. */
function readPointed(text: string, offset: number): Numeral | undefined {
  if (!matchAt(LEADING_POINT, text, offset)) return undefined;
  const before = text[offset - 1];
  if (isDigit(before) || before === '.' || (isLetter(before) && !isBySignBefore(text, offset - 1)))
    return undefined;
  const digits = matchAt(DECIMALS, text, offset)?.[1] ?? '';
  return decimalNumeral(text, { start: offset, end: offset, value: 0n, grouped: false }, '.', digits, false);
}

function decimalNumeral(
  text: string,
  whole: Whole,
  point: '.' | ',',
  digits: string,
  leadingZero: boolean,
): Numeral | undefined {
  const end = whole.end + 1 + digits.length;
  if (digits.length + String(whole.value).length > MOST_DIGITS) return undefined;
  if (text[end] === '.' && isDigit(text[end + 1])) return undefined; // 1.2.3 is a version or a date
  const value = rational(whole.value).add(rational(BigInt(digits), 10n ** BigInt(digits.length)));
  const { grouped } = whole;
  const padded = digits.endsWith('0');
  const style: NumeralStyle = { form: 'decimal', point, places: digits.length, leadingZero, padded, grouped };
  return finish(text, whole.start, end, value, style, true);
}

function readInteger(text: string, whole: Whole): Numeral {
  const { start, end, value } = whole;
  const dozen = readDozen(text, end);
  if (dozen !== undefined) {
    return finish(text, start, dozen, rational(value * 12n), {
      form: 'integer',
      grouped: whole.grouped,
      dozen: true,
    });
  }
  const numeral = integerNumeral(text, whole);
  const alternative = asDecimalComma(text, whole) ?? acrossDash(text, whole);
  return alternative ? { ...numeral, alternative: [alternative] } : numeral;
}

/** `1,200 m`: with a metric unit the comma may be a decimal one. */
function asDecimalComma(text: string, whole: Whole): Numeral | undefined {
  const parts = text.slice(whole.start, whole.end).split(',');
  if (!whole.grouped || parts.length !== 2) return undefined;
  const unit = readMark(text, whole.end, { fractional: true, words: false })?.unit;
  if (!unit || !isMetric(unit)) return undefined;
  const first = parts[0] ?? '';
  const head = { start: whole.start, end: whole.start + first.length, value: BigInt(first), grouped: false };
  return decimalNumeral(text, head, ',', parts[1] ?? '', true);
}

/** `6--3/4"` is six of 3/4 in; with a slipped hyphen it is 6 3/4 in. */
function acrossDash(text: string, whole: Whole): Numeral | undefined {
  const dash = matchAt(TIGHT_LONG_DASH, text, whole.end)?.[0];
  if (dash === undefined) return undefined;
  const start = whole.end + dash.length;
  const written = readFraction(text, start);
  if (!written || !isProper(written)) return undefined;
  const style: NumeralStyle = { form: 'mixed', joiner: '-', fraction: written.style, grouped: whole.grouped };
  const value = rational(whole.value).add(rational(written.numerator, written.denominator));
  return finish(text, whole.start, written.end, value, style, true);
}

function integerNumeral(text: string, whole: Whole): Numeral {
  const style: NumeralStyle = { form: 'integer', grouped: whole.grouped, dozen: false };
  const numeral = finish(text, whole.start, whole.end, rational(whole.value), style);
  return isPartOfDecimal(text, whole.start) || startsVersion(text, whole)
    ? { ...numeral, weak: true }
    : numeral;
}

/** Behind a digit and a point: a later part of `1.2.3`. */
function isPartOfDecimal(text: string, offset: number): boolean {
  return text[offset - 1] === '.' && isDigit(text[offset - 2]);
}

function startsVersion(text: string, whole: Whole): boolean {
  return text[whole.end] === '.' && isDigit(text[whole.end + 1]);
}

/** Adds the ordinal suffix, and tells whether letters touch the numeral: `B2`, `3D`, `9-patch`. */
function finish(
  text: string,
  start: number,
  numeralEnd: number,
  value: Rational,
  style: NumeralStyle,
  fractional = false,
): Numeral {
  const ordinal = matchAt(ORDINAL, text, numeralEnd)?.[0] ?? '';
  const end = numeralEnd + ordinal.length;
  const touched = isLetter(text[start - 1]) && !isBySignBefore(text, start - 1);
  const touches = ordinal === '' && isLetter(text[end]) && bySignAt(text, end) === 0;
  const weak = touched || touches || matchAt(HYPHEN_LETTER, text, end) !== undefined;
  return { start, end, value, style, weak, ordinal, fractional };
}
