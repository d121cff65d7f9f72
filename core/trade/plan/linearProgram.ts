/**
 * A small linear programme: minimise cost · x with x ≥ 0 and rows "at least" or "at most" a limit.
 *
 * Simplex method with a dense inverse of the basis; a few dozen rows, some hundred columns of a shared pool. Limits
 * can be changed between solutions, and a copy with one more row starts from the basis of the original, so that a
 * few steps of the dual method repair it. Each row has a column of its own for what it has left or has too much,
 * and an "at least" row one more of a cost so high that it is used only when the row cannot be met otherwise.
 *
 * Why no library: a plan solves some hundred of these, each a few pivots away from one that is solved already.
 * `yalps` and `javascript-lp-solver` start every solution from nothing and do not tell the duals, which is what
 * prices the strips; `highs` is 3.5 MB of WebAssembly that must be loaded before anything can be planned and takes
 * its programme as text. All three were weighed at the versions 0.6, 1.0 and 1.15.
 *
 * Nothing is proved by these floating-point numbers: bounds are computed from the duals by the caller.
 */
import type { ColumnPool } from './columnPool.ts';
import { inverted, widened } from './inverse.ts';

export type Row = { readonly sense: 'at least' | 'at most'; readonly limit: number } & Members;

/** The columns of a row. */
export type Members =
  /** Those with an entry in the pool for it; such rows come first. */
  | { readonly of: 'entries' }
  /** Those from a group on, each once. */
  | { readonly of: 'groups'; readonly from: number }
  /** Those of which this is true, each once. */
  | { readonly of: 'some'; readonly has: (column: number) => boolean };

const EPSILON = 1e-9;
/** A smaller pivot would blow up the rounding errors of the inverse. */
const LEAST_PIVOT = 1e-7;
/** After so many pivots the inverse is computed anew, so that rounding errors do not add up. */
const FRESH = 100;
/** After so many steps in a row without progress the first improving column is taken, which cannot cycle (Bland). */
const PATIENCE = 40;

export class LinearProgram {
  readonly #pool: ColumnPool;
  readonly #penalty: number;
  readonly #rows: Row[] = [];
  /** Number of rows whose columns have entries. */
  #plain = 0;
  #limits: readonly number[] = [];
  /**
   * The column of each basis row, its value, and the inverse of the basis, row by row. Numbers from 0 are columns of
   * the pool; −1 − 2r is the own column of row r, −2 − 2r the one with the high cost.
   */
  #basis: number[] = [];
  #value: Float64Array<ArrayBufferLike> = new Float64Array(0);
  #inverse: Float64Array<ArrayBufferLike> = new Float64Array(0);
  #duals: Float64Array<ArrayBufferLike> = new Float64Array(0);
  #direction: Float64Array<ArrayBufferLike> = new Float64Array(0);
  #pivots = 0;
  /** Elementary steps so far: the measure of work done. */
  steps = 0;

  /** @param penalty the cost of one unit that an "at least" row is short. */
  constructor(pool: ColumnPool, penalty: number) {
    this.#pool = pool;
    this.#penalty = penalty;
  }

  get duals(): Float64Array {
    return this.#duals;
  }

  /** The cost of the relaxed plan, as the duals have it. */
  get cost(): number {
    return this.#limits.reduce((sum, limit, row) => sum + limit * (this.#duals[row] as number), 0);
  }

