import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Derived } from '../definition.ts';
import { sentence } from '../sentence.ts';

/** Why a figure is what it is that the author states outright: there is nothing to work out. */
export const SAYS_SO = 'the measure block says so';

/** Why a rule of the house is what it is that the author does not state. */
export const USUAL = 'this is usual, and holds unless the measure block says otherwise';

/** @param value a count, or inches */
export function stated(value: Rational | Real | number): Derived {
  return {
    need: value instanceof Real ? value : Real.of(value),
    steps: [sentence(SAYS_SO)],
    because: SAYS_SO,
  };
}
