import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { CORPUS, OPEN } from '../support/manuscripts.ts';
import { annotatedIn } from './annotated.ts';
import { judgeMutant, mutantsOf } from './mutants.ts';
import { isAlarm, measure } from './quality.ts';

function read(folder: string) {
  return annotatedIn(folder).map((manuscript) => ({
    ...manuscript,
    proof: proofread({ source: manuscript.source }),
  }));
}

const manuscripts = read(CORPUS);
/** Manuscripts that are not read well yet. */
const open = read(OPEN);

describe('Manuscripts without tags', () => {
  it.each([...manuscripts, ...open])('raise no false alarm: $name', ({ source, proof }) => {
    const alarms = proof.accounts.filter(isAlarm).map(({ number, tie, expected }) => {
      const line = source.slice(0, number.ranges[0].start).split('\n').length;
      return `line ${line}: ${number.text} by ${tie?.figure.id}, should be ${expected}`;
    });
    expect(alarms).toEqual([]);
  });

  it('are more than 14, of more than 1,500 numbers', () => {
    expect(manuscripts.length).toBeGreaterThan(14);
    expect(manuscripts.reduce((sum, { expected }) => sum + expected.length, 0)).toBeGreaterThan(1500);
  });

  it('have at least so many of their numbers verified by the figure that is meant', () => {
    const all = manuscripts.map(({ proof, expected }) => measure(proof, expected));
    const sum = (of: 'measuring' | 'tiesRight') => all.reduce((total, each) => total + each[of], 0);
    expect(sum('tiesRight') / sum('measuring')).toBeGreaterThan(0.94);
  });
});

/** Of so many mutants one is tried; `npm run mutating` tries them all. */
const EACH = 60;

describe('Wrong numbers in manuscripts without tags', () => {
  const tried = manuscripts.flatMap(({ source, proof }) =>
    mutantsOf(source, proof)
      .filter((_, index) => index % EACH === 0)
      .map((mutant) => ({ mutant, ...judgeMutant(mutant, source) })),
  );

  it('are found at their place, at least so many of them', () => {
    expect(tried.filter(({ isFlagged }) => isFlagged).length / tried.length).toBeGreaterThan(0.85);
  });

  it('are given back by the fix, byte for byte, where the number was the figure itself', () => {
    const fixed = tried.filter(({ mutant, isFlagged }) => isFlagged && mutant.isExact);
    expect(fixed.filter(({ isMended }) => isMended).length / fixed.length).toBeGreaterThan(0.95);
  });
});
