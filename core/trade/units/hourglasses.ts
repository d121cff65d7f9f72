import { Real } from '../../quantity/real.ts';
import { halfSquareSeams, quarterSquareSeams } from './seams.ts';
import {
  type CuttingRules,
  mustBeSquare,
  piece,
  rectangular,
  type Size,
  square,
  type UnitKind,
  type UnitSpec,
} from './unit.ts';

/** The square behind triangles whose long side is an edge of the unit: f + (2 + 2√2)q. */
function quarters(spec: UnitSpec, { seam, oversize }: CuttingRules): Size {
  return square(spec.width.add(quarterSquareSeams(seam)).add(Real.of(oversize)));
}

/** The square behind triangles whose legs are edges of the unit: f + (2 + √2)q. */
function halves(spec: UnitSpec, { seam, oversize }: CuttingRules): Size {
  return square(spec.width.add(halfSquareSeams(seam)).add(Real.of(oversize)));
}

/**
 * Squares of four triangles that meet in the middle, two of each fabric.
 *
 * Two at a time: two half-square-triangle units are laid together, sewn on both sides of the other diagonal and
 * cut apart; the triangles are those that the squares give when they are cut twice first.
 */
export const hourglasses: UnitKind = {
  ...rectangular,
  name: 'hourglasses',
  one: 'hourglass unit',
  otherNames: ['hourglass', 'hourglass units', 'quarter-square triangle units'],
  fabrics: () => 2,
  oneLength: 'the side of the square unit',
  problem: mustBeSquare('Hourglasses'),
  methods: [
    {
      name: 'two at a time',
      unitsPerSet: () => 2,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) => piece('square', from, quarters(spec, rules), { patches: 4 })),
    },
    {
      name: 'cut triangles',
      unitsPerSet: () => 2,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, rules) =>
        [0, 1].map((from) =>
          piece('square', from, quarters(spec, rules), { next: 'twice diagonally', patches: 4 }),
        ),
    },
  ],
};

/**
 * Squares of one half-square triangle and two quarter-square triangles. Fabrics: the two quarters, then the half.
 */
export const splitQuarterSquareTriangles: UnitKind = {
  ...rectangular,
  name: 'split quarter-square triangles',
  one: 'split quarter-square triangle unit',
  otherNames: ['split quarter-square triangle', 'three-patch quarter-square triangles'],
  fabrics: () => 3,
  oneLength: 'the side of the square unit',
  problem: mustBeSquare('Split quarter-square triangles'),
  methods: [
    {
      name: 'four at a time',
      unitsPerSet: () => 4,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) => [
        ...[0, 1].map((from) => piece('large square', from, quarters(spec, rules), { patches: 4 })),
        piece('small square', 2, halves(spec, rules), { perSet: 2, patches: 2 }),
      ],
    },
    {
      name: 'cut triangles',
      unitsPerSet: () => 4,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, rules) => [
        ...[0, 1].map((from) =>
          piece('large square', from, quarters(spec, rules), { next: 'twice diagonally', patches: 4 }),
        ),
        piece('small square', 2, halves(spec, rules), { perSet: 2, next: 'once diagonally', patches: 2 }),
      ],
    },
  ],
};
