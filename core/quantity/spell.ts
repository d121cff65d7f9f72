/** Numbers spelled out in words. */
import { PARTS, TENS, UNDER_TWENTY } from './lexicon.ts';
import type { LetterCase } from './notation.ts';
import { type Rational, rational } from './rational.ts';

export interface WordsStyle {
  readonly letterCase: LetterCase;
  readonly hundredAnd: boolean;
  readonly dozen: boolean;
}

/** A value in words, as in "one hundred and twenty"; `undefined` above 999 and for parts without a word. */
export function writeWords(value: Rational, style: WordsStyle): string | undefined {
  const words = plainWords(value, style);
  if (words === undefined) return undefined;
  if (style.letterCase === 'upper') return words.toUpperCase();
  return style.letterCase === 'capital' ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}

function plainWords(value: Rational, style: WordsStyle): string | undefined {
  const whole = value.n / value.d;
  if (value.s < 0n || whole > 999n) return undefined;
  const [count, rest] = [Number(whole), value.sub(rational(whole))];
  if (rest.n === 0n) {
    if (style.dozen && count > 0 && count % 12 === 0)
      return count === 12 ? 'a dozen' : `${small(count / 12)} dozen`;
    return cardinalWords(count, style.hundredAnd);
  }
  const part = fractionWords(rest);
  if (part === undefined) return undefined;
  if (count === 0) return part;
  return `${cardinalWords(count, style.hundredAnd)} and ${rest.n === 1n ? part.replace(/^(?:one-)?/, 'a ') : part}`;
}

/** "half", "one-quarter", "three-eighths". */
export function fractionWords(value: Rational): string | undefined {
  const part = PARTS.find(([denominator]) => BigInt(denominator) === value.d);
  if (!part || value.n >= value.d) return undefined;
  const [denominator, one, many] = part;
  if (denominator === 2) return one;
  return `${small(Number(value.n))}-${value.n === 1n ? one : many}`;
}

function cardinalWords(count: number, hundredAnd: boolean): string {
  if (count < 100) return small(count);
  const rest = count % 100;
  const hundred = `${small(Math.floor(count / 100))} hundred`;
  if (rest === 0) return hundred;
  return `${hundred}${hundredAnd ? ' and ' : ' '}${small(rest)}`;
}

function small(count: number): string {
  if (count < 20) return UNDER_TWENTY[count] ?? '';
  const [tens, ones] = [TENS[Math.floor(count / 10)] ?? '', count % 10];
  return ones === 0 ? tens : `${tens}-${UNDER_TWENTY[ones] ?? ''}`;
}
