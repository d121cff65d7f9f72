import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { gridFor, onPointSetting, straightSetting } from '../../core/trade/setting.ts';
import { EIGHTH, mixed, size, written } from './units/mixed.ts';
import { offset, rightTriangle, side } from './units/polygon.ts';

const Q = rational(1, 4);
const grids = fc.record({ across: fc.integer({ min: 1, max: 12 }), down: fc.integer({ min: 1, max: 12 }) });
const blocks = fc.integer({ min: 16, max: 160 }).map((n) => rational(n, 8));

/** The other route: puts every turned block into place on the quilt top and counts what is left along its edges. */
function drawn(across: number, down: number) {
  // In units of half a diagonal, block centres lie where x and y are both odd or both even, inside the top.
  const centres: [number, number][] = [];
  for (let x = 1; x < 2 * across; x++)
    for (let y = 1; y < 2 * down; y++) if ((x - y) % 2 === 0) centres.push([x, y]);
  // Each block is a square of area 2 here; what it leaves of the top is triangles: 1 at a side, 1/2 in a corner.
  const left = 4 * across * down - 2 * centres.length;
  return { blocks: centres.length, sides: left - 2 };
}

describe('a straight set', () => {
  it('is as wide and long as its blocks', () => {
    const { blocks: count, finished } = straightSetting({ across: 4, down: 5 }, size('12 x 10'));
    expect(count).toBe(20);
    expect([finished.width, finished.length].map((x) => x.exact?.valueOf())).toEqual([48, 50]);
  });

  it('covers a wanted size with the fewest whole blocks', () => {
    expect(gridFor({ width: mixed('81'), length: mixed('84') }, mixed('12'))).toEqual({ across: 7, down: 7 });
    expect(gridFor({ width: mixed('84'), length: mixed('5') }, mixed('12'))).toEqual({ across: 7, down: 1 });
  });
});

describe('a setting on point', () => {
  it('has the blocks and side triangles that a drawing of it shows', () => {
    fc.assert(
      fc.property(grids, (grid) => {
        const set = onPointSetting(grid, Real.of(6), Q, EIGHTH);
        const { blocks: count, sides } = drawn(grid.across, grid.down);
        expect(set.blocks).toBe(count);
        expect(set.side.triangles).toBe(sides);
      }),
    );
  });

  it('is filled by its blocks and triangles', () => {
    fc.assert(
      fc.property(grids, blocks, (grid, b) => {
        const { finished, side: sides, corner, blocks: count } = onPointSetting(grid, Real.of(b), Q, EIGHTH);
        const half = (leg: Real) => leg.toNumber() ** 2 / 2;
        const parts =
          count * b.valueOf() ** 2 +
          sides.triangles * half(sides.shortSide) +
          corner.triangles * half(corner.shortSide);
        expect(parts).toBeCloseTo(finished.width.toNumber() * finished.length.toNumber(), 6);
      }),
    );
  });

  it('cuts its squares so large that the triangles are the finished ones moved outwards by the seam', () => {
    fc.assert(
      fc.property(blocks, (b) => {
        const { side: sides, corner } = onPointSetting({ across: 2, down: 2 }, Real.of(b), Q, EIGHTH);
        const sideTriangle = offset(rightTriangle(b.valueOf(), b.valueOf()), 0.25);
        expect(sides.exact.toNumber()).toBeCloseTo(side(sideTriangle, 1), 9);
        const leg = b.valueOf() / Math.SQRT2;
        expect(corner.exact.toNumber()).toBeCloseTo(side(offset(rightTriangle(leg, leg), 0.25), 0), 9);
        for (const { exact, cut } of [sides, corner]) {
          expect(cut.valueOf()).toBeGreaterThanOrEqual(exact.toNumber());
          expect(cut.valueOf() - exact.toNumber()).toBeLessThan(0.125);
        }
      }),
    );
  });

  it('counts whole squares and the triangles that are left over', () => {
    const { side: sides, corner } = onPointSetting({ across: 4, down: 5 }, Real.of(12), Q, EIGHTH);
    expect(sides).toMatchObject({ triangles: 14, squares: 4, perSquare: 4, spare: 2 });
    expect(corner).toMatchObject({ triangles: 4, squares: 2, perSquare: 2, spare: 0 });
    expect([sides.cut, corner.cut].map(written)).toEqual(['18 1/4', '9 3/8']);
  });

  it('has no side triangles when it is a single block', () => {
    const { side: sides, blocks: count } = onPointSetting({ across: 1, down: 1 }, Real.of(12), Q, EIGHTH);
    expect(sides).toMatchObject({ triangles: 0, squares: 0, spare: 0 });
    expect(count).toBe(1);
  });
});
