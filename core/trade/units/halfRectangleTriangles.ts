import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { rightTriangleLegs } from './seams.ts';
import { grown, piece, rectangular, type Size, type UnitKind, type UnitSpec } from './unit.ts';

/** The rectangle that is cut once diagonally: the legs of the triangle with its seam allowances. */
function cutRectangle({ width, length }: UnitSpec, seam: Rational): Size {
  const { a, b } = rightTriangleLegs(width, length, seam);
  return { width: a, length: b };
}

/**
 * Rectangles of two long triangles. Each cut rectangle gives two triangles that point the same way; units that
 * mirror each other need rectangles cut along the other diagonal.
 */
export const halfRectangleTriangles: UnitKind = {
  ...rectangular,
  name: 'half-rectangle triangles',
  one: 'half-rectangle triangle',
  otherNames: ['half-rectangle triangle', 'half rectangle triangles', 'HRT', 'HRTs'],
  fabrics: () => 2,
  oneLength: 'the side',
  problem: () => undefined,
  methods: [
    {
      name: 'cut triangles',
      unitsPerSet: () => 2,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, { seam, oversize }) =>
        [0, 1].map((from) =>
          piece('rectangle', from, grown(cutRectangle(spec, seam), Real.of(oversize)), {
            next: 'once diagonally',
            patches: 2,
          }),
        ),
    },
  ],
};
