import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floor, type Rational, rational } from '../../core/quantity/rational.ts';
import { Real, roundDown, roundNearest, roundUp } from '../../core/quantity/real.ts';
import { inches, real, show } from './inches.ts';

const rationals = fc
  .tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: 1, max: 512 }))
  .map(([n, d]) => rational(n, d));
const positives = rationals.filter((x) => x.compare(0) > 0);
const steps = fc.constantFrom('1', '1/2', '1/4', '1/8', '1/16', '9/2', '50/127').map(inches);

/** An expression and the same one in floating point. */
interface Both {
  readonly real: Real;
  readonly float: number;
}
const leaf = positives.map((x): Both => ({ real: Real.of(x), float: x.valueOf() }));
const irrational = fc.oneof(
  leaf.map((x): Both => ({ real: x.real.sqrt(), float: Math.sqrt(x.float) })),
  leaf.map((x): Both => ({ real: x.real.atan(), float: Math.atan(x.float) })),
  leaf.map((x): Both => ({ real: x.real.mul(Real.PI), float: x.float * Math.PI })),
);
const expression = fc.oneof(
  irrational,
  fc.tuple(irrational, leaf).map(([a, b]): Both => ({ real: a.real.add(b.real), float: a.float + b.float })),
  fc.tuple(irrational, irrational).map(([a, b]) => ({ real: a.real.sub(b.real), float: a.float - b.float })),
  fc.tuple(irrational, leaf).map(([a, b]) => ({ real: a.real.mul(b.real), float: a.float * b.float })),
  fc.tuple(leaf, irrational).map(([a, b]) => ({ real: a.real.div(b.real), float: a.float / b.float })),
);

describe('real numbers', () => {
  it('agree with floating point to its own precision', () => {
    fc.assert(
      fc.property(expression, ({ real, float }) => {
        expect(Math.abs(real.toNumber() - float)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(float)));
      }),
    );
  });

  it('have bounds that nest and tighten as more bits are asked for', () => {
    fc.assert(
      fc.property(expression, ({ real }) => {
        const coarse = real.enclose(64);
        const fine = real.enclose(128);
        const finest = real.enclose(256);
        expect(coarse.lo <= coarse.hi).toBe(true);
        // The true value is in all of them, so each pair overlaps, and the widths fall in proportion.
        expect(fine.lo <= coarse.hi << 64n && fine.hi >= coarse.lo << 64n).toBe(true);
        expect(finest.lo <= fine.hi << 128n && finest.hi >= fine.lo << 128n).toBe(true);
        expect(fine.hi - fine.lo < (coarse.hi - coarse.lo) << 64n || coarse.hi === coarse.lo).toBe(true);
      }),
    );
  });

  it('stay exact as long as nothing irrational comes in', () => {
    fc.assert(
      fc.property(rationals, positives, (a, b) => {
        const x = Real.of(a).add(Real.of(b)).mul(Real.of(b)).sub(Real.of(a)).div(Real.of(b));
        expect(x.exact?.equals(a.add(b).mul(b).sub(a).div(b))).toBe(true);
        expect(Real.of(b.mul(b)).sqrt().exact?.equals(b)).toBe(true);
      }),
    );
  });

  it('know that zero times anything, and the arc tangent of zero, are exactly zero', () => {
    expect(Real.PI.mul(Real.of(0)).exact?.n).toBe(0n);
    expect(Real.of(0).atan().exact?.n).toBe(0n);
  });

  it('compare as the values do', () => {
    expect(Real.of(2).sqrt().compare(real('141421356/100000000'))).toBe(1);
    expect(Real.of(2).sqrt().compare(real('141421357/100000000'))).toBe(-1);
    expect(Real.PI.compare(real('355/113'))).toBe(-1); // 355/113 is above π by 2.7e-7
    expect(Real.PI.compare(real('103993/33102'))).toBe(1); // the convergent before it on the other side
  });

  it('take algebraically equal values as equal', () => {
    const root = Real.of(2).sqrt();
    expect(root.mul(root).compare(Real.of(2))).toBe(0);
    expect(Real.of(8).sqrt().compare(root.add(root))).toBe(0);
  });

  it('refuse to divide by zero and to take the root of a negative value', () => {
    expect(() => Real.PI.div(Real.of(0))).toThrow(RangeError);
    expect(() => Real.of(-1).sqrt()).toThrow(RangeError);
    expect(() => Real.of(3).sub(Real.PI).sqrt()).toThrow(RangeError);
  });

  it('divide by a value that is very small but not zero', () => {
    const small = Real.PI.div(Real.of(1n << 200n));
    const quotient = Real.PI.div(small);
    expect(roundNearest(quotient, rational(1)).n).toBe(1n << 200n);
  });
});

describe('rounding to a step', () => {
  it('up is the least multiple that is not below the value', () => {
    fc.assert(
      fc.property(expression, steps, ({ real }, step) => {
        const up = roundUp(real, step);
        expect(isMultiple(up, step)).toBe(true);
        expect(Real.of(up).compare(real)).not.toBe(-1);
        expect(Real.of(up.sub(step)).compare(real)).toBe(-1);
      }),
    );
  });

  it('down is the greatest multiple that is not above the value', () => {
    fc.assert(
      fc.property(expression, steps, ({ real }, step) => {
        const down = roundDown(real, step);
        expect(isMultiple(down, step)).toBe(true);
        expect(Real.of(down).compare(real)).not.toBe(1);
        expect(Real.of(down.add(step)).compare(real)).toBe(1);
      }),
    );
  });

  it('to the nearest is at most half a step away', () => {
    fc.assert(
      fc.property(rationals, steps, (x, step) => {
        const nearest = roundNearest(Real.of(x), step);
        expect(nearest.sub(x).abs().compare(step.div(2n))).not.toBe(1);
      }),
    );
  });

  it('leaves a multiple of the step as it is, in every direction', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), steps, (k, step) => {
        const x = step.mul(k);
        for (const round of [roundUp, roundDown, roundNearest])
          expect(round(Real.of(x), step).equals(x)).toBe(true);
      }),
    );
  });

  it('does not move an irrational expression whose value is a multiple of the step', () => {
    const root = Real.of(2).sqrt();
    const two = root.mul(root);
    expect(show(roundUp(two, inches('1/8')))).toBe('2');
    expect(show(roundDown(two, inches('1/8')))).toBe('2');
  });

  it('sends a value halfway between two steps up', () => {
    expect(show(roundNearest(real('2 1/16'), inches('1/8')))).toBe('2 1/8');
    expect(show(roundNearest(real('-2 1/16'), inches('1/8')))).toBe('-2');
  });
});

function isMultiple(x: Rational, step: Rational): boolean {
  return x.div(step).equals(rational(floor(x.div(step))));
}
