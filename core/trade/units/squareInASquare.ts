import { Real } from '../../quantity/real.ts';
import { bothSeams, halfSquareSeams, ROOT_2 } from './seams.ts';
import { mustBeSquare, piece, rectangular, square, type UnitKind } from './unit.ts';

/**
 * A square on its point inside a square of finished side f; the centre is the first fabric, the corners the
 * second.
 *
 * The centre joins the middles of the sides, so its side is f/√2. Each corner is a half-square triangle with
 * legs f/2. By stitch and flip a whole square of fabric lies under four corner squares that are half its size.
 */
export const squareInASquare: UnitKind = {
  ...rectangular,
  name: 'square in a square',
  one: 'square-in-a-square unit',
  several: 'square-in-a-square units',
  otherNames: ['squares in a square', 'square in a square units'],
  fabrics: () => 2,
  oneLength: 'the outer side',
  problem: mustBeSquare('Square in a square units'),
  methods: [
    {
      name: 'cut triangles',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, { seam, oversize }) => [
        piece('centre square', 0, square(spec.width.div(ROOT_2).add(bothSeams(seam)))),
        piece(
          'corner square',
          1,
          square(spec.width.div(Real.of(2)).add(halfSquareSeams(seam)).add(Real.of(oversize))),
          { perSet: 2, next: 'once diagonally', patches: 2 },
        ),
      ],
    },
    {
      name: 'stitch and flip',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [
        piece('large square', 0, square(spec.width.add(bothSeams(seam)))),
        piece('corner square', 1, square(spec.width.div(Real.of(2)).add(bothSeams(seam))), { perSet: 4 }),
      ],
    },
  ],
};
