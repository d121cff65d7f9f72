/** Which line of a later text is which of an earlier one. */
import type { KeptLine } from './keptLine.ts';
import { ANY, masked, tokensOf } from './tokens.ts';

/** Lines that share so much of their words are two versions of one line. */
const ALIKE = 0.6;
/** Under the same headings a line is likelier to be the same. */
const SAME_PLACE = 0.2;

interface Sketch<L extends KeptLine> {
  readonly line: L;
  /** Its headings and its own words, whatever the numbers. */
  readonly place: string;
  readonly sentence: string;
  readonly words: readonly string[];
  readonly order: number;
}

/**
 * First the lines whose words are the same under the same headings, then those that moved elsewhere, then those whose
 * words changed a little. Of several that are alike, equal ones belong together, and the others in their order.
 */
export function pairLines<A extends KeptLine, B extends KeptLine>(
  before: readonly A[],
  after: readonly B[],
): [A, B][] {
  const pairs: [A, B][] = [];
  let [earlier, later] = [before.map(sketch<A>), after.map(sketch<B>)];
  const take = (found: readonly (readonly [Sketch<A>, Sketch<B>])[]) => {
    pairs.push(...found.map(([one, other]): [A, B] => [one.line, other.line]));
    const taken = new Set<unknown>(found.flat());
    earlier = earlier.filter((one) => !taken.has(one));
    later = later.filter((one) => !taken.has(one));
  };
  take(alike(earlier, later, ({ place, sentence }) => `${place}\n${sentence}`));
  take(alike(earlier, later, ({ sentence }) => sentence));
  take(similar(earlier, later));
  return pairs;
}

function sketch<L extends KeptLine>(line: L, order: number): Sketch<L> {
  const tokens = tokensOf(line).map(({ text }) => text);
  return {
    line,
    place: line.headings.map(masked).join('\n'),
    sentence: tokens.join(' '),
    words: tokens.filter((token) => token !== ANY && /\p{L}/u.test(token)),
    order,
  };
}

function alike<A extends KeptLine, B extends KeptLine>(
  before: readonly Sketch<A>[],
  after: readonly Sketch<B>[],
  key: (sketch: Sketch<KeptLine>) => string,
): [Sketch<A>, Sketch<B>][] {
  const later = grouped(after, key);
  return [...grouped(before, key)].flatMap(([name, ones]) => inGroup(ones, later.get(name) ?? []));
}

function grouped<T>(all: readonly T[], key: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

/**
 * Lines that differ in their numbers only. Where as many stand there as before, each keeps its place, unless they
 * only changed places; where some are gone or new, those whose numbers are the same belong together, and the others
 * that stand between the same two of them.
 */
function inGroup<A extends KeptLine, B extends KeptLine>(
  before: readonly Sketch<A>[],
  after: readonly Sketch<B>[],
): [Sketch<A>, Sketch<B>][] {
  const equal: [Sketch<A>, Sketch<B>][] = [];
  const waiting = grouped(after, ({ line }) => line.text);
  for (const one of before) {
    const other = waiting.get(one.line.text)?.shift();
    if (other) equal.push([one, other]);
  }
  const isWhole = equal.length === before.length;
  const kept = before.length === after.length && !isWhole ? [] : equal;
  const taken = new Set<unknown>(kept.flat());
  const gaps = grouped(
    after.filter((other) => !taken.has(other)),
    ({ order }) => String(kept.filter(([, other]) => other.order < order).length),
  );
  const between = before.flatMap((one): [Sketch<A>, Sketch<B>][] => {
    if (taken.has(one)) return [];
    const gap = String(kept.filter(([other]) => other.order < one.order).length);
    const other = gaps.get(gap)?.shift();
    return other ? [[one, other]] : [];
  });
  return [...kept, ...between];
}

/** The likest lines first; of equally like ones those that stand nearest to each other. */
function similar<A extends KeptLine, B extends KeptLine>(
  before: readonly Sketch<A>[],
  after: readonly Sketch<B>[],
): [Sketch<A>, Sketch<B>][] {
  const possible = before.flatMap((one) =>
    after.flatMap((other) => {
      const share = one.line.isRow === other.line.isRow ? shared(one.words, other.words) : 0;
      if (share < ALIKE) return [];
      const likeness = share + (one.place === other.place ? SAME_PLACE : 0);
      return [{ one, other, likeness, distance: Math.abs(one.order - other.order) }];
    }),
  );
  possible.sort((a, b) => b.likeness - a.likeness || a.distance - b.distance);
  const taken = new Set<unknown>();
  return possible.flatMap(({ one, other }): [Sketch<A>, Sketch<B>][] => {
    if (taken.has(one) || taken.has(other)) return [];
    taken.add(one).add(other);
    return [[one, other]];
  });
}

/** How many of their words two lines share, from 0 to 1 (Sørensen–Dice). */
function shared(a: readonly string[], b: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const word of a) counts.set(word, (counts.get(word) ?? 0) + 1);
  let both = 0;
  for (const word of b) {
    const left = counts.get(word) ?? 0;
    if (left > 0) both++;
    counts.set(word, left - 1);
  }
  return a.length + b.length === 0 ? 0 : (2 * both) / (a.length + b.length);
}
