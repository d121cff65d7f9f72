/**
 * Fixed-point interval arithmetic: the bounds behind every value that is not rational.
 *
 * An enclosure at `bits` stands for all values between lo·2^-bits and hi·2^-bits. Every operation rounds its
 * lower bound down and its upper bound up, so the true value never leaves the interval.
 */
import { floor, type Rational } from './rational.ts';

export interface Enclosure {
  readonly lo: bigint;
  readonly hi: bigint;
}

export function encloseRational(x: Rational, bits: number): Enclosure {
  const scaled = x.mul(1n << BigInt(bits), 1n);
  const lo = floor(scaled);
  return { lo, hi: scaled.d === 1n ? lo : lo + 1n };
}

export function add(a: Enclosure, b: Enclosure): Enclosure {
  return { lo: a.lo + b.lo, hi: a.hi + b.hi };
}

export function negate(a: Enclosure): Enclosure {
  return { lo: -a.hi, hi: -a.lo };
}

export function multiply(a: Enclosure, b: Enclosure, bits: number): Enclosure {
  const products = [a.lo * b.lo, a.lo * b.hi, a.hi * b.lo, a.hi * b.hi];
  return { lo: least(products) >> BigInt(bits), hi: ceilShift(greatest(products), bits) };
}

/** `undefined` when the divisor's interval holds zero: ask again with more bits. */
export function divide(a: Enclosure, b: Enclosure, bits: number): Enclosure | undefined {
  if (b.lo <= 0n && b.hi >= 0n) return undefined;
  const one = 1n << BigInt(bits);
  const floors = [a.lo, a.hi].flatMap((x) => [b.lo, b.hi].map((y) => floorDivide(x * one, y)));
  return { lo: least(floors), hi: greatest(floors) + 1n };
}

/** The square root of the part of `a` that is not negative; `undefined` when all of it is negative. */
export function squareRoot(a: Enclosure, bits: number): Enclosure | undefined {
  if (a.hi < 0n) return undefined;
  const shift = BigInt(bits);
  return {
    lo: integerSquareRoot((a.lo > 0n ? a.lo : 0n) << shift),
    hi: integerSquareRoot(a.hi << shift) + 1n,
  };
}

/**
 * The arc tangent. It rises everywhere, so the bounds of the interval give the bounds of the result; each is
 * computed with 16 guard bits, far more than the truncations of the series lose.
 */
export function arcTangent(a: Enclosure, bits: number): Enclosure {
  const guard = 16n;
  const work = bits + Number(guard);
  const lo = arcTangentNear(a.lo << guard, work);
  const hi = arcTangentNear(a.hi << guard, work);
  return { lo: (lo >> guard) - 1n, hi: (hi >> guard) + 2n };
}

const piCache = new Map<number, Enclosure>();

/** π = 16·arctan(1/5) − 4·arctan(1/239) (Machin, 1706). */
export function pi(bits: number): Enclosure {
  const known = piCache.get(bits);
  if (known) return known;
  const guard = 16;
  const one = 1n << BigInt(bits + guard);
  const value = 16n * arcTangentOfInverse(5n, one) - 4n * arcTangentOfInverse(239n, one);
  const lo = value >> BigInt(guard);
  const enclosure = { lo: lo - 1n, hi: lo + 2n };
  piCache.set(bits, enclosure);
  return enclosure;
}

/** The greatest integer whose square is not above `n` (n ≥ 0), by Newton's method from above. */
export function integerSquareRoot(n: bigint): bigint {
  if (n < 2n) return n;
  let x = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (x + n / x) >> 1n;
    if (next >= x) return x;
    x = next;
  }
}

/** arctan(1/k)·one by its power series; k > 1, so the series alternates and falls fast. */
function arcTangentOfInverse(k: bigint, one: bigint): bigint {
  const square = k * k;
  let power = one / k;
  let sum = power;
  for (let n = 3n, sign = -1n; power !== 0n; n += 2n, sign = -sign) {
    power /= square;
    sum += (sign * power) / n;
  }
  return sum;
}

/** arctan of x·2^-bits, good to a few units in the last place (the caller's guard bits cover them). */
function arcTangentNear(x: bigint, bits: number): bigint {
  if (x < 0n) return -arcTangentNear(-x, bits);
  const shift = BigInt(bits);
  const one = 1n << shift;
  if (x > one) return (pi(bits).lo >> 1n) - arcTangentNear((one * one) / x, bits);
  // arctan x = 2·arctan(x / (1 + √(1 + x²))): three halvings bring x under 0.1, where the series is short.
  let t = x;
  for (let i = 0; i < 3; i++) t = (t << shift) / (one + integerSquareRoot(one * one + t * t));
  const square = (t * t) >> shift;
  let power = t;
  let sum = t;
  for (let n = 3n, sign = -1n; power !== 0n; n += 2n, sign = -sign) {
    power = (power * square) >> shift;
    sum += (sign * power) / n;
  }
  return sum << 3n;
}

function ceilShift(x: bigint, bits: number): bigint {
  return -(-x >> BigInt(bits));
}

function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return a % b !== 0n && a < 0n !== b < 0n ? quotient - 1n : quotient;
}

function least(values: readonly bigint[]): bigint {
  return values.reduce((a, b) => (b < a ? b : a));
}

function greatest(values: readonly bigint[]): bigint {
  return values.reduce((a, b) => (b > a ? b : a));
}
