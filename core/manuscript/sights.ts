/** Questions about a number and its surroundings that a pattern of characters alone cannot answer. */
import type { NumberText } from '../quantity/notation.ts';
import { TRADE_NOUNS } from '../quantity/nouns.ts';
import { isInteger } from '../quantity/rational.ts';
import { nounBehind, STOPS, textBehind } from './nearby.ts';
import type { Sight } from './recognisers.ts';

/** A whole number without a unit, in digits or words, between two bounds. */
export function isBareInteger({ value, unit }: NumberText, least: number, greatest: number): boolean {
  return unit === undefined && isInteger(value) && value.compare(least) >= 0 && value.compare(greatest) <= 0;
}

export function isCardinal({ value }: NumberText): boolean {
  return isInteger(value);
}

/** Plurals of what is counted in patterns, beside the nouns whose number we can change. */
const MORE_PIECES = new Set(
  'geese rounds hourglasses pinwheels logs rails bells birds leaves petals flowers hearts scallops appliques shapes papers charms scraps colours colors tabs loops ties buttons squares blocks'.split(
    ' ',
  ),
);
const WORD = /^[\s)-]*([\p{L}][\p{L}'’]*)/u;

/** The words by which the trade calls pieces, within four words behind the number, each with how many came before. */
export function nounsBehind(text: string, end: number): { readonly word: string; readonly at: number }[] {
  const nouns: { word: string; at: number }[] = [];
  let rest = textBehind(text, end).replace(/^["”″]/, '');
  for (let at = 0; at < 4; at++) {
    const match = WORD.exec(rest);
    const word = match?.[1]?.toLowerCase();
    if (!match || word === undefined || STOPS.has(word)) break;
    const isNoun = TRADE_NOUNS.has(word) || MORE_PIECES.has(word);
    if (nouns.length > 0 && !isNoun) break;
    if (isNoun) nouns.push({ word, at });
    rest = rest.slice(match[0].length);
  }
  return nouns;
}

/** Whether a plural that pieces are called by follows: 8 blocks, 4 dark strips, 6 corner squares. */
export function countsPieces(text: string, end: number): boolean {
  return nounsBehind(text, end).some(
    ({ word }) => MORE_PIECES.has(word) || TRADE_NOUNS.get(word)?.many.toLowerCase() === word,
  );
}

/** Right behind the number it is said along what it measures: `36 x 48`, `4 wide`. */
export function measuresBehind({ behind }: Sight): boolean {
  return /^\s?(?:["”″]|[x×X*]\s?[\d½¼¾]|by\s\d|(?:wide|long|deep|tall|high|square|apart|finished|unfinished)\b)/.test(
    behind,
  );
}

/** "in the figure 3 strips meet": the word before the number stands in a sentence, and the number counts. */
export function isTold({ number, text, before }: Sight): boolean {
  return (
    /\b(?:the|this|that|each|every|a|my|your|these)\s\p{L}+\s$/iu.test(before) &&
    countsPieces(text, number.end)
  );
}

/** A time with its minutes, and none that lengths have: `9.30`. */
export function isClock({ unit, value, notation: { numeral } }: NumberText): boolean {
  if (unit !== undefined || numeral.form !== 'decimal' || numeral.places !== 2) return false;
  const minutes = Number((value.n * 100n) / value.d) % 100;
  return value.compare(24) < 0 && [0, 15, 30, 45].includes(minutes);
}

const FARTHEST = 24;

/** The run of digits, points, slashes and hyphens that the number is part of: `6/14/19`, `555-0142`. */
export function runAround(text: string, number: NumberText): string {
  const { start, numeralEnd } = number;
  const before = /[\d./+-]*$/.exec(text.slice(Math.max(0, start - FARTHEST), start))?.[0] ?? '';
  return before + text.slice(start, numeralEnd) + runBehind(text, number);
}

/** What of that run comes behind the number, without a stop at its end. */
export function runBehind(text: string, { numeralEnd }: NumberText): string {
  const run = /^[\d./-]*/.exec(text.slice(numeralEnd, numeralEnd + FARTHEST))?.[0] ?? '';
  return run.replace(/[./-]+$/, '');
}

/** Four digits without a comma that nothing counts with. */
export function isYear({ number, text, before, behind }: Sight): boolean {
  if (!isBareInteger(number, 1900, 2099) || number.end - number.start !== 4) return false;
  if (/\b(?:spring|summer|autumn|fall|winter)\s$/i.test(before)) return true;
  if (/^\s?[-–—x×]?\s?\(?[\d½¼¾]+[\d\s./½¼¾⅛⅜⅝⅞-]*["”″]/.test(behind)) return false;
  return (
    nounBehind(text, number.end) === undefined &&
    !/\b(?:cut|make|sew|need|of|total|yields?|gives?)\s$/i.test(before)
  );
}

/** What authors glue to a count: 4pcs, 2ea, 6x. */
const GLUED_COUNT = /^(?:x|pcs?|ea|sqs?|rects?)\b/i;

/** Letters touch the number, and they are no noun that it counts: `B2`, `12G`; but not `18strips`. */
export function isGlued({ number, text, before, behind }: Sight): boolean {
  if (number.notation.numeral.form === 'words' || number.unit !== undefined || !number.weak) return false;
  if (/[\p{L}_]$/u.test(before)) return true;
  return /^[\p{L}_]/u.test(behind) && !GLUED_COUNT.test(behind) && nounBehind(text, number.end) === undefined;
}

const LOOSE = /^(?:one|another|both)$/i;
/** "Cut one from the plum", "make one": the verb makes it a count. */
const COUNTING = /\b(?:cut|make|need|use|keep|sew|join|take|add)\s$/i;
/** "Cut another square", "join both panels". */
const COUNTING_MORE = /\b(?:cut|make|need|use|sew|join|take)\s$/i;
/** One of these is a place, not a piece. */
const PLACES = /^(?:side|corner|edge|end|half|halve|direction|time|way)s?$/;
/** Behind these, or in the hands of these verbs, "one" only points at a piece. */
const POINTING =
  /\b(?:the|this|that|each|every|no|any|in|on|for|of|at|by|to|onto|over|per|between|inside|through|across|than|against|under|beside|if|when|once|until|press|turn|fold|flip|rotate|iron|open)\s$/i;
/** "From one strip, cut …" opens a cutting list; "sew a binding from one square" only tells. */
const FROM = /(?:^|[.:;]\s|\n)\s*From\s$/;

/** "one another", "one side", "both ends": a word of the language rather than a count. */
export function isOrdinaryWord({ number, text, before, behind }: Sight): boolean {
  const word = text.slice(number.start, number.end).toLowerCase();
  if (!number.weak || !LOOSE.test(word)) return false;
  const nouns = nounsBehind(text, number.end);
  const noun = nouns.at(-1)?.word;
  const isPlace = noun !== undefined && PLACES.test(noun);
  if (word !== 'one') return noun === undefined || isPlace || !COUNTING_MORE.test(before);
  if (/^\s\(?\d|^\s(?:more(?!\s(?:thing|look|tip|word))|each)\b/.test(behind)) return false;
  if (noun === undefined) return !COUNTING.test(before);
  if (isPlace || POINTING.test(before)) return true;
  return /\bfrom\s$/i.test(before) && !FROM.test(before);
}
