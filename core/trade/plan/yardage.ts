/** From a length of fabric to what is asked for at the cutting table. */
import type { Rational } from '../../quantity/rational.ts';
import { Real, roundUp } from '../../quantity/real.ts';

/**
 * The length to buy: the need rounded up to the step in which fabric is sold.
 *
 * @param need in inches.
 * @param sellBy the step in inches: 4 1/2 for eighths of a yard.
 */
export function yardage(need: Rational, sellBy: Rational): Rational {
  return roundUp(Real.of(need), sellBy);
}

/**
 * Whether the length to buy is proved although the shortest plan may not be: the best plan and the bound below
 * which no plan can be round up to the same length.
 */
export function yardageIsProved(best: Rational, bound: Rational, sellBy: Rational): boolean {
  return yardage(best, sellBy).equals(yardage(bound, sellBy));
}
