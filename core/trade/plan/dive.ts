/** From a relaxed plan to whole ones. */
import { WHOLE } from './branching.ts';
import type { Strip } from './greedy.ts';
import type { Incumbent } from './incumbent.ts';
import type { Relaxation, StripColumn, Uses } from './relaxation.ts';
import type { Sums } from './sums.ts';

/** Rounds of column generation after each cut: few, for the plan need not be the best. */
const ROUNDS = 2;

/**
 * Rounds a relaxed plan to a whole one: takes the whole parts of its strips, or else the strip with the largest
 * rest, solves again for what is still wanted, and so on; each time the greedy plan completes it. Gives up when
 * what is left cannot become shorter than the best plan.
 *
 * @param bound no plan is shorter, so one of this height is enough.
 */
export function dive(from: Relaxation, best: Incumbent, bound: number, sums: Sums): void {
  const taken: Strip[] = [];
  const relaxation = from.copy();
  for (;;) {
    const cut = nextStrips(relaxation);
    if (cut.length === 0) return;
    for (const [column, times] of cut) {
      const strip = new Map(column.filling);
      for (let i = 0; i < times; i++) taken.push(strip);
    }
    relaxation.cut(cut);
    best.complete(taken, relaxation.demand);
    if (best.height <= bound || relaxation.demand.every((count) => count === 0)) return;
    const rest = sums.below(best.height) - best.measure(taken);
    if (rest <= 0) return;
    const before = relaxation.steps;
    const needed = relaxation.solve(rest + WHOLE, 0, ROUNDS);
    best.steps += relaxation.steps - before;
    if (needed > rest + WHOLE) return;
  }
}

function nextStrips(relaxation: Relaxation): Uses {
  const uses = relaxation.uses();
  const most = Math.max(...relaxation.demand); // were the floats ever to fail, no more than this
  const whole = uses
    .map(([column, times]) => [column, Math.min(most, Math.floor(times + WHOLE))] as const)
    .filter(([, times]) => times > 0);
  const next = largest(uses);
  if (whole.length > 0) return whole;
  return next ? [[next, 1]] : [];
}

function largest(uses: Uses): StripColumn | undefined {
  let best: Uses[number] | undefined;
  for (const use of uses) if (!best || use[1] > best[1] + WHOLE) best = use;
  return best?.[0];
}
