import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { bothSeams } from './seams.ts';
import { isSquare, piece, rectangular, square, type UnitKind, type UnitSpec } from './unit.ts';

/**
 * Radii of the two templates of a quarter-circle unit whose seam finishes with radius R. Both curves lie q beside
 * the seam with the same centre (the corner where the finished sides meet): the quarter circle is cut at R + q,
 * the background at R − q.
 */
export function templateRadii(radius: Real, seam: Rational): { quarterCircle: Real; background: Real } {
  const q = Real.of(seam);
  return { quarterCircle: radius.add(q), background: radius.sub(q) };
}

/**
 * Squares with a quarter circle (the first fabric) in one corner and the background (the second) around it.
 *
 * The pieces are cut by template from squares: the quarter circle needs R + q for the curve and q beyond each
 * straight side, R + 2q; the background is a whole square of f + 2q with the corner cut out.
 */
export const quarterCircles: UnitKind = {
  ...rectangular,
  name: 'quarter-circle units',
  one: 'quarter-circle unit',
  otherNames: ['quarter-circle unit', 'quarter circles', 'quarter circle', 'quarter-circle curves'],
  fabrics: () => 2,
  needs: ['radius'],
  oneLength: 'the side of the square unit',
  problem: (spec, { seam }) => {
    if (!isSquare(spec)) return 'Quarter-circle units are square: both finished sides must be equal.';
    if (radius(spec).compare(spec.width) >= 0)
      return 'The radius of a quarter circle must be less than the side of its unit.';
    return radius(spec).compare(Real.of(seam)) > 0
      ? undefined
      : 'The radius of a quarter circle must be greater than the seam allowance.';
  },
  methods: [
    {
      name: 'by template',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: true,
      cuts: (spec, { seam, oversize }) => [
        piece('quarter circle', 0, square(radius(spec).add(bothSeams(seam)).add(Real.of(oversize))), {
          next: 'by template',
        }),
        piece('background', 1, square(spec.width.add(bothSeams(seam)).add(Real.of(oversize))), {
          next: 'by template',
        }),
      ],
    },
  ],
};

function radius(spec: UnitSpec): Real {
  if (!spec.radius) throw new RangeError('a quarter-circle unit needs its radius');
  return spec.radius;
}
