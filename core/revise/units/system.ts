/** The system of units that a manuscript is written in. */
import type { House } from '../../block/house.ts';
import type { Proof } from '../../proof/proof.ts';
import { unitPairs } from '../../proof/unitPairs.ts';
import { isMetric } from '../../quantity/units.ts';

export type System = House['system'];

/** That of the house; without a block that of most lengths, where an equivalent behind another length does not count. */
export function systemOf({ manuscript, pattern }: Proof): System {
  if (pattern.stated) return pattern.house.system;
  const equivalents = new Set(manuscript.passages.flatMap(unitPairs).flatMap(({ second }) => second));
  const lengths = manuscript.numbers
    .filter((number) => !equivalents.has(number))
    .flatMap(({ unit }) => unit ?? []);
  return lengths.filter(isMetric).length * 2 > lengths.length ? 'metric' : 'inch';
}
