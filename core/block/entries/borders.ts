import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { length } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';
import { forward, report } from '../values/schema.ts';

const border = z.strictObject({
  finished: perSize(length).describe('Finished width.'),
  from: fabricLabel.optional().describe('The fabric.'),
  corners: choice('butted', 'mitred', 'corner squares')
    .optional()
    .describe('How the corners meet; butted if left out, sides first.'),
  'corners from': fabricLabel.optional().describe('The fabric of the corner squares.'),
  along: choice('width', 'length')
    .optional()
    .describe('Whether the strips are cut across the width of the fabric, or along its length.'),
});

export type BorderEntry = z.infer<typeof border>;

export const BORDER_SCHEMA = border;

export const borders = one(
  z
    .unknown()
    .transform((raw, context): readonly BorderEntry[] => {
      if (!Array.isArray(raw)) {
        report(
          context,
          'bad-value',
          'Borders are a list from the inside out, each line beginning with a dash.',
        );
        return z.NEVER;
      }
      return raw.flatMap((item, index) => {
        const read = border.safeParse(item);
        if (read.success) return [read.data];
        forward(context, read.error, border, [index]);
        return [];
      });
    })
    .meta({ title: 'a list of borders', examples: ['- { finished: 4", from: A }'] }),
  {
    summary: 'The borders, from the inside out.',
    example: 'borders:\n  - { finished: 1 1/2", from: B }\n  - { finished: 4", from: A, corners: mitred }',
  },
);
