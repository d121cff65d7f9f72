import { Real } from '../../quantity/real.ts';
import { bothSeams, halfSquareSeams, ROOT_2 } from './seams.ts';
import { type CuttingRules, mustBeSquare, piece, rectangular, square, type UnitKind } from './unit.ts';

/** The square that is cut once diagonally, or that makes two units: f + (2 + √2)q. */
function side(f: Real, { seam, oversize }: CuttingRules): Real {
  return f.add(halfSquareSeams(seam)).add(Real.of(oversize));
}

/**
 * Four at a time: two squares of side s are sewn all around their edges and cut on both diagonals. Each quarter
 * is a pair of triangles whose long side is a whole edge s, sewn at q from it; the apex is the middle of the
 * square. Opened, the half above the seam has the height s/2 − q, and that is half the diagonal of the unit:
 * (f + 2q)·√2/2 = s/2 − q, so s = (f + 2q)·√2 + 2q. The outer edges of the units lie on the bias.
 */
function sideForFour(f: Real, { seam, oversize }: CuttingRules): Real {
  return f.add(bothSeams(seam)).add(Real.of(oversize)).mul(ROOT_2).add(bothSeams(seam));
}

/**
 * Squares of two triangles, each half of the square.
 *
 * Two at a time: two squares are sewn at q on both sides of one diagonal and cut apart on it; the pieces are the
 * same triangles that a square of that size gives when it is cut first. Eight at a time: the same done in each
 * quarter of a square twice as large.
 */
export const halfSquareTriangles: UnitKind = {
  ...rectangular,
  name: 'half-square triangles',
  one: 'half-square triangle',
  otherNames: ['half-square triangle', 'half square triangles', 'half square triangle', 'HST', 'HSTs'],
  fabrics: () => 2,
  oneLength: 'the side of the square unit',
  problem: mustBeSquare('Half-square triangles'),
  methods: [
    {
      name: 'two at a time',
      unitsPerSet: () => 2,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) => piece('square', from, square(side(spec.width, rules)), { patches: 2 })),
    },
    {
      name: 'cut triangles',
      unitsPerSet: () => 2,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) =>
          piece('square', from, square(side(spec.width, rules)), { next: 'once diagonally', patches: 2 }),
        ),
    },
    {
      name: 'four at a time',
      unitsPerSet: () => 4,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) => piece('square', from, square(sideForFour(spec.width, rules)), { patches: 4 })),
    },
    {
      name: 'eight at a time',
      unitsPerSet: () => 8,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) =>
          piece('square', from, square(side(spec.width, rules).mul(Real.of(2))), { patches: 8 }),
        ),
    },
  ],
};
