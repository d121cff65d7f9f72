/** Reads a whole text as one length, one count, or a width and a length: the values of a measure block. */
import { bySignAt } from './characters.ts';
import { findNumbers } from './find.ts';
import type { Notation, NumberText } from './notation.ts';
import { isInteger, type Rational, rational, ZERO } from './rational.ts';
import { type LengthUnit, toInches } from './units.ts';

export { findNumbers, readNumberAt } from './find.ts';

/** Why a text cannot be taken, in a sentence for its author. */
export interface Problem {
  readonly problem: string;
}

export interface ReadLength {
  readonly inches: Rational;
  /** As written, in `unit`. */
  readonly value: Rational;
  readonly unit: LengthUnit;
  readonly notation: Notation;
}

export interface ReadCount {
  /** A whole number, zero or more. */
  readonly value: Rational;
  readonly notation: Notation;
}

export interface ReadDimensions {
  readonly width: ReadLength;
  readonly length: ReadLength;
}

/** A thousand yards: nobody sews more, so a longer length is a slip. */
const LONGEST = rational(36_000);
/** No pattern counts more pieces. */
const GREATEST_COUNT = rational(1_000_000);
const FORMS = '2 1/4", 57 cm or 1 1/8 yd';

/** One length with its unit; zero only where `zero` allows it. */
export function readLength(text: string, options: { readonly zero?: boolean } = {}): ReadLength | Problem {
  const trimmed = text.trim();
  const refused = refuseSign(trimmed, 'A length');
  if (refused) return refused;
  const number = onlyNumber(trimmed);
  if (!number) return { problem: `${quoted(trimmed)} cannot be read as a length; write it as ${FORMS}.` };
  return lengthOf(number, number.unit, trimmed, options.zero ?? false);
}

export function readCount(text: string): ReadCount | Problem {
  const trimmed = text.trim();
  const refused = refuseSign(trimmed, 'A count');
  if (refused) return refused;
  const number = onlyNumber(trimmed);
  if (number?.notation.ordinal !== '') {
    return { problem: `${quoted(trimmed)} cannot be read as a count; write a whole number, such as 12.` };
  }
  if (number.unit)
    return { problem: `${quoted(trimmed)} is a length; a count is a whole number without a unit.` };
  const { value, notation } = number;
  const { form } = notation.numeral;
  if (!isInteger(value) || (form !== 'integer' && form !== 'words')) {
    return { problem: `A count is a whole number, and ${trimmed} is not one.` };
  }
  if (value.compare(GREATEST_COUNT) > 0)
    return { problem: `A count of ${trimmed} is too large to be meant.` };
  return { value, notation };
}

/** A width and a length, as in `36" x 48"` or `10 x 16"`, where the one mark is shared. */
export function readDimensions(text: string): ReadDimensions | Problem {
  const trimmed = text.trim();
  const refused = refuseSign(trimmed, 'A length');
  if (refused) return refused;
  const [first, second, third] = findNumbers(trimmed);
  const isPair =
    first?.start === 0 &&
    second?.end === trimmed.length &&
    !third &&
    isBySign(trimmed.slice(first.end, second.start));
  if (!first || !second || !isPair) {
    return { problem: `${quoted(trimmed)} cannot be read as a width and a length; write it as 36" x 48".` };
  }
  const width = lengthOf(first, first.unit ?? second.unit, trimmed, false);
  if ('problem' in width) return width;
  const length = lengthOf(second, second.unit ?? first.unit, trimmed, false);
  return 'problem' in length ? length : { width, length };
}

function isBySign(between: string): boolean {
  const sign = between.trim();
  return sign !== '' && bySignAt(sign, 0) === sign.length;
}

/** The number that is the whole of the text. */
function onlyNumber(text: string): NumberText | undefined {
  const [number, second] = findNumbers(text);
  return number && !second && number.start === 0 && number.end === text.length ? number : undefined;
}

function refuseSign(text: string, what: string): Problem | undefined {
  if (text === '') return { problem: `${what} is missing here.` };
  return /^[-\u2212\u2013]\s*[\d.]/.test(text)
    ? { problem: `${what} cannot be negative, as ${text} is.` }
    : undefined;
}

function lengthOf(
  number: NumberText,
  unit: LengthUnit | undefined,
  text: string,
  zero: boolean,
): ReadLength | Problem {
  const { value, notation } = number;
  const written = text.slice(number.start, number.end);
  if (!unit) {
    return {
      problem: `${written} has no unit; write ${written}" for inches, or ${written} cm.`,
    };
  }
  if (hasEqualAlternative(number)) {
    return {
      problem: `${written} can be read in two ways; put a space between the whole number and the fraction.`,
    };
  }
  if (notation.ordinal !== '' && isInteger(value)) return { problem: `${written} is not a length.` };
  const inches = toInches(value, unit);
  if (inches.equals(ZERO) && !zero)
    return { problem: `A length must be more than nothing, and ${written} is not.` };
  if (inches.compare(LONGEST) > 0)
    return { problem: `${written} is longer than 1,000 yards; check the number and its unit.` };
  return { inches, value, unit, notation };
}

/** Another reading of the same characters as one number: `31/2"` as 3 1/2". */
function hasEqualAlternative({ alternative, start, end, unit }: NumberText): boolean {
  const other = alternative?.[0];
  return (
    other !== undefined &&
    alternative?.length === 1 &&
    other.start === start &&
    other.end === end &&
    other.unit === unit
  );
}

function quoted(text: string): string {
  const shown = text.length > 40 ? `${text.slice(0, 40)}…` : text;
  return `“${shown}”`;
}
