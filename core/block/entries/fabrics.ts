import { z } from 'zod';
import { many } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricForm } from '../values/fabricForm.ts';
import { length } from '../values/length.ts';
import { forward, text } from '../values/schema.ts';

const label = text({ title: 'a name', examples: ['Deep water'] }, (raw) => raw);

const full = z.strictObject({
  name: label.optional().describe('What the pattern calls the fabric.'),
  'usable width': length.optional().describe('Usable width of this fabric, where it differs from the house.'),
  'cut from': fabricForm
    .optional()
    .describe('How the fabric is bought: yardage, fat quarters, precut strips.'),
  directional: choice('yes', 'no')
    .optional()
    .describe(
      'Whether its print has an up and a down, so that pieces are cut with their length along the selvage.',
    ),
});

export type Fabric = z.infer<typeof full>;

export const FABRIC_SCHEMA = full;

/** A fabric is its name, or a mapping that says more. */
export const fabrics = many(
  z
    .unknown()
    .transform((raw, context): Fabric => {
      const read = typeof raw === 'string' ? full.safeParse({ name: raw }) : full.safeParse(raw);
      if (read.success) return read.data;
      forward(context, read.error, full);
      return z.NEVER;
    })
    .meta({
      title: 'a name, or more about the fabric',
      examples: ['Deep water', '{ name: Foam, usable width: 42" }'],
    }),
  {
    summary: 'The fabrics, each under the label that the pattern uses for it.',
    example: 'fabrics:\n  A: Deep water\n  B: { name: Foam, usable width: 42" }',
  },
);
