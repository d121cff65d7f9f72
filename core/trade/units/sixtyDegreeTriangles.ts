import type { Rational } from '../../quantity/rational.ts';
import { ONE } from '../../quantity/rational.ts';
import { Real, roundDown } from '../../quantity/real.ts';
import { equilateralHeightSeams, ROOT_3 } from './seams.ts';
import { isSquare, piece, type Size, type UnitKind, type UnitSpec } from './unit.ts';

/** Side of the equilateral triangle with height h: 2h/√3. */
function side(height: Real): Real {
  return height.mul(Real.of(2)).div(ROOT_3);
}

function cutHeight(spec: UnitSpec, seam: Rational): Real {
  return spec.length.add(equilateralHeightSeams(seam));
}

function box(height: Real): Size {
  return { width: side(height), length: height };
}

/**
 * Triangles from one strip of length U, cut up and down in turn with cut side s: the first takes s, every
 * further one s/2, so n of them need (n + 1)·s/2 and n = floor(2U/s) − 1.
 */
export function trianglesPerStrip(cutSide: Real, usableWidth: Rational): number {
  const halves = Real.of(usableWidth.mul(2n)).div(cutSide);
  return Math.max(0, Number(roundDown(halves, ONE).valueOf()) - 1);
}

/**
 * Equilateral triangles; the finished size is the height h. Strips are cut h + 3q wide (the inscribed circle has
 * the radius h/3 and grows by q), the triangles along them.
 */
export const sixtyDegreeTriangles: UnitKind = {
  name: '60° triangles',
  one: '60° triangle',
  otherNames: ['60° triangle', '60-degree triangles', '60 degree triangles', 'equilateral triangles'],
  fabrics: () => 1,
  needs: [],
  oneLength: 'the height',
  problem: (spec, { seam, usableWidth }) => {
    if (!isSquare(spec)) return 'All sides of a 60° triangle are equal: give its finished height only.';
    return trianglesPerStrip(side(cutHeight(spec, seam)), usableWidth) > 0
      ? undefined
      : 'The triangle is wider than the usable width of the fabric.';
  },
  finished: (spec) => box(spec.length),
  unfinished: (spec, seam) => box(cutHeight(spec, seam)),
  area: (spec) => side(spec.length).mul(spec.length).div(Real.of(2)),
  methods: [
    {
      name: 'cut from strips',
      unitsPerSet: (spec, { seam, usableWidth }) =>
        trianglesPerStrip(side(cutHeight(spec, seam)), usableWidth),
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam, usableWidth }) => [
        piece(
          'strip',
          0,
          { width: cutHeight(spec, seam), length: Real.of(usableWidth) },
          {
            next: 'into triangles',
            fullWidth: true,
            patches: trianglesPerStrip(side(cutHeight(spec, seam)), usableWidth),
          },
        ),
      ],
    },
  ],
};
