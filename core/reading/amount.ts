/** Amounts: numbers that state one thing together: a size, a list with one number for each size, both units. */

import type { Pattern } from '../block/pattern.ts';
import type { NumberGroup } from '../manuscript/manuscript.ts';
import { isMetric } from '../quantity/units.ts';
import { CELL_BREAK, type Line, type Spot } from './line.ts';
import type { SizeNames } from './sizeNames.ts';

/** One number, or one for each size, and the same again in other words or in the other unit. */
export interface Side {
  readonly spots: readonly SizedSpot[];
  readonly twins: readonly SizedSpot[];
}

export interface SizedSpot extends Spot {
  /** `undefined` until the words around tell. */
  readonly size: string | undefined;
  readonly sizedBy: string | undefined;
}

export interface Amount {
  /** One, or the sides of a size. */
  readonly sides: readonly [Side, ...Side[]];
  readonly start: number;
  readonly end: number;
  /** `5 x 7` without a unit: rows and columns, or a size. */
  readonly isGrid: boolean;
}

const BY = /^["”″]?\)?\s*(?:(?:wide|long|high|deep|tall|across|down)\s*)?(?:[x×X*]|by)\s*$/;

/** @param sizes the sizes of the pattern, for lists and columns */
export function readAmounts(line: Line, pattern: Pattern, sizes: SizeNames): Amount[] {
  const spots = line.spots.filter(({ number }) => number.notMeasurement === undefined);
  const sides = sidesOf(line, spots, pattern);
  const amounts = withConversions(line.text, joined(line.text, sides));
  return line.isRow ? acrossColumns(line, amounts, sizes) : listed(line.text, amounts, pattern);
}

interface OpenSide extends Side {
  readonly start: number;
  readonly end: number;
}

function sidesOf({ text }: Line, spots: readonly Spot[], pattern: Pattern): OpenSide[] {
  const names = pattern.sizes.map(({ name }) => name);
  const sides: OpenSide[] = [];
  for (let at = 0; at < spots.length; ) {
    const list = listAt(text, spots, at, names.length);
    const own = spots.slice(at, at + list);
    at += list;
    const twins: Spot[] = [];
    while (own.length === 1 && isTwin(text, [...own, ...twins].at(-1), spots[at], own[0]))
      twins.push(spots[at++] as Spot);
    const sized = (spot: Spot, index: number): SizedSpot => ({
      ...spot,
      size: list > 1 ? names[index] : undefined,
      sizedBy: list > 1 ? 'it stands in a list with one number per size' : undefined,
    });
    const last = [...own, ...twins].at(-1);
    sides.push({
      spots: own.map(sized),
      twins: twins.map((twin) => sized(twin, 0)),
      start: own[0]?.start ?? 0,
      end: last?.end ?? 0,
    });
  }
  return sides;
}

/** How many spots from `at` on are a list with one number per size, `5 (7, 9)` or `5/7/9`; else 1. */
function listAt(text: string, spots: readonly Spot[], at: number, count: number): number {
  if (count < 2 || at + count > spots.length) return 1;
  const list = spots.slice(at, at + count);
  const gaps = list.slice(1).map(({ start }, i) => text.slice(list[i]?.end, start));
  const isBracket = gaps.every((gap, i) => (i === 0 ? /^\s*[([{]\s*$/ : /^["”″]?\s*[,;/:]\s*$/).test(gap));
  const isSlash = gaps.every((gap) => /^["”″]?\s*\/\s*$/.test(gap));
  if (!isBracket && !isSlash) return 1;
  const units = new Set(list.flatMap(({ number }) => number.unit ?? []));
  if (units.size > 1) return 1;
  const behind = text.slice(list.at(-1)?.end);
  return isSlash || /^["”″]?\s*[)\]}]/.test(behind) ? count : 1;
}

/** Whether `next` says the number before it once more: 12½in (32cm), twelve (12), 70cm or ¾ yard. */
function isTwin(
  text: string,
  before: Spot | undefined,
  next: Spot | undefined,
  first: Spot | undefined,
): boolean {
  if (!before || !next || !first) return false;
  const gap = text.slice(before.end, next.start);
  const [a, b] = [first.number, next.number];
  const brackets = /^\s*\(\s*$/.test(gap) && /^["”″]?\s*(?:approx\.?)?\s*[)\]]/.test(text.slice(next.end));
  if (a.unit && b.unit) {
    const isOther = isMetric(a.unit) !== isMetric(b.unit);
    return isOther && (brackets || /^\s*(?:\/|or|,|=)\s*$/.test(gap));
  }
  const words = [a, b].filter(({ written }) => written.notation.numeral.form === 'words');
  return !a.unit && !b.unit && words.length === 1 && brackets;
}

/** Sides that a by-sign joins. */
function joined(text: string, sides: readonly OpenSide[]): Amount[] {
  const amounts: Amount[] = [];
  for (let at = 0; at < sides.length; ) {
    const first = sides[at] as OpenSide;
    const chain: OpenSide[] = [first];
    while (chain.length < 3) {
      const [last, next] = [chain.at(-1), sides[at + chain.length]];
      if (!last || !next || !belong(text, last, next)) break;
      chain.push(next);
    }
    at += chain.length;
    amounts.push({
      sides: chain as unknown as Amount['sides'],
      start: first.start,
      end: chain.at(-1)?.end ?? first.end,
      isGrid: groupOf(first)?.kind === 'grid' || (chain.length > 1 && chain.every(isBareCount)),
    });
  }
  return amounts;
}

function isBareCount({ spots }: Side): boolean {
  return spots.every(({ number }) => number.unit === undefined && number.kind === 'count');
}

function belong(text: string, last: OpenSide, next: OpenSide): boolean {
  if (!BY.test(text.slice(last.end, next.start))) return false;
  const [a, b] = [groupOf(last), groupOf(next)];
  const simple = last.spots.length === 1 && next.spots.length === 1 && last.twins.length === 0;
  // Whether `6 x 2½" strips` are six strips was decided when the numbers were grouped.
  if (simple) return a !== undefined && a === b && a.kind !== 'range';
  return last.spots.length === next.spots.length || last.spots.length === 1 || next.spots.length === 1;
}

function groupOf({ spots }: Side): NumberGroup | undefined {
  return spots[0]?.number.group;
}

/** Sizes that stand side by side, one for each size of the pattern: `62" × 74" (80" × 98")`, `60" × 74" or 74" × 102"`. */
function listed(text: string, amounts: readonly Amount[], { sizes }: Pattern): Amount[] {
  const found: Amount[] = [];
  for (let at = 0; at < amounts.length; ) {
    const list = amounts.slice(at, at + sizes.length);
    const isList = sizes.length > 1 && list.length === sizes.length && isListOfSizes(text, list);
    if (isList)
      found.push(
        merged(
          list.map((amount, index) =>
            sizedBy(amount, sizes[index]?.name ?? '', 'it stands in a list with one number per size'),
          ),
        ),
      );
    else found.push(amounts[at] as Amount);
    at += isList ? list.length : 1;
  }
  return found;
}

function isListOfSizes(text: string, list: readonly Amount[]): boolean {
  const isSize = ({ sides, isGrid }: Amount) =>
    sides.length === 2 &&
    isGrid === list[0]?.isGrid &&
    sides.every(({ spots }) => spots.length === 1 && spots[0]?.size === undefined);
  const gaps = list.slice(1).map(({ start }, i) => text.slice(list[i]?.end, start));
  const isBracket = gaps.every((gap, i) => (i === 0 ? /^\s*[([]\s*$/ : /^["”″]?\s*[,;/]\s*$/).test(gap));
  const isSeries = gaps.every((gap) => /^["”″]?\s*(?:,|\/|;|,?\s*(?:or|and))\s*$/.test(gap));
  return list.every(isSize) && (isBracket || isSeries);
}

/** A size in the other unit behind a size: 122cm x 146cm (48in x 57½in). */
function withConversions(text: string, amounts: readonly Amount[]): Amount[] {
  const found: Amount[] = [];
  for (const amount of amounts) {
    const last = found.at(-1);
    if (last && isConversion(text, last, amount)) {
      const sides = last.sides.map((side, index) => ({
        ...side,
        twins: [...side.twins, ...(amount.sides[index]?.spots ?? [])],
      }));
      found[found.length - 1] = { ...last, sides: sides as unknown as Amount['sides'], end: amount.end };
    } else found.push(amount);
  }
  return found;
}

function isConversion(text: string, first: Amount, second: Amount): boolean {
  if (first.sides.length !== 2 || second.sides.length !== 2) return false;
  if (!/^\s*(?:[([]|\/|or|=)\s*$/.test(text.slice(first.end, second.start))) return false;
  const unit = ({ sides }: Amount) =>
    sides.flatMap(({ spots }) => spots.flatMap(({ number }) => number.unit ?? []))[0];
  const [a, b] = [unit(first), unit(second)];
  return a !== undefined && b !== undefined && isMetric(a) !== isMetric(b);
}

/** Cells under the names of the sizes hold one list: their amounts are joined, place by place. */
function acrossColumns({ text }: Line, amounts: readonly Amount[], sizes: SizeNames): Amount[] {
  const cells = new Map<number, Amount[]>();
  for (const amount of amounts) {
    const cell = text.slice(0, amount.start).split(CELL_BREAK).length - 1;
    cells.set(cell, [...(cells.get(cell) ?? []), amount]);
  }
  const found: Amount[] = [];
  const open = new Map<number, Amount[]>();
  for (const list of cells.values())
    for (const [index, amount] of list.entries()) {
      const size = sizes.in(amount.sides[0].spots[0]?.column ?? '');
      if (size === undefined) found.push(amount);
      else
        open.set(index, [
          ...(open.get(index) ?? []),
          sizedBy(amount, size, `its column is headed “${amount.sides[0].spots[0]?.column ?? ''}”`),
        ]);
    }
  for (const list of open.values()) {
    const [first] = list;
    const alike = list.filter((amount) => amount.sides.length === first?.sides.length);
    if (first) found.push(merged(alike), ...list.filter((amount) => !alike.includes(amount)));
  }
  return found.sort((a, b) => a.start - b.start);
}

function sizedBy(amount: Amount, size: string, why: string): Amount {
  const spots = (list: readonly SizedSpot[]) => list.map((spot) => ({ ...spot, size, sizedBy: why }));
  const sides = amount.sides.map((side) => ({ spots: spots(side.spots), twins: spots(side.twins) }));
  return { ...amount, sides: sides as unknown as Amount['sides'] };
}

function merged(list: readonly Amount[]): Amount {
  const [first] = list as [Amount, ...Amount[]];
  const sides = first.sides.map((_, index) => ({
    spots: list.flatMap(({ sides }) => sides[index]?.spots ?? []),
    twins: list.flatMap(({ sides }) => sides[index]?.twins ?? []),
  }));
  return { ...first, sides: sides as unknown as Amount['sides'], end: list.at(-1)?.end ?? first.end };
}
