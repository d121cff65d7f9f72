import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { biasTube, leastBiasSquare } from '../../core/geometry/biasTube.ts';
import { type Rational, rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { inches, real, show } from '../quantity/inches.ts';
import { area, clip, type HalfPlane, type Polygon, spanOnDiagonal, translate } from './clip.ts';

const sides = fc.integer({ min: 0, max: 60 * 8 }).map((n) => rational(n, 8));
const widths = fc.integer({ min: 4, max: 4 * 8 }).map((n) => rational(n, 8));
const seams = fc.constantFrom('0', '1/8', '1/4', '3/8', '1/2').map(inches);
const needs = fc.integer({ min: 1, max: 600 * 8 }).map((n) => rational(n, 8));

/**
 * Cuts, joins, marks and rolls a square of cloth as polygons, and follows the strip.
 *
 * Uses none of the formulas under test: strips are counted while the sewn cloth covers the whole of the next
 * one, and their length is measured where the middle line crosses the cloth.
 */
function simulate(side: number, width: number, seam: number): { passes: number; length: number } {
  const first: Polygon = [
    [0, 0],
    [side, 0],
    [side, side],
  ];
  const second: Polygon = [
    [0, 0],
    [side, side],
    [0, side],
  ];
  // The top leg of the second triangle on the bottom leg of the first, ends even, sewn a seam from the raw edges.
  const above = clip(first, [0, -1, -seam]);
  const below = clip(translate(second, 0, 2 * seam - side), [0, 1, seam]);
  // The tube is sewn a seam inside the outermost upright edges.
  const seamed: readonly HalfPlane[] = [
    [-1, 0, -seam],
    [1, 0, side - seam],
  ];
  const cloth = [above, below].map((piece) => clip(piece, ...seamed));
  const table: Polygon = [
    [-2 * side, -3 * side],
    [3 * side, -3 * side],
    [3 * side, 3 * side],
    [-2 * side, 3 * side],
  ];
  const step = width * Math.SQRT2;
  for (let passes = 0, length = 0; ; passes++) {
    const between: readonly HalfPlane[] = [
      [-1, 1, -passes * step],
      [1, -1, (passes + 1) * step],
    ];
    const strip = area(clip(table, ...seamed, ...between));
    const covered = cloth.reduce((sum, piece) => sum + area(clip(piece, ...between)), 0);
    if (strip === 0 || covered < strip - 1e-6) return { passes, length };
    const middle = (passes + 0.5) * step;
    for (const piece of cloth) {
      const [from, to] = spanOnDiagonal(piece, middle) ?? [0, 0];
      length += to - from;
    }
  }
}

describe('the bias tube', () => {
  it('gives what simulated cutting, sewing and rolling of the cloth gives', () => {
    for (const side of [3, 5.5, 8, 10, 12, 15, 17, 18, 20.25, 22, 24, 27, 30, 36, 45])
      for (const width of [1, 1.25, 1.5, 2, 2.25, 2.5, 3.5])
        for (const seam of [0.125, 0.25, 0.375, 0.5]) {
          const tube = biasTube(exactly(side), exactly(width), exactly(seam));
          const cloth = simulate(side, width, seam);
          const what = `square ${side}, strip ${width}, seam ${seam}`;
          expect(tube.passes, what).toBe(cloth.passes);
          expect(tube.length.toNumber(), what).toBeCloseTo(cloth.length, 6);
        }
  });

  it('of a 15 in square gives 82.0 in of 2 1/4 in strip in 4 passes of 20.5 in', () => {
    const tube = biasTube(inches('15'), inches('2 1/4'), inches('1/4'));
    expect(tube.passes).toBe(4);
    expect(show(tube.across)).toBe('14 1/2');
    expect(tube.perPass.toNumber()).toBeCloseTo(20.506, 3);
    expect(tube.length.toNumber()).toBeCloseTo(82.024, 3);
  });

  it('gives nothing when the square is eaten by its seams or is too small for one strip', () => {
    for (const side of ['0', '1/4', '1/2', '3']) {
      const tube = biasTube(inches(side), inches('2 1/4'), inches('1/4'));
      expect([tube.passes, tube.length.toNumber()]).toEqual([0, 0]);
    }
  });

  it('never gives more than the area of the square over the width of the strip', () => {
    fc.assert(
      fc.property(sides, widths, seams, (side, width, seam) => {
        const { length } = biasTube(side, width, seam);
        expect(length.compare(Real.of(side.mul(side).div(width)))).not.toBe(1);
      }),
    );
  });

  it('of a larger square is never shorter, and of a wider seam never longer', () => {
    fc.assert(
      fc.property(sides, widths, seams, fc.integer({ min: 1, max: 64 }), (side, width, seam, more) => {
        const { length } = biasTube(side, width, seam);
        expect(biasTube(side.add(rational(more, 16)), width, seam).length.compare(length)).not.toBe(-1);
        expect(biasTube(side, width, seam.add(rational(more, 64))).length.compare(length)).not.toBe(1);
      }),
    );
  });

  it('refuses a strip without width and a negative seam', () => {
    expect(() => biasTube(inches('10'), inches('0'), inches('1/4'))).toThrow('wider than nothing');
    expect(() => biasTube(inches('10'), inches('2'), inches('-1/4'))).toThrow('seam allowance');
  });
});

describe('the least square for a need', () => {
  it('of 100 in of 2 1/4 in strip is 17 in', () => {
    const tube = leastBiasSquare(real('100'), inches('2 1/4'), inches('1/4'), inches('1'));
    expect(show(tube.side)).toBe('17');
  });

  it('is a multiple of the step, is enough, and one step less is not', () => {
    const steps = fc.constantFrom('1', '1/2', '1/8', '1/16').map(inches);
    fc.assert(
      fc.property(needs, widths, seams, steps, (need, width, seam, step) => {
        const tube = leastBiasSquare(Real.of(need), width, seam, step);
        expect(tube.side.div(step).d).toBe(1n);
        expect(tube.length.compare(Real.of(need))).not.toBe(-1);
        const lesser = biasTube(tube.side.sub(step), width, seam);
        expect(lesser.length.compare(Real.of(need))).toBe(-1);
      }),
    );
  });

  it('is found as well for an irrational need as for a rational one', () => {
    const need = Real.PI.mul(real('24')).add(real('12'));
    const tube = leastBiasSquare(need, inches('2 1/4'), inches('1/4'), inches('1'));
    expect(tube.length.compare(need)).toBe(1);
    expect(biasTube(tube.side.sub(1), inches('2 1/4'), inches('1/4')).length.compare(need)).toBe(-1);
  });

  it('for no need is no square', () => {
    expect(leastBiasSquare(real('0'), inches('2'), inches('1/4'), inches('1')).side.n).toBe(0n);
  });

  it('refuses a step of nothing', () => {
    expect(() => leastBiasSquare(real('9'), inches('2'), inches('1/4'), inches('0'))).toThrow('step');
  });
});

function exactly(x: number): Rational {
  return rational(x * 8, 8);
}
