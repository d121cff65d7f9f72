/** Numbers that no figure accounts for, as findings: for `--strict`, and for editors that are asked to show them. */
import type { Finding, Severity } from '../findings/finding.ts';
import type { Proof } from '../proof/proof.ts';
import { placeOf } from './place.ts';

/** Their code. They are no findings unless someone asks for them, so the table of codes does not hold it. */
export const UNACCOUNTED = 'unaccounted';

export type ReportedFinding = Finding | (Omit<Finding, 'code'> & { readonly code: typeof UNACCOUNTED });

export function unaccountedFindings(proof: Proof, severity: Severity): readonly ReportedFinding[] {
  return proof.accounts.flatMap(({ kind, number }) => {
    if (kind !== 'unaccounted') return [];
    return [
      {
        code: UNACCOUNTED,
        severity,
        message: `Nobody has checked “${number.text}”: nothing in the measure block says what it should be.`,
        ...placeOf(number),
        related: [],
        fixes: [],
      },
    ];
  });
}
