/** The arithmetic of borders: how long each must be, and how large the top is behind them. */
import { max, min, type Rational, rational, ZERO } from '../../quantity/rational.ts';
import type { Contradiction } from './contradiction.ts';
import type { Rectangle } from './quilt.ts';
import { type Told, writeAs } from './said.ts';

export interface Border {
  readonly length: Told;
  /** As cut. */
  readonly width: Told | undefined;
  readonly where: 'sides' | 'ends' | 'either';
  /** Inner, outer, first and so on. */
  readonly name: string | undefined;
}

/** The top with the borders that are on. */
export interface Top {
  readonly measured: Rectangle;
  /** Two seam allowances; `undefined` where it is not clear how much a border adds. */
  readonly seams: Rational | undefined;
  /** In inches, seam allowances included. */
  readonly across: Rational;
  readonly down: Rational;
  /** What it measured before each ring. */
  readonly before: readonly (readonly [across: Rational, down: Rational])[];
  /** The widths of the borders since it was measured. */
  readonly added: readonly Told[];
}

/** What two borders of a width add, with the seams that they take. */
function addedBy(width: Told | undefined, seams: Rational | undefined): Rational | undefined {
  return width && seams && width.value.compare(seams) > 0 ? width.value.sub(seams).mul(2n) : undefined;
}

/** The top behind a ring; `undefined` when it has not both sides and ends, each with its width. */
export function grown(top: Top, ring: readonly Border[]): Top | undefined {
  const [sides, ends] = [
    ring.find(({ where }) => where === 'sides'),
    ring.find(({ where }) => where === 'ends'),
  ];
  const [wider, longer] = [addedBy(sides?.width, top.seams), addedBy(ends?.width, top.seams)];
  if (ring.length !== 2 || !wider || !longer || !sides?.width) return undefined;
  return {
    ...top,
    across: top.across.add(wider),
    down: top.down.add(longer),
    before: [...top.before, [top.across, top.down]],
    added: [...top.added, sides.width],
  };
}

/** Borders that do not fit the edges they are sewn to. */
export function againstTop(ring: readonly Border[], top: Top): Contradiction[] {
  const [one, other, ...more] = ring;
  if (!one || more.length > 0 || one.length.number.unit !== top.measured.sides[0].number.unit) return [];
  return other ? pair(one, other, top) : single(one, top);
}

interface Edge {
  readonly value: Rational;
  /** The side of the measured top that it goes along. */
  readonly side: Told;
  /** Whether the other borders of the ring are on. */
  readonly isGrown: boolean;
}

function edgesOf(top: Top, more: Rational | undefined): Edge[] {
  const plain = [
    { value: top.across, side: top.measured.sides[0], isGrown: false },
    { value: top.down, side: top.measured.sides[1], isGrown: false },
  ];
  return more
    ? [...plain, ...plain.map(({ value, side }) => ({ value: value.add(more), side, isGrown: true }))]
    : plain;
}

/** One border alone may be sewn on before or behind the others of its ring. */
function single(border: Border, top: Top): Contradiction[] {
  const { length, where } = border;
  const edges = edgesOf(top, addedBy(border.width, top.seams));
  const [across, down] = edges as [Edge, Edge];
  const isFar = [across, down].every(({ value }) => value.sub(length.value).abs().compare(NEAR) > 0);
  if (isFar || edges.some(({ value }) => value.equals(length.value))) return [];
  const nearest = distance(length, across).compare(distance(length, down)) < 0 ? across : down;
  return [contradiction(border, where === 'sides' ? down : nearest, undefined, top)];
}

/** It may be meant for an edge at all when it is so near. */
const NEAR = rational(4);

function distance({ value }: Told, edge: Edge): Rational {
  return edge.value.sub(value).abs();
}

/**
 * Of two borders that go on one behind the other, the first has the length of its edge, the second that of the other
 * edge with the first ones on. If one of them fits, the other one is wrong.
 */
