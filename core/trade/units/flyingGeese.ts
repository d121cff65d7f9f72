import { Real } from '../../quantity/real.ts';
import { bothSeams, halfSquareSeams, quarterSquareSeams } from './seams.ts';
import {
  type CuttingRules,
  grown,
  piece,
  rectangular,
  type Size,
  square,
  type UnitKind,
  type UnitSpec,
} from './unit.ts';

/** Width and height of a goose however its size is written: the long side is the width. */
function wideAndHigh({ width, length }: Size): { wide: Real; high: Real } {
  return width.compare(length) >= 0 ? { wide: width, high: length } : { wide: length, high: width };
}

function largeSquare(spec: UnitSpec, { seam, oversize }: CuttingRules): Size {
  return square(wideAndHigh(spec).wide.add(quarterSquareSeams(seam)).add(Real.of(oversize)));
}

function smallSquare(spec: UnitSpec, { seam, oversize }: CuttingRules): Size {
  return square(wideAndHigh(spec).high.add(halfSquareSeams(seam)).add(Real.of(oversize)));
}

/**
 * Rectangles twice as wide as high: a large triangle (the goose, the first fabric) between two small ones (the
 * sky, the second).
 *
 * The goose is a quarter-square triangle with long side W, each sky a half-square triangle with leg H. Four at a
 * time sews the same triangles before they are cut apart: one large square gives four geese, each small square
 * two skies. Stitch and flip sews a whole square to each end of a rectangle and cuts its corner away.
 */
export const flyingGeese: UnitKind = {
  ...rectangular,
  name: 'flying geese',
  one: 'flying geese unit',
  otherNames: ['flying goose', 'flying geese units'],
  fabrics: () => 2,
  oneLength: 'the width',
  problem: (spec) => {
    const { wide, high } = wideAndHigh(spec);
    return wide.compare(high.mul(Real.of(2))) === 0
      ? undefined
      : 'Flying geese finish twice as wide as they are high.';
  },
  methods: [
    {
      name: 'four at a time',
      unitsPerSet: () => 4,
      wholeSets: true,
      trimmable: true,
      cuts: (spec, rules) => [
        piece('large square', 0, largeSquare(spec, rules), { patches: 4 }),
        piece('small square', 1, smallSquare(spec, rules), { perSet: 4, patches: 2 }),
      ],
    },
    {
      name: 'stitch and flip',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [
        piece('rectangle', 0, grown(spec, bothSeams(seam))),
        piece('square', 1, square(wideAndHigh(spec).high.add(bothSeams(seam))), { perSet: 2 }),
      ],
    },
    {
      name: 'cut triangles',
      unitsPerSet: () => 4,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, rules) => [
        piece('large square', 0, largeSquare(spec, rules), { next: 'twice diagonally', patches: 4 }),
        piece('small square', 1, smallSquare(spec, rules), {
          perSet: 4,
          next: 'once diagonally',
          patches: 2,
        }),
      ],
    },
  ],
};
