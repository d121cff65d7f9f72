import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { length } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';

export const binding = one(
  z.strictObject({
    from: fabricLabel.optional().describe('The fabric it is cut from.'),
    strip: perSize(length)
      .optional()
      .describe('Cut width of the strip; left out, the “binding strip” of the house.'),
    grain: choice('straight', 'bias')
      .optional()
      .describe('Straight across the fabric, or on the bias; curved edges need bias.'),
    'cut as': choice('one square', 'strips')
      .optional()
      .describe('Bias only: one continuous strip from a square, or strips cut singly.'),
    join: choice('diagonal', 'straight')
      .optional()
      .describe('How strips are joined, where it differs from the house.'),
  }),
  {
    summary: 'The binding around the finished edge.',
    example: 'binding: { from: A, strip: 2 1/4", grain: bias, cut as: one square }',
  },
);
