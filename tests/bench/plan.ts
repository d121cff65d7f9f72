/**
 * Prints how long cutting plans take and how near they come to their bound, over made-up cutting lists as patterns
 * have them. `npm run bench:plan` runs it; it checks nothing.
 */
import { rational } from '../../core/quantity/rational.ts';
import { FAT_QUARTER, roll } from '../../core/trade/plan/fabric.ts';
import { rollPlan } from '../../core/trade/plan/rollPlan.ts';
import { sheetPlan } from '../../core/trade/plan/sheetPlan.ts';
import { yardageIsProved } from '../../core/trade/plan/yardage.ts';
import { quiltLists } from './quiltLists.ts';

const LISTS = 60;
const EIGHTH_YARD = rational(9, 2);
const FABRIC = roll(rational(40));
const SHEETS = { ...roll(rational(40)), stock: FAT_QUARTER };

function timed<T>(plan: () => T): { plan: T; ms: number } {
  const began = process.cpuUsage();
  const result = plan();
  return { plan: result, ms: process.cpuUsage(began).user / 1000 };
}

function table(title: string, columns: readonly string[], rows: readonly (readonly (string | number)[])[]) {
  console.log(`\n${title}`);
  for (const row of [columns, ...rows]) console.log(row.map((cell) => String(cell).padStart(15)).join(''));
}

function times(ms: readonly number[]): string[] {
  const sorted = [...ms].sort((a, b) => a - b);
  return [0.5, 0.95, 1].map((share) => (sorted[Math.ceil(share * sorted.length) - 1] ?? 0).toFixed(1));
}

function share(count: number): string {
  return `${Math.round((100 * count) / LISTS)} %`;
}

const TIMES = ['median ms', '95 % below ms', 'longest ms'];

for (const list of quiltLists(1, 10, 10)) rollPlan(FABRIC, list); // warms up the compiler

table(
  `Fabric by the yard: ${LISTS} lists of each size, 40 in of usable width, sold by the eighth of a yard`,
  ['kinds', ...TIMES, 'proved', 'yardage proved', 'mean gap in', 'largest gap in'],
  [5, 8, 12, 16, 20, 24, 30, 36, 40].map((kinds) => {
    const plans = quiltLists(kinds, kinds, LISTS).map((list) => timed(() => rollPlan(FABRIC, list)));
    const gaps = plans.map(({ plan }) => plan.gap.valueOf());
    const settled = plans.filter(({ plan }) => yardageIsProved(plan.best.length, plan.bound, EIGHTH_YARD));
    return [
      kinds,
      ...times(plans.map(({ ms }) => ms)),
      share(gaps.filter((gap) => gap === 0).length),
      share(settled.length),
      (gaps.reduce((sum, gap) => sum + gap, 0) / LISTS).toFixed(3),
      Math.max(...gaps).toFixed(3),
    ];
  }),
);

table(
  `Fat quarters: ${LISTS} lists of each size`,
  ['kinds', ...TIMES, 'proved', 'largest gap'],
  [3, 5, 8, 12, 16].map((kinds) => {
    const plans = quiltLists(kinds, 100 + kinds, LISTS).map((list) => {
      return timed(() => sheetPlan(SHEETS, list));
    });
    const gaps = plans.map(({ plan }) => plan.gap);
    return [
      kinds,
      ...times(plans.map(({ ms }) => ms)),
      share(gaps.filter((gap) => gap === 0).length),
      Math.max(...gaps),
    ];
  }),
);
