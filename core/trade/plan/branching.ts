/** Which number of strips the search branches on. */
import { type Branch, concerns, type Strips, type Uses } from './relaxation.ts';

/** A number nearer to a whole one than this counts as whole. */
export const WHOLE = 1e-6;

/**
 * How much branches raised the bound so far, for each unit by which a number was rounded (pseudo-costs). The
 * search branches where both directions can be expected to raise it much.
 */
export class Experience {
  readonly #gains = new Map<string, { sum: number; count: number }>();
  readonly #steps: readonly number[];

  constructor(heights: readonly number[]) {
    this.#steps = heights.map((height, i) => height - (heights[i - 1] ?? 0));
  }

  learn(strips: Strips, sense: Branch['sense'], gain: number): void {
    if (strips.of !== 'height') return;
    const key = `${strips.height} ${sense}`;
    const { sum, count } = this.#gains.get(key) ?? { sum: 0, count: 0 };
    this.#gains.set(key, { sum: sum + Math.max(0, gain), count: count + 1 });
  }

  /** Before anything is known, a strip more of a height costs what it is wider than the next narrower one. */
  expected(height: number, sense: Branch['sense']): number {
    const known = this.#gains.get(`${height} ${sense}`);
    return known ? known.sum / known.count : (this.#steps[height] as number);
  }
}

/** The number of strips to branch on; nothing when no number that we know is broken. */
export function choose(
  uses: Uses,
  heights: number,
  experience: Experience,
): { strips: Strips; number: number } | undefined {
  let best: { strips: Strips; number: number } | undefined;
  let bestScore = -1;
  const consider = (strips: Strips, score: (number: number, fraction: number) => number) => {
    const number = uses.reduce((sum, [column, times]) => sum + (concerns(strips, column) ? times : 0), 0);
    const fraction = number - Math.floor(number);
    if (fraction <= WHOLE || fraction >= 1 - WHOLE) return;
    const points = score(number, fraction);
    if (points > bestScore) [best, bestScore] = [{ strips, number }, points];
  };
  for (let height = heights - 1; height >= 0; height--)
    consider({ of: 'height', height }, (_, fraction) => {
      const down = experience.expected(height, 'at most') * fraction;
      const up = experience.expected(height, 'at least') * (1 - fraction);
      return Math.max(down, 0.01) * Math.max(up, 0.01);
    });
  if (best) return best;
  for (const [{ filling }] of uses)
    for (const [placement, most] of filling)
      for (let copies = 1; copies <= most; copies++)
        consider({ of: 'copies', placement, copies }, (_, fraction) => fraction * (1 - fraction));
  return best;
}
