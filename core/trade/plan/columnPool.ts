/**
 * The columns that all linear programmes of one search share, so that what one of them found serves the others and
 * a copy of a programme is small. Columns are only ever added.
 */
export class ColumnPool {
  /** Groups are numbered from 0; a row may ask for all columns from a group on. */
  readonly groups: number;
  readonly cost: number[] = [];
  readonly group: number[] = [];
  /** The entries of column j stand from start[j] to start[j + 1]. */
  readonly start: number[] = [0];
  readonly entryRow: number[] = [];
  readonly entryValue: number[] = [];
  #scratch = new Float64Array(256);

  constructor(groups: number) {
    this.groups = groups;
  }

  get size(): number {
    return this.cost.length;
  }

  /** @returns the column's number. */
  add(cost: number, group: number, rows: readonly number[], values: readonly number[]): number {
    for (let i = 0; i < rows.length; i++) {
      this.entryRow.push(rows[i] as number);
      this.entryValue.push(values[i] as number);
    }
    this.start.push(this.entryRow.length);
    this.group.push(group);
    return this.cost.push(cost) - 1;
  }

  /** A number for each column, for passing use: the next call gives the same array. */
  scratch(): Float64Array {
    if (this.#scratch.length < this.size) this.#scratch = new Float64Array(2 * this.size);
    return this.#scratch;
  }
}
