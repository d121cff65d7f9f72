/** What became of the numbers of an earlier text: which still stand, which changed, and which are new or gone. */
import { type Alignment, align, type Found } from '../proof/earlier/align.ts';
import type { KeptLine, KeptNumber } from '../proof/earlier/keptLine.ts';
import { readNumberAt } from '../quantity/read.ts';
import { toInches } from '../quantity/units.ts';

type Pair<A extends KeptLine, B extends KeptLine> = Alignment<A, B>['pairs'][number];

export interface Comparison<A extends KeptLine, B extends KeptLine> {
  /** In the reading order of the later text; so are the other lists, but `removed` in that of the earlier one. */
  readonly same: readonly Pair<A, B>[];
  readonly changed: readonly Pair<A, B>[];
  readonly added: readonly Found<B>[];
  readonly removed: readonly Found<A>[];
}

/** Numbers that measure nothing, such as those of pages and steps, are left out. */
export function compareNumbers<A extends KeptLine, B extends KeptLine>(
  before: readonly A[],
  after: readonly B[],
): Comparison<A, B> {
  const { pairs, added, removed } = align(before, after);
  const measured = pairs.filter((pair) => measures(pair.before.number) || measures(pair.after.number));
  return {
    same: measured.filter(isSame),
    changed: measured.filter((pair) => !isSame(pair)),
    added: added.filter(({ number }) => measures(number)),
    removed: removed.filter(({ number }) => measures(number)),
  };
}

export function textOf({ line, number }: Found<KeptLine>): string {
  return line.text.slice(number.start, number.end);
}

function measures({ account }: KeptNumber): boolean {
  return account !== 'not-measurement';
}

/** However it is written: “seven” is 7, and 1½ yd is 54". */
function isSame({ before, after }: Pair<KeptLine, KeptLine>): boolean {
  if (textOf(before) === textOf(after)) return true;
  const [a, b] = [before, after].map(({ line, number }) => readNumberAt(line.text, number.start));
  if (!a || !b) return false;
  // A unit may be shared with the number beside it, so that its own text has none.
  return a.unit && b.unit
    ? toInches(a.value, a.unit).equals(toInches(b.value, b.unit))
    : a.value.equals(b.value);
}
