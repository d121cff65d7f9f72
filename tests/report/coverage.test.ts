import { describe, expect, it } from 'vitest';
import { coverageLabel, coverageSentence, NO_COVERAGE, sumCoverage } from '../../core/report/coverage.ts';

describe('The coverage', () => {
  it('is what is verified, out of all that measures something', () => {
    const coverage = { ...NO_COVERAGE, verified: 41, wrong: 1, unaccounted: 5, notMeasurement: 23 };

    expect(coverageLabel(coverage)).toBe('41 of 47 checked');
    expect(coverageSentence(coverage)).toBe(
      '41 of 47 measurements are checked and right, 1 is wrong, and 5 are tied to no figure, so nobody has checked them.',
    );
  });

  it('names every account that some number has', () => {
    expect(
      coverageSentence({ ...NO_COVERAGE, verified: 1, stale: 2, short: 1, generous: 1, unaccounted: 1 }),
    ).toBe(
      '1 of 6 measurements is checked and right, 2 are out of date, 1 is too little, 1 is more than needed, and 1 is tied to no figure, so nobody has checked it.',
    );
  });

  it('says so when all is right, or nothing is there', () => {
    expect(coverageSentence({ ...NO_COVERAGE, verified: 2 })).toBe(
      'All 2 measurements are checked and right.',
    );
    expect(coverageSentence({ ...NO_COVERAGE, verified: 1 })).toBe(
      'The one measurement is checked and right.',
    );
    expect(coverageSentence({ ...NO_COVERAGE, short: 1 })).toBe('The one measurement is too little.');
    expect(coverageSentence({ ...NO_COVERAGE, wrong: 1, unaccounted: 2 })).toBe(
      'None of 3 measurements is checked and right, 1 is wrong, and 2 are tied to no figure, so nobody has checked them.',
    );
    expect(coverageSentence({ ...NO_COVERAGE, notMeasurement: 4 })).toBe(
      'There is no measurement here to check.',
    );
  });

  it('adds up over manuscripts', () => {
    const one = { verified: 1, wrong: 2, stale: 3, short: 4, generous: 5, unaccounted: 6, notMeasurement: 7 };

    expect(sumCoverage([one, one])).toEqual({
      verified: 2,
      wrong: 4,
      stale: 6,
      short: 8,
      generous: 10,
      unaccounted: 12,
      notMeasurement: 14,
    });
  });
});