  copy(): LinearProgram {
    const copy = new LinearProgram(this.#pool, this.#penalty);
    copy.#inverse = this.#inverse.slice();
    copy.#share(this);
    return copy;
  }

  /** A copy with one more row. */
  with(row: Row): LinearProgram {
    const copy = new LinearProgram(this.#pool, this.#penalty);
    copy.#inverse = this.#inverse; // which the new row replaces
    copy.#share(this);
    copy.addRow(row);
    return copy;
  }

  #share(from: LinearProgram): void {
    this.#rows.push(...from.#rows);
    this.#plain = from.#plain;
    this.#limits = from.#limits;
    this.#basis = from.#basis.slice();
    this.#value = from.#value.slice();
    this.#duals = from.#duals.slice();
    this.#direction = new Float64Array(from.#rows.length);
    this.#pivots = from.#pivots;
    this.steps = 4 * from.#rows.length ** 2;
  }

  #refresh(): void {
    const size = this.#rows.length;
    const matrix = new Float64Array(size * size);
    this.#basis.forEach((column, place) => {
      this.#eachEntry(column, (row, value) => {
        matrix[row * size + place] = value;
      });
    });
    this.steps += 2 * size * size * size;
    const inverse = inverted(matrix, size);
    if (!inverse) return; // keeps the old one
    this.#inverse = inverse;
    this.#pivots = 0;
    this.#duals.fill(0);
    this.#basis.forEach((column, place) => {
      const cost = this.#costOf(column);
      for (let j = 0; j < size; j++)
        this.#duals[j] = (this.#duals[j] as number) + cost * (inverse[place * size + j] as number);
    });
    this.setLimits(this.#limits);
  }

  /** The row's own column joins the basis, which may make its value negative until the next solution. */
  addRow(row: Row): void {
    const number = this.#rows.length;
    // The new row of the inverse: what the members in the basis take from the row, with the sign of its own column.
    const sign = row.sense === 'at least' ? -1 : 1;
    const members = this.#basis.map(
      (column) => column >= 0 && row.of !== 'entries' && this.#has(row, column),
    );
    this.#inverse = widened(this.#inverse, number, members, sign);
    const taken = members.reduce((sum, member, at) => sum + (member ? (this.#value[at] as number) : 0), 0);
    this.#value = Float64Array.of(...this.#value, sign * (row.limit - taken));
    this.#duals = Float64Array.of(...this.#duals, 0);
    this.#direction = new Float64Array(number + 1);
    this.#basis.push(-1 - 2 * number);
    this.#limits = [...this.#limits, row.limit];
    this.#rows.push(row);
    if (row.of === 'entries') this.#plain++;
  }

  /** Replaces the limits of all rows. */
  setLimits(limits: readonly number[]): void {
    this.#limits = limits;
    const size = this.#rows.length;
    for (let row = 0, at = 0; row < size; row++) {
      let value = 0;
      for (let j = 0; j < size; j++, at++) value += (this.#inverse[at] as number) * (limits[j] as number);
      this.#value[row] = value;
    }
  }

  /** Values of all columns of the pool that are not 0. */
  values(): [column: number, value: number][] {
    const values: [number, number][] = [];
    this.#basis.forEach((column, row) => {
      const value = this.#value[row] as number;
      if (column >= 0 && value > EPSILON) values.push([column, value]);
    });
    return values;
  }

  /** Meets the rows, then improves until no column helps; rounding errors cannot keep it going for ever. */
  solve(): void {
    if (this.#pivots > FRESH) this.#refresh();
    let left = 20 * this.#rows.length + 200;
    if (this.#value.some((value) => value < -EPSILON)) {
      const reduced = this.#weighted(this.#duals).map(
        (worth, column) => (this.#pool.cost[column] ?? 0) - worth,
      );
      while (left-- > 0 && this.#repair(reduced)) {}
    }
    let idle = 0;
    while (left-- > 0) {
      const [entering, reducedCost] = this.#entering(idle > PATIENCE);
      if (reducedCost >= 0) return;
      this.#setDirection(entering);
      const leaving = this.#leaving();
      if (leaving < 0) return; // no cost is negative, so this cannot happen but by rounding
      idle = (this.#value[leaving] as number) > EPSILON ? 0 : idle + 1;
      this.#pivot(leaving, entering, reducedCost);
    }
  }

  /**
   * One step of the dual method: takes the most negative value out of the basis. False when there is none.
   *
   * @param reduced the reduced costs of the pool's columns, which are kept up.
   */
  #repair(reduced: Float64Array): boolean {
    let leaving = -1;
    let least = -EPSILON;
    for (let row = 0; row < this.#rows.length; row++) {
      const value = this.#value[row] as number;
      if (value < least) [leaving, least] = [row, value];
    }
    if (leaving < 0) return false;
    const size = this.#rows.length;
    const line = this.#inverse.subarray(leaving * size, (leaving + 1) * size);
    let [entering, bestRatio, bestStep, bestCost] = [0, Number.POSITIVE_INFINITY, 0, 0];
    const taken = this.#weighted(line);
    const columns = this.#pool.size;
    // The pool's columns, then each row's own and its costly one.
    for (let i = 0; i < columns + 2 * size; i++) {
      const column = i < columns ? i : columns - 1 - i;
      const step =
        column >= 0
          ? -(taken[column] as number)
          : -this.#ownEntry(column) * (line[(-1 - column) >> 1] as number);
      if (step <= LEAST_PIVOT) continue;
      const cost = Math.max(0, column >= 0 ? (reduced[column] as number) : this.#reducedCost(column));
      const ratio = cost / step;
      if (ratio < bestRatio - EPSILON || (ratio <= bestRatio + EPSILON && step > bestStep)) {
        entering = column;
        bestRatio = ratio;
        bestStep = step;
        bestCost = cost;
      }
    }
    if (bestStep === 0) return false;
    const factor = bestCost / bestStep;
    for (let column = 0; column < columns; column++)
      reduced[column] = (reduced[column] as number) + factor * (taken[column] as number);
    this.#setDirection(entering);
    this.#pivot(leaving, entering, bestCost);
    return true;
  }

  /** The column of the least reduced cost, or the first that improves, and that cost; 0 when none does. */
  #entering(first: boolean): [column: number, reducedCost: number] {
    let best = 0;
    let least = -EPSILON;
    const { cost, size } = this.#pool;
    const worth = this.#weighted(this.#duals);
    for (let i = 0; i < size + 2 * this.#rows.length; i++) {
      const column = i < size ? i : size - 1 - i;
      const reduced =
        column >= 0 ? (cost[column] as number) - (worth[column] as number) : this.#reducedCost(column);
      if (reduced >= least) continue;
      best = column;
      least = reduced;
      if (first) break;
    }
    return [best, least < -EPSILON ? least : 0];
  }

  /** For each column of the pool its entries times the weights of their rows. */
  #weighted(weights: Float64Array): Float64Array {
    const { start, entryRow, entryValue, group, size } = this.#pool;
    const sums = this.#pool.scratch();
    for (let column = 0, i = 0; column < size; column++) {
      const end = start[column + 1] as number;
      let sum = 0;
      for (; i < end; i++) sum += (weights[entryRow[i] as number] as number) * (entryValue[i] as number);
      sums[column] = sum;
    }
    const byGroup = this.#groupWeights(weights);
    if (byGroup)
      for (let column = 0; column < size; column++)
        sums[column] = (sums[column] as number) + (byGroup[group[column] as number] as number);
    this.#rows.forEach((row, number) => {
      const weight = weights[number] as number;
      if (row.of !== 'some' || weight === 0) return;
      for (let column = 0; column < size; column++)
        if (row.has(column)) sums[column] = (sums[column] as number) + weight;
      this.steps += 6 * size;
    });
    this.steps += 2 * entryRow.length + size;
    return sums;
  }

  /** For each group the weights of the rows that ask for it. */
  #groupWeights(weights: Float64Array): Float64Array | undefined {
    let sums: Float64Array | undefined;
    this.#rows.forEach((row, number) => {
      if (row.of !== 'groups' || weights[number] === 0) return;
      sums ??= new Float64Array(this.#pool.groups);
      for (let g = row.from; g < sums.length; g++)
        sums[g] = (sums[g] as number) + (weights[number] as number);
    });
    return sums;
  }

  #reducedCost(column: number): number {
    const duals = this.#duals;
    if (column < 0)
      return this.#costOf(column) - this.#ownEntry(column) * (duals[(-1 - column) >> 1] as number);
    const { start, entryRow, entryValue } = this.#pool;
    let cost = this.#pool.cost[column] as number;
    const end = start[column + 1] as number;
    for (let i = start[column] as number; i < end; i++)
      cost -= (duals[entryRow[i] as number] as number) * (entryValue[i] as number);
    for (let row = this.#plain; row < this.#rows.length; row++)
      if (this.#has(this.#rows[row] as Row, column)) cost -= duals[row] as number;
    return cost;
  }

  /** What a row's own column adds to it; the costly one of an "at most" row is of no use to anything. */
  #ownEntry(column: number): number {
    const atLeast = this.#rows[(-1 - column) >> 1]?.sense === 'at least';
    if (column % 2 !== 0) return atLeast ? -1 : 1;
    return atLeast ? 1 : 0;
  }

  #costOf(column: number): number {
    if (column >= 0) return this.#pool.cost[column] as number;
    return column % 2 === 0 ? this.#penalty : 0;
  }

  #has(row: Row, column: number): boolean {
    if (row.of === 'groups') return (this.#pool.group[column] as number) >= row.from;
    return row.of === 'some' && row.has(column);
  }

  #eachEntry(column: number, visit: (row: number, value: number) => void): void {
    if (column < 0) {
      visit((-1 - column) >> 1, this.#ownEntry(column));
      return;
    }
    const { start, entryRow, entryValue } = this.#pool;
    const end = start[column + 1] as number;
    for (let i = start[column] as number; i < end; i++) visit(entryRow[i] as number, entryValue[i] as number);
    for (let number = this.#plain; number < this.#rows.length; number++)
      if (this.#has(this.#rows[number] as Row, column)) visit(number, 1);
  }

  /** What one unit of a column takes from the value of each basis row. */
  #setDirection(column: number): void {
    const [inverse, size] = [this.#inverse, this.#rows.length];
    const direction = this.#direction.fill(0);
    this.#eachEntry(column, (row, value) => {
      for (let k = 0, at = row; k < size; k++, at += size)
        direction[k] = (direction[k] as number) + (inverse[at] as number) * value;
    });
  }

  /** The basis row that reaches 0 first; of several the one with the largest pivot; −1 for none. */
  #leaving(): number {
    let best = -1;
    let bestRatio = Number.POSITIVE_INFINITY;
    let bestStep = 0;
    for (let row = 0; row < this.#rows.length; row++) {
      const step = this.#direction[row] as number;
      if (step <= LEAST_PIVOT) continue;
      const ratio = Math.max(0, this.#value[row] as number) / step;
      const tie = ratio <= bestRatio + EPSILON && step > bestStep;
      if (ratio < bestRatio - EPSILON || tie) [best, bestRatio, bestStep] = [row, ratio, step];
    }
    return best;
  }

  #pivot(leaving: number, column: number, reducedCost: number): void {
    const [inverse, value, direction] = [this.#inverse, this.#value, this.#direction];
    const size = this.#rows.length;
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
