/**
 * Numbers that do not say what they seem to say, so that a difference proves nothing: about 8 in, 2 to 3 yards,
 * 5 ft 6 in. Such a number may be verified, but it is never called wrong, and nothing is offered to change it.
 */
import type { ReadNumber } from '../manuscript/manuscript.ts';

const HEDGE =
  /(?:\b(?:about|around|approx(?:imately)?|roughly|nearly|almost|circa|some|up to|less than|more than|under|over|between)\b\.?|[~≈±])\s*$/i;
const RANGE_BEFORE = /\d["”″]?\s*(?:-|–|—|\bto\b|\bor\b)\s*$/i;
const RANGE_BEHIND = /^\s*(?:–|—|-|to\b|or\b)\s*\d/i;
/** A length in a larger unit right before: the `5 ft` of `5 ft 6 in`. */
const LARGER_BEFORE = /\d\s*(?:ft\b\.?|feet|foot|['’′]|yds?\b\.?|yards?|m)\s*(?:and|\+|,)?\s*$/i;
/** A smaller one right behind: the `6 in` of `5 ft 6 in`. */
const SMALLER_BEHIND = /^\s*(?:and|\+)?\s*\d[\d\s./½¼¾⅛⅜⅝⅞⅓⅔-]*(?:["”″]|''|in\b|inch|cm\b)/i;

/** How much text around a number is looked at. */
const NEARBY = 24;

/** @param isList whether the numbers beside it are tied too, one for each size: `5"/7"` is then no range. */
export function isReserved({ passage, written, group, unit }: ReadNumber, isList: boolean): boolean {
  const before = passage.text.slice(Math.max(0, written.start - NEARBY), written.start);
  const behind = passage.text.slice(written.end, written.end + NEARBY);
  if ((group?.kind === 'range' && !isList) || HEDGE.test(before)) return true;
  if (RANGE_BEFORE.test(before) || RANGE_BEHIND.test(behind)) return true;
  if ((unit === 'in' || unit === 'cm' || unit === 'mm') && LARGER_BEFORE.test(before)) return true;
  return (unit === 'ft' || unit === 'yd' || unit === 'm') && SMALLER_BEHIND.test(behind);
}
