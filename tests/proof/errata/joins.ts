import { type Kind, manuscript } from './erratum.ts';

const meadow = (...paragraphs: string[]) =>
  manuscript(
    'Meadow Gate',
    [
      'fabrics: { A: Clover, B: Hay, C: Post }',
      'blocks: { Gate: { finished: 9" } }',
      'layout: { grid: 4 x 5, sashing: { finished: 2", from: B } }',
      'borders: [{ finished: 1 1/2", from: C }, { finished: 5", from: A }]',
    ],
    ...paragraphs,
  );

/** Two sides that are sewn together differ. */
export const JOINS: Kind = {
  kind: 'two sides of a join that differ',
  wrong: [
    {
      mistake: 'the sides of the inner border as long as its top',
      text: meadow('## Inner border', 'Cut two side borders 2" × «45½"».'),
      slip: 'width and length swapped',
    },
    {
      mistake: 'the outer top border without the width of the inner border',
      text: meadow('## Outer border', 'Cut the top and bottom borders 5½" × «52½"».'),
    },
    {
      mistake: 'a sash as long as a finished block',
      text: meadow('## Sashing', 'Cut the upright sashes 2½" × «9"».'),
      slip: 'the seam allowance left out',
    },
    {
      mistake: 'the sides of the border without seams',
      text: meadow('## Inner border', 'Cut two side borders 2" × «53"».'),
      slip: 'the seam allowance left out',
    },
    {
      mistake: 'without a block: a border that is shorter than the top',
      text: '# Gate\n\n## Border\n\nYour quilt top should now measure 44½" × 55½". Cut two side borders 3½" × «54½"».\n',
    },
    {
      mistake: 'the sides of the outer border with four seams',
      text: meadow('## Outer border', 'Cut two side borders 5½" × «57"».'),
      slip: 'the seam allowance added twice',
    },
  ],
  right: [
    [
      'sides and top of a border',
      meadow('## Inner border', 'Cut two side borders 2" × 53½", and two 2" × 45½" for top and bottom.'),
    ],
    [
      'borders cut longer and trimmed',
      meadow('## Inner border', 'Cut two side borders 2" × 56" and trim them to fit.'),
    ],
    ['a sash as long as the unfinished block', meadow('## Sashing', 'Cut the upright sashes 2½" × 9½".')],
    ['the centre before its borders', meadow('## Assembly', 'The centre now measures 42½" × 53½".')],
    [
      'the outer border',
      meadow('## Outer border', 'Cut two side borders 5½" × 56½", and two 5½" × 55½" for top and bottom.'),
    ],
    [
      'without a block: a border as long as the top',
      '# Gate\n\n## Border\n\nYour quilt top should now measure 44½" × 55½". Cut two side borders 3½" × 55½".\n',
    ],
  ],
};
