import type { Account, Proof } from '../proof/proof.ts';
import { placeOf } from './place.ts';
import type { ReportedFinding } from './unaccounted.ts';

/** The number that a finding is about; `undefined` for a finding about a block, a tag or a statement. */
export function accountOf({ accounts }: Proof, { code, start }: ReportedFinding): Account | undefined {
  return accounts.find((account) => account.code === code && placeOf(account.number).start === start);
}
