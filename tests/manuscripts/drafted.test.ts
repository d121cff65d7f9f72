import { describe, expect, it } from 'vitest';
import { draftAnew, FOLDERS, standingAlone } from './anew.ts';

const all = FOLDERS.flatMap(standingAlone).map(draftAnew);

describe('A block drafted from a manuscript whose numbers are right', () => {
  it.each(all)('calls nothing wrong in $name, and has no mistake of its own', ({ alarms, errors }) => {
    expect(alarms).toEqual([]);
    expect(errors).toEqual([]);
  });

  it('verifies most of the numbers that the block of the author verifies', () => {
    const sum = (of: 'before' | 'again') => all.reduce((total, each) => total + each[of], 0);
    expect(sum('again') / sum('before')).toBeGreaterThan(0.6);
  });
});
