/** How well a manuscript is read, against its annotations. All its numbers are right, so that each alarm is false. */
import type { Account, Proof } from '../../core/proof/proof.ts';
import type { Expected } from './annotated.ts';
import { compare, type Difference } from './compare.ts';

export interface Quality {
  /** How many are annotated. */
  readonly numbers: number;
  /** Of these, how many are rightly taken for a measurement, or for none. */
  readonly kindsRight: number;
  /** How many the pattern fixes. */
  readonly measuring: number;
  /** Of these, how many are verified by the figure that the annotation names, or one of the same value. */
  readonly tiesRight: number;
  readonly verified: number;
  /** Numbers that are called wrong, short or generous. */
  readonly alarms: number;
  readonly differences: readonly Difference[];
}

export function measure(proof: Proof, expected: readonly Expected[]): Quality {
  const byStart = new Map(proof.accounts.map((account) => [account.number.ranges[0].start, account]));
  const wanted = new Map(expected.map((each) => [each.start, each]));
  const differences = compare(proof, expected).filter(({ start }) => {
    const [account, each] = [byStart.get(start), wanted.get(start)];
    return !account || !each || !isEqual(account, each, proof);
  });
  const different = new Set(differences.map(({ start }) => start));
  const fixed = expected.filter(({ account }) => account === 'verified');
  return {
    numbers: expected.length,
    kindsRight: expected.filter(
      ({ start, account }) =>
        (byStart.get(start)?.kind === 'not-measurement') === (account === 'not-measurement'),
    ).length,
    measuring: fixed.length,
    tiesRight: fixed.filter(({ start }) => !different.has(start)).length,
    verified: fixed.filter(({ start }) => byStart.get(start)?.kind === 'verified').length,
    alarms: proof.accounts.filter(isAlarm).length,
    differences,
  };
}

/** `97.3 %` */
export function percent(part: number, of: number): string {
  return `${((100 * part) / Math.max(1, of)).toFixed(1)} %`;
}

export function isAlarm({ kind }: Account): boolean {
  return kind === 'wrong' || kind === 'short' || kind === 'generous';
}

/** Whether a number is verified by another figure than the annotation's, which has the same values in all sizes. */
function isEqual({ kind, tie }: Account, { account, figures }: Expected, { ledger }: Proof): boolean {
  if (kind !== 'verified' || account !== 'verified' || !tie) return false;
  return figures.some(({ id, size }) => {
    const figure = ledger.figure(id);
    const isSame = [...(figure?.values ?? [])].every(([name, { shown }]) =>
      tie.figure.values.get(name)?.shown.equals(shown),
    );
    const isSize = size === undefined || tie.size === null || tie.size === size;
    return figure !== undefined && figure.kind === tie.figure.kind && isSame && isSize;
  });
}
