/** Which lengths of a manuscript get an equivalent, which do not and why. */

import type { Passage, ReadNumber } from '../../manuscript/manuscript.ts';
import type { Proof } from '../../proof/proof.ts';
import { unitPairs } from '../../proof/unitPairs.ts';
import { isMetric } from '../../quantity/units.ts';
import type { Revision } from '../revision.ts';
import { type Addition, rangeOf, type Sides } from './addition.ts';
import { EquivalentText } from './equivalentText.ts';
import { placeFor } from './placeFor.ts';
import type { System } from './system.ts';
import { whyNot } from './whyNot.ts';

export interface Additions {
  readonly additions: readonly Addition[];
  readonly open: Revision['open'];
}

export function additionsFor(proof: Proof, own: System): Additions {
  const additions: Addition[] = [];
  const open: Revision['open'][number][] = [];
  const accounts = new Map(proof.accounts.map((account) => [account.number, account]));
  const texts = new EquivalentText(proof, accounts);
  for (const passage of proof.manuscript.passages)
    for (const sides of lengthsOf(passage, own)) {
      const message = whyNot(sides, passage, accounts);
      const text = message === undefined ? texts.of(sides) : undefined;
      if (text !== undefined) additions.push({ sides, ...placeFor(sides, text, proof.manuscript.source) });
      else open.push({ ...rangeOf({ sides }), message: message ?? UNWRITTEN });
    }
  return { additions, open };
}

const UNWRITTEN =
  'The equivalent cannot be written as the numbers of this manuscript are; write it yourself.';

/** Lengths in the units of the manuscript that measure something and have no equivalent yet; sizes as a whole. */
function lengthsOf(passage: Passage, own: System): Sides[] {
  const taken = new Set(unitPairs(passage).flatMap(({ first, second }) => [...first, ...second]));
  const found: Sides[] = [];
  for (const number of passage.numbers) {
    const { unit, notMeasurement } = number;
    if (taken.has(number) || !unit || notMeasurement !== undefined || isMetric(unit) !== (own === 'metric'))
      continue;
    const sides = together(number, passage);
    for (const side of sides) taken.add(side);
    found.push(sides);
  }
  return found;
}

function together(number: ReadNumber, { numbers }: Passage): Sides {
  if (!number.group) return [number];
  const members = numbers.filter(({ group, unit }) => group === number.group && unit !== undefined);
  const [first = number, ...others] = members;
  return [first, ...others];
}
