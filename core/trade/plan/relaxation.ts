/**
 * The linear relaxation of a strip plan, by column generation.
 *
 * A column is a strip: its height and how many copies of each placement it holds. The programme chooses how often
 * each strip is cut, so that every demand is met and the sum of heights is least. Columns are found when they are
 * needed: the duals price the pieces, and the filler finds the most valuable strip of every height.
 *
 * The bound does not rest on the accuracy of the programme. For any prices π (0 or more for "at least" rows, 0 or
 * less for "at most" rows) and the least reduced cost r of all strips, every plan of at most K strips costs at
 * least π · limits + K · min(0, r): Lagrange's bound.
 */
import type { Filling, StripFiller } from './filler.ts';
import { LinearProgram, type Row } from './linearProgram.ts';
import type { StripProblem } from './problem.ts';

export interface StripColumn {
  /** Index into the filler's heights. The strip may be higher than its pieces. */
  readonly height: number;
  readonly filling: Filling;
}

/** What a branch of the search demands of the number of certain strips. */
export type Branch = Row & Strips;

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
export interface StripModel {
  readonly problem: StripProblem;
  readonly filler: StripFiller;
  /** Heights in units of their greatest common measure, so that costs are small whole numbers. */
  readonly heights: readonly number[];
}

export class Relaxation {
  readonly #model: StripModel;
  readonly #program: LinearProgram;
  readonly #columns: (StripColumn | undefined)[];
  #demand: readonly number[];
  #branches: readonly Branch[];
  /** Elementary steps of the programme so far; those of the filler are counted there. */
  #steps = 0;

  private constructor(
    model: StripModel,
    program: LinearProgram,
    columns: (StripColumn | undefined)[],
    demand: readonly number[],
    branches: readonly Branch[],
  ) {
    this.#model = model;
    this.#program = program;
    this.#columns = columns;
    this.#demand = demand;
    this.#branches = branches;
  }

  /** @param penalty more than any plan costs. */
  static of(model: StripModel, columns: readonly StripColumn[], penalty: number): Relaxation {
    const demand = model.problem.kinds.map((kind) => kind.demand);
    const relaxation = new Relaxation(model, new LinearProgram(penalty), [], demand, []);
    for (const limit of demand) relaxation.#program.addRow({ sense: 'at least', limit }, new Set());
    for (const column of columns) relaxation.#put(column);
    return relaxation;
  }

  get steps(): number {
    return this.#steps;
  }

  get branches(): readonly Branch[] {
    return this.#branches;
  }

  /** The same with one more branch. */
  with(branch: Branch): Relaxation {
    const program = this.#program.copy();
    const members = new Set(
      this.#columns.flatMap((column, number) => (column && concerns(branch, column) ? [number] : [])),
    );
    program.addRow(branch, members);
    return new Relaxation(this.#model, program, this.#columns.slice(), this.#demand, [
      ...this.#branches,
      branch,
    ]);
  }

  copy(): Relaxation {
    return new Relaxation(
      this.#model,
      this.#program.copy(),
      this.#columns.slice(),
      this.#demand,
      this.#branches,
    );
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
   * @param rounds of column generation; the bound holds after any number of them.
   * @returns the bound: no plan within the branches costs less.
   */
  solve(cutoff: number, rounds: number = MOST_ROUNDS): number {
    const { filler, heights } = this.#model;
    const strips = Math.floor(cutoff / (heights[0] as number));
    let bound = 0;
    for (let round = 0; round < rounds; round++) {
      const before = this.#program.steps;
      this.#program.solve();
      this.#steps += this.#program.steps - before;
      const prices = this.#prices();
      const value = filler.fill(prices.worth, prices.most, prices.bonus);
      const { columns, least } = this.#improving(prices.cost, value);
      bound = Math.max(bound, prices.limits + strips * least);
      if (bound > cutoff || columns.length === 0 || this.#steps > MOST_STEPS) break;
      for (const column of columns) this.#put(column);
    }
    return bound;
  }

  /** The strips that the relaxed plan uses, and how often. */
  uses(): Uses {
    return this.#program.values().flatMap(([number, times]) => {
      const column = this.#columns[number];
      return column ? [[column, times] as const] : [];
    });
  }

  #put(column: StripColumn): void {
    const { problem, heights } = this.#model;
    const made = new Map<number, number>();
    for (const [placement, copies] of column.filling) {
      const kind = problem.placements[placement]?.kind ?? -1;
      made.set(kind, (made.get(kind) ?? 0) + copies);
    }
    this.#branches.forEach((branch, i) => {
      if (concerns(branch, column)) made.set(this.#demand.length + i, 1);
    });
    const number = this.#program.addColumn(
      heights[column.height] as number,
      [...made.keys()],
      [...made.values()],
    );
    this.#columns[number] = column;
  }

  /** The strips that would make the programme cheaper, and the least reduced cost of any strip (0 at most). */
  #improving(cost: Float64Array, value: Float64Array): { columns: StripColumn[]; least: number } {
    let least = 0;
    const columns: StripColumn[] = [];
    for (let height = 0; height < cost.length; height++) {
      const reducedCost = (cost[height] as number) - (value[height] as number);
      least = Math.min(least, reducedCost);
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
