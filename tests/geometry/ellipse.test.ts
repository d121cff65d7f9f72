import ellipe from '@stdlib/math-base-special-ellipe';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ellipsePerimeter } from '../../core/geometry/ellipse.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { inches, real } from '../quantity/inches.ts';

const axes = fc.integer({ min: 1, max: 120 * 16 }).map((n) => rational(n, 16));

/** The ellipse walked in small steps of the angle, by Simpson's rule on its speed. */
function bySimpson(axis: number, otherAxis: number, steps = 20_000): number {
  const speed = (t: number) => Math.hypot((axis / 2) * Math.sin(t), (otherAxis / 2) * Math.cos(t));
  const h = Math.PI / 2 / steps;
  let sum = speed(0) + speed(Math.PI / 2);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * speed(i * h);
  return (4 * sum * h) / 3;
}

describe('the perimeter of an ellipse', () => {
  it.each([
    ['18', '12'],
    ['14', '20'],
    ['36', '24'],
    ['60', '36'],
    ['72', '18'],
    ['90', '1'],
    ['70 1/2', '70'],
  ])('%s by %s agrees with numerical integration', (a, b) => {
    const numeric = bySimpson(inches(a).valueOf(), inches(b).valueOf());
    expect(ellipsePerimeter(inches(a), inches(b)).toNumber()).toBeCloseTo(numeric, 7);
  });

  it('agrees with the complete elliptic integral of the @stdlib library', () => {
    fc.assert(
      fc.property(axes, axes, (a, b) => {
        const [short, long] = [a.valueOf(), b.valueOf()].sort((x, y) => x - y) as [number, number];
        const reference = 2 * long * ellipe(1 - (short / long) ** 2);
        const ours = ellipsePerimeter(a, b).toNumber();
        // The reference is good to a few units of double precision.
        expect(Math.abs(ours / reference - 1)).toBeLessThan(1e-13);
      }),
    );
  });

  it('has bounds that are tight and nest at every precision', () => {
    fc.assert(
      fc.property(axes, axes, (a, b) => {
        const around = ellipsePerimeter(a, b);
        const finest = around.enclose(512);
        for (const bits of [16, 53, 64, 128, 256]) {
          const { lo, hi } = around.enclose(bits);
          const shift = BigInt(512 - bits);
          expect(lo << shift <= finest.lo && hi << shift >= finest.hi).toBe(true);
          expect(hi - lo).toBeLessThan(4n);
        }
      }),
    );
  });

  it('is the same whichever axis comes first', () => {
    fc.assert(
      fc.property(axes, axes, (a, b) => {
        expect(ellipsePerimeter(a, b).enclose(128)).toEqual(ellipsePerimeter(b, a).enclose(128));
      }),
    );
  });

  it('is shorter than the rectangle around it and not shorter than the circle of the mean diameter', () => {
    fc.assert(
      fc.property(axes, axes, (a, b) => {
        const around = ellipsePerimeter(a, b);
        expect(around.compare(Real.of(a.add(b).mul(2n)))).toBe(-1); // inside its rectangle
        expect(around.compare(Real.PI.mul(Real.of(a.add(b).div(2n))))).not.toBe(-1); // over the mean circle
      }),
    );
  });

  // M. Villarino, Ramanujan's approximation is a lower bound (J. Inequal. Pure Appl. Math. 7(1) art. 21, 2006).
  it('is never below the lower bound of Ramanujan', () => {
    fc.assert(
      fc.property(axes, axes, (x, y) => {
        const [a, b] = [x.div(2n), y.div(2n)];
        const sum = a.add(b);
        const root = Real.of(a.mul(a).add(a.mul(b).mul(14n)).add(b.mul(b))).sqrt();
        const difference = a.sub(b);
        const bound = Real.of(difference.mul(difference).mul(3n))
          .div(Real.of(sum.mul(10n)).add(root))
          .add(Real.of(sum))
          .mul(Real.PI);
        const order = ellipsePerimeter(x, y).compare(bound);
        // Nearly round ellipses differ by less than anything one can tell.
        expect(order).not.toBe(-1);
      }),
    );
  });

  it('of a circle is π times its diameter', () => {
    const around = ellipsePerimeter(inches('24'), inches('24'));
    expect(around.compare(Real.PI.mul(real('24')))).toBe(0);
    expect(around.compare(Real.PI.mul(real('24')).add(Real.of(rational(1n, 1n << 400n))))).toBe(-1);
  });

  it('of a needle is twice its length', () => {
    expect(ellipsePerimeter(inches('1000'), inches('1/100000')).toNumber()).toBeCloseTo(2000, 6);
    expect(ellipsePerimeter(inches('1/16'), rational(1n, 10n ** 40n)).toNumber()).toBeCloseTo(1 / 8, 12);
  });

  it('does not exist without two axes', () => {
    expect(() => ellipsePerimeter(inches('0'), inches('4'))).toThrow('longer than nothing');
    expect(() => ellipsePerimeter(inches('4'), inches('-4'))).toThrow('longer than nothing');
  });
});
