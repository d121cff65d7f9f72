/** The perimeter of an ellipse, with proven bounds at any precision. */
import * as enclosure from '../quantity/enclosure.ts';
import { max, min, type Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';

/** Bits kept beyond those asked for, to absorb the rounding of the iteration. */
const GUARD_BITS = 64;

/**
 * The perimeter of the ellipse with the two full axes given, in their unit.
 *
 * With half axes a ≥ b the perimeter is 4a·E(m), m = 1 − b²/a², the complete elliptic integral of the second kind.
 * Gauss's arithmetic-geometric mean gives it (DLMF 19.8.6): start with a₀ = a, b₀ = b, then
 *
 *     aₙ₊₁ = (aₙ + bₙ)/2,   bₙ₊₁ = √(aₙ·bₙ),   cₙ₊₁ = (aₙ − bₙ)/2,
 *
 *     perimeter = 2π/M · ( (a² + b²)/2 − Σₙ≥₁ 2ⁿ⁻¹·cₙ² ),   M the common limit of aₙ and bₙ.
 *
 * (The term n = 0, with c₀² = a² − b², is already taken off in (a² + b²)/2.)
 *
 * Bounds: bₙ ≤ M ≤ aₙ at every step. Since bₙ ≥ bₙ₋₁, for n ≥ 1
 *
 *     cₙ₊₁ = (aₙ − bₙ)/2 ≤ ((aₙ₋₁ + bₙ₋₁)/2 − bₙ₋₁)/2 = cₙ/2,
 *
 * so each term 2ⁿ⁻¹·cₙ² is at most half the one before, and all terms after the n-th together are at most the
 * n-th: the sum lies between its first n terms and those plus the n-th once more. (In truth cₙ₊₁ = cₙ²/4aₙ₊₁, so
 * a handful of steps reach any precision.) Every step is interval arithmetic, so rounding is inside the bounds.
 *
 * Source: NIST Digital Library of Mathematical Functions, equation 19.8.6; derivation of the bounds: ours.
 * @throws RangeError when an axis is not positive.
 */
export function ellipsePerimeter(axis: Rational, otherAxis: Rational): Real {
  const [b, a] = [min(axis, otherAxis).div(2n), max(axis, otherAxis).div(2n)];
  if (b.n === 0n || b.s < 0n) throw new RangeError('an axis of an ellipse must be longer than nothing');
  // A very short half axis needs its own leading zeros on top, or its bounds would still hold zero.
  const guard = GUARD_BITS + 2 * b.d.toString(2).length;
  return Real.enclosedBy((bits) => {
    const work = bits + guard;
    const { mean, sum } = iterate(a, b, work);
    const quotient = enclosure.divide(sum, mean, work) ?? unreachable();
    const twoPi = double(enclosure.pi(work));
    const { lo, hi } = enclosure.multiply(twoPi, quotient, work);
    return { lo: lo >> BigInt(guard), hi: -(-hi >> BigInt(guard)) };
  });
}

/** Bounds for M and for (a² + b²)/2 − Σ 2ⁿ⁻¹·cₙ². */
function iterate(a: Rational, b: Rational, bits: number) {
  let upper = enclosure.encloseRational(a, bits);
  let lower = enclosure.encloseRational(b, bits);
  let sum = enclosure.encloseRational(a.mul(a).add(b.mul(b)).div(2n), bits);
  for (let gap = upper.hi - lower.lo, weight = 1n; ; weight *= 2n) {
    const c = half(enclosure.add(upper, enclosure.negate(lower)));
    const square = enclosure.multiply(c, c, bits);
    const term = { lo: weight * square.lo, hi: weight * square.hi };
    sum = enclosure.add(sum, enclosure.negate(term));
    const product = enclosure.multiply(upper, lower, bits);
    upper = half(enclosure.add(upper, lower));
    lower = enclosure.squareRoot(product, bits) ?? unreachable();
    const next = upper.hi - lower.lo;
    if (next >= gap) {
      // Rounding alone is left of the gap. The tail is between 0 and the last term.
      const tail = term.hi > 0n ? term.hi : 0n;
      return { mean: { lo: lower.lo, hi: upper.hi }, sum: { lo: sum.lo - tail, hi: sum.hi } };
    }
    gap = next;
  }
}

function half({ lo, hi }: enclosure.Enclosure): enclosure.Enclosure {
  return { lo: lo >> 1n, hi: -(-hi >> 1n) };
}

function double({ lo, hi }: enclosure.Enclosure): enclosure.Enclosure {
  return { lo: 2n * lo, hi: 2n * hi };
}

function unreachable(): never {
  throw new RangeError('the ellipse is too flat to measure');
}
