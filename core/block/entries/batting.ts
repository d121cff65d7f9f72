import { z } from 'zod';
import { one } from '../entry.ts';
import { lengthOrZero } from '../values/length.ts';

export const batting = one(
  z.strictObject({
    overhang: lengthOrZero
      .optional()
      .describe('Beyond the top on each side, where it differs from the house.'),
  }),
  { summary: 'The batting, with its overhang on each side.', example: 'batting: {}' },
);
