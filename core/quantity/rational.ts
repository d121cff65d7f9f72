/**
 * Exact rational numbers.
 *
 * Every length and count that the trade can write down is rational, so all arithmetic on them is done by
 * fraction.js on big integers; no floating-point number ever decides a cut size.
 */
import { Fraction } from 'fraction.js';

export type Rational = Fraction;

/** The rational `numerator / denominator`; integers only, so that no binary fraction slips in. */
export function rational(numerator: bigint | number, denominator: bigint | number = 1n): Rational {
  return new Fraction(integer(numerator), integer(denominator));
}

export const ZERO: Rational = rational(0);
export const ONE: Rational = rational(1);

/** The greatest integer that is not above `x`. */
export function floor(x: Rational): bigint {
  const { s, n, d } = x;
  return s < 0n ? -((n + d - 1n) / d) : n / d;
}

/** The least integer that is not below `x`. */
export function ceil(x: Rational): bigint {
  return -floor(x.neg());
}

export function isInteger(x: Rational): boolean {
  return x.d === 1n;
}

/** `n` or `n/d` in lowest terms: the form of rationals in JSON. */
export function toFractionText(x: Rational): string {
  const sign = x.s < 0n ? '-' : '';
  return x.d === 1n ? `${sign}${x.n}` : `${sign}${x.n}/${x.d}`;
}

export function min(a: Rational, b: Rational): Rational {
  return a.compare(b) <= 0 ? a : b;
}

export function max(a: Rational, b: Rational): Rational {
  return a.compare(b) >= 0 ? a : b;
}

function integer(x: bigint | number): bigint {
  return typeof x === 'bigint' ? x : BigInt(x); // BigInt refuses 0.5 and NaN
}
