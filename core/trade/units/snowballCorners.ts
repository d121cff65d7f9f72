import { Real } from '../../quantity/real.ts';
import { bothSeams } from './seams.ts';
import { grown, piece, rectangular, square, type UnitKind, type UnitSpec } from './unit.ts';

/**
 * A square or rectangle (the first fabric) with one to four corners cut away and replaced (the second fabric) by
 * stitch and flip: a square of c + 2q is sewn over each corner along its diagonal, where c is the finished
 * corner measured along the edge.
 */
export const snowballCorners: UnitKind = {
  ...rectangular,
  name: 'snowball corners',
  one: 'snowball unit',
  several: 'snowball units',
  otherNames: ['snowball', 'snowballs', 'snowball blocks', 'stitch-and-flip corners'],
  fabrics: () => 2,
  needs: ['corner'],
  oneLength: 'the side',
  problem: (spec) => {
    const corners = spec.corners ?? 4;
    if (!Number.isInteger(corners) || corners < 1 || corners > 4)
      return 'A unit has one to four snowball corners.';
    const twice = corner(spec).mul(Real.of(2));
    const meet = corners === 1 ? corner(spec) : twice;
    const short = spec.width.compare(spec.length) <= 0 ? spec.width : spec.length;
    return meet.compare(short) <= 0
      ? undefined
      : 'The snowball corners are larger than the unit has room for.';
  },
  methods: [
    {
      name: 'stitch and flip',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [
        piece(
          spec.width.compare(spec.length) === 0 ? 'square' : 'rectangle',
          0,
          grown(spec, bothSeams(seam)),
        ),
        piece('corner square', 1, square(corner(spec).add(bothSeams(seam))), { perSet: spec.corners ?? 4 }),
      ],
    },
  ],
};

function corner(spec: UnitSpec): Real {
  if (!spec.corner) throw new RangeError('snowball corners need the finished size of a corner');
  return spec.corner;
}
