/** Things that stand one for each size, one behind the other: entries of the block, rows, numbers of a list. */
import type { Edit, Range } from '../../findings/finding.ts';
import { rearranged, type SizeChange } from './change.ts';

/** One member of a series, with the size that it is about. */
export interface Member extends Range {
  readonly size: string;
}

const CONJUNCTION = /\b(?:and|or)\b|&/;
const BRACKET = /[([{]/;
const PLAIN = ', ';

/**
 * The edit that adds, drops or puts in order a member; what joins the members keeps its form: `a, b and c` becomes
 * `a, b, c and d`, and `5 (7, 9)` becomes `5 (7, 9, 11)`. `undefined` where nothing changes.
 *
 * @param members in the order in which they stand in the source
 * @param written the text of the new member
 */
export function reviseSeries(
  source: string,
  members: readonly Member[],
  change: SizeChange,
  written: string,
): Edit | undefined {
  const [first, last] = [members[0], members.at(-1)];
  if (!first || !last) return undefined;
  const sizes = members.map(({ size }) => size);
  const texts = new Map(members.map(({ size, start, end }) => [size, source.slice(start, end)]));
  const joiners = members.slice(1).map(({ start }, index) => source.slice(members[index]?.end, start));
  const order = rearranged(sizes, change);
  const before = woven(
    sizes.map((size) => texts.get(size) ?? ''),
    joiners,
  );
  const after = woven(
    order.map((size) => texts.get(size) ?? written),
    joinersFor(joiners, sizes, order),
  );
  return difference(before, after, first.start);
}

/**
 * The edit that writes these texts in place of the members, one more or one less at the end included.
 *
 * @param alone what joins two where only one stands so far
 */
export function rewriteSeries(
  source: string,
  members: readonly Range[],
  texts: readonly string[],
  alone: string,
): Edit | undefined {
  const [first] = members;
  if (!first) return undefined;
  const old = members.map(({ start, end }) => source.slice(start, end));
  const joiners = members.slice(1).map(({ start }, index) => source.slice(members[index]?.end, start));
  const places = (list: readonly string[]) => list.map((_, index) => String(index));
  const now = joiners.length === 0 ? [alone] : joinersFor(joiners, places(old), places(texts));
  return difference(woven(old, joiners), woven(texts, now), first.start);
}

function joinersFor(
  joiners: readonly string[],
  sizes: readonly string[],
  order: readonly string[],
): string[] {
  const [old, now] = [sizes.length, order.length];
  const isSpoken = CONJUNCTION.test(joiners.at(-1) ?? '');
  const isBracket = BRACKET.test(joiners[0] ?? '');
  if (now > old) {
    if (isSpoken) return [...joiners.slice(0, -1), joiners.at(-2) ?? PLAIN, joiners.at(-1) ?? PLAIN];
    if (isBracket) return [...joiners, (joiners.at(-1) ?? '').replace(/\s*[([{]\s*/, PLAIN)];
    const at = Math.max(0, order.findIndex((size) => !sizes.includes(size)) - 1);
    const near = joiners[at] ?? joiners.at(-1) ?? PLAIN;
    return [...joiners.slice(0, at), near, ...joiners.slice(at)];
  }
  if (now === old) return [...joiners];
  if (isSpoken) return joiners.toSpliced(Math.max(0, old - 3), 1);
  if (isBracket) return joiners.slice(0, -1);
  const gone = sizes.findIndex((size) => !order.includes(size));
  return joiners.toSpliced(Math.max(0, gone - 1), 1);
}

function woven(texts: readonly string[], joiners: readonly string[]): string[] {
  return texts.flatMap((text, index) => (index === 0 ? [text] : [joiners[index - 1] ?? PLAIN, text]));
}

/** One edit over the pieces in which two texts differ. */
function difference(before: readonly string[], after: readonly string[], start: number): Edit | undefined {
  let head = 0;
  while (head < before.length && head < after.length && before[head] === after[head]) head++;
  let tail = 0;
  const most = Math.min(before.length, after.length) - head;
  while (tail < most && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  const length = (pieces: readonly string[]) => pieces.join('').length;
  const from = start + length(before.slice(0, head));
  const gone = length(before.slice(head, before.length - tail));
  const text = after.slice(head, after.length - tail).join('');
  return gone === 0 && text === '' ? undefined : { start: from, end: from + gone, text };
}
