/** Ties by partnership: what the same length in the other system of units states. */
import type { House } from '../block/house.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import { agreeRoughly, isHeld } from './conversion.ts';
import type { Tie } from './proof.ts';
import { unitPairs } from './unitPairs.ts';

/**
 * The same ties, and one more for each number whose partner has one. A house that says how it converts is held to it;
 * without that a number which is no conversion of the other may well state something else.
 */
export function withPartners(
  ties: ReadonlyMap<ReadNumber, Tie>,
  { passages }: Manuscript,
  house: House,
): ReadonlyMap<ReadNumber, Tie> {
  const all = new Map(ties);
  const add = (number: ReadNumber, partner: ReadNumber) => {
    const tie = ties.get(partner);
    if (!tie || ties.has(number) || !(isHeld(house) || agreeRoughly(number, partner))) return;
    const evidence = `“${partner.text}” beside it is the same length in the other system of units`;
    all.set(number, { ...tie, evidence: [evidence, ...tie.evidence] });
  };
  for (const passage of passages)
    for (const { first, second } of unitPairs(passage))
      for (const [index, one] of first.entries()) {
        const other = second[index];
        if (!other) continue;
        add(other, one);
        add(one, other);
      }
  return all;
}
