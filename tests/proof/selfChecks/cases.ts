/** Short manuscripts without a block, with one mistake or none. */
import { expect, it } from 'vitest';
import type { Code } from '../../../core/findings/codes.ts';
import { proofread } from '../../../core/proof/proofread.ts';
import { summary } from '../../support/pattern.ts';

export interface Wrong {
  readonly situation: string;
  readonly lines: readonly string[];
  readonly code: Code;
  /** The text that the finding stands at. */
  readonly at: string;
  readonly message: string;
  /** The texts at the other places. */
  readonly against: readonly string[];
}

export type Right = readonly [situation: string, ...lines: string[]];

export function findsTheOneMistake(cases: readonly Wrong[]): void {
  it.each(cases)('has one finding, with both places: $situation', ({ lines, code, at, message, against }) => {
    const source = lines.join('\n');
    const found = proofread({ source }).findings.map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      at: source.slice(finding.start, finding.end),
      message: finding.message,
      against: finding.related.map(({ start, end }) => source.slice(start, end)),
      fixes: finding.fixes,
    }));
    expect(found).toEqual([{ code, severity: 'error', at, message, against, fixes: [] }]);
  });

  it.each(cases)('calls that number wrong, and no other: $situation', ({ lines, code, at }) => {
    const { accounts, coverage } = proofread({ source: lines.join('\n') });
    const wrong = accounts.filter(({ kind }) => kind === 'wrong');
    expect(wrong.map((account) => [account.code, account.number.text, account.tie])).toEqual([
      [code, at, undefined],
    ]);
    expect(coverage.wrong).toBe(1);
  });
}

export function findsNothing(cases: readonly Right[]): void {
  it.each(cases)('has no finding with %s', (_, ...lines) => {
    const source = lines.join('\n');
    expect(proofread({ source }).findings.map((finding) => summary(finding, source))).toEqual([]);
  });
}
