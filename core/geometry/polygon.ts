/** Regular polygons. */
import { type Rational, rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import { sineOfHalfTurns, tangentOfHalfTurns } from './angle.ts';

/**
 * Width and length of a regular polygon that lies on one of its sides, in the unit of `side`.
 *
 * With n sides of length s the inscribed circle has radius s/(2·tan(π/n)), the circumscribed circle
 * R = s/(2·sin(π/n)).
 *
 * - n even: a side lies opposite a side, so the length (height) is twice the inscribed radius, s/tan(π/n).
 *   The width is the same when n is divisible by 4 (sides left and right), else 2R = s/sin(π/n) (corners).
 * - n odd: a corner lies opposite a side. Height = inscribed radius + R = (s/2)·(cos(π/n) + 1)/sin(π/n)
 *   = s/(2·tan(π/2n)). The widest chord joins the corners that are (n − 1)/2 sides apart:
 *   2R·sin(π(n − 1)/2n) = 2R·cos(π/2n) = s/(2·sin(π/2n)).
 *
 * @param sides a whole number, 3 or more.
 */
export function regularPolygonBox(sides: number, side: Rational): { width: Real; length: Real } {
  const s = Real.of(side);
  if (sides % 2 === 1) {
    const turn = rational(1, 2 * sides);
    const halfSide = Real.of(side.div(2n));
    return { width: halfSide.div(sineOfHalfTurns(turn)), length: halfSide.div(tangentOfHalfTurns(turn)) };
  }
  const turn = rational(1, sides);
  const length = s.div(tangentOfHalfTurns(turn));
  return { width: sides % 4 === 0 ? length : s.div(sineOfHalfTurns(turn)), length };
}
