import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { lengthOrZero } from '../values/length.ts';

export const backing = one(
  z.strictObject({
    from: fabricLabel.optional().describe('The fabric it is cut from.'),
    overhang: lengthOrZero
      .optional()
      .describe('Beyond the top on each side, where it differs from the house.'),
    seams: choice('vertical', 'horizontal')
      .optional()
      .describe('The direction of the seams; left out, the one that takes less fabric.'),
  }),
  { summary: 'The backing, with its overhang on each side.', example: 'backing: { from: D }' },
);
