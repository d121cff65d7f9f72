/** Quick strip plans that need no proof: the starting points and fillers-in of the search. */
import type { Placement, StripProblem } from './problem.ts';

/** A strip as it is cut: copies of placements, by index. Its height is that of its highest piece. */
export type Strip = ReadonlyMap<number, number>;

interface OpenStrip {
  readonly height: number;
  rest: number;
  readonly pieces: Map<number, number>;
}

/** Which way a kind lies when it opens a strip of its own. */
type Preference = (a: Placement, b: Placement) => number;

/** Total height of the strips that a kind takes alone, in this placement. */
function heightAlone({ height, fit, kind }: Placement, demand: readonly number[]): number {
  return Math.ceil((demand[kind] ?? 0) / fit) * height;
}

export function stripHeight(strip: Strip, { placements }: StripProblem): number {
  let height = 0;
  for (const placement of strip.keys()) height = Math.max(height, placements[placement]?.height ?? 0);
  return height;
}

export function totalHeight(strips: readonly Strip[], problem: StripProblem): number {
  return strips.reduce((sum, strip) => sum + stripHeight(strip, problem), 0);
}

/**
 * The best of several first-fit plans, the kinds taken from the highest to the lowest. They differ in which way a
 * kind lies: as low as possible, as it takes least fabric alone, or as high as possible.
 */
export function greedyStrips(problem: StripProblem, demand: readonly number[]): Strip[] {
  const alone = (p: Placement) => heightAlone(p, demand);
  const preferences: Preference[] = [
    (a, b) => a.height - b.height,
    (a, b) => alone(a) - alone(b) || a.height - b.height,
    (a, b) => b.height - a.height,
  ];
  const plans = preferences.map((preference) => firstFit(problem, demand, preference));
  return plans.reduce((best, plan) =>
    totalHeight(plan, problem) < totalHeight(best, problem) ? plan : best,
  );
}

/** Each kind alone, in its better way: the plain plan. */
export function plainStrips(problem: StripProblem, demand: readonly number[]): Strip[] {
  const alone = (p: Placement) => heightAlone(p, demand);
  return demand.flatMap((count, kind) => {
    const ways = placementsOf(problem, kind).sort(
      ([, a], [, b]) => alone(a) - alone(b) || a.height - b.height,
    );
    const [index, placement] = ways[0] ?? [];
    if (index === undefined || !placement) return [];
    return Array.from({ length: Math.ceil(count / placement.most) }, (_, strip) => {
      return new Map([[index, Math.min(placement.most, count - strip * placement.most)]]);
    });
  });
}

function placementsOf(
  { placements, ways }: StripProblem,
  kind: number,
): [index: number, placement: Placement][] {
  return (ways[kind] ?? []).map((index) => [index, placements[index] as Placement]);
}

function firstFit(problem: StripProblem, demand: readonly number[], preference: Preference): Strip[] {
  const kinds = demand
    .flatMap((count, kind) => {
      const ways = placementsOf(problem, kind);
      const [opening] = [...ways].sort(([, a], [, b]) => preference(a, b));
      return count > 0 && opening ? [{ count, ways, opening }] : [];
    })
    .sort((a, b) => b.opening[1].height - a.opening[1].height || b.opening[1].span - a.opening[1].span);
  const strips: OpenStrip[] = [];
  for (const { count, ways, opening } of kinds) {
    let left = count;
    // Ends of strips first: in each the way that takes the shortest piece of it.
    const shortestFirst = [...ways].sort(([, a], [, b]) => a.span - b.span);
    for (const strip of strips) {
      const fit = shortestFirst.find(([, p]) => p.height <= strip.height && p.span <= strip.rest);
      if (left > 0 && fit) left -= put(strip, fit, left);
    }
    while (left > 0) {
      const strip = { height: opening[1].height, rest: problem.capacity, pieces: new Map<number, number>() };
      strips.push(strip);
      left -= put(strip, opening, left);
    }
  }
  return strips.map(({ pieces }) => pieces);
}

function put(strip: OpenStrip, [index, { span }]: [number, Placement], wanted: number): number {
  const copies = Math.min(wanted, Math.floor(strip.rest / span));
  strip.rest -= copies * span;
  strip.pieces.set(index, (strip.pieces.get(index) ?? 0) + copies);
  return copies;
}

/**
 * Takes away what a plan cuts beyond the demand, from the last strips first, and drops strips that become empty.
 */
export function trimmed(problem: StripProblem, demand: readonly number[], strips: readonly Strip[]): Strip[] {
  const surplus = demand.map((wanted) => -wanted);
  for (const strip of strips)
    for (const [index, copies] of strip) {
      const kind = problem.placements[index]?.kind ?? -1;
      surplus[kind] = (surplus[kind] ?? 0) + copies;
    }
  const kept = [...strips].reverse().map((strip) => {
    const pieces = new Map<number, number>();
    for (const [index, copies] of strip) {
      const kind = problem.placements[index]?.kind ?? -1;
      const away = Math.min(copies, Math.max(0, surplus[kind] ?? 0));
      surplus[kind] = (surplus[kind] ?? 0) - away;
      if (copies > away) pieces.set(index, copies - away);
    }
    return pieces;
  });
  return kept.reverse().filter(({ size }) => size > 0);
}
