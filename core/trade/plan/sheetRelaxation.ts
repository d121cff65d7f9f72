/**
 * The linear relaxation of a plan of sheets, by column generation: a column is a whole sheet.
 *
 * The best sheet at given prices is found in two steps: the filler values the best strip of every height, then a
 * second knapsack stacks strips into the sheet. A piece that is wanted once may so stand in several strips of a
 * sheet, which only makes the bound weaker.
 *
 * Bound: for prices π and the most valuable sheet v, every plan takes at least π · demand / max(1, v) sheets
 * (Farley's bound, 1990; the name is from memory): the prices divided by max(1, v) are prices that no sheet beats.
 */
import { WHOLE } from './branching.ts';
import { ColumnPool } from './columnPool.ts';
import { type Filling, StripFiller } from './filler.ts';
import { LinearProgram } from './linearProgram.ts';
import { greatestCommonDivisor, type StripProblem } from './problem.ts';

export interface SheetDirection {
  readonly problem: StripProblem;
  readonly room: number;
}

export interface SheetColumn {
  /** Index of the direction in which the strips run. */
  readonly direction: number;
  readonly strips: readonly Filling[];
}

export interface SheetRelaxation {
  readonly bound: number;
  /** A whole plan near the relaxed one; it may hold more than is wanted. Nothing when it takes too many sheets. */
  readonly rounded: readonly SheetColumn[] | undefined;
}

const MOST_ROUNDS = 60;
const IMPROVES = 1e-7;

/**
 * @param most as many sheets are enough, so plans that take as many are of no interest.
 */
export function sheetRelaxation(directions: readonly SheetDirection[], most: number): SheetRelaxation {
  const oracles = directions.flatMap((direction, index) => {
    const filler = StripFiller.of(direction.problem);
    return filler ? [new SheetFiller(direction, index, filler)] : [];
  });
  const demand = directions[0]?.problem.kinds.map((kind) => kind.demand) ?? [];
  if (oracles.length < directions.length || demand.length === 0) return { bound: 0, rounded: undefined };
  const programme = new SheetProgramme(oracles, demand, 1000 * most);
  const bound = Math.ceil(programme.solve() - WHOLE);
  return { bound, rounded: bound < most ? rounded(programme, most) : undefined };
}

function rounded(programme: SheetProgramme, most: number): SheetColumn[] | undefined {
  const sheets: SheetColumn[] = [];
  while (sheets.length < most) {
    const uses = programme.uses();
    const whole = uses
      .map(([column, times]) => [column, Math.floor(times + WHOLE)] as const)
      .filter(([, times]) => times > 0);
    const [largest] = [...uses].sort(([, a], [, b]) => b - a);
    const taken = whole.length > 0 ? whole : largest ? [[largest[0], 1] as const] : [];
    if (taken.length === 0) return undefined;
    for (const [column, times] of taken) sheets.push(...Array<SheetColumn>(times).fill(column));
    programme.cut(taken);
    if (programme.isMet) return sheets.length < most ? sheets : undefined;
    programme.solve();
  }
  return undefined;
}

class SheetProgramme {
  readonly #program: LinearProgram;
  readonly #oracles: readonly SheetFiller[];
  readonly #pool = new ColumnPool(1);
  readonly #columns: SheetColumn[] = [];
  #demand: number[];

  constructor(oracles: readonly SheetFiller[], demand: readonly number[], penalty: number) {
    this.#oracles = oracles;
    this.#demand = [...demand];
    this.#program = new LinearProgram(this.#pool, penalty);
    for (const limit of demand) this.#program.addRow({ of: 'entries', sense: 'at least', limit });
  }

  get isMet(): boolean {
    return this.#demand.every((count) => count === 0);
  }

  uses(): (readonly [SheetColumn, number])[] {
    return this.#program.values().map(([number, times]) => [this.#columns[number] as SheetColumn, times]);
  }

  /** @returns the bound on the number of sheets. */
  solve(): number {
    let bound = 0;
    for (let round = 0; round < MOST_ROUNDS; round++) {
      this.#program.solve();
      const prices = Float64Array.from(this.#demand, (_, kind) =>
        Math.max(0, this.#program.duals[kind] ?? 0),
      );
      const total = this.#demand.reduce((sum, count, kind) => sum + count * (prices[kind] as number), 0);
      const found = this.#oracles.map((oracle) => oracle.best(prices, this.#demand));
      const most = Math.max(1, ...found.map(({ value }) => value));
      bound = Math.max(bound, total / most);
      const fresh = found.filter(({ value }) => value > 1 + IMPROVES);
      if (fresh.length === 0) break;
      for (const { column } of fresh) this.#put(column);
    }
    return bound;
  }

  cut(sheets: readonly (readonly [SheetColumn, number])[]): void {
    for (const [column, times] of sheets)
      for (const [kind, copies] of this.#made(column))
        this.#demand[kind] = Math.max(0, (this.#demand[kind] ?? 0) - times * copies);
    this.#program.setLimits(this.#demand);
  }

  #made({ direction, strips }: SheetColumn): Map<number, number> {
    const made = new Map<number, number>();
    for (const [placement, copies] of strips.flat()) {
      const kind = this.#oracles[direction]?.kindOf(placement) ?? -1;
      made.set(kind, (made.get(kind) ?? 0) + copies);
    }
    return made;
  }

  #put(column: SheetColumn): void {
    const made = this.#made(column);
    const number = this.#pool.add(1, 0, [...made.keys()], [...made.values()]);
    this.#columns[number] = column;
  }
}

/** Finds the most valuable sheet with strips in one direction. */
class SheetFiller {
  readonly #direction: SheetDirection;
  readonly #index: number;
  readonly #filler: StripFiller;
  readonly #unit: number;

  constructor(direction: SheetDirection, index: number, filler: StripFiller) {
    this.#direction = direction;
    this.#index = index;
    this.#filler = filler;
    this.#unit = filler.heights.reduce(greatestCommonDivisor, 0) || 1;
  }

  kindOf(placement: number): number | undefined {
    return this.#direction.problem.placements[placement]?.kind;
  }

  best(prices: Float64Array, demand: readonly number[]): { value: number; column: SheetColumn } {
    const { placements } = this.#direction.problem;
    const value = this.#filler.fill(
      Float64Array.from(placements, ({ kind }) => prices[kind] as number),
      placements.map(({ kind, most }) => Math.min(most, demand[kind] as number)),
    );
    const stacked = this.#stack(value);
    const strips = stacked.heights.map((height) => this.#filler.filling(height));
    return { value: stacked.value, column: { direction: this.#index, strips } };
  }

  /** The most valuable strips (indices of heights) that fit into the room together. */
  #stack(value: Float64Array): { value: number; heights: number[] } {
    const heights = this.#filler.heights.map((height) => height / this.#unit);
    const room = Math.floor(this.#direction.room / this.#unit);
    const best = new Float64Array(room + 1);
    const last = new Int32Array(room + 1).fill(-1);
    for (let at = 1; at <= room; at++) {
      best[at] = best[at - 1] as number;
      heights.forEach((height, index) => {
        if (height > at) return;
        const candidate = (best[at - height] as number) + (value[index] as number);
        if (candidate > (best[at] as number)) [best[at], last[at]] = [candidate, index];
      });
    }
    const chosen: number[] = [];
    for (let at = room; at > 0; ) {
      const index = last[at] as number;
      if (index >= 0) chosen.push(index);
      at -= index >= 0 ? (heights[index] as number) : 1;
    }
    return { value: best[room] as number, heights: chosen };
  }
}
