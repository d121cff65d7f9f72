/**
 * A small linear programme: minimise cost · x with x ≥ 0 and rows "at least" or "at most" a limit.
 *
 * Simplex method with a dense inverse of the basis; a few dozen rows, a few hundred columns. Columns can be added
 * and limits changed between solutions, and a copy with one more row starts from the basis of the original, so
 * that a few steps of the dual method repair it. An "at least" row has an artificial column of a cost so high that
 * it is used only when the row cannot be met otherwise.
 *
 * Nothing is proved by these floating-point numbers: bounds are computed from the duals by the caller.
 */
export interface Row {
  readonly sense: 'at least' | 'at most';
  readonly limit: number;
}

const EPSILON = 1e-9;
/** After so many pivots a copy computes the inverse anew, so that rounding errors do not add up. */
const FRESH = 100;
/** After so many steps in a row without progress the first improving column is taken, which cannot cycle (Bland). */
const PATIENCE = 40;

export class LinearProgram {
  readonly #penalty: number;
  #size = 0;
  /** Columns one after the other: the entries of column j stand from #start[j] to #start[j + 1]. */
  #cost: number[] = [];
  #start: number[] = [0];
  #entryRow: number[] = [];
  #entryValue: number[] = [];
  /** Column of each basis row, its value, and the inverse of the basis, row by row. */
  #basis: number[] = [];
  #value = new Float64Array(0);
  #limits: number[] = [];
  #inverse = new Float64Array(0);
  #direction = new Float64Array(0);
  #duals = new Float64Array(0);
  #pivots = 0;
  /** Elementary steps so far: the measure of work done. */
  steps = 0;

  /** @param penalty the cost of one unit that an "at least" row is short. */
  constructor(penalty: number) {
    this.#penalty = penalty;
  }

  get duals(): Float64Array {
    return this.#duals;
  }

