import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { length } from '../values/length.ts';

export const piping = one(
  z.strictObject({
    from: fabricLabel.optional().describe('The fabric it is cut from.'),
    cord: length.describe('Diameter of the cord.'),
    grain: choice('straight', 'bias').optional().describe('Bias, unless the edge is straight.'),
  }),
  { summary: 'Piping around the finished edge.', example: 'piping: { from: B, cord: 1/4", grain: bias }' },
);
