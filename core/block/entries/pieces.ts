import { z } from 'zod';
import { many } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { count } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';
import { sides } from '../values/sides.ts';

export const pieces = many(
  z.strictObject({
    cut: perSize(sides).optional().describe('Cut size: width x length.'),
    finished: perSize(sides).optional().describe('Finished size; the cut size adds two seams.'),
    count: perSize(count).describe('How many to cut in all.'),
    from: fabricLabel.optional().describe('The fabric.'),
    along: choice('width', 'length')
      .optional()
      .describe('Whether it is cut across the width of the fabric, or along its length.'),
  }),
  {
    summary: 'Pieces that belong to no block, or that are given by their cut size.',
    example: 'pieces:\n  sash: { cut: 2 1/2" x 12 1/2", count: 31, from: C }',
  },
);
