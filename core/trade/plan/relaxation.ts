/**
 * The linear relaxation of a strip plan, by column generation.
 *
 * A column is a strip: its height and how many copies of each placement it holds. The programme chooses how often
 * each strip is cut, so that every demand is met and the sum of heights is least. Columns are found when they are
 * needed: the duals price the pieces, and the filler finds the most valuable strip of every height.
 *
 * The bound does not rest on the accuracy of the programme. For any prices π (0 or more for "at least" rows, 0 or
 * less for "at most" rows), every plan costs π · limits or more plus the reduced costs of its strips. If r ≤ 0 is the
 * least reduced cost of any strip divided by its height, then a plan that costs no more than C has strips with
 * reduced costs of at least C · r together: it costs at least π · limits + C · r, Lagrange's bound.
 */
import { ColumnPool } from './columnPool.ts';
import type { Filling, StripFiller } from './filler.ts';
import { LinearProgram, type Members } from './linearProgram.ts';
import type { StripProblem } from './problem.ts';
import type { Sums } from './sums.ts';

export interface StripColumn {
  /** Index into the filler's heights. The strip may be higher than its pieces. */
  readonly height: number;
  readonly filling: Filling;
}

/** What a branch of the search demands of the number of certain strips. */
export type Branch = Strips & { readonly sense: 'at least' | 'at most'; readonly limit: number };

export type Strips =
  /** Strips of this height (index) or higher. */
  | { readonly of: 'height'; readonly height: number }
  /** Strips that hold at least so many copies of a placement. */
  | { readonly of: 'copies'; readonly placement: number; readonly copies: number };

export type Uses = readonly (readonly [column: StripColumn, times: number])[];

const IMPROVES = 1e-7;
/** Rounds of column generation; only rounding errors could need so many. */
const MOST_ROUNDS = 100;
/** Elementary steps of one solution; the same. */
const MOST_STEPS = 5_000_000;

/** What all relaxations of one search have in common. */
export class StripModel {
  readonly problem: StripProblem;
  readonly filler: StripFiller;
  /** Heights in units of their greatest common measure, so that costs are small whole numbers. */
  readonly heights: readonly number[];
  readonly sums: Sums;
  readonly pool: ColumnPool;
  readonly #columns: StripColumn[] = [];

  constructor(problem: StripProblem, filler: StripFiller, heights: readonly number[], sums: Sums) {
    this.problem = problem;
    this.filler = filler;
    this.heights = heights;
    this.sums = sums;
    this.pool = new ColumnPool(heights.length);
  }

  column(number: number): StripColumn {
    return this.#columns[number] as StripColumn;
  }

  put(column: StripColumn): void {
    const made = new Map<number, number>();
    for (const [placement, copies] of column.filling) {
      const kind = this.problem.placements[placement]?.kind ?? -1;
      made.set(kind, (made.get(kind) ?? 0) + copies);
    }
    const cost = this.heights[column.height] as number;
    const number = this.pool.add(cost, column.height, [...made.keys()], [...made.values()]);
    this.#columns[number] = column;
  }

  members(strips: Strips): Members {
    if (strips.of === 'height') return { of: 'groups', from: strips.height };
    const known: boolean[] = [];
    return { of: 'some', has: (number) => (known[number] ??= concerns(strips, this.column(number))) };
  }
}

export class Relaxation {
  readonly #model: StripModel;
  readonly #program: LinearProgram;
  #demand: readonly number[];
  #branches: readonly Branch[];

  private constructor(
    model: StripModel,
    program: LinearProgram,
    demand: readonly number[],
    branches: readonly Branch[],
  ) {
    this.#model = model;
    this.#program = program;
    this.#demand = demand;
    this.#branches = branches;
  }

  /** @param penalty more than any plan costs. */
  static of(model: StripModel, penalty: number): Relaxation {
    const demand = model.problem.kinds.map((kind) => kind.demand);
    const program = new LinearProgram(model.pool, penalty);
    for (const limit of demand) program.addRow({ of: 'entries', sense: 'at least', limit });
    return new Relaxation(model, program, demand, []);
  }

  /** Elementary steps of the programme so far; those of the filler are counted there. */
  get steps(): number {
    return this.#program.steps;
  }

  get branches(): readonly Branch[] {
    return this.#branches;
  }

