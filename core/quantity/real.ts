/**
 * Real numbers that are exact when they are rational, and enclosed as tightly as anyone asks when they are not.
 *
 * A circumference or a diagonal is never stored as a float: it is a recipe that yields bounds at any precision.
 * Rounding asks for bounds until both fall on the same side of the step, so no result is a hair too small.
 */
import * as enclosure from './enclosure.ts';
import { floor, type Rational, rational, ZERO } from './rational.ts';

/** Precision of the first attempt, in bits after the binary point; doubled until the question is decided. */
const FIRST_BITS = 64;
/**
 * At this precision two values are taken as equal. 2^-512 in is far below anything physical; only values that
 * are algebraically equal but not known to be so (√2·√2 and 2) come this far.
 */
const LAST_BITS = 512;

type Recipe = (bits: number) => enclosure.Enclosure;

export class Real {
  /** The value itself, where it is known to be rational. */
  readonly exact: Rational | undefined;
  readonly #recipe: Recipe;
  #last: { bits: number; value: enclosure.Enclosure } | undefined;

  private constructor(exact: Rational | undefined, recipe: Recipe) {
    this.exact = exact;
    this.#recipe = recipe;
  }

  static of(value: Rational | bigint | number): Real {
    const exact = typeof value === 'object' ? value : rational(value);
    return new Real(exact, (bits) => enclosure.encloseRational(exact, bits));
  }

  /** A value given by a recipe for its bounds, which must tighten as `bits` grows. */
  static enclosedBy(recipe: Recipe): Real {
    return new Real(undefined, recipe);
  }

  static readonly PI = Real.enclosedBy(enclosure.pi);

  enclose(bits: number): enclosure.Enclosure {
    if (this.#last?.bits === bits) return this.#last.value;
    const value = this.#recipe(bits);
    this.#last = { bits, value };
    return value;
  }

  add(other: Real): Real {
    if (this.exact && other.exact) return Real.of(this.exact.add(other.exact));
    return Real.enclosedBy((bits) => enclosure.add(this.enclose(bits), other.enclose(bits)));
  }

  neg(): Real {
    if (this.exact) return Real.of(this.exact.neg());
    return Real.enclosedBy((bits) => enclosure.negate(this.enclose(bits)));
  }

  sub(other: Real): Real {
    return this.add(other.neg());
  }

  mul(other: Real): Real {
    if (this.exact && other.exact) return Real.of(this.exact.mul(other.exact));
    if (this.exact?.equals(ZERO) || other.exact?.equals(ZERO)) return Real.of(ZERO);
    return Real.enclosedBy((bits) => enclosure.multiply(this.enclose(bits), other.enclose(bits), bits));
  }

  /** @throws RangeError when the divisor is zero. */
  div(other: Real): Real {
    if (other.sign() === 0) throw new RangeError('division by zero');
    if (this.exact && other.exact) return Real.of(this.exact.div(other.exact));
    return Real.enclosedBy((bits) =>
      refined(bits, (b) => enclosure.divide(this.enclose(b), other.enclose(b), b)),
    );
  }

  /** @throws RangeError when the value is negative. */
  sqrt(): Real {
    if (this.sign() < 0) throw new RangeError('square root of a negative value');
    const root = this.exact && rationalSquareRoot(this.exact);
    if (root) return Real.of(root);
    return Real.enclosedBy((bits) => refined(bits, (b) => enclosure.squareRoot(this.enclose(b), b)));
  }

  atan(): Real {
    if (this.exact?.equals(ZERO)) return Real.of(ZERO);
    return Real.enclosedBy((bits) => enclosure.arcTangent(this.enclose(bits), bits));
  }

  /** −1, 0 or 1. Values closer to zero than 2^-512 count as zero. */
  sign(): -1 | 0 | 1 {
    if (this.exact) return Number(this.exact.n === 0n ? 0n : this.exact.s) as -1 | 0 | 1;
    for (let bits = FIRST_BITS; bits <= LAST_BITS; bits *= 2) {
      const { lo, hi } = this.enclose(bits);
      if (lo > 0n) return 1;
      if (hi < 0n) return -1;
    }
    return 0;
  }

  compare(other: Real): -1 | 0 | 1 {
    if (this === other) return 0;
    return this.sub(other).sign();
  }

  /** The nearest floating-point number, for drawing and for tests; never for deciding. */
  toNumber(): number {
    if (this.exact) return this.exact.valueOf();
    const { lo, hi } = this.enclose(FIRST_BITS);
    return rational(lo + hi, 1n << BigInt(FIRST_BITS + 1)).valueOf();
  }
}

/** The greatest multiple of `step` that is not above `x`. */
export function roundDown(x: Real, step: Rational): Rational {
  return step.mul(decideFloor(x.div(Real.of(step))), 1n);
}

/** The least multiple of `step` that is not below `x`: the safe direction for whatever must be bought or cut. */
export function roundUp(x: Real, step: Rational): Rational {
  return roundDown(x.neg(), step).neg();
}

/** The multiple of `step` nearest to `x`; a value halfway goes up. */
export function roundNearest(x: Real, step: Rational): Rational {
  return roundDown(x.add(Real.of(step.div(2n))), step);
}

/** Refines until both bounds have the same integer part. */
function decideFloor(x: Real): bigint {
  if (x.exact) return floor(x.exact);
  for (let bits = FIRST_BITS; ; bits *= 2) {
    const { lo, hi } = x.enclose(bits);
    const [low, high] = [lo >> BigInt(bits), hi >> BigInt(bits)];
    // An undecided value sits on an integer to within 2^-512: it is that integer.
    if (low === high || bits >= LAST_BITS) return high;
  }
}

/** The root of a rational whose numerator and denominator are both squares. */
function rationalSquareRoot(x: Rational): Rational | undefined {
  const [n, d] = [enclosure.integerSquareRoot(x.n), enclosure.integerSquareRoot(x.d)];
  return n * n === x.n && d * d === x.d ? rational(n, d) : undefined;
}

/**
 * An operation that needs more bits than it was asked for (a divisor whose bounds still hold zero): doubles the
 * precision until it succeeds, then widens the bounds back to the precision asked for.
 */
function refined(
  bits: number,
  operation: (bits: number) => enclosure.Enclosure | undefined,
): enclosure.Enclosure {
  for (let work = bits; work <= bits + 4 * LAST_BITS; work *= 2) {
    const result = operation(work);
    if (!result) continue;
    const excess = BigInt(work - bits);
    return { lo: result.lo >> excess, hi: -(-result.hi >> excess) };
  }
  throw new RangeError('the value cannot be told from zero');
}
