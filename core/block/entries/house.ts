import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { length, lengthOrZero } from '../values/length.ts';

/** The house rules as they stand in the block; `core/block/house.ts` fills in what is left out. */
export const house = one(
  z.strictObject({
    seam: length.optional().describe('Seam allowance.'),
    'usable width': length.optional().describe('Usable width of fabric, between the selvages.'),
    'cut to': length.optional().describe('Cut sizes are rounded up to this step.'),
    'sell by': length.optional().describe('Yardage is rounded up to this step.'),
    squaring: lengthOrZero.optional().describe('Length lost per fabric when its end is straightened.'),
    'generous over': length.optional().describe('More than this above the need is worth a hint.'),
    join: choice('diagonal', 'straight').optional().describe('How strips are joined end to end.'),
    'joining allowance': lengthOrZero
      .optional()
      .describe('Binding beyond the edge, for corners and for closing the loop.'),
    'binding strip': length
      .optional()
      .describe('Cut width of binding strips, where “binding” does not say its own.'),
    overhang: lengthOrZero.optional().describe('Backing and batting beyond the top, on each side.'),
    'backing seam': length.optional().describe('Seam allowance where backing panels are joined.'),
    'convert to': length
      .optional()
      .describe(
        'The step to which a length is rounded when it is told in the other system of units as well: `0.5 cm` in a house that works in inches, `1/8"` in one that works in centimetres. Where it is left out, other usual roundings are right as well.',
      ),
    'bias square by': choice('yield', 'area')
      .optional()
      .describe('Yield is what the tube really gives; area is the square-root rule of thumb.'),
  }),
  {
    summary: 'The rules of the house: what holds for every figure unless an entry says otherwise.',
    example: 'house: { seam: 1/4", usable width: 40", sell by: 1/8 yd }',
  },
);
