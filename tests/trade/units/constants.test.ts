import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { Real, roundUp } from '../../../core/quantity/real.ts';
import { unitKind, unitMethod } from '../../../core/trade/units/kinds.ts';
import { templateRadii } from '../../../core/trade/units/quarterCircles.ts';
import {
  bothSeams,
  equilateralHeightSeams,
  halfSquareSeams,
  quarterSquareSeams,
  ROOT_2,
  rightTriangleLegs,
} from '../../../core/trade/units/seams.ts';
import { trianglesPerStrip } from '../../../core/trade/units/sixtyDegreeTriangles.ts';
import type { CuttingRules, UnitSpec } from '../../../core/trade/units/unit.ts';
import { EIGHTH, size, USUAL, written } from './mixed.ts';
import { area, extent, offset, type Point, regular, rightTriangle, side } from './polygon.ts';

const CLOSE = 9;
const sizes = fc.integer({ min: 4, max: 200 }).map((n) => rational(n, 8));
const seams = fc.integer({ min: 1, max: 12 }).map((n) => rational(n, 16));

function cutsOf(kind: string, method: string, spec: UnitSpec, rules: CuttingRules = USUAL) {
  const found = unitKind(kind);
  const how = found && unitMethod(found, method);
  if (!how) throw new Error(`${kind}, ${method}`);
  return how.method.cuts(spec, rules);
}

