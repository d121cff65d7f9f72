/** What explains a number that differs from the figure that its words speak of: then it is not called wrong. */
import type { Pattern } from '../../block/pattern.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import type { ReadPhrase } from '../../reading/readPhrases.ts';
import { amountOf, judge } from '../judge.ts';
import type { Tie } from '../proof.ts';
import { HOUSE, type Settled, tieOf, USABLE_WIDTH } from './settled.ts';

/** So well must the words of another reading fit at least, by themselves and beside the best. */
const HEARD = 1.5;
const SHARE = 0.5;
/** A wrong number that another reading comes so near to is not told which of the two it is. */
const CLOSE = 0.75;
/** Of a thing that the words speak of so much less than of another, no number is called wrong. */
const RIVAL = 1.5;
/** So much says another number of the phrase that is the thing's very own. */
const BESIDE_IT = 2;
/** Words that leave no doubt what is measured. */
const CLEAR = 6;
/** The finished size of a unit. */
const PIECED = /^unit\..* finished$/;

/** Whether the words speak of something else so much more, whatever its number, and no number beside it tells. */
export function isOvershadowed(
  number: ReadNumber,
  { candidate, ties }: Settled,
  phrase: ReadPhrase,
): boolean {
  const isTold = ties.some((each) => each.number !== number && each.told >= BESIDE_IT);
  const most = isTold ? 2 * RIVAL : RIVAL;
  return phrase.candidates.some(
    ({ isWeak, said, readings }) =>
      !isWeak &&
      said - most > candidate.said &&
      readings.some(({ side }) => [...side.spots, ...side.twins].some((spot) => spot.number === number)),
  );
}

/** So much more than needed is likelier another thing's number, or cut in another way, where nothing beside it agrees. */
export function isSpare(number: ReadNumber, settled: Settled, { house }: Pattern): boolean {
  const own = tieOf(settled, number);
  if (!own || settled.ties.some((each) => each !== own && each.agrees)) return false;
  const { figure, value } = own.tie;
  const amount = amountOf(number, figure.kind, house);
  // Half as much again may be a mistake where the words are clear; twice as much is another thing's number.
  if (settled.candidate.said >= CLEAR && amount && amount.compare(value.shown.mul(3n, 2n)) <= 0) return false;
  return judge(number, figure, value, house) === 'generous';
}

/** Whether it counts several things together that are alike in all else: squares of one size for two units. */
export function isSum(
  number: ReadNumber,
  best: Settled,
  all: readonly Settled[],
  { house }: Pattern,
): boolean {
  if (!best.ties.some(({ isExact }) => isExact)) return false;
  const like = all.flatMap((other) => {
    const own = tieOf(other, number)?.tie;
    const isLike = best.ties.every((each) => !each.isExact || tieOf(other, each.number)?.isExact);
    return own?.figure.id.endsWith('.count') && isLike ? [own] : [];
  });
  const values = like
    .filter(({ figure }, index) => like.findIndex((one) => one.figure === figure) === index)
    .map(({ value }) => value.shown);
  const amount = amountOf(number, 'count', house);
  return values.some((a, i) => values.slice(i + 1).some((b) => amount?.equals(a.add(b))));
}

/** Whether another reading explains the numbers of the phrase as they stand, or one that differs comes as near. */
export function hasAlibi(number: ReadNumber, best: Settled, all: readonly Settled[]): boolean {
  const tied = tieOf(best, number)?.tie;
  return all.some((other) => {
    const own = tieOf(other, number);
    if (!own || !tied || isSameValue(own.tie, tied)) return false;
    if (!own.agrees)
      return (
        !own.tie.value.shown.equals(tied.value.shown) &&
        !other.candidate.isWeak &&
        best.total - other.total < CLOSE
      );
    if (other.candidate.said < Math.max(HEARD, best.candidate.said * SHARE)) return false;
    // What is sewn together is measured as it lies there, if nothing else is said.
    if (other.candidate.isWeak && PIECED.test(other.candidate.thing.key)) return false;
    // That strips reach across the fabric is said in passing, and explains no other length.
    const isPassing = own.tie.figure.id === USABLE_WIDTH && other.candidate.thing.topic !== HOUSE;
    if (isPassing && !other.ties.some((each) => each !== own && each.isExact)) return false;
    return best.ties.every((each) => tieOf(other, each.number)?.isExact);
  });
}

export function isSameValue(a: Tie, b: Tie): boolean {
  return a.figure === b.figure || (a.value.shown.equals(b.value.shown) && a.figure.rule === b.figure.rule);
}
