/**
 * What a seam allowance of width q adds to a finished patch, for the shapes that have names.
 *
 * A patch is cut as its finished polygon with every side moved outwards by q. The triangle that remains similar
 * to itself grows by the factor (r + q)/r, r being the radius of its inscribed circle: the centre of that circle
 * stays, and each side moves from distance r to distance r + q. So a side s grows by s·q/r.
 */
import type { Rational } from '../../quantity/rational.ts';
import { rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';

export const ROOT_2: Real = Real.of(2).sqrt();
export const ROOT_3: Real = Real.of(3).sqrt();

/** A seam allowance on either side: 2q, the trade's + 1/2 in. */
export function bothSeams(q: Rational): Real {
  return Real.of(q.mul(2n));
}

/**
 * The leg of a half-square triangle, and so the square that gives two of them when cut once diagonally.
 *
 * Legs f, long side f√2: r = (2f − f√2)/2 = f(2 − √2)/2, so f grows by 2q/(2 − √2) = (2 + √2)·q,
 * 0.8536 in for q = 1/4 in, which the trade rounds up to 7/8 in.
 */
export function halfSquareSeams(q: Rational): Real {
  return Real.of(2).add(ROOT_2).mul(Real.of(q));
}

/**
 * The long side of a quarter-square triangle, and so the square that gives four when cut twice diagonally.
 *
 * The same triangle seen from its long side f = leg·√2: it grows by √2·(2 + √2)·q = (2 + 2√2)·q,
 * 1.2071 in for q = 1/4 in, which the trade rounds up to 1 1/4 in.
 */
export function quarterSquareSeams(q: Rational): Real {
  return Real.of(2)
    .add(ROOT_2.mul(Real.of(2)))
    .mul(Real.of(q));
}

/** The height of an equilateral triangle: r is a third of it, so it grows by 3q, the trade's + 3/4 in. */
export function equilateralHeightSeams(q: Rational): Real {
  return Real.of(q.mul(3n));
}

/**
 * The legs of any right triangle: with legs a, b and long side c, r = (a + b − c)/2, so a grows by
 * 2aq/(a + b − c) = q·(a + b + c)/b, since (a + b)² − c² = 2ab. For legs 1 : 2 that is + 0.6545 in on the
 * short and + 1.3090 in on the long leg (q = 1/4 in).
 */
export function rightTriangleLegs(a: Real, b: Real, q: Rational): { a: Real; b: Real } {
  const around = a
    .add(b)
    .add(a.mul(a).add(b.mul(b)).sqrt())
    .mul(Real.of(q));
  return { a: a.add(around.div(b)), b: b.add(around.div(a)) };
}

/** The extra that quilters cut to trim the sewn unit down: 1/8 in, so that 7/8 in becomes 1 in (common practice). */
export const USUAL_OVERSIZE: Rational = rational(1, 8);
