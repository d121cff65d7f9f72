/** A whole line over one house file, whose strip width changes. */
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { earlierState } from '../../core/proof/earlier/earlier.ts';
import { proofread } from '../../core/proof/proofread.ts';
import type { Use } from '../../core/proof/uses.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { HOUSE_NAME, houseFile, isRight, patternLine, STRIPS, withoutNumbers } from '../support/line.ts';

const house = (strip: string): Use => {
  const use: Use = () => ({ id: HOUSE_NAME, name: HOUSE_NAME, source: houseFile(strip), use });
  return use;
};
const BEFORE = house('2 1/4"');
const AFTER = house('2 1/2"');
const line = patternLine();

describe('A line of thirty manuscripts over one house file', () => {
  it('is right throughout with the strips for which it was written', () => {
    for (const { name, source, numbers } of line) {
      const { findings, accounts } = proofread({ source, use: BEFORE });
      const verified = accounts.filter(({ kind }) => kind === 'verified');

      expect(
        findings.map(({ message }) => message),
        name,
      ).toEqual([]);
      expect(
        verified.map(({ number }) => number.ranges[0].start),
        name,
      ).toEqual(numbers.map(({ start }) => start));
    }
  });

  it('has just the numbers flagged that depend on the strip, when the house changes it', () => {
    for (const { name, source, numbers } of line) {
      const { findings } = proofread({ source, use: AFTER });
      const wrong = numbers.filter((number) => !isRight(number, STRIPS.after));

      expect(wrong.length, name).toBeGreaterThan(0);
      expect(
        findings.map(({ start, end }) => source.slice(start, end)),
        name,
      ).toEqual(wrong.map(({ start, end }) => source.slice(start, end)));
      expect(
        findings.map(({ start }) => start),
        name,
      ).toEqual(wrong.map(({ start }) => start));
      for (const { code, message } of findings) {
        expect(['wrong-figure', 'short-figure'], name).toContain(code);
        expect(message, name).toContain(`the house file ${HOUSE_NAME}`);
      }
    }
  });

  it('has the same numbers stale where it was seen before the change', () => {
    for (const { name, source } of line) {
      const before = [earlierState(proofread({ source, use: BEFORE }))];
      const plain = proofread({ source, use: AFTER }).findings;
      const { findings } = proofread({ source, use: AFTER, before });

      expect(
        findings.map(({ start, code }) => [start, code]),
        name,
      ).toEqual(plain.map(({ start }) => [start, 'stale-figure']));
      for (const { message } of findings)
        expect(message, name).toContain('“binding strip” of the house rules changed from 2 1/4" to 2 1/2"');
    }
  });

  it('is right again when every fix is applied, and differs in numbers only', () => {
    for (const { name, source, numbers } of line) {
      const { findings } = proofread({ source, use: AFTER });
      const fixed = applyEdits(source, fixAll(findings).edits);

      expect(
        proofread({ source: fixed, use: AFTER }).findings.map(({ message }) => message),
        name,
      ).toEqual([]);
      expect(withoutNumbers(fixed), name).toBe(withoutNumbers(source));
      expect(fixed, name).not.toBe(source);
      expect(numbers.length, name).toBeGreaterThan(0);
    }
  });

  it('is varied: in one size and in several, with numbers that stay and numbers that change', () => {
    const sizes = new Set(line.map(({ source }) => /sizes: \[(.*)\]/.exec(source)?.[1] ?? 'one'));
    const stay = line.flatMap(({ numbers }) => numbers.filter((number) => isRight(number, STRIPS.after)));
    const change = line.flatMap(({ numbers }) => numbers.filter((number) => !isRight(number, STRIPS.after)));

    expect(line).toHaveLength(30);
    expect(sizes.size).toBe(3);
    expect(Math.min(stay.length, change.length)).toBeGreaterThan(60);
  });
});
