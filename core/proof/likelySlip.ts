/** Whether a wrong number is wrong in a way in which people's numbers are. */
import type { FigureKind } from '../figures/figure.ts';
import { isInteger, ONE, type Rational, rational } from '../quantity/rational.ts';

/** A stated value and the right one, as counts or in inches, and both in the unit in which they are written. */
export interface Difference {
  readonly amount: Rational;
  readonly right: Rational;
  readonly written: Rational;
  readonly rightWritten: Rational;
  readonly kind: FigureKind;
}

/**
 * @param others the figure's values for the other sizes
 * @param seam of the house, in inches
 */
export function isLikelySlip(slip: Difference, others: readonly Rational[], seam: Rational): boolean {
  const { amount, right, written, rightWritten, kind } = slip;
  const difference = amount.sub(right).abs();
  if (others.some((other) => other.equals(amount))) return true;
  // Half of it is no slip: a binding that is folded, a first half of the blocks.
  if (amount.equals(right.mul(2n))) return true;
  if (right.equals(amount.mul(2n)) && !(kind === 'count' && right.compare(2) <= 0)) return false;
  if (isSwapped(written.floor(), rightWritten.floor())) return true;
  if (100n % written.d === 0n && isSwapped(written.mul(100n), rightWritten.mul(100n).floor())) return true;
  if (kind === 'count') return difference.compare(2) <= 0;
  // A fraction that was lost: 2 for 2 7/8.
  if (isInteger(written) && written.equals(rightWritten.floor())) return true;
  if (kind === 'yardage') return difference.compare(36) <= 0;
  if ([1, 2, 4].some((times) => difference.equals(seam.mul(BigInt(times), 1n)))) return true;
  return difference.compare(rational(3, 8)) <= 0 || difference.equals(ONE);
}

/** 36 for 63, 21 for 12, and 1.52 for 1.25. */
function isSwapped(a: Rational, b: Rational): boolean {
  const digits = (x: Rational) => x.toString().replace(/\D/g, '').split('').sort().join('');
  return digits(a) === digits(b) && digits(a).length > 1;
}
