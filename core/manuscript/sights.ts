/** Questions about a number and its surroundings that a pattern of characters alone cannot answer. */
import type { NumberText } from '../quantity/notation.ts';
import { isInteger } from '../quantity/rational.ts';
import { isPluralNoun, nounBehind } from './nearby.ts';
import type { Sight } from './recognisers.ts';

/** A whole number without a unit, in digits or words, between two bounds. */
export function isBareInteger({ value, unit }: NumberText, least: number, greatest: number): boolean {
  return unit === undefined && isInteger(value) && value.compare(least) >= 0 && value.compare(greatest) <= 0;
}

export function isCardinal({ value }: NumberText): boolean {
  return isInteger(value);
}

/** Whether a plural that pieces are called by follows: 8 blocks, 4 dark strips. */
export function countsPieces(text: string, end: number): boolean {
  return isPluralNoun(nounBehind(text, end));
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
export function isYear({ number, text, before }: Sight): boolean {
  if (!isBareInteger(number, 1900, 2099) || number.end - number.start !== 4) return false;
  return nounBehind(text, number.end) === undefined && !/\b(?:cut|make|sew|need|of)\s$/i.test(before);
}

/** Letters touch the number, and they are no noun that it counts: `B2`, `12G`; but not `18strips`. */
export function isGlued({ number, text, before, behind }: Sight): boolean {
  if (number.notation.numeral.form === 'words' || number.unit !== undefined || !number.weak) return false;
  const touched = /[\p{L}_]$/u.test(before);
  return touched || (/^[\p{L}_]/u.test(behind) && nounBehind(text, number.end) === undefined);
}

const LOOSE = /^(?:one|another|both)$/i;
/** "Cut one from the plum", "make one": the verb makes it a count. */
const COUNTING = /\b(?:cut|make|need|add|use|keep|sew)\s$/i;
/** One of these is a place, not a piece. */
const PLACES = /^(?:side|corner|edge|end|half|layer|length|width|direction|row|time)s?$/;

/** "one another", "one side", "both ends": a word of the language rather than a count. */
export function isOrdinaryWord({ number, text, before, behind }: Sight): boolean {
  if (!number.weak || !LOOSE.test(text.slice(number.start, number.end))) return false;
  if (!/^one$/i.test(text.slice(number.start, number.end))) return true;
  if (/^\s\(?\d|^\s(?:more|each)\b/.test(behind)) return false;
  const noun = nounBehind(text, number.end);
  if (noun !== undefined)
    return PLACES.test(noun) || /\b(?:the|this|that|each|every|no|any)\s$/i.test(before);
  return !COUNTING.test(before);
}
