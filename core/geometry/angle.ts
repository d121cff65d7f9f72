/** Sine and tangent of fractions of a half turn, with proven bounds. */
import * as enclosure from '../quantity/enclosure.ts';
import { type Rational, rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';

const GUARD_BITS = 32;
const SIXTH = rational(1, 6);
const QUARTER = rational(1, 4);
const HALF = rational(1, 2);

/**
 * sin(x·π) for 0 < x ≤ 1/2.
 *
 * Power series t − t³/3! + t⁵/5! − … with 0 < t < 2: from the second term on the terms fall (their ratio is
 * t²/(2k(2k+1)) ≤ 4/6) and alternate, so the error of a partial sum is below the first term left out. Here that
 * term is below one unit in the last place, each division before it loses less than one unit (there are fewer
 * than 2^16 of them), and |d sin| ≤ |dt|: all of it is far below the 2^32 units of the guard bits.
 */
export function sineOfHalfTurns(x: Rational): Real {
  if (x.compare(0) <= 0 || x.compare(HALF) > 0) throw new RangeError('the angle must be acute');
  if (x.equals(HALF)) return Real.of(1);
  if (x.equals(SIXTH)) return Real.of(HALF);
  return Real.enclosedBy((bits) => {
    const work = bits + GUARD_BITS;
    const { lo } = enclosure.multiply(enclosure.pi(work), enclosure.encloseRational(x, work), work);
    const sine = sineSeries(lo, BigInt(work)) >> BigInt(GUARD_BITS);
    return { lo: sine - 1n, hi: sine + 2n };
  });
}

/** tan(x·π) = sin(x·π)/sin((1/2 − x)·π) for 0 < x < 1/2. */
export function tangentOfHalfTurns(x: Rational): Real {
  if (x.equals(QUARTER)) return Real.of(1);
  return sineOfHalfTurns(x).div(sineOfHalfTurns(HALF.sub(x)));
}

function sineSeries(t: bigint, bits: bigint): bigint {
  const square = (t * t) >> bits;
  let term = t;
  let sum = t;
  for (let k = 2n, sign = -1n; term !== 0n; k += 2n, sign = -sign) {
    term = ((term * square) >> bits) / (k * (k + 1n));
    sum += sign * term;
  }
  return sum;
}
