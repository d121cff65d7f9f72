import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { bothSeams, ROOT_3 } from './seams.ts';
import { isSquare, piece, type Size, type UnitKind, type UnitSpec } from './unit.ts';

/** The rectangle round a hexagon with side a that lies on a side: 2a from point to point, a√3 from flat to flat. */
function box(side: Real): Size {
  return { width: side.mul(Real.of(2)), length: side.mul(ROOT_3) };
}

/** The side with seam allowances: flat to flat grows by 2q, so the side grows by 2q/√3. */
function cutSide(spec: UnitSpec, seam: Rational): Real {
  return spec.width.add(bothSeams(seam).div(ROOT_3));
}

/**
 * Regular hexagons with finished side a, cut from strips as wide as the hexagon from flat to flat: a√3 + 2q.
 * Along the strip each takes its width from point to point, 2a + 4q/√3.
 */
export const hexagons: UnitKind = {
  name: 'hexagons',
  one: 'hexagon',
  otherNames: ['hexagon'],
  fabrics: () => 1,
  needs: [],
  oneLength: 'the side of the hexagon',
  problem: (spec) =>
    isSquare(spec) ? undefined : 'All sides of a hexagon are equal: give its finished side only.',
  finished: (spec) => box(spec.width),
  unfinished: (spec, seam) => box(cutSide(spec, seam)),
  area: (spec) => spec.width.mul(spec.width).mul(ROOT_3).mul(Real.of(3)).div(Real.of(2)),
  methods: [
    {
      name: 'cut from strips',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [piece('hexagon', 0, box(cutSide(spec, seam)), { next: 'by template' })],
    },
  ],
};
