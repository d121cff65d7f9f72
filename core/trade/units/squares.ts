import { bothSeams } from './seams.ts';
import { grown, isSquare, piece, rectangular, type UnitKind } from './unit.ts';

/** Plain squares: finished side + 2q. */
export const squares: UnitKind = {
  ...rectangular,
  name: 'squares',
  one: 'square',
  otherNames: ['square'],
  fabrics: () => 1,
  oneLength: 'the side',
  problem: (spec) =>
    isSquare(spec)
      ? undefined
      : 'The sides of a square are equal: a piece with two different sides is a rectangle.',
  methods: [
    {
      name: 'cut squares',
      unitsPerSet: () => 1,
      wholeSets: false,
      trimmable: false,
      cuts: (spec, { seam }) => [piece('square', 0, grown(spec, bothSeams(seam)))],
    },
  ],
};
