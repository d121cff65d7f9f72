/** Arcs of a circle given by chord and depth. */
import { type Rational, rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';

/**
 * The length of the arc that stands `depth` high over a chord, in their unit.
 *
 * Let θ be half the central angle and r the radius. Half the chord is c/2 = r·sin θ and the depth is
 * h = r·(1 − cos θ), hence
 *
 *     h / (c/2) = (1 − cos θ)/sin θ = tan(θ/2),   and by Pythagoras   r² = (c/2)² + (r − h)²,
 *     so r = (c²/4 + h²)/2h,   arc = 2rθ = 4r·arctan(2h/c).
 *
 * θ/2 stays below a quarter turn for every h, so the same formula serves arcs beyond the half circle, where
 * 2r·arcsin(c/2r) would need the case 2πr − … . Both r and 2h/c are rational.
 *
 * At the half circle, 2h = c, the arc is π·r.
 * @throws RangeError when chord or depth is not positive.
 */
export function arcLength(chord: Rational, depth: Rational): Real {
  if (chord.compare(0) <= 0 || depth.compare(0) <= 0) {
    throw new RangeError('an arc needs a chord and a depth longer than nothing');
  }
  const radius = arcRadius(chord, depth);
  const slope = depth.mul(2n).div(chord);
  if (slope.equals(1n)) return Real.PI.mul(Real.of(radius));
  return Real.of(slope)
    .atan()
    .mul(Real.of(radius.mul(4n)));
}

/** The radius r = (c²/4 + h²)/2h of that arc (derived at `arcLength`). */
export function arcRadius(chord: Rational, depth: Rational): Rational {
  const halfChord = chord.mul(rational(1, 2));
  return halfChord.mul(halfChord).add(depth.mul(depth)).div(depth.mul(2n));
}
