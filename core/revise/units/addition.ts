/** One length, or the two sides of a size, with what is written behind it. */
import type { Range } from '../../findings/finding.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';

export type Sides = readonly [ReadNumber, ...ReadNumber[]];

export interface Addition {
  readonly sides: Sides;
  /** In the source. */
  readonly at: number;
  readonly text: string;
}

/** From the first number to the end of the last, in the source. */
export function rangeOf({ sides }: Pick<Addition, 'sides'>): Range {
  const ends = sides.flatMap(({ ranges }) => ranges.map(({ end }) => end));
  return { start: sides[0].ranges[0].start, end: Math.max(...ends) };
}
