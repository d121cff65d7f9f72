import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { halfSquareSeams, quarterSquareSeams } from './seams.ts';
import { mustBeSquare, piece, rectangular, type Size, square, type UnitKind, type UnitSpec } from './unit.ts';

/**
 * Single right triangles with the straight grain along the legs: finished leg f. A square of f + (2 + √2)q, cut
 * once diagonally, gives two.
 */
export const halfSquareTrianglePatches: UnitKind = {
  ...rectangular,
  name: 'half-square triangle patches',
  one: 'half-square triangle patch',
  otherNames: ['half-square triangle patch', 'triangles cut once diagonally'],
  fabrics: () => 1,
  oneLength: 'the short side',
  problem: mustBeSquare('Half-square triangle patches'),
  unfinished: (spec, seam) => square(spec.width.add(halfSquareSeams(seam))),
  area: ({ width }) => width.mul(width).div(Real.of(2)),
  methods: [
    {
      name: 'cut triangles',
      unitsPerSet: () => 2,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, { seam, oversize }) => [
        piece('square', 0, square(spec.width.add(halfSquareSeams(seam)).add(Real.of(oversize))), {
          next: 'once diagonally',
          patches: 2,
        }),
      ],
    },
  ],
};

/**
 * Single right triangles with the straight grain along the long side, f. A square of f + (2 + 2√2)q, cut twice
 * diagonally, gives four. A finished triangle is f wide and f/2 high.
 */
export const quarterSquareTriangles: UnitKind = {
  ...rectangular,
  name: 'quarter-square triangles',
  one: 'quarter-square triangle',
  otherNames: ['quarter-square triangle', 'quarter square triangles', 'triangles cut twice diagonally'],
  fabrics: () => 1,
  oneLength: 'the long side',
  problem: mustBeSquare('The squares of quarter-square triangles'),
  finished: ({ width }) => lying(width),
  unfinished: (spec: UnitSpec, seam: Rational) => lying(spec.width.add(quarterSquareSeams(seam))),
  area: ({ width }) => width.mul(width).div(Real.of(4)),
  methods: [
    {
      name: 'cut triangles',
      unitsPerSet: () => 4,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, { seam, oversize }) => [
        piece('square', 0, square(spec.width.add(quarterSquareSeams(seam)).add(Real.of(oversize))), {
          next: 'twice diagonally',
          patches: 4,
        }),
      ],
    },
  ],
};

/** A right triangle on its long side: half as high as wide. */
function lying(longSide: Real): Size {
  return { width: longSide, length: longSide.div(Real.of(2)) };
}
