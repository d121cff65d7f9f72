/** Which number of a later text is which of an earlier one, whatever was moved, added or rewritten in between. */
import { alignNumbers } from './alignNumbers.ts';
import type { KeptLine, KeptNumber } from './keptLine.ts';
import { pairLines } from './pairLines.ts';

type NumberOf<L extends KeptLine> = L['numbers'][number];

export interface Found<L extends KeptLine> {
  readonly line: L;
  readonly number: NumberOf<L>;
}

export interface Alignment<A extends KeptLine, B extends KeptLine> {
  readonly pairs: readonly { readonly before: Found<A>; readonly after: Found<B> }[];
  /** Numbers that the earlier text has alone. */
  readonly removed: readonly Found<A>[];
  /** Numbers that the later text has alone. */
  readonly added: readonly Found<B>[];
}

/** All three lists are in the reading order of the text that they follow, pairs in that of the later one. */
export function align<A extends KeptLine, B extends KeptLine>(
  before: readonly A[],
  after: readonly B[],
): Alignment<A, B> {
  const lines = pairLines(before, after);
  const partners = new Map<KeptNumber, Found<A>>();
  for (const [earlier, later] of lines)
    for (const [one, other] of alignNumbers(earlier, later))
      partners.set(other, { line: earlier, number: one });
  const found = numbersOf(after).map((place) => ({ place, partner: partners.get(place.number) }));
  const taken = new Set<KeptNumber>([...partners.values()].map(({ number }) => number));
  return {
    pairs: found.flatMap(({ place, partner }) => (partner ? [{ before: partner, after: place }] : [])),
    removed: numbersOf(before).filter(({ number }) => !taken.has(number)),
    added: found.flatMap(({ place, partner }) => (partner ? [] : [place])),
  };
}

function numbersOf<L extends KeptLine>(lines: readonly L[]): Found<L>[] {
  return lines.flatMap((line) => line.numbers.map((number) => ({ line, number })));
}
