/** What a manuscript's author has switched off: stretches, and single numbers. */
import type { Range } from '../findings/finding.ts';
import type { NumberText } from '../quantity/notation.ts';
import type { Comment, TagComment } from './manuscript.ts';

/** From each `measure off` to the next `measure on`, or to the end of the source. */
export function offRanges(comments: readonly Comment[], endOfSource: number): Range[] {
  const ranges: Range[] = [];
  let since: number | undefined;
  for (const { meaning, start, end } of comments) {
    if (!('turn' in meaning)) continue;
    if (meaning.turn === 'off') since ??= end;
    else if (since !== undefined) {
      ranges.push({ start: since, end: start });
      since = undefined;
    }
  }
  if (since !== undefined) ranges.push({ start: since, end: endOfSource });
  return ranges;
}

/** The numbers that a `measure skip` stands behind: one for each, the nearest. */
export function skippedNumbers(
  numbers: readonly NumberText[],
  tags: readonly TagComment[],
): ReadonlySet<NumberText> {
  const skips = tags.filter(({ meaning }) => 'skip' in meaning);
  return new Set(skips.flatMap(({ at }) => numbers.findLast(({ end }) => end <= at) ?? []));
}

/** Whether a place lies in one of the ranges, which are in order and do not overlap. */
export function isOff(ranges: readonly Range[], offset: number): boolean {
  let [low, high] = [0, ranges.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ranges[middle]?.end ?? 0) <= offset) low = middle + 1;
    else high = middle;
  }
  const range = ranges[low];
  return range !== undefined && range.start <= offset;
}
