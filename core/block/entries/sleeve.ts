import { z } from 'zod';
import { one } from '../entry.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { length, lengthOrZero } from '../values/length.ts';

export const sleeve = one(
  z.strictObject({
    from: fabricLabel.optional().describe('The fabric it is cut from.'),
    'finished depth': length.describe('Depth of the sleeve when it lies flat.'),
    'short of edge': lengthOrZero.optional().describe('How far the sleeve stays away from each side edge.'),
  }),
  {
    summary: 'The sleeve that a wall quilt hangs by.',
    example: 'sleeve: { finished depth: 4", short of edge: 1" }',
  },
);
