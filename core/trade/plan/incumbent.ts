/** The best plan of strips found so far. */
import { greedyStrips, plainStrips, type Strip, totalHeight, trimmed } from './greedy.ts';
import { greatestCommonDivisor, type StripProblem } from './problem.ts';

export class Incumbent {
  readonly problem: StripProblem;
  readonly demand: readonly number[];
  /** Greatest common measure of all heights; every plan's height is a multiple of it. */
  readonly unit: number;
  #strips: readonly Strip[];
  /** Height of the best plan, in `unit`. */
  #height: number;
  /** Elementary steps so far: the measure of work done. */
  steps = 0;

  /** Starts with the better of the plain and the greedy plan. */
  constructor(problem: StripProblem) {
    this.problem = problem;
    this.demand = problem.kinds.map(({ demand }) => demand);
    this.unit = problem.placements.map(({ height }) => height).reduce(greatestCommonDivisor, 0) || 1;
    this.#strips = plainStrips(problem, this.demand);
    this.#height = this.measure(this.#strips);
    this.complete([], this.demand);
  }

  get strips(): readonly Strip[] {
    return this.#strips;
  }

  get height(): number {
    return this.#height;
  }

  /** Adds to some strips greedy ones for what is still wanted, and keeps the plan if it is shorter. */
  complete(taken: readonly Strip[], wanted: readonly number[]): void {
    const plan = trimmed(this.problem, this.demand, [...taken, ...greedyStrips(this.problem, wanted)]);
    this.steps += 12 * plan.length * wanted.length;
    const height = this.measure(plan);
    if (height < this.#height) [this.#strips, this.#height] = [plan, height];
  }

  measure(strips: readonly Strip[]): number {
    return totalHeight(strips, this.problem) / this.unit;
  }
}
