/**
 * Finds the numbers in a text, each with its unit mark.
 *
 * One pass from left to right; every look ahead is bounded by the number itself and the spaces around it, so
 * that the time grows with the length of the text and no faster.
 */
import { isLetter } from './characters.ts';
import { readMark } from './marks.ts';
import type { NumberText } from './notation.ts';
import { type Numeral, readNumeral, skipDigits } from './numerals.ts';
import { closingQuotes } from './quotations.ts';
import { readWords } from './words.ts';

/** The number that starts exactly at `offset`, or `undefined` when none does. */
export function readNumberAt(text: string, offset: number): NumberText | undefined {
  return numberAt(text, offset, closingQuotes(text));
}

/** Every number in the text, in order; none overlaps another. */
export function findNumbers(text: string): NumberText[] {
  const quotes = closingQuotes(text);
  const numbers: NumberText[] = [];
  let offset = nextStart(text, 0);
  while (offset < text.length) {
    const number = numberAt(text, offset, quotes);
    if (number) numbers.push(number);
    offset = nextStart(text, number?.end ?? pastToken(text, offset));
  }
  return numbers;
}

/** Digits, fraction characters, small digits, a point before digits, and the letters that number words begin with. */
const START = /[0-9¼-¾⅐-⅟↉⁰¹²³⁴-⁹]|\.(?=[0-9])|[A-Za-z]/g;
const WORD = /[\p{L}\p{M}_]+/uy;

function nextStart(text: string, offset: number): number {
  START.lastIndex = offset;
  return START.exec(text)?.index ?? text.length;
}

/** Past what stands at `offset` and is no number. */
function pastToken(text: string, offset: number): number {
  WORD.lastIndex = offset;
  const word = WORD.exec(text)?.[0].length ?? 0;
  return Math.max(offset + 1, offset + word, skipDigits(text, offset));
}

function numberAt(text: string, offset: number, quotes: ReadonlySet<number>): NumberText | undefined {
  const numeral = readNumeral(text, offset) ?? readSpelled(text, offset);
  return numeral && withMark(text, numeral, quotes);
}

function readSpelled(text: string, offset: number): Numeral | undefined {
  const before = text[offset - 1];
  if (isLetter(before) || (before !== undefined && before >= '0' && before <= '9')) return undefined;
  const words = readWords(text, offset);
  if (!words) return undefined;
  const { end, value, style, weak, fractional } = words;
  const numeral: Numeral = { start: offset, end, value, style, weak, fractional, ordinal: '' };
  if (!words.first) return numeral;
  const joined: Numeral = { ...numeral, end: words.first.end, value: words.first.value, weak: false };
  return { ...numeral, alternative: [joined] };
}

function withMark(text: string, numeral: Numeral, quotes: ReadonlySet<number>): NumberText {
  const { start, end, value, ordinal, fractional, style, weak } = numeral;
  const read = readMark(text, end, {
    fractional: fractional || value.d !== 1n,
    words: style.form === 'words',
  });
  const mark = read && ordinal !== '' && value.d === 1n ? undefined : read;
  const bare: NumberText = {
    start,
    end,
    numeralEnd: end,
    value,
    unit: undefined,
    notation: { numeral: style, gap: '', mark: '', ordinal },
    weak,
    ambiguous: false,
    alternative: undefined,
  };
  const marked: NumberText | undefined = mark && {
    ...bare,
    end: mark.end,
    unit: mark.unit,
    notation: { ...bare.notation, gap: mark.gap, mark: mark.mark },
    weak: weak && ordinal === '' && !mark.gap.endsWith('-') && mark.gap !== '' ? weak : false,
  };
  const other = numeral.alternative?.map((each) => withMark(text, each, quotes));
  if (marked && mark && quotes.has(mark.end - mark.mark.length)) return choose(bare, [marked]);
  if (marked && mark?.doubt)
    return mark.mark.startsWith('in') ? choose(bare, [marked]) : choose(marked, [bare]);
  return choose(marked ?? bare, other);
}

function choose(number: NumberText, alternative: readonly NumberText[] | undefined): NumberText {
  return alternative ? { ...number, ambiguous: true, alternative } : number;
}
