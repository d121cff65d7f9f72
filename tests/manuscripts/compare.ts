/** Where a proof differs from what the annotations of its manuscript expect. */
import type { Account, Proof } from '../../core/proof/proof.ts';
import type { Expected } from './annotated.ts';

export interface Difference {
  readonly start: number;
  /** As the manuscript writes it. */
  readonly number: string;
  readonly expected: string;
  readonly got: string;
}

/** In reading order; a number that the manuscript does not annotate is expected to measure nothing. */
export function compare({ accounts }: Pick<Proof, 'accounts'>, expected: readonly Expected[]): Difference[] {
  const byStart = new Map(accounts.map((account) => [account.number.ranges[0].start, account]));
  const annotated = new Set(expected.map(({ start }) => start));
  const missed = expected.flatMap((each): Difference[] => {
    const account = byStart.get(each.start);
    if (account && agrees(account, each)) return [];
    const got = account ? describeAccount(account) : 'no number is found here';
    return [{ start: each.start, number: each.text, expected: describeExpected(each), got }];
  });
  const unexpected = [...byStart].flatMap(([start, account]): Difference[] =>
    annotated.has(start) || account.kind === 'not-measurement'
      ? []
      : [{ start, number: account.number.text, expected: 'not-measurement', got: describeAccount(account) }],
  );
  return [...missed, ...unexpected].sort((a, b) => a.start - b.start);
}

/** A figure that is the same in all sizes may be tied with or without naming one. */
function agrees({ kind, tie }: Account, { account, figures }: Expected): boolean {
  if (kind !== account) return false;
  if (account !== 'verified') return true;
  return figures.some(
    ({ id, size }) => id === tie?.figure.id && (size === undefined || tie.size === null || tie.size === size),
  );
}

function describeExpected({ account, figures }: Expected): string {
  return account === 'verified' ? `verified by ${figures.map(named).join(' or ')}` : account;
}

function describeAccount({ kind, tie, expected, reason }: Account): string {
  if (!tie) return reason === undefined ? kind : `${kind} (${reason})`;
  const right = kind === 'verified' || expected === undefined ? '' : `, should be ${expected}`;
  return `${kind} by ${named({ id: tie.figure.id, size: tie.size ?? undefined })}${right}`;
}

function named({ id, size }: { readonly id: string; readonly size: string | undefined }): string {
  return size === undefined || size === '' ? id : `${id} @ ${size}`;
}
