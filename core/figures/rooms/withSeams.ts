import { Real } from '../../quantity/real.ts';
import type { Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { sentence } from '../sentence.ts';

/** A finished length with its two seams. */
export function withSeams(at: Derivation, finished: Real, steps: readonly string[]): Derived {
  const { show } = at;
  const need = finished.add(Real.of(at.house.seam.mul(2n)));
  const because = `${show.length(finished)} plus two ${show.length(at.house.seam)} seams is ${show.length(need)}`;
  return { need, steps: [...steps, sentence(because)], because };
}
