/** Numbers that belong together: the sides of a size, the ends of a range; and the unit that they share. */
import type { NumberText } from '../quantity/notation.ts';
import { isInteger } from '../quantity/rational.ts';
import type { LengthUnit } from '../quantity/units.ts';
import type { NumberGroup, Passage } from './manuscript.ts';
import { isPluralNoun, nounBehind } from './nearby.ts';

export interface Grouped {
  readonly group: NumberGroup;
  /** The number's own unit, or the nearest one behind it in the group, or else before it. */
  readonly unit: LengthUnit | undefined;
}

const LONGEST_BETWEEN = 16;
/** Width, length and height. */
const MOST_SIDES = 3;
const BY = /^["”″]?\s*(?:(?:wide|long|high|deep|tall)\s*)?(?:[x×X*]|by)\s*$/;
const SPACED_SIGN = /^\s+[x×X]\s+$/;
const RANGE = /^\s*(?:[-–—/]|to|or)\s*$/;
/** The other side of a size, or the shape that has it. */
const SIZE_BEHIND = /^\s*(?:(?:[x×X*]|by)\s*\d|(?:square|strip|rectangle|piece)(?!\p{L}))/u;
/** Between a count and the size that it counts: `(4) 2" × 5"`, `5 -- 2x9"`. */
const COUNT_BEFORE = /^\s*\)?\s*[-–—:,@]{0,3}\s*$/;
/** Fabric widths are printed with both ends of a narrow range: 42/44", 58/60". */
const WIDEST_SLASH_RANGE = 4;

/** The groups of a passage, by each of their members. */
export function groupNumbers(
  passage: Pick<Passage, 'text' | 'context'>,
  numbers: readonly NumberText[],
): ReadonlyMap<NumberText, Grouped> {
  const groups = new Map<NumberText, Grouped>();
  for (let index = 0; index < numbers.length; ) {
    const chain = chainFrom(passage.text, numbers, index);
    const group =
      chain.length > 1 ? sized(passage, chain, numbers[index - 1]) : rangeAt(passage.text, numbers, index);
    const units = sharedUnits(group?.members ?? []);
    for (const [at, member] of (group?.members ?? []).entries()) {
      if (group) groups.set(member, { group, unit: units[at] });
    }
    index += Math.max(chain.length, group?.kind === 'range' ? 2 : 1);
  }
  return groups;
}

/** The numbers from `index` on that by-signs join. */
function chainFrom(text: string, numbers: readonly NumberText[], index: number): NumberText[] {
  const chain: NumberText[] = [];
  for (let at = index; at < numbers.length; at++) {
    const [last, next] = [chain.at(-1), numbers[at]];
    if (!next || (last && !BY.test(between(text, last, next)))) break;
    chain.push(next);
  }
  return chain;
}

function sized(
  { text, context }: Pick<Passage, 'text' | 'context'>,
  chain: readonly NumberText[],
  before: NumberText | undefined,
): NumberGroup | undefined {
  const members = countsPieces(text, chain, before) ? chain.slice(1) : chain;
  if (members.length < 2 || members.length > MOST_SIDES) return undefined;
  const bare = members.every(({ unit, value }) => unit === undefined && isInteger(value));
  if (!bare) return { kind: 'size', members };
  // `3 x 5` may be rows and columns: the noun behind it, or the head of its column, makes it a size.
  const noun = nounBehind(text, members.at(-1)?.end ?? 0);
  const isPiece = noun !== undefined && /^(?:rectangle|square|strip|piece|panel|segment|border)/.test(noun);
  const header = context.cell?.columnHeader ?? '';
  return { kind: isPiece || /size|cut|inch|\bin\b|\bcm\b/i.test(header) ? 'size' : 'grid', members };
}

/**
 * Whether the first sign of a chain means "of": 6 x 2½" strips are six strips. Certain with a second sign behind;
 * with one, the sign stands between spaces, no count stands before, and a plural that needs one size only follows.
 */
function countsPieces(text: string, chain: readonly NumberText[], before: NumberText | undefined): boolean {
  const [first, second, third] = chain;
  if (!first || !second || first.unit || !isInteger(first.value) || !second.unit) return false;
  if (third) return true;
  if (!SPACED_SIGN.test(between(text, first, second))) return false;
  if (before && !before.unit && COUNT_BEFORE.test(between(text, before, first))) return false;
  const noun = nounBehind(text, second.end);
  return isPluralNoun(noun) && !noun?.startsWith('rectangle');
}

/** `42-44"`, `44/45"`, `1½ to 3 inches`; not `12-5" squares`, which is a count and a size. */
function rangeAt(text: string, numbers: readonly NumberText[], index: number): NumberGroup | undefined {
  const [low, high] = [numbers[index], numbers[index + 1]];
  if (!low || !high?.unit || (low.unit ?? high.unit) !== high.unit) return undefined;
  const sign = RANGE.exec(between(text, low, high))?.[0].trim();
  if (sign === undefined || low.value.compare(high.value) >= 0) return undefined;
  if (sign === '/' && high.value.sub(low.value).compare(WIDEST_SLASH_RANGE) > 0) return undefined;
  const mayCount = !low.unit && isInteger(low.value) && sign !== '/';
  if (mayCount && isPluralNoun(nounBehind(text, high.end))) return undefined;
  // `4 — 4½" x 42" strips`, `1 — 22" square`: a dash between spaces is no sign of a range where a size goes on behind.
  const isApart = sign !== '/' && /^\s.*\s$/.test(between(text, low, high));
  if (mayCount && isApart && (sign === '—' || SIZE_BEHIND.test(text.slice(high.end)))) return undefined;
  return { kind: 'range', members: [low, high] };
}

function sharedUnits(members: readonly NumberText[]): (LengthUnit | undefined)[] {
  return members.map(
    ({ unit }, index) =>
      unit ??
      members.slice(index).find((member) => member.unit)?.unit ??
      members.slice(0, index).findLast((member) => member.unit)?.unit,
  );
}

function between(text: string, first: NumberText, second: NumberText): string {
  const gap = second.start - first.end;
  return gap > LONGEST_BETWEEN ? '…' : text.slice(first.end, second.start);
}
