/**
 * Fills one strip as valuably as possible: a bounded knapsack by dynamic programming.
 *
 * The value of a strip of every width is found in one pass: placements are taken in order of height, and after
 * the last one of a height h the table holds the best strip of width h. The cells of the table are not all
 * lengths but only those that sums of spans can reach.
 */
import type { Placement, StripProblem } from './problem.ts';

/** Copies of placements in one strip; placements that are not used are left out. */
export type Filling = readonly (readonly [placement: number, copies: number])[];

/** With more reachable lengths than this a table would be too slow; 20 000 is far above any list in ruler steps. */
const MOST_POSITIONS = 20_000;

export class StripFiller {
  /** Distinct heights, rising, and for each the number of placements that are not higher. */
  readonly heights: readonly number[];
  readonly #upTo: readonly number[];
  readonly #placements: readonly Placement[];
  readonly #positions: Float64Array;
  /** For each placement and position: the greatest position that leaves room for one more copy; −1 for none. */
  readonly #before: readonly Int32Array[];
  readonly #copies: Uint16Array;
  readonly #value: Float64Array;
  /** Table cells computed so far: the measure of work done. */
  cells = 0;

  private constructor(placements: readonly Placement[], positions: Float64Array) {
    this.#placements = placements;
    this.#positions = positions;
    this.heights = [...new Set(placements.map(({ height }) => height))];
    this.#upTo = this.heights.map((h) => placements.filter(({ height }) => height <= h).length);
    const bySpan = new Map<number, Int32Array>();
    this.#before = placements.map(({ span }) => {
      const known = bySpan.get(span) ?? predecessors(positions, span);
      bySpan.set(span, known);
      return known;
    });
    this.#copies = new Uint16Array(placements.length * positions.length);
    this.#value = new Float64Array(positions.length);
  }

  /** `undefined` when the lengths are so fine that a table would be too large. */
  static of({ placements, capacity }: StripProblem): StripFiller | undefined {
    const positions = reachable(placements, capacity);
    return positions && new StripFiller(placements, positions);
  }

  /**
   * @param worth the value of one more copy of each placement; at least 0.
   * @param most the most copies of each.
   * @param bonus for some placements, what a number of copies (the index) is worth beyond that.
   * @returns for each height the value of the best strip.
   */
  fill(
    worth: Float64Array,
    most: ArrayLike<number>,
    bonus?: ReadonlyMap<number, Float64Array>,
  ): Float64Array {
    const size = this.#positions.length;
    const value = this.#value.fill(0);
    const best = new Float64Array(this.heights.length);
    let height = 0;
    for (let p = 0; p < this.#placements.length; p++) {
      while (p >= (this.#upTo[height] as number)) best[height++] = value[size - 1] as number;
      this.#add(p, worth[p] as number, most[p] as number, bonus?.get(p));
    }
    while (height < best.length) best[height++] = value[size - 1] as number;
    return best;
  }

  #add(p: number, worth: number, most: number, bonus: Float64Array | undefined): void {
    const size = this.#positions.length;
    this.#copies.fill(0, p * size, (p + 1) * size);
    if (most === 0 || (worth <= 0 && !bonus)) return;
    if (bonus) this.#addWithBonus(p, worth, most, bonus);
    else if (most < (this.#placements[p] as Placement).fit) this.#addUpTo(p, worth, most);
    else this.#addFreely(p, worth);
  }

  /** As many copies as the strip is long enough for: one more than the best shorter strip, or none. */
  #addFreely(p: number, worth: number): void {
    const [value, before, copies, size] = [
      this.#value,
      this.#before[p] as Int32Array,
      this.#copies,
      this.#positions.length,
    ];
    const row = p * size;
    for (let position = 0; position < size; position++) {
      const rest = before[position] as number;
      if (rest < 0) continue;
      const candidate = (value[rest] as number) + worth;
      if (candidate <= (value[position] as number)) continue;
      value[position] = candidate;
      copies[row + position] = (copies[row + rest] as number) + 1;
    }
    this.cells += size;
  }

  /** A limited number of copies; positions fall, so that each reads values from before. */
  #addUpTo(p: number, worth: number, most: number): void {
    const [value, before, copies] = [this.#value, this.#before[p] as Int32Array, this.#copies];
    const size = value.length;
    const row = p * size;
    let cells = 0;
    for (let position = size - 1; position >= 0; position--) {
      let rest = before[position] as number;
      if (rest < 0) break; // positions further down have no room either
      let best = value[position] as number;
      let chosen = 0;
      let gain = worth;
      for (let n = 1; n <= most && rest >= 0; n++) {
        const candidate = (value[rest] as number) + gain;
        if (candidate > best) {
          best = candidate;
          chosen = n;
        }
        gain += worth;
        rest = before[rest] as number;
        cells++;
      }
      if (chosen === 0) continue;
      value[position] = best;
      copies[row + position] = chosen;
    }
    this.cells += cells + size;
  }

  /** The same where numbers of copies are worth more or less than so many single ones. */
  #addWithBonus(p: number, worth: number, most: number, bonus: Float64Array): void {
    const [value, before, copies] = [this.#value, this.#before[p] as Int32Array, this.#copies];
    const size = value.length;
    const row = p * size;
    for (let position = size - 1; position >= 0; position--) {
      let rest = before[position] as number;
      let best = value[position] as number;
      let chosen = 0;
      for (let n = 1; n <= most && rest >= 0; n++) {
        const candidate = (value[rest] as number) + n * worth + (bonus[n] as number);
        if (candidate > best) {
          best = candidate;
          chosen = n;
        }
        rest = before[rest] as number;
        this.cells++;
      }
      value[position] = best;
      copies[row + position] = chosen;
    }
    this.cells += size;
  }

  /** The strip behind the value that the last `fill` gave for a height. */
  filling(height: number): Filling {
    const size = this.#positions.length;
    const filling: [number, number][] = [];
    let position = size - 1;
    for (let p = (this.#upTo[height] as number) - 1; p >= 0; p--) {
      const n = this.#copies[p * size + position] as number;
      if (n === 0) continue;
      filling.push([p, n]);
      for (let i = 0; i < n; i++) position = this.#before[p]?.[position] as number;
    }
    return filling;
  }
}

/** All sums of spans that fit into the capacity, with no more copies than allowed, rising. */
function reachable(placements: readonly Placement[], capacity: number): Float64Array | undefined {
  let sums = new Set([0]);
  for (const { span, most } of placements) {
    const next = new Set(sums);
    for (const sum of sums)
      for (let n = 1, total = sum + span; n <= most && total <= capacity; n++, total += span) {
        if (sums.has(total)) break; // what follows is reached from there
        next.add(total);
      }
    if (next.size > MOST_POSITIONS) return undefined;
    sums = next;
  }
  return Float64Array.from(sums).sort();
}

function predecessors(positions: Float64Array, span: number): Int32Array {
  let last = -1;
  return Int32Array.from(positions, (position) => {
    while (last + 1 < positions.length && (positions[last + 1] as number) <= position - span) last++;
    return last;
  });
}
