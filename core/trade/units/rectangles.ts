import { bothSeams } from './seams.ts';
import { grown, piece, rectangular, type UnitKind } from './unit.ts';

/** Plain rectangles: each finished side + 2q. */
export const rectangles: UnitKind = {
  ...rectangular,
  name: 'rectangles',
  one: 'rectangle',
  otherNames: ['rectangle'],
  fabrics: () => 1,
  oneLength: 'the side',
  problem: () => undefined,
  methods: [
    {
      name: 'cut rectangles',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [piece('rectangle', 0, grown(spec, bothSeams(seam)))],
    },
  ],
};
