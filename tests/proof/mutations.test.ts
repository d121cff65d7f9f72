import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { manuscriptsIn, SAMPLES } from '../support/manuscripts.ts';
import { useOfSamples as use } from '../support/samples.ts';

const samples = manuscriptsIn(SAMPLES).map(({ source }) => source);

/** What a slip of the keyboard, or someone hostile, puts into a manuscript. */
const PIECES = [
  '"',
  "'",
  '{',
  '}',
  '[',
  ']',
  ':',
  ': ',
  ',',
  '- ',
  '?',
  '\n',
  '\n  ',
  '\t',
  '#',
  ' #',
  '&a ',
  '*a',
  '!x ',
  '|',
  '>',
  '---\n',
  '%',
  '@',
  '\\',
  '0',
  '-1',
  '7',
  '1/2',
  '999999999999',
  '1e9',
  '0.001"',
  '1/64"',
  '40000"',
  '½',
  'in',
  'yd',
  'cm',
  'ft',
  '"" ',
  '<<',
  '.5"',
  ' x ',
  '<!-- = ',
  '-->',
  '```',
  '\u0000',
  '\ufeff',
  '🧵',
  'π',
  '\r',
  '\r\n',
  '@ wall',
  'sizes',
  'house',
  'constructor',
  'sqrt(',
  '(',
  ' / 0',
  'bias',
  'straight',
  'circle 5"',
  'wide 1/4"',
  'measured 5"',
  'about ',
  ' to 5"',
];

interface Slip {
  readonly at: number;
  readonly gone: number;
  readonly piece: string;
}

const slips = fc.array(
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    gone: fc.nat({ max: 12 }),
    piece: fc.oneof(fc.constantFrom(...PIECES), fc.constant('')),
  }),
  { minLength: 1, maxLength: 5 },
);

const withSlips = (source: string, made: readonly Slip[]) =>
  made.reduce((text, { at, gone, piece }) => {
    const place = Math.floor(at * text.length);
    return text.slice(0, place) + piece + text.slice(place + gone);
  }, source);

/** Each run proofreads a whole pattern, up to four times; on a loaded machine that takes minutes. */
const PATIENCE = 300_000;

const RUNS = { seed: 20_261_130, numRuns: 250 } as const;

describe('a manuscript with slips in it', { timeout: PATIENCE }, () => {
  it('is proofread to the end, with every place inside it and every fix applicable', () => {
    fc.assert(
      fc.property(fc.constantFrom(...samples), slips, (sample, made) => {
        const source = withSlips(sample, made);
        const inside = ({ start, end }: { start: number; end: number }) =>
          0 <= start && start <= end && end <= source.length;
        for (const { start, end, message, related, fixes } of proofread({ use, source }).findings) {
          expect(inside({ start, end }) && end > start, message).toBe(true);
          expect(message).toMatch(/[.?]$/);
          expect(message).not.toMatch(/undefined|NaN|\[object/);
          expect(related.every(inside)).toBe(true);
          for (const { edits } of fixes) {
            expect(edits.every(inside)).toBe(true);
            applyEdits(source, edits);
          }
        }
      }),
      RUNS,
    );
  });

  it('has nothing left to fix when all fixes are applied a few times', () => {
    fc.assert(
      fc.property(fc.constantFrom(...samples), slips, (sample, made) => {
        let source = withSlips(sample, made);
        for (let round = 0; round < 3; round++)
          source = applyEdits(source, fixAll(proofread({ use, source }).findings).edits);
        expect(fixAll(proofread({ use, source }).findings).edits).toEqual([]);
      }),
      { ...RUNS, numRuns: 100 },
    );
  });
});
