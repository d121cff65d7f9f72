import { z } from 'zod';
import { one } from '../entry.ts';
import { choice } from '../values/choice.ts';
import { fabricLabel } from '../values/fabricLabel.ts';
import { grid } from '../values/grid.ts';
import { length } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';
import { text } from '../values/schema.ts';
import { sides } from '../values/sides.ts';

const sashing = z.strictObject({
  finished: perSize(length).describe('Finished width of the sashing.'),
  from: fabricLabel.optional().describe('The fabric.'),
  cornerstones: fabricLabel
    .optional()
    .describe('The fabric of the squares where sashes cross; left out, there are none.'),
  around: choice('yes', 'no').optional().describe('Whether sashing also runs around the outside.'),
});

const triangles = z.strictObject({
  from: fabricLabel.optional().describe('The fabric of the setting and corner triangles.'),
});

export const layout = one(
  z.strictObject({
    set: choice('straight set', 'on point')
      .optional()
      .describe('How the blocks are set; straight if left out.'),
    grid: perSize(grid).optional().describe('Blocks across x down; on point, those of the main rows.'),
    block: text({ title: 'the name of a block', examples: ['Ripple'] }, (raw) => raw)
      .optional()
      .describe('The block that the grid is laid out by, where there are several of different sizes.'),
    centre: perSize(sides)
      .optional()
      .describe('Finished size of a centre, for a medallion of borders around it.'),
    sashing: sashing.optional().describe('Strips between the blocks.'),
    triangles: triangles.optional().describe('Setting and corner triangles of blocks set on point.'),
  }),
  {
    summary: 'How the blocks are put together.',
    example:
      'layout: { set: straight set, grid: 4 x 5, sashing: { finished: 2", from: C, cornerstones: B } }',
  },
);
