/** The sample patterns with one entry of their blocks changed: just the numbers that follow from it are stale. */
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { earlierState } from '../../core/proof/earlier/earlier.ts';
import { judge } from '../../core/proof/judge.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { isReserved } from '../../core/proof/reserve.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { sample as read, withoutTags as untagged } from '../support/manuscripts.ts';
import { useOfSamples as use } from '../support/samples.ts';

/** A sample, and one change of its block. */
const CHANGES: readonly (readonly [name: string, from: string, to: string])[] = [
  ['slack-water-bed-quilt.md', 'strip: 2 1/2"', 'strip: 2 1/4"'],
  ['slack-water-bed-quilt.md', 'usable width: 40"', 'usable width: 42"'],
  ['slack-water-bed-quilt.md', 'finished: 4 1/2", from: B', 'finished: 5", from: B'],
  ['long-ferry-throw.md', 'strip: 2 1/2"', 'strip: 2 1/4"'],
  ['gull-wing-wall-quilt.md', 'strip: 2 1/4"', 'strip: 2 1/2"'],
];

describe.each(CHANGES)('in %s, with %s changed to %s', (name, from, to) => {
  const original = read(name);

  it.each([
    ['tagged', original],
    ['without tags', untagged(original)],
  ])('the numbers that are right no more are stale, and no number is wrong (%s)', (_, before) => {
    const after = before.replace(from, to);
    expect(after).not.toBe(before);
    const then = proofread({ use, source: before });
    const now = proofread({ use, source: after, before: [earlierState(then)] });

    const expected = then.accounts.flatMap(({ kind, tie, number }, index) => {
      // A number that the author hedges about is never called wrong, nor stale.
      if (kind !== 'verified' || !tie || isReserved(number, true)) return [];
      const figure = now.ledger.figure(tie.figure.id);
      const value = figure?.values.get(tie.size ?? now.pattern.sizes[0]?.name ?? '');
      const verdict = figure && value && judge(number, figure, value, now.pattern.house);
      return verdict === 'wrong' || verdict === 'short' ? [index] : [];
    });
    const stale = now.accounts.flatMap(({ kind }, index) => (kind === 'stale' ? [index] : []));
    expect(stale).toEqual(expected);
    expect(stale.length).toBeGreaterThan(0);
    expect(now.coverage).toMatchObject({ wrong: 0, short: 0 });
  });

  it('nothing stale is left when every fix is taken', () => {
    const after = original.replace(from, to);
    const before = [earlierState(proofread({ use, source: original }))];
    const fixed = applyEdits(after, fixAll(proofread({ use, source: after, before }).findings).edits);
    expect(proofread({ use, source: fixed, before }).coverage).toMatchObject({
      stale: 0,
      wrong: 0,
      short: 0,
    });
  });
});
