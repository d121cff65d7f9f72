import { WHOLE } from './branching.ts';

/** Beyond this many units (of very fine lengths) every sum counts as possible. */
const MOST_SUMS = 100_000;

/** Which heights a plan can have: sums of heights of strips. */
export class Sums {
  readonly #possible: Uint8Array;

  constructor(heights: readonly number[], most: number) {
    this.#possible = new Uint8Array(most > MOST_SUMS ? 0 : most + 1);
    this.#possible[0] = 1;
    for (let sum = 1; sum < this.#possible.length; sum++)
      if (heights.some((height) => height <= sum && this.#possible[sum - height])) this.#possible[sum] = 1;
  }

  /** The least possible height that is not below a bound (less a margin for the rounding of floats). */
  from(bound: number): number {
    let sum = Math.max(0, Math.ceil(bound - WHOLE));
    while (this.#possible[sum] === 0) sum++;
    return sum;
  }

  /** The greatest possible height below another. */
  below(height: number): number {
    let sum = height - 1;
    while (sum > 0 && this.#possible[sum] === 0) sum--;
    return sum;
  }
}
