import type { Range } from '../findings/finding.ts';

/** From the first to the last character of a number, which emphasis may split. */
export function placeOf({ ranges }: { readonly ranges: readonly Range[] }): Range {
  return {
    start: Math.min(...ranges.map(({ start }) => start)),
    end: Math.max(...ranges.map(({ end }) => end)),
  };
}
