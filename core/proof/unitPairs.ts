/** One length told in both systems of units: 12½in (32cm), 70cm or ¾ yard, both sides of 12in x 18in (30cm x 46cm). */
import type { Passage, ReadNumber } from '../manuscript/manuscript.ts';
import { isMetric } from '../quantity/units.ts';

/** A length, or the two sides of a size, and the same again behind it in the other system. */
export interface UnitPair {
  readonly first: readonly [ReadNumber, ...ReadNumber[]];
  readonly second: readonly [ReadNumber, ...ReadNumber[]];
}

const BETWEEN = /^\s*(?:\(|\/|or|=)\s*$/;
const BY = /^\s*(?:[x×X]|by)\s*$/;
const CLOSED = /^\s*(?:wide|long|square|each)?\s*\)/;

export function unitPairs({ numbers, text }: Pick<Passage, 'numbers' | 'text'>): UnitPair[] {
  const pairs: UnitPair[] = [];
  const gap = (at: number) => text.slice(numbers[at]?.written.end, numbers[at + 1]?.written.start);
  for (const [at, number] of numbers.entries()) {
    const next = numbers[at + 1];
    if (!next || !areMixed(number, next) || !BETWEEN.test(gap(at))) continue;
    const [before, behind] = [numbers[at - 1], numbers[at + 2]];
    const isSize =
      before !== undefined && behind !== undefined && BY.test(gap(at - 1)) && BY.test(gap(at + 1));
    const rest = text.slice((isSize ? behind : next).written.end);
    if (gap(at).includes('(') && !CLOSED.test(rest)) continue;
    if (isSize) {
      if (areMixed(before, next) && areMixed(number, behind))
        pairs.push({ first: [before, number], second: [next, behind] });
    } else if (at === 0 || !BY.test(gap(at - 1))) pairs.push({ first: [number], second: [next] });
  }
  return pairs;
}

function areMixed({ unit: one }: ReadNumber, { unit: other }: ReadNumber): boolean {
  return one !== undefined && other !== undefined && isMetric(one) !== isMetric(other);
}
