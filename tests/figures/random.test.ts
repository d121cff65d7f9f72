import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Real } from '../../core/quantity/real.ts';
import { patternOf, summary } from '../support/pattern.ts';
import { blockOf, type RandomPattern, randomPattern } from '../support/randomPattern.ts';

const RUNS = { seed: 20_261_125, numRuns: 60 } as const;

const holds = (property: (pattern: RandomPattern) => void) =>
  fc.assert(fc.property(randomPattern, property), RUNS);

describe('a random pattern without contradictions', () => {
  it('has no finding', () => {
    holds((pattern) => {
      const block = blockOf(pattern);
      const { pattern: read, ledger, source } = patternOf(block);
      const found = [...read.findings, ...ledger.findings].map((finding) => summary(finding, source));
      expect(found, block).toEqual([]);
    });
  });

  it('states no figure below what is needed when it rounds up, and none above when it rounds down', () => {
    holds((pattern) => {
      const { ledger } = patternOf(blockOf(pattern));
      for (const id of ledger.ids)
        for (const { need, shown, step, round } of ledger.figure(id)?.values.values() ?? []) {
          const above = Real.of(shown).sub(need);
          const within = step ? Real.of(step) : Real.of(0);
          const off = round === 'up' ? above : above.neg();
          expect(off.sign(), id).toBeGreaterThanOrEqual(0);
          expect(step ? off.compare(within) : off.sign(), id).toBe(step ? -1 : 0);
        }
    });
  });

  it('never proves that more is needed than is counted plainly', () => {
    holds((pattern) => {
      const { ledger } = patternOf(blockOf(pattern));
      for (const id of ledger.ids)
        for (const { need, least } of ledger.figure(id)?.values.values() ?? [])
          if (least) expect(Real.of(least).compare(need), id).toBeLessThanOrEqual(0);
    });
  });

  it('names as inputs only places at which the author wrote something', () => {
    holds((pattern) => {
      const block = blockOf(pattern);
      const { pattern: read, ledger } = patternOf(block);
      for (const id of ledger.ids)
        for (const { inputs } of ledger.figure(id)?.values.values() ?? [])
          for (const input of inputs) {
            const place = read.place(input);
            expect(place, `${id} from ${input.join('.')}`).toBeDefined();
            if (!place) continue;
            expect(block.slice(place.start, place.end).trim()).not.toBe('');
            expect(read.pathAt(place.start)?.slice(0, input.length)).toEqual(
              input.slice(0, read.pathAt(place.start)?.length),
            );
          }
    });
  });
});
