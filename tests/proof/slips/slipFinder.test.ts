import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';
import { SlipFinder } from '../../../core/proof/slips/slipFinder.ts';
import { SLIPS } from '../../../core/proof/slips/table.ts';
import { rational } from '../../../core/quantity/rational.ts';
import { readNumberAt } from '../../../core/quantity/read.ts';
import { patternOf } from '../../support/pattern.ts';
import { blockOf, randomPattern } from '../../support/randomPattern.ts';

const tagged = (block: string[], sentence: string) =>
  proofread({ source: ['```measure', ...block, '```', '', sentence, ''].join('\n') });

describe('Why a number is wrong', () => {
  it('is not guessed where two slips give it that mean different things', () => {
    const { accounts, findings } = tagged(
      ['finished: 60" x 72"', 'binding: { strip: 2 1/2" }', 'house: { joining allowance: 10" }'],
      'Cut 7 <!-- = binding.strips --> strips.',
    );
    expect(accounts[0]).toMatchObject({ kind: 'short', slip: undefined });
    expect(findings.map(({ message }) => message)).toEqual([
      'The number of binding strips must be at least 8, not 7: 264" around plus 10" to join is 274"; 7 strips joined give 265" (with 40" of usable width, unless the block says otherwise).',
    ]);
  });

  it('is told once where two slips give it that mean the same', () => {
    const { accounts } = tagged(
      ['blocks: { Tide: { finished: 10" } }', 'layout: { grid: 5 x 6 }'],
      'Trim the blocks to 10" <!-- = block.Tide.unfinished -->.',
    );
    expect(accounts[0]?.slip).toEqual({
      name: 'another measure of the same thing',
      clause: '10" is the finished size of the Tide block',
    });
  });

  it('is told of a value that the block states', () => {
    const { findings } = proofread({
      source: '```measure\nfinished: 60" x 72"\nbatting: {}\nstates: { batting.width: 60" }\n```\n',
    });
    expect(findings.map(({ message }) => message)).toEqual([
      'The width of the batting must be at least 68", not 60": 60" plus 4" on each side is 68" (with 4" of overhang, unless the block says otherwise); 60" leaves out the overhang.',
    ]);
  });

  it('is not asked of a number that is right', () => {
    const { accounts } = tagged(['finished: 60" x 60"'], 'It is 60" <!-- = finished.width --> wide.');
    expect(accounts[0]).toMatchObject({ kind: 'verified', slip: undefined });
  });

  it('is asked of any figure of any pattern without trouble', () => {
    const names = new Set(SLIPS.map(({ name }) => name));
    fc.assert(
      fc.property(randomPattern, fc.integer({ min: 1, max: 200 }), (random, quarters) => {
        const { pattern, ledger } = patternOf(blockOf(random));
        const finder = new SlipFinder(pattern, ledger);
        for (const figure of ledger.ids.flatMap((id) => ledger.figure(id) ?? []))
          for (const [size, value] of figure.values) {
            const text = figure.kind === 'count' ? String(quarters) : `${quarters / 4}"`;
            const written = readNumberAt(text, 0);
            if (!written) throw new Error(`${text} is no number`);
            const stated = { text, written, unit: written.unit, value: written.value };
            if (value.shown.equals(rational(quarters, figure.kind === 'count' ? 1 : 4))) continue;
            const slip = finder.likeliest({ figure, value, size, stated, right: undefined });
            expect(slip === undefined || names.has(slip.name)).toBe(true);
          }
      }),
      { seed: 20_261_125, numRuns: 15 },
    );
  });
});
