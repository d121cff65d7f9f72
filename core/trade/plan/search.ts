/**
 * The shortest plan of strips across the fabric: branch and price.
 *
 * Cutting pieces from strips where narrower pieces may be cut from the end of a wider strip is two-stage guillotine
 * cutting with trimming. As a whole-number programme over strips (see `relaxation.ts`) its linear relaxation is
 * very tight once the number of strips of each height is whole, so the search branches on those numbers first and
 * then on how many strips hold a number of copies of one piece. At a node it rounds the relaxed plan to a whole one.
 *
 * Why our own search and not a general solver compiled for the web: the strips must be generated in either case;
 * such a solver takes longer to load than most lists take to plan; and the bound that is proved here holds for any
 * prices, so that it does not depend on the solver's tolerances. It needs no binary, runs in every browser and gives
 * the same plan everywhere. Lists of up to about ten kinds of pieces are nearly always proved within the usual work,
 * longer ones come within a fraction of a percent of their bound (see the benchmark in `tests/bench`).
 *
 * Work is limited by counting elementary steps, never by a clock, so that equal lists give equal plans.
 */
import { choose, Experience, WHOLE } from './branching.ts';
import { StripFiller } from './filler.ts';
import { greedyStrips, plainStrips, type Strip, totalHeight, trimmed } from './greedy.ts';
import { greatestCommonDivisor, type StripProblem } from './problem.ts';
import { Relaxation, type StripColumn, type Uses } from './relaxation.ts';
import { Sums } from './sums.ts';

export interface StripPlan {
  readonly strips: readonly Strip[];
  /** Sum of the heights, in the units of the problem. */
  readonly height: number;
  /** No plan of this kind is shorter. */
  readonly bound: number;
  /** Relaxations solved. */
  readonly nodes: number;
}

/** Elementary steps; 30 to 50 ms of processor time. */
export const USUAL_WORK = 20_000_000;

interface Node {
  readonly relaxation: Relaxation;
  readonly bound: number;
  /** Tells the experience how much the branch to this node raised the bound. */
  readonly learn: (relaxed: number) => void;
}

/** Relaxed plans are rounded at the first nodes and then at every fourth: that takes longer than to solve them. */
const ALWAYS_DIVE = 8;
const DIVE_EVERY = 4;
/** Elementary steps that a cell of the filler's table takes. */
const CELL = 4;
/** Rounds of column generation while a plan is rounded: few, for it need not be the best. */
const DIVE_ROUNDS = 2;

/** @throws RangeError when a kind has no placement (such pieces are sorted out before). */
export function shortestStrips(problem: StripProblem, work: number = USUAL_WORK): StripPlan {
  return new Search(problem, work).run();
}

class Search {
  readonly #problem: StripProblem;
  readonly #demand: readonly number[];
  readonly #work: number;
  readonly #unit: number;
  #best: readonly Strip[];
  /** Height of the best plan, in `#unit`. */
  #height: number;
  #nodes = 0;
  #steps = 0;

  constructor(problem: StripProblem, work: number) {
    this.#problem = problem;
    this.#work = work;
    this.#demand = problem.kinds.map(({ demand }) => demand);
    for (const kind of problem.kinds.keys())
      if (!problem.placements.some((p) => p.kind === kind))
        throw new RangeError('a piece fits into no strip');
    this.#unit = problem.placements.map(({ height }) => height).reduce(greatestCommonDivisor, 0) || 1;
    this.#best = plainStrips(problem, this.#demand);
    this.#height = this.#measure(this.#best);
  }

