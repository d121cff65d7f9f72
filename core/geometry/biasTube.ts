/**
 * The tube that turns one square of cloth into one long strip at 45° to its sides.
 *
 * Construction, for a square of side s, seams sewn q from the raw edge, and a strip w wide:
 *
 * 1. Cut the square along a diagonal into two right triangles with legs s.
 * 2. Lay one leg of each together, ends even, and sew q from the edge. The first triangle is y ≤ x over the leg
 *    y = 0; the second lies below it, its slanted edge on y = x − s + 2q. Between the two slanted edges there is,
 *    at every x from 0 to s, the same upright distance a = s − 2q. The cloth is now a parallelogram s wide and
 *    a high with two slanted sides.
 * 3. Rule lines parallel to the slanted sides, w apart, so w·√2 apart along the upright sides. n = ⌊a/(w·√2)⌋
 *    whole strips fit; the rest, narrower than w, is cut away.
 * 4. Bring the two upright sides together, shifted by one line, and sew q from the edge: the tube measures
 *    s − 2q = a from seam to seam.
 * 5. Cut along the line. Each turn climbs one strip and runs a across at 45°, so it is a·√2 long; there are n.
 *
 * Length of the strip: n·a·√2. It never exceeds s²/w, the area over the width, for n·w·√2 ≤ a < s.
 *
 * (If the ends in step 2 are offset instead, so that the seam starts where the slanted edges cross, the
 * parallelogram is s − q high and s − 3q from seam to seam; the area differs by q² only.)
 *
 * Source: the yield published in The Button Ship, "Continuous bias tape: a magic formula" (2014), is this one,
 * solved for s: s = n·w·√2 + 2q. Derivation: ours.
 */
import { max, type Rational, rational, ZERO } from '../quantity/rational.ts';
import { Real, roundDown, roundUp } from '../quantity/real.ts';

export const ROOT_TWO: Real = Real.of(2).sqrt();
const UNIT = rational(1);

/** Lengths in the unit of `side` and `width`. */
export interface BiasTube {
  readonly side: Rational;
  readonly width: Rational;
  readonly allowance: Rational;
  /** a = s − 2q: across the tube from seam to seam, and along its upright side. */
  readonly across: Rational;
  /** w·√2: from line to line along the upright side. */
  readonly spacing: Real;
  /** n: how many times the strip runs around. */
  readonly passes: number;
  /** a·√2: the length of one turn. */
  readonly perPass: Real;
  /** n·a·√2. */
  readonly length: Real;
}

/**
 * What a square gives.
 *
 * @param side of the square; one that is shorter than two seams gives nothing.
 * @param width of the strip, more than nothing.
 * @param allowance q from raw edge to seam, not less than nothing.
 * @throws RangeError when the width or the allowance is out of range.
 */
export function biasTube(side: Rational, width: Rational, allowance: Rational): BiasTube {
  check(width, allowance);
  const across = max(ZERO, side.sub(allowance.mul(2n)));
  const spacing = ROOT_TWO.mul(Real.of(width));
  const passes = Number(roundDown(Real.of(across).div(spacing), UNIT).n);
  const perPass = ROOT_TWO.mul(Real.of(across));
  return { side, width, allowance, across, spacing, passes, perPass, length: perPass.mul(Real.of(passes)) };
}

/**
 * The least square, in whole steps, whose tube is at least `need` long.
 *
 * n turns need a ≥ n·w·√2 to fit and a ≥ N/(n·√2) to be long enough. The first bound grows with n, the second
 * falls, and they cross at n = √(N/2w); so the least a is found at one of the two whole n beside the crossing.
 * Rounding s = a + 2q up to the step once, at the end, keeps the least: the yield never falls as s grows.
 *
 * @throws RangeError when width or step is not positive, or the allowance is negative.
 */
export function leastBiasSquare(need: Real, width: Rational, allowance: Rational, step: Rational): BiasTube {
  check(width, allowance);
  if (step.compare(0) <= 0) throw new RangeError('the step must be longer than nothing');
  if (need.sign() <= 0) return biasTube(ZERO, width, allowance);
  const crossing = roundDown(need.div(Real.of(width.mul(2n))).sqrt(), UNIT);
  const sides = [crossing, crossing.add(UNIT)]
    .filter((turns) => turns.compare(0) > 0)
    .map((turns) => roundUp(acrossFor(turns, need, width).add(Real.of(allowance.mul(2n))), step));
  const side = sides.reduce((a, b) => (b.compare(a) < 0 ? b : a));
  return biasTube(side, width, allowance);
}

function acrossFor(turns: Rational, need: Real, width: Rational): Real {
  const toFit = ROOT_TWO.mul(Real.of(width.mul(turns)));
  const toReach = need.div(ROOT_TWO.mul(Real.of(turns)));
  return toFit.compare(toReach) >= 0 ? toFit : toReach;
}

function check(width: Rational, allowance: Rational): void {
  if (width.compare(0) <= 0) throw new RangeError('a strip must be wider than nothing');
  if (allowance.compare(0) < 0) throw new RangeError('a seam allowance cannot be less than nothing');
}