  /** The same with one more branch. */
  with(branch: Branch): Relaxation {
    const row = { ...this.#model.members(branch), sense: branch.sense, limit: branch.limit };
    const program = this.#program.with(row);
    return new Relaxation(this.#model, program, this.#demand, [...this.#branches, branch]);
  }

  copy(): Relaxation {
    return new Relaxation(this.#model, this.#program.copy(), this.#demand, this.#branches);
  }

  /** Lowers what is wanted by some strips that have been cut. */
  cut(strips: Uses): void {
    const demand = [...this.#demand];
    const branches = this.#branches.map((branch) => ({ ...branch }));
    for (const [column, times] of strips) {
      for (const [placement, copies] of column.filling) {
        const kind = this.#model.problem.placements[placement]?.kind ?? -1;
        demand[kind] = Math.max(0, (demand[kind] as number) - times * copies);
      }
      for (const branch of branches)
        if (concerns(branch, column)) branch.limit = Math.max(0, branch.limit - times);
    }
    this.#program.setLimits([...demand, ...branches.map(({ limit }) => limit)]);
    [this.#demand, this.#branches] = [demand, branches];
  }

  get demand(): readonly number[] {
    return this.#demand;
  }

  /**
   * Solves the programme, generating columns.
   *
   * @param cutoff stop as soon as the bound exceeds this: such a plan is of no interest.
   * @param known a bound that is proved already; when the programme cannot raise it no strips are generated.
   * @param rounds of column generation; the bound holds after any number of them.
   * @returns the bound: no plan within the branches costs less.
   */
  solve(cutoff: number, known = 0, rounds: number = MOST_ROUNDS): number {
    const { filler, sums } = this.#model;
    const last = this.#program.steps + MOST_STEPS;
    let bound = known;
    for (let round = 0; round < rounds; round++) {
      this.#program.solve();
      // More strips could make the programme cheaper, but no plan's height lies between the bound and its cost.
      if (sums.from(bound) >= sums.from(this.#program.cost)) break;
      const prices = this.#prices();
      const value = filler.fill(prices.worth, prices.most, prices.bonus);
      const { columns, least } = this.#improving(prices.cost, value);
      bound = Math.max(bound, prices.limits + cutoff * least);
      if (bound > cutoff || columns.length === 0 || this.#program.steps > last) break;
      for (const column of columns) this.#model.put(column);
    }
    return bound;
  }

  /** The strips that the relaxed plan uses, and how often. */
  uses(): Uses {
    return this.#program.values().map(([number, times]) => [this.#model.column(number), times]);
  }

  /** The strips that would make the programme cheaper, and the least reduced cost per height (0 at most). */
  #improving(cost: Float64Array, value: Float64Array): { columns: StripColumn[]; least: number } {
    let least = 0;
    const columns: StripColumn[] = [];
    for (let height = 0; height < cost.length; height++) {
      const reducedCost = (cost[height] as number) - (value[height] as number);
      least = Math.min(least, reducedCost / (this.#model.heights[height] as number));
      if (reducedCost >= -IMPROVES) continue;
      // A higher strip that holds nothing more is of no use, unless it costs less because a branch asks for it.
      const [costBelow, valueBelow] = [cost[height - 1] ?? Number.POSITIVE_INFINITY, value[height - 1] ?? 0];
      if ((value[height] as number) <= valueBelow && (cost[height] as number) >= costBelow) continue;
      columns.push({ height, filling: this.#model.filler.filling(height) });
    }
    return { columns, least };
  }

  /** What the duals make of each placement, of strips of each height, and of all limits together. */
  #prices() {
    const { placements } = this.#model.problem;
    const duals = this.#program.duals;
    const [demand, kinds] = [this.#demand, this.#demand.length];
    const worth = new Float64Array(placements.length);
    const most = new Int32Array(placements.length);
    placements.forEach(({ kind, most: fit }, index) => {
      worth[index] = Math.max(0, duals[kind] as number);
      most[index] = Math.min(fit, demand[kind] as number);
    });
    let limits = 0;
    demand.forEach((count, kind) => {
      limits += Math.max(0, duals[kind] as number) * count;
    });
    const cost = Float64Array.from(this.#model.heights);
    const bonus = new Map<number, Float64Array>();
    this.#branches.forEach((branch, i) => {
      const raw = duals[kinds + i] as number;
      const dual = branch.sense === 'at least' ? Math.max(0, raw) : Math.min(0, raw);
      limits += dual * branch.limit;
      if (branch.of === 'height') {
        for (let h = branch.height; h < cost.length; h++) cost[h] = (cost[h] as number) - dual;
      } else {
        const table = bonus.get(branch.placement) ?? new Float64Array((most[branch.placement] as number) + 1);
        for (let n = branch.copies; n < table.length; n++) table[n] = (table[n] as number) + dual;
        bonus.set(branch.placement, table);
      }
    });
    return { worth, most, cost, bonus, limits };
  }
}

export function concerns(strips: Strips, { height, filling }: StripColumn): boolean {
  if (strips.of === 'height') return height >= strips.height;
  return filling.some(([placement, copies]) => placement === strips.placement && copies >= strips.copies);
}
