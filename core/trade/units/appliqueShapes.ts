import { Real } from '../../quantity/real.ts';
import { bothSeams } from './seams.ts';
import { grown, piece, rectangular, type UnitKind } from './unit.ts';

/**
 * Shapes sewn on top of a background, by the rectangle round them. A turned edge takes the seam allowance on
 * every side (common practice: an eighth to a quarter of an inch); a fused or raw edge takes none. They fill
 * nothing of a block: their area is 0.
 */
export const appliqueShapes: UnitKind = {
  ...rectangular,
  name: 'appliqué shapes',
  one: 'appliqué shape',
  otherNames: ['appliqué shape', 'applique shapes', 'applique shape', 'appliqué', 'applique'],
  fabrics: () => 1,
  oneLength: 'the width and length of the shape',
  problem: () => undefined,
  unfinished: rectangular.finished,
  area: () => Real.of(0),
  methods: [
    {
      name: 'turned edge',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [piece('shape', 0, grown(spec, bothSeams(seam)), { next: 'by template' })],
    },
    {
      name: 'fused',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec) => [piece('shape', 0, spec, { next: 'by template' })],
    },
  ],
};
