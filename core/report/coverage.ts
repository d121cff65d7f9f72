/** How much of a manuscript is checked, in numbers and in words. */
import type { Coverage } from '../proof/proof.ts';

export const NO_COVERAGE: Coverage = {
  verified: 0,
  wrong: 0,
  stale: 0,
  short: 0,
  generous: 0,
  unaccounted: 0,
  notMeasurement: 0,
};

export function sumCoverage(all: readonly Coverage[]): Coverage {
  return all.reduce(
    (sum, next) => ({
      verified: sum.verified + next.verified,
      wrong: sum.wrong + next.wrong,
      stale: sum.stale + next.stale,
      short: sum.short + next.short,
      generous: sum.generous + next.generous,
      unaccounted: sum.unaccounted + next.unaccounted,
      notMeasurement: sum.notMeasurement + next.notMeasurement,
    }),
    NO_COVERAGE,
  );
}

/** All numbers that measure something: what the coverage is a part of. */
export function measured(coverage: Coverage): number {
  const { verified, wrong, stale, short, generous, unaccounted } = coverage;
  return verified + wrong + stale + short + generous + unaccounted;
}

/** `41 of 47 checked` */
export function coverageLabel(coverage: Coverage): string {
  return `${coverage.verified} of ${measured(coverage)} checked`;
}

/** `41 of 47 measurements are checked and right, 1 is wrong, and 5 are tied to no figure, so nobody has checked them.` */
export function coverageSentence(coverage: Coverage): string {
  const total = measured(coverage);
  if (total === 0) return 'There is no measurement here to check.';
  const { verified, wrong, stale, short, generous, unaccounted } = coverage;
  if (verified === total && total > 1) return `All ${total} measurements are checked and right.`;
  const parts: string[] = [];
  const add = (count: number, one: string, many: string) => {
    if (count > 0) parts.push(total === 1 ? one : `${count} ${count === 1 ? one : many}`);
  };
  add(wrong, 'is wrong', 'are wrong');
  add(stale, 'is out of date', 'are out of date');
  add(short, 'is too little', 'are too little');
  add(generous, 'is more than needed', 'are more than needed');
  add(
    unaccounted,
    'is tied to no figure, so nobody has checked it',
    'are tied to no figure, so nobody has checked them',
  );
  if (total === 1) return `The one measurement ${parts[0] ?? 'is checked and right'}.`;
  const right =
    verified === 0
      ? `None of ${total} measurements is`
      : `${verified} of ${total} measurements ${verified === 1 ? 'is' : 'are'}`;
  return `${joinedWithAnd([`${right} checked and right`, ...parts])}.`;
}

function joinedWithAnd(parts: readonly string[]): string {
  if (parts.length < 3) return parts.join(', and ');
  return `${parts.slice(0, -1).join(', ')}, and ${parts.at(-1)}`;
}
