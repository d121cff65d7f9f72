/**
 * The shortest plan of strips across the fabric: branch and price.
 *
 * Cutting pieces from strips where narrower pieces may be cut from the end of a wider strip is two-stage guillotine
 * cutting with trimming. As a whole-number programme over strips (see `relaxation.ts`) its linear relaxation is
 * very tight once the number of strips of each height is whole, so the search branches on those numbers first and
 * then on how many strips hold a number of copies of one piece. It goes on where the bound is least, so that the
 * bound rises as fast as it can, and rounds relaxed plans to whole ones on the way (see `dive.ts`).
 *
 * Why our own search and not a general solver compiled for the web: the strips must be generated in either case;
 * such a solver takes longer to load than most lists take to plan (see `linearProgram.ts`); and the bound that is
 * proved here holds for any prices, so that it does not depend on the solver's tolerances. It needs no binary, runs
 * in every browser and gives the same plan everywhere.
 *
 * How far it comes within the usual work, on made-up lists as patterns have them (`npm run bench:plan`): lists of up
 * to eight kinds are nearly all proved; of twelve kinds more than half, and the yardage sold by the eighth of a yard
 * for nine in ten; of twenty-four kinds the yardage for two in three, of thirty-six for one in three. What is not proved comes
 * within one or two percent of the bound. Both the plan and the bound could still move there: ten times the work
 * halves the gap, and does not close it.
 *
 * Work is limited by counting elementary steps, never by a clock, so that equal lists give equal plans.
 */
import { choose, Experience, WHOLE } from './branching.ts';
import { dive } from './dive.ts';
import { StripFiller } from './filler.ts';
import type { Strip } from './greedy.ts';
import { Incumbent } from './incumbent.ts';
import type { StripProblem } from './problem.ts';
import { Relaxation, type StripColumn, StripModel } from './relaxation.ts';
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

export interface Effort {
  /** Limit in elementary steps. */
  readonly work?: number | undefined;
  /** Whether a plan is good enough, given its height and the bound, although others may be shorter. */
  readonly suffices?: ((height: number, bound: number) => boolean) | undefined;
}

/** Elementary steps; 30 to 50 ms of processor time. */
export const USUAL_WORK = 15_000_000;

interface Node {
  /** Made when the node's turn comes: most nodes never have one. */
  readonly relaxation: () => Relaxation;
  readonly bound: number;
  /** Tells the experience how much the branch to this node raised the bound. */
  readonly learn: (relaxed: number) => void;
}

/** Relaxed plans are rounded at the first nodes and then at every eighth: that takes longer than to solve them. */
const ALWAYS_DIVE = 4;
const DIVE_EVERY = 8;
/** Elementary steps that a cell of the filler's table takes, and a node beside its relaxation. */
const CELL = 2;
const NODE = 15_000;

/** @throws RangeError when a kind has no placement (such pieces are sorted out before). */
export function shortestStrips(problem: StripProblem, effort: Effort = {}): StripPlan {
  if (problem.ways.some((ways) => ways.length === 0)) throw new RangeError('a piece fits into no strip');
  const best = new Incumbent(problem);
  const area = Math.ceil(
    problem.kinds.reduce((sum, k) => sum + k.demand * k.width * k.length, 0) /
      (problem.capacity * best.unit) -
      WHOLE,
  );
  const least = Math.min(area, best.height);
  const isEnough = (bound: number) =>
    bound >= best.height || (effort.suffices?.(best.height * best.unit, bound * best.unit) ?? false);
  const filler = isEnough(least) ? undefined : StripFiller.of(problem);
  const search = filler && new Search(best, filler, isEnough);
  const bound = search?.run(least, effort.work ?? USUAL_WORK) ?? least;
  return {
    strips: best.strips,
    height: best.height * best.unit,
    bound: bound * best.unit,
    nodes: search?.nodes ?? 0,
  };
}

class Search {
  readonly #best: Incumbent;
  readonly #filler: StripFiller;
  readonly #isEnough: (bound: number) => boolean;
  readonly #model: StripModel;
  readonly #experience: Experience;
  readonly #open: Node[] = [];
  /** The least bound of nodes that were given up. */
  #unsettled = Number.POSITIVE_INFINITY;
  nodes = 0;

  constructor(best: Incumbent, filler: StripFiller, isEnough: (bound: number) => boolean) {
    this.#best = best;
    this.#filler = filler;
    this.#isEnough = isEnough;
    const heights = filler.heights.map((height) => height / best.unit);
    this.#model = new StripModel(best.problem, filler, heights, new Sums(heights, best.height));
    this.#experience = new Experience(heights);
    for (const strip of best.strips) this.#model.put(this.#column(strip));
  }

  /** @returns the proven bound. */
  run(least: number, work: number): number {
    const [best, model] = [this.#best, this.#model];
    const relaxation = () => Relaxation.of(model, 1000 * best.height);
    this.#open.push({ relaxation, bound: model.sums.from(least), learn: () => {} });
    while (this.#open.length > 0 && !this.#isEnough(this.#bound())) {
      if (best.steps + CELL * this.#filler.cells > work) break;
      const node = takeBest(this.#open);
      if (node.bound < best.height) this.#process(node);
    }
    return this.#bound();
  }

  #bound(): number {
    return this.#open.reduce(
      (least, { bound }) => Math.min(least, bound),
      Math.min(this.#best.height, this.#unsettled),
    );
  }

  /** Solves a node, and opens those below it. */
  #process(node: Node): void {
    const [best, { sums, heights }] = [this.#best, this.#model];
    this.nodes++;
    const relaxation = node.relaxation();
    const relaxed = relaxation.solve(sums.below(best.height) + WHOLE, node.bound);
    best.steps += NODE + relaxation.steps;
    node.learn(Math.min(relaxed, best.height));
    const bound = Math.max(node.bound, sums.from(relaxed));
    if (bound >= best.height) return;
    const choice = choose(relaxation.uses(), heights.length, this.#experience);
    const isDue = this.nodes <= ALWAYS_DIVE || this.nodes % DIVE_EVERY === 0;
    if (isDue || choice?.strips.of !== 'height') dive(relaxation, best, bound, sums);
    if (bound >= best.height) return;
    if (!choice) {
      this.#unsettled = Math.min(this.#unsettled, bound);
      return;
    }
    const { strips, number } = choice;
    const [down, up] = [Math.floor(number), Math.ceil(number)];
    const below = (sense: 'at most' | 'at least', limit: number): Node => ({
      relaxation: () => relaxation.with({ ...strips, sense, limit }),
      bound,
      learn: (value) => this.#experience.learn(strips, sense, (value - relaxed) / Math.abs(limit - number)),
    });
    this.#open.push(below('at most', down), below('at least', up));
  }

  #column(strip: Strip): StripColumn {
    const { placements } = this.#best.problem;
    const height = Math.max(...[...strip.keys()].map((p) => placements[p]?.height ?? 0));
    return { height: this.#filler.heights.indexOf(height), filling: [...strip] };
  }
}

/** The node with the least bound; of equal ones the latest, so that the search goes deep first. */
function takeBest(open: Node[]): Node {
  let best = open.length - 1;
  for (let i = best - 1; i >= 0; i--) if ((open[i] as Node).bound < (open[best] as Node).bound) best = i;
  return open.splice(best, 1)[0] as Node;
}
