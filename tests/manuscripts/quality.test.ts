import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { readAnnotated } from './annotated.ts';
import { isAlarm, measure } from './quality.ts';

function read(folder: string) {
  const place = new URL(`./${folder}/`, import.meta.url);
  return readdirSync(place)
    .filter((name) => name.endsWith('.md'))
    .map((name) => {
      const { source, expected } = readAnnotated(readFileSync(new URL(name, place), 'utf8'));
      return { name, source, expected, proof: proofread({ source }) };
    });
}

const manuscripts = read('corpus');
/** Manuscripts of which not every number is told from those that measure nothing yet. */
const open = read('open');

describe('Manuscripts without tags', () => {
  it.each([...manuscripts, ...open])('raise no false alarm: $name', ({ source, proof }) => {
    const alarms = proof.accounts.filter(isAlarm).map(({ number, tie, expected }) => {
      const line = source.slice(0, number.ranges[0].start).split('\n').length;
      return `line ${line}: ${number.text} by ${tie?.figure.id}, should be ${expected}`;
    });
    expect(alarms).toEqual([]);
  });

  it('have at least so many of their numbers verified by the figure that is meant', () => {
    const all = manuscripts.map(({ proof, expected }) => measure(proof, expected));
    const sum = (of: 'measuring' | 'tiesRight') => all.reduce((total, each) => total + each[of], 0);
    expect(sum('tiesRight') / sum('measuring')).toBeGreaterThan(0.92);
  });
});
