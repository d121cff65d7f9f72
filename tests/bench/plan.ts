/**
 * Prints how much processor time cutting plans take and how far they are from their bound, over generated lists of pattern-like
 * sizes. Run it with `npx tsx tests/bench/plan.ts`; it checks nothing.
 */
import { rational } from '../../core/quantity/rational.ts';
import { type CutPiece, roll } from '../../core/trade/plan/fabric.ts';
import { rollPlan } from '../../core/trade/plan/rollPlan.ts';
import { yardageIsProved } from '../../core/trade/plan/yardage.ts';

const LISTS = 40;
const FABRIC = roll(rational(40));
const EIGHTH_YARD = rational(9, 2);

/** A multiplicative congruential generator, so that every run plans the same lists. */
let state = 20_250;
function below(n: number): number {
  state = (state * 48_271) % 2_147_483_647;
  return state % n;
}

function pick<T>(items: readonly [T, ...T[]]): T {
  return items[below(items.length)] ?? items[0];
}

/** Squares, squares for triangles, sashes, borders and binding strips on a common grid, in eighths of an inch. */
function list(kinds: number): CutPiece[] {
  const grid = pick([8, 12, 16, 20, 24]);
  const seen = new Set<string>();
  const pieces: CutPiece[] = [];
  while (pieces.length < kinds) {
    const f = grid * (1 + below(3));
    const [width, length, count] = pick<() => [number, number, number]>([
      () => [f + 4, f + 4, 4 * (1 + below(20))],
      () => [f + 7, f + 7, 4 * (1 + below(16))],
      () => [f + 10, f + 10, 1 + below(16)],
      () => [grid + 4, grid * (2 + below(5)) + 4, 2 * (1 + below(20))],
      () => [18 + 2 * below(2), 320, 3 + below(6)],
      () => [f + 4, Math.min(320, grid * (6 + below(6)) + 4), 2 + 2 * below(2)],
    ])();
    const id = `${width} x ${length}`;
    if (seen.has(id)) continue;
    seen.add(id);
    pieces.push({ id, width: rational(width, 8), length: rational(length, 8), count });
  }
  return pieces;
}

const columns = [
  'kinds',
  'median ms',
  'longest ms',
  'proved',
  'yardage proved',
  'mean gap in',
  'largest gap in',
];
console.log(`${LISTS} lists of each size, 40 in of usable width, sold by the eighth of a yard`);
console.log(columns.map((name) => name.padStart(15)).join(''));
rollPlan(FABRIC, list(8)); // warms up the compiler
for (const kinds of [2, 4, 6, 8, 10, 12, 16, 24]) {
  const times: number[] = [];
  const gaps: number[] = [];
  let yardages = 0;
  for (let i = 0; i < LISTS; i++) {
    const pieces = list(kinds);
    const began = process.cpuUsage();
    const { best, bound, gap } = rollPlan(FABRIC, pieces);
    times.push(process.cpuUsage(began).user / 1000);
    gaps.push(gap.valueOf());
    if (yardageIsProved(best.length, bound, EIGHTH_YARD)) yardages++;
  }
  times.sort((a, b) => a - b);
  const row = [
    kinds,
    times[LISTS >> 1]?.toFixed(1),
    times.at(-1)?.toFixed(1),
    `${gaps.filter((gap) => gap === 0).length}/${LISTS}`,
    `${yardages}/${LISTS}`,
    (gaps.reduce((sum, gap) => sum + gap, 0) / LISTS).toFixed(3),
    Math.max(...gaps).toFixed(3),
  ];
  console.log(row.map((cell) => String(cell).padStart(15)).join(''));
}
