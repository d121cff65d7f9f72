import { z } from 'zod';
import { many } from '../entry.ts';
import { fabricLabels } from '../values/fabricLabel.ts';
import { count, length } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';
import { forward, report, text } from '../values/schema.ts';
import { sides } from '../values/sides.ts';
import { unitMethodName, unitName } from '../values/unitName.ts';

const unit = z.strictObject({
  unit: unitName.describe('The kind of unit, in the words of the trade.'),
  finished: perSize(sides).describe(
    'Finished size of one unit: one length for a square unit, or width x length.',
  ),
  count: perSize(count).describe('How many stand in one block.'),
  from: fabricLabels.optional().describe('The fabrics, in the order of the unit.'),
  method: unitMethodName.optional().describe('How the units are made; left out, the usual way.'),
  corner: perSize(length).optional().describe('Finished size of a snowball corner.'),
  corners: count.optional().describe('How many corners of a snowball are sewn; four if left out.'),
  strips: z.array(length).optional().describe('Finished widths of the strips of a strip set, in order.'),
  radius: perSize(length).optional().describe('Finished radius of a curve.'),
});

const piece = z.strictObject({
  piece: text({ title: 'a name', examples: ['corner'] }, (raw) => raw).describe(
    'What the pattern calls the piece.',
  ),
  finished: perSize(sides).optional().describe('Finished size; the cut size adds two seams.'),
  cut: perSize(sides).optional().describe('Cut size, where the pattern gives that instead.'),
  count: perSize(count).describe('How many stand in one block.'),
  from: fabricLabels.optional().describe('The fabric.'),
});

export type BlockUnit = z.infer<typeof unit>;
export type BlockPiece = z.infer<typeof piece>;
export type BlockPart = BlockUnit | BlockPiece;

/** A part is a unit or a piece, told apart by its first word, so that its mistakes are reported in its own terms. */
const part = z.unknown().transform((raw, context): BlockPart => {
  const isObject = typeof raw === 'object' && raw !== null && !Array.isArray(raw);
  if (!isObject || !('unit' in raw || 'piece' in raw)) {
    report(
      context,
      'bad-value',
      'A part of a block is a unit or a piece: { unit: …, finished: …, count: … }.',
    );
    return z.NEVER;
  }
  const schema = 'unit' in raw ? unit : piece;
  const read = schema.safeParse(raw);
  if (read.success) return read.data;
  forward(context, read.error, schema);
  return z.NEVER;
});

export const PART_SCHEMAS = { unit, piece };

export const blocks = many(
  z.strictObject({
    finished: perSize(sides).describe('Finished size of the block.'),
    make: perSize(count).optional().describe('How many to make; left out, it follows from the layout.'),
    of: z.array(part).optional().describe('The units and pieces that one block is made of.'),
  }),
  {
    summary: 'The blocks of the quilt, each with the units and pieces that it is made of.',
    example: [
      'blocks:',
      '  Ripple:',
      '    finished: 12"',
      '    make: 20',
      '    of:',
      '      - { unit: half-square triangles, finished: 3", count: 8, from: [A, B], method: two at a time }',
      '      - { piece: corner, finished: 3" x 3", count: 8, from: B }',
    ].join('\n'),
  },
);