  copy(): LinearProgram {
    const copy = new LinearProgram(this.#penalty);
    copy.#size = this.#size;
    copy.#cost = this.#cost.slice();
    copy.#start = this.#start.slice();
    copy.#entryRow = this.#entryRow.slice();
    copy.#entryValue = this.#entryValue.slice();
    copy.#basis = this.#basis.slice();
    copy.#value = this.#value.slice();
    copy.#inverse = this.#inverse.slice();
    copy.#direction = this.#direction.slice();
    copy.#duals = this.#duals.slice();
    copy.#limits = this.#limits.slice();
    copy.#pivots = this.#pivots;
    if (copy.#pivots > FRESH) copy.#refresh();
    return copy;
  }

  /** Inverts the basis again (Gauss and Jordan, with row exchange), and computes values and duals from it. */
  #refresh(): void {
    const size = this.#size;
    const matrix = new Float64Array(size * size);
    const inverse = new Float64Array(size * size);
    this.#basis.forEach((column, place) => {
      inverse[place * size + place] = 1;
      for (let i = this.#start[column] as number; i < (this.#start[column + 1] as number); i++)
        matrix[(this.#entryRow[i] as number) * size + place] = this.#entryValue[i] as number;
    });
    const at = (table: Float64Array, row: number, column: number) => table[row * size + column] as number;
    for (let place = 0; place < size; place++) {
      let pivotRow = place;
      for (let row = place + 1; row < size; row++)
        if (Math.abs(at(matrix, row, place)) > Math.abs(at(matrix, pivotRow, place))) pivotRow = row;
      const pivot = at(matrix, pivotRow, place);
      if (Math.abs(pivot) <= EPSILON) return; // keeps the old inverse
      for (const table of [matrix, inverse]) {
        for (let j = 0; j < size; j++) {
          const moved = at(table, place, j);
          table[place * size + j] = at(table, pivotRow, j) / pivot;
          if (pivotRow !== place) table[pivotRow * size + j] = moved;
        }
      }
      for (let row = 0; row < size; row++) {
        const factor = at(matrix, row, place);
        if (row === place || factor === 0) continue;
        for (const table of [matrix, inverse])
          for (let j = 0; j < size; j++)
            table[row * size + j] = at(table, row, j) - factor * at(table, place, j);
      }
    }
    this.#inverse = inverse;
    this.#pivots = 0;
    this.#duals.fill(0);
    this.#basis.forEach((column, place) => {
      const cost = this.#cost[column] as number;
      for (let j = 0; j < size; j++)
        this.#duals[j] = (this.#duals[j] as number) + cost * at(inverse, place, j);
    });
    this.setLimits(this.#limits);
    this.steps += 2 * size * size * size;
  }

  /**
   * Adds a row whose coefficient is 1 for the columns in `members` and 0 for all others. Its own column (what the
   * row has left, or has too much) joins the basis, which may make its value negative until the next solution.
   */
  addRow({ sense, limit }: Row, members: ReadonlySet<number>): void {
    this.#appendEntries(members);
    const [size, before] = [this.#size + 1, this.#inverse];
    const inverse = new Float64Array(size * size);
    for (let row = 0; row < this.#size; row++)
      inverse.set(before.subarray(row * this.#size, (row + 1) * this.#size), row * size);
    // The new row of the inverse: what the members in the basis take from the row, with the sign of its own column.
    const sign = sense === 'at least' ? -1 : 1;
    const last = this.#size * size;
    let rest = limit;
    this.#basis.forEach((column, row) => {
      if (!members.has(column)) return;
      rest -= this.#value[row] as number;
      for (let j = 0; j < this.#size; j++)
        inverse[last + j] = (inverse[last + j] as number) - sign * (before[row * this.#size + j] as number);
    });
    inverse[last + this.#size] = sign;
    const row = this.#size;
    this.#limits.push(limit);
    this.#size = size;
    this.#inverse = inverse;
    this.#direction = new Float64Array(size);
    this.#value = Float64Array.of(...this.#value, sign * rest);
    this.#duals = Float64Array.of(...this.#duals, 0);
    this.#basis.push(this.addColumn(0, [row], [sign]));
    if (sense === 'at least') this.addColumn(this.#penalty, [row], [1]);
  }

  #appendEntries(members: ReadonlySet<number>): void {
    if (members.size === 0) return;
    const [start, rows, values]: number[][] = [[0], [], []] as number[][];
    if (!start || !rows || !values) return;
    for (let column = 0; column < this.#cost.length; column++) {
      for (let i = this.#start[column] as number; i < (this.#start[column + 1] as number); i++) {
        rows.push(this.#entryRow[i] as number);
        values.push(this.#entryValue[i] as number);
      }
      if (members.has(column)) {
        rows.push(this.#size);
        values.push(1);
      }
      start.push(rows.length);
    }
    [this.#start, this.#entryRow, this.#entryValue] = [start, rows, values];
  }

  /** @returns the column's number, by which `values` tells about it. */
  addColumn(cost: number, rows: readonly number[], values: readonly number[]): number {
    for (let i = 0; i < rows.length; i++) {
      this.#entryRow.push(rows[i] as number);
      this.#entryValue.push(values[i] as number);
    }
    this.#start.push(this.#entryRow.length);
    return this.#cost.push(cost) - 1;
  }

  /** Replaces the limits of all rows. */
  setLimits(limits: readonly number[]): void {
    this.#limits = [...limits];
    for (let row = 0, at = 0; row < this.#size; row++) {
      let value = 0;
      for (let j = 0; j < this.#size; j++, at++)
        value += (this.#inverse[at] as number) * (limits[j] as number);
      this.#value[row] = value;
    }
  }

  /** Values of all columns that are not 0. */
  values(): [column: number, value: number][] {
    const values: [number, number][] = [];
    this.#basis.forEach((column, row) => {
      const value = this.#value[row] as number;
      if (value > EPSILON) values.push([column, value]);
    });
    return values;
  }

  /** Meets the rows, then improves until no column helps; rounding errors cannot keep it going for ever. */
  solve(): void {
    let left = 20 * this.#size + 200;
    while (left-- > 0 && this.#repair()) {}
    let idle = 0;
    while (left-- > 0) {
      const entering = this.#entering(idle > PATIENCE);
      if (entering < 0) return;
      const reducedCost = this.#reducedCost(entering);
      this.#setDirection(entering);
      const leaving = this.#leaving();
      if (leaving < 0) return; // no cost is negative, so this cannot happen but by rounding
      idle = (this.#value[leaving] as number) > EPSILON ? 0 : idle + 1;
      this.#pivot(leaving, entering, reducedCost);
    }
  }

  /** One step of the dual method: takes the most negative value out of the basis. False when there is none. */
  #repair(): boolean {
    let leaving = -1;
    let least = -EPSILON;
    for (let row = 0; row < this.#size; row++) {
      const value = this.#value[row] as number;
      if (value < least) [leaving, least] = [row, value];
    }
    if (leaving < 0) return false;
    const [rows, values, inverse] = [this.#entryRow, this.#entryValue, this.#inverse];
    const from = leaving * this.#size;
    let entering = -1;
    let bestRatio = Number.POSITIVE_INFINITY;
    let bestStep = 0;
    let bestCost = 0;
    for (let column = 0; column < this.#cost.length; column++) {
      let step = 0;
      const end = this.#start[column + 1] as number;
      for (let i = this.#start[column] as number; i < end; i++)
        step -= (inverse[from + (rows[i] as number)] as number) * (values[i] as number);
      if (step <= EPSILON) continue;
      const cost = Math.max(0, this.#reducedCost(column));
      const ratio = cost / step;
      if (ratio < bestRatio - EPSILON || (ratio <= bestRatio + EPSILON && step > bestStep))
        [entering, bestRatio, bestStep, bestCost] = [column, ratio, step, cost];
    }
    this.steps += 2 * this.#entryRow.length;
    if (entering < 0) return false;
    this.#setDirection(entering);
    this.#pivot(leaving, entering, bestCost);
    return true;
  }

  #reducedCost(column: number): number {
    const [rows, values, duals] = [this.#entryRow, this.#entryValue, this.#duals];
    let cost = this.#cost[column] as number;
    const end = this.#start[column + 1] as number;
    for (let i = this.#start[column] as number; i < end; i++)
      cost -= (duals[rows[i] as number] as number) * (values[i] as number);
    return cost;
  }

  /** The column of the least reduced cost, or the first that improves; −1 when none does. */
  #entering(first: boolean): number {
    let best = -1;
    let least = -EPSILON;
    for (let column = 0; column < this.#cost.length; column++) {
      const reducedCost = this.#reducedCost(column);
      if (reducedCost >= least) continue;
      [best, least] = [column, reducedCost];
      if (first) break;
    }
    this.steps += 2 * this.#entryRow.length;
    return best;
  }

  /** What one unit of a column takes from the value of each basis row. */
  #setDirection(column: number): void {
    const [rows, values, inverse, size] = [this.#entryRow, this.#entryValue, this.#inverse, this.#size];
    const direction = this.#direction.fill(0);
    const end = this.#start[column + 1] as number;
    for (let i = this.#start[column] as number; i < end; i++) {
      const [row, value] = [rows[i] as number, values[i] as number];
      for (let k = 0, at = row; k < size; k++, at += size)
        direction[k] = (direction[k] as number) + (inverse[at] as number) * value;
    }
  }

  /** The basis row that reaches 0 first; of several the one with the largest pivot; −1 for none. */
  #leaving(): number {
    let best = -1;
    let bestRatio = Number.POSITIVE_INFINITY;
    let bestStep = 0;
    for (let row = 0; row < this.#size; row++) {
      const step = this.#direction[row] as number;
      if (step <= EPSILON) continue;
      const ratio = Math.max(0, this.#value[row] as number) / step;
      const tie = ratio <= bestRatio + EPSILON && step > bestStep;
      if (ratio < bestRatio - EPSILON || tie) [best, bestRatio, bestStep] = [row, ratio, step];
    }
    return best;
  }

  #pivot(leaving: number, column: number, reducedCost: number): void {
    const [inverse, value, direction, size] = [this.#inverse, this.#value, this.#direction, this.#size];
    const pivot = direction[leaving] as number;
    const from = leaving * size;
    for (let j = 0; j < size; j++) inverse[from + j] = (inverse[from + j] as number) / pivot;
    const amount = (value[leaving] as number) / pivot;
    for (let i = 0; i < size; i++) {
      const factor = direction[i] as number;
      if (i === leaving || factor === 0) continue;
      const to = i * size;
      for (let j = 0; j < size; j++)
        inverse[to + j] = (inverse[to + j] as number) - factor * (inverse[from + j] as number);
      value[i] = (value[i] as number) - factor * amount;
    }
    value[leaving] = amount;
    this.#basis[leaving] = column;
    for (let j = 0; j < size; j++)
      this.#duals[j] = (this.#duals[j] as number) + reducedCost * (inverse[from + j] as number);
    this.#pivots++;
    this.steps += 2 * size * size;
  }
}
