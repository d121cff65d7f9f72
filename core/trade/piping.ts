/** Piping: a cord wrapped in a strip of fabric. */
import type { Rational } from '../quantity/rational.ts';
import { Real, roundUp } from '../quantity/real.ts';

/** All lengths in inches. */
export interface PipingStrip {
  /** Diameter of the cord. */
  readonly cord: Rational;
  readonly seam: Rational;
  /** π·cord: once around. */
  readonly around: Real;
  /** 2q + π·cord: the narrowest strip that does. */
  readonly exact: Real;
  /** The strip to cut: `exact` rounded up to the step. */
  readonly strip: Rational;
}

/**
 * The strip that covers a cord and leaves a seam allowance on both sides of it.
 *
 * Once around a cord of diameter d is π·d; the two raw edges stand q beyond the stitches: 2q + π·d. The cloth's
 * own thickness is left out. How long the strip must be, and how it is cut, is reckoned as for binding.
 * Source: Upholstery Resource, "Making cording" (a 5/32 in cord with half-inch seams takes a 1 1/2 in strip).
 *
 * @throws RangeError when cord or step is not positive, or the seam is negative.
 */
export function pipingStrip(cord: Rational, seam: Rational, step: Rational): PipingStrip {
  if (cord.compare(0) <= 0 || step.compare(0) <= 0) {
    throw new RangeError('the cord and the step must be more than nothing');
  }
  if (seam.compare(0) < 0) throw new RangeError('a seam allowance cannot be less than nothing');
  const around = Real.PI.mul(Real.of(cord));
  const exact = around.add(Real.of(seam.mul(2n)));
  return { cord, seam, around, exact, strip: roundUp(exact, step) };
}