function pair(one: Border, other: Border, top: Top): Contradiction[] {
  const more = addedBy(one.width, top.seams);
  const isRing =
    one.where !== 'either' && other.where !== 'either' && more && addedBy(other.width, top.seams);
  if (!isRing) return single(one, top);
  const [across, down, widened, lengthened] = edgesOf(top, more) as [Edge, Edge, Edge, Edge];
  const [sides, ends] = one.where === 'sides' ? [one, other] : [other, one];
  const ways: readonly (readonly [side: Edge, end: Edge])[] = [
    [down, widened],
    [lengthened, across],
    [across, lengthened],
    [widened, down],
  ];
  const fits = ({ length }: Border, { value }: Edge) => length.value.equals(value);
  if (ways.some(([side, end]) => fits(sides, side) && fits(ends, end))) return [];
  const limit = max(NEAR, more);
  for (const [side, end] of ways) {
    if (fits(sides, side) && distance(ends.length, end).compare(limit) <= 0)
      return [contradiction(ends, end, sides.width, top)];
    if (fits(ends, end) && distance(sides.length, side).compare(limit) <= 0)
      return [contradiction(sides, side, ends.width, top)];
  }
  return [];
}

/** @param mate the width of the borders that go on before, if the edge runs over them */
function contradiction(
  { length, where }: Border,
  edge: Edge,
  mate: Told | undefined,
  top: Top,
): Contradiction {
  const { measured } = top;
  const { value, side, isGrown } = edge;
  const isSquare = measured.sides[0] === measured.sides[1];
  const edges = isSquare && !isGrown ? 'edges' : where === 'either' ? 'nearest edges' : where;
  const widths = [...top.added, ...(isGrown && mate ? [mate] : [])];
  const before = widths.length > 0 ? `, and borders cut ${listOf(widths)} wide are sewn on before` : '';
  return {
    code: 'sizes-disagree',
    message: `The border is cut ${length.text} long, but the ${edges} of the top that it is sewn to are ${writeAs(value, length)}: the top measures ${measured.text}${before}.`,
    at: length,
    against: [
      { told: side, says: `The top measures ${measured.text} here.` },
      ...widths.map((told) => ({ told, says: `This border is cut ${told.text} wide.` })),
    ],
  };
}

function listOf(widths: readonly Told[]): string {
  return widths.map(({ text }) => text).join(' and ');
}

/** The top as it is measured behind its borders, against what they make of it. */
export function grownBy(top: Top, now: Rectangle): Contradiction[] {
  if (top.added.length === 0 || now.sides[0].number.unit !== top.measured.sides[0].number.unit) return [];
  const states = [...top.before, [top.across, top.down] as const];
  const [across, down] = now.sides;
  const isState = ([a, b]: readonly [Rational, Rational]) =>
    (across.value.equals(a) && down.value.equals(b)) || (across.value.equals(b) && down.value.equals(a));
  const [short, long] = [min(top.across, top.down), max(top.across, top.down)];
  const [less, more] = [now.short.sub(short).abs(), now.long.sub(long).abs()];
  // Wrong on both sides, it is likelier measured at another step.
  const isOneSide = less.equals(ZERO) !== more.equals(ZERO) && max(less, more).compare(NEAR) <= 0;
  if (states.some(isState) || !isOneSide) return [];
  const isLongWrong = less.equals(ZERO);
  const at = isLongWrong === across.value.compare(down.value) >= 0 ? across : down;
  const [a, b] = top.measured.sides;
  return [
    {
      code: 'sizes-disagree',
      message: `With borders cut ${listOf(top.added)} wide the top of ${top.measured.text} becomes ${writeAs(top.across, a)} × ${writeAs(top.down, a)}, not ${now.text}.`,
      at,
      against: [
        ...(a === b ? [a] : [a, b]).map((told) => ({
          told,
          says: `The top measures ${top.measured.text} here.`,
        })),
        ...top.added.map((told) => ({ told, says: `This border is cut ${told.text} wide.` })),
      ],
    },
  ];
}