describe('the constants of the trade follow from polygons moved outwards by the seam allowance', () => {
  it('a rectangle grows by two seam allowances each way', () => {
    fc.assert(
      fc.property(sizes, seams, (f, q) => {
        const [w, q1] = [f.valueOf(), q.valueOf()];
        const cut = offset(
          [
            [0, 0],
            [w, 0],
            [w, 3],
            [0, 3],
          ],
          q1,
        );
        expect(w + bothSeams(q).toNumber()).toBeCloseTo(side(cut, 0), CLOSE);
        expect(3 + bothSeams(q).toNumber()).toBeCloseTo(side(cut, 1), CLOSE);
      }),
    );
  });

  it('a half-square triangle grows by (2 + √2)q along its legs', () => {
    fc.assert(
      fc.property(sizes, seams, (f, q) => {
        const cut = offset(rightTriangle(f.valueOf(), f.valueOf()), q.valueOf());
        expect(f.valueOf() + halfSquareSeams(q).toNumber()).toBeCloseTo(side(cut, 0), CLOSE);
      }),
    );
  });

  it('a quarter-square triangle grows by (2 + 2√2)q along its long side', () => {
    fc.assert(
      fc.property(sizes, seams, (f, q) => {
        const leg = f.valueOf() / Math.SQRT2;
        const cut = offset(rightTriangle(leg, leg), q.valueOf());
        expect(f.valueOf() + quarterSquareSeams(q).toNumber()).toBeCloseTo(side(cut, 1), CLOSE);
      }),
    );
  });

  it('an equilateral triangle grows by 3q in height', () => {
    fc.assert(
      fc.property(sizes, seams, (f, q) => {
        const finished = regular(3, f.valueOf());
        const grown = extent(offset(finished, q.valueOf())).height - extent(finished).height;
        expect(equilateralHeightSeams(q).toNumber()).toBeCloseTo(grown, CLOSE);
      }),
    );
  });

  it('any right triangle grows along its legs as the offset polygon does', () => {
    fc.assert(
      fc.property(sizes, sizes, seams, (a, b, q) => {
        const cut = offset(rightTriangle(a.valueOf(), b.valueOf()), q.valueOf());
        const legs = rightTriangleLegs(Real.of(a), Real.of(b), q);
        expect(legs.a.toNumber()).toBeCloseTo(side(cut, 0), CLOSE);
        expect(legs.b.toNumber()).toBeCloseTo(side(cut, 2), CLOSE);
      }),
    );
  });

  it.each([
    ['7/8', halfSquareSeams(USUAL.seam)],
    ['1 1/4', quarterSquareSeams(USUAL.seam)],
    ['3/4', equilateralHeightSeams(USUAL.seam)],
    ['1/2', bothSeams(USUAL.seam)],
  ])('the ruler fraction %s is the exact constant rounded up to an eighth', (fraction, exact) => {
    expect(written(roundUp(exact, EIGHTH))).toBe(fraction);
  });

  it('a half-rectangle triangle of 1 : 2 grows by 11/16 and 1 5/16, for which 5/8 and 1 1/4 are a hair too small', () => {
    // The Quilter's Bible, Linda Clements (book), prints + 5/8 and + 1 1/4, for a plain rectangle, where they are wrong.
    const cut = offset(rightTriangle(3, 6), 0.25);
    const [short, long] = [side(cut, 0) - 3, side(cut, 2) - 6];
    expect([short, long].map((grown) => Math.ceil(grown * 16) / 16)).toEqual([11 / 16, 1 + 5 / 16]);
    expect(short - 5 / 8).toBeCloseTo(0.0295, 4);
    expect(long - 5 / 4).toBeCloseTo(0.059, 4);
    const [ours] = cutsOf('half-rectangle triangles', 'cut triangles', size('3 x 6'));
    expect(ours && [ours.width.toNumber() - 3, ours.length.toNumber() - 6]).toEqual([
      expect.closeTo(short, CLOSE),
      expect.closeTo(long, CLOSE),
    ]);
  });

  it('a square on point is 1.414 times as wide: the box around it when it is turned by 45°', () => {
    const turned = regular(4, 1).map(([x, y]): Point => [(x - y) / Math.SQRT2, (x + y) / Math.SQRT2]);
    expect(extent(turned).width.toFixed(3)).toBe('1.414');
    expect(ROOT_2.toNumber()).toBeCloseTo(extent(turned).width, CLOSE);
  });

  it('half-square triangles four at a time leave f + 2q when the sewn square is cut on both diagonals', () => {
    const [cut] = cutsOf('half-square triangles', 'four at a time', size('3'));
    const s = cut?.width.toNumber() ?? 0;
    // One quarter of the sewn square above its seam: apex in the middle, base on the line q inside the edge.
    const aboveTheSeam: Point[] = [
      [-(s / 2 - 0.25), 0],
      [s / 2 - 0.25, 0],
      [0, s / 2 - 0.25],
    ];
    expect(side(aboveTheSeam, 1)).toBeCloseTo(3.5, CLOSE);
  });

  it('half-square triangles two at a time leave f + 2q after sewing beside the diagonal and cutting on it', () => {
    const [cut] = cutsOf('half-square triangles', 'two at a time', size('3'));
    const s = cut?.width.toNumber() ?? 0;
    // The triangle beyond a seam that lies q beside the diagonal: its legs lose q·√2.
    expect(s - 0.25 * Math.SQRT2).toBeCloseTo(3.5, CLOSE);
  });

  it('hexagons grow by 2q from flat to flat and 4q/√3 from point to point', () => {
    const [cut] = cutsOf('hexagons', 'cut from strips', size('2'));
    const box = extent(offset(regular(6, 2), 0.25));
    expect(cut?.length.toNumber()).toBeCloseTo(box.height, CLOSE);
    expect(cut?.width.toNumber()).toBeCloseTo(box.width, CLOSE);
  });

  it('the patches of flying geese, without their seams, fill the finished rectangle', () => {
    const [goose, sky] = cutsOf('flying geese', 'cut triangles', size('6 x 3'));
    const large = goose?.width.toNumber() ?? 0;
    const small = sky?.width.toNumber() ?? 0;
    const finished = (leg: number) => area(offset(rightTriangle(leg, leg), -0.25));
    expect(finished(large / Math.SQRT2) + 2 * finished(small)).toBeCloseTo(18, CLOSE);
  });

  it('the patches of a square in a square, without their seams, fill the finished square', () => {
    const [centre, corner] = cutsOf('square in a square', 'cut triangles', size('5'));
    const middle = ((centre?.width.toNumber() ?? 0) - 0.5) ** 2;
    const leg = corner?.width.toNumber() ?? 0;
    expect(middle + 4 * area(offset(rightTriangle(leg, leg), -0.25))).toBeCloseTo(25, CLOSE);
  });

  it('the patches of hourglasses and split quarter-square triangles fill the finished square', () => {
    const finished = (leg: number) => area(offset(rightTriangle(leg, leg), -0.25));
    const [quarter] = cutsOf('hourglasses', 'cut triangles', size('4'));
    expect(4 * finished((quarter?.width.toNumber() ?? 0) / Math.SQRT2)).toBeCloseTo(16, CLOSE);
    const [large, , small] = cutsOf('split quarter-square triangles', 'cut triangles', size('4'));
    const halves = finished(small?.width.toNumber() ?? 0);
    expect(2 * finished((large?.width.toNumber() ?? 0) / Math.SQRT2) + halves).toBeCloseTo(16, CLOSE);
  });

  it('the patches of half-rectangle triangles fill the finished rectangle', () => {
    const [cut] = cutsOf('half-rectangle triangles', 'cut triangles', size('3 x 5'));
    const patch = rightTriangle(cut?.width.toNumber() ?? 0, cut?.length.toNumber() ?? 0);
    expect(2 * area(offset(patch, -0.25))).toBeCloseTo(15, CLOSE);
  });

  it('both templates of a quarter circle reach one seam allowance over the seam', () => {
    const { quarterCircle, background } = templateRadii(Real.of(3), rational(1, 4));
    // Points of a fine polygon on the seam, moved outwards, lie on the template of the quarter circle.
    const onTheSeam = offset(regular(720, 2 * 3 * Math.sin(Math.PI / 720)), 0.25);
    expect(quarterCircle.toNumber()).toBeCloseTo(Math.hypot(...(onTheSeam[0] as Point)), 4);
    expect(quarterCircle.sub(background).toNumber()).toBeCloseTo(0.5, CLOSE);
  });

  it('as many triangles come from a strip as fit when they are placed one after the other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 200 }), fc.integer({ min: 100, max: 500 }), (s, u) => {
        let placed = 0;
        while (((placed + 2) / 2) * s <= u) placed++;
        expect(trianglesPerStrip(Real.of(rational(s, 8)), rational(u, 8))).toBe(placed);
      }),
    );
  });
});