  run(): StripPlan {
    this.#offer(greedyStrips(this.#problem, this.#demand));
    const area = Math.ceil(
      this.#problem.kinds.reduce((sum, k) => sum + k.demand * k.width * k.length, 0) /
        (this.#problem.capacity * this.#unit) -
        WHOLE,
    );
    const filler = this.#height > area ? StripFiller.of(this.#problem) : undefined;
    const bound = filler ? this.#branch(filler, area) : Math.min(area, this.#height);
    return {
      strips: this.#best,
      height: this.#height * this.#unit,
      bound: bound * this.#unit,
      nodes: this.#nodes,
    };
  }

  /** @returns the proven bound. */
  #branch(filler: StripFiller, area: number): number {
    const heights = filler.heights.map((height) => height / this.#unit);
    const sums = new Sums(heights, this.#height);
    const model = { problem: this.#problem, filler, heights };
    const start = this.#best.map((strip) => this.#column(strip, filler));
    const open: Node[] = [
      {
        relaxation: Relaxation.of(model, start, 1000 * this.#height),
        bound: sums.from(area),
        learn: () => {},
      },
    ];
    const experience = new Experience(heights);
    let unsettled = Number.POSITIVE_INFINITY;
    while (open.length > 0) {
      const node = takeBest(open);
      if (node.bound >= this.#height) break;
      if (this.#steps + CELL * filler.cells > this.#work) {
        unsettled = Math.min(unsettled, node.bound);
        break;
      }
      this.#nodes++;
      const { relaxation } = node;
      const relaxed = this.#solve(relaxation, sums.below(this.#height));
      node.learn(Math.min(relaxed, this.#height));
      const bound = Math.max(node.bound, sums.from(relaxed));
      if (bound >= this.#height) continue;
      const choice = choose(relaxation.uses(), heights.length, experience);
      const due = this.#nodes <= ALWAYS_DIVE || this.#nodes % DIVE_EVERY === 0;
      if (due || choice?.strips.of !== 'height') this.#dive(relaxation, bound, sums);
      if (bound >= this.#height) continue;
      if (!choice) {
        unsettled = Math.min(unsettled, bound);
        continue;
      }
      const [down, up] = [Math.floor(choice.number), Math.ceil(choice.number)];
      for (const [sense, limit] of [
        ['at most', down],
        ['at least', up],
      ] as const) {
        open.push({
          relaxation: relaxation.with({ ...choice.strips, sense, limit }),
          bound,
          learn: (value) =>
            experience.learn(choice.strips, sense, (value - relaxed) / Math.abs(limit - choice.number)),
        });
      }
    }
    return Math.min(this.#height, unsettled, ...open.map(({ bound }) => bound));
  }

  #solve(relaxation: Relaxation, cutoff: number, rounds?: number): number {
    const before = relaxation.steps;
    const bound = relaxation.solve(cutoff + WHOLE, rounds);
    this.#steps += relaxation.steps - before;
    return bound;
  }

  /**
   * Rounds a relaxed plan to a whole one: takes the whole parts of its strips, then the strip with the largest
   * rest, solves again for what is still wanted, and so on; each time the greedy plan completes it.
   */
  #dive(from: Relaxation, bound: number, sums: Sums): void {
    const taken: Strip[] = [];
    const relaxation = from.copy();
    for (;;) {
      const uses = relaxation.uses();
      const whole = uses
        .map(([column, times]) => [column, Math.floor(times + WHOLE)] as const)
        .filter(([, times]) => times > 0);
      const next = largest(uses);
      const cut = whole.length > 0 ? whole : next ? [[next, 1] as const] : [];
      if (cut.length === 0) return;
      for (const [column, times] of cut) {
        const strip = new Map(column.filling);
        for (let i = 0; i < times; i++) taken.push(strip);
      }
      relaxation.cut(cut);
      this.#offer([...taken, ...greedyStrips(this.#problem, relaxation.demand)]);
      if (this.#height <= bound || relaxation.demand.every((count) => count === 0)) return;
      const rest = sums.below(this.#height) - this.#measure(taken);
      if (rest <= 0 || this.#solve(relaxation, rest, DIVE_ROUNDS) > rest + WHOLE) return;
    }
  }

  #offer(strips: readonly Strip[]): void {
    const plan = trimmed(this.#problem, this.#demand, strips);
    const height = this.#measure(plan);
    if (height < this.#height) [this.#best, this.#height] = [plan, height];
  }

  #measure(strips: readonly Strip[]): number {
    return totalHeight(strips, this.#problem) / this.#unit;
  }

  #column(strip: Strip, filler: StripFiller): StripColumn {
    const height = Math.max(...[...strip.keys()].map((p) => this.#problem.placements[p]?.height ?? 0));
    return { height: filler.heights.indexOf(height), filling: [...strip] };
  }
}

/** The node with the least bound; of equal ones the latest, so that the search goes deep first. */
function takeBest(open: Node[]): Node {
  let best = open.length - 1;
  for (let i = best - 1; i >= 0; i--) if ((open[i] as Node).bound < (open[best] as Node).bound) best = i;
  return open.splice(best, 1)[0] as Node;
}

function largest(uses: Uses): StripColumn | undefined {
  let best: (typeof uses)[number] | undefined;
  for (const use of uses) if (!best || use[1] > best[1] + WHOLE) best = use;
  return best?.[0];
}
