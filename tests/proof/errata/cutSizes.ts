import { type Kind, manuscript } from './erratum.ts';

const reedbed = (...paragraphs: string[]) =>
  manuscript(
    'Reedbed',
    [
      'fabrics: { A: Moss, B: Linen }',
      'blocks:',
      '  Reed:',
      '    finished: 5"',
      '    of: [{ unit: half-square triangles, finished: 2 1/2", count: 4, from: [A, B], method: two at a time }]',
      'pieces: { post: { finished: 4" x 9", count: 12, from: B } }',
      'layout: { grid: 5 x 6 }',
      'borders: [{ finished: 3 1/2", from: A }]',
      'binding: { from: A, strip: 2 1/2" }',
    ],
    ...paragraphs,
  );

const geese = (...paragraphs: string[]) =>
  manuscript(
    'Wild Geese Home',
    [
      'fabrics: { A: Slate, B: Oat }',
      'blocks:',
      '  Skein:',
      '    finished: 6"',
      '    of: [{ unit: flying geese, finished: 6" x 3", count: 2, from: [A, B], method: stitch and flip }]',
      'layout: { grid: 6 x 8, sashing: { finished: 1 1/2", from: A } }',
    ],
    ...paragraphs,
  );

/** The seam allowance or the constant missing or doubled, or the trimmed size printed for the cut size. */
export const CUT_SIZES: Kind = {
  kind: 'a wrong cut size',
  wrong: [
    {
      mistake: 'the unfinished size of the unit for the squares it is made from',
      text: reedbed('## Half-square triangles', 'Cut 60 moss squares «3"» for the half-square triangles.'),
      slip: 'another measure of the same thing',
    },
    {
      mistake: 'the finished width of the border for its strips',
      text: reedbed('## Border', 'Cut the border strips «3½"» wide.'),
      slip: 'another measure of the same thing',
    },
    {
      mistake: 'four seam allowances instead of two',
      text: reedbed('## Cutting', 'From linen, cut 12 posts, «5"» × 9½".'),
      slip: 'the seam allowance added twice',
    },
    {
      mistake: 'one seam allowance instead of two',
      text: reedbed('## Cutting', 'From linen, cut 12 posts, 4½" × «9¼"».'),
      slip: 'the seam allowance of one side only',
    },
    {
      mistake: 'the finished side of a block where it is trimmed before it is sewn in',
      text: reedbed(
        '## Blocks',
        'Sew four half-square triangles together. The unfinished Reed block measures «5"» square.',
      ),
      slip: 'another measure of the same thing',
    },
    {
      mistake: 'the finished width of the sashing for its cut width',
      text: geese('## Sashing', 'Cut the sashing strips «1½"» wide.'),
      slip: 'another measure of the same thing',
    },
    {
      mistake: 'digits of a mixed number run together',
      text: reedbed('## Binding', 'Cut the binding strips «21/2"» wide.'),
      slip: 'a lost space in a mixed number',
    },
  ],
  right: [
    [
      'the squares of half-square triangles rounded up to trim down',
      reedbed(
        '## Half-square triangles',
        'Cut 60 moss squares 3½" for the half-square triangles, and trim the units to 3".',
      ),
    ],
    [
      'the finished and the cut size of a piece in one sentence',
      reedbed('## Cutting', 'From linen, cut 12 posts, 4½" × 9½" (they finish 4" × 9").'),
    ],
    [
      'the unfinished size of the unit beside its squares',
      reedbed(
        '## Half-square triangles',
        'From moss, cut 60 squares 3⅜". The half-square triangles measure 3" unfinished.',
      ),
    ],
    [
      'the finished and the cut width of a border',
      reedbed('## Border', 'The border finishes 3½" wide. Cut its strips 4" wide.'),
    ],
    [
      'the folded width of the binding strip',
      reedbed('## Binding', 'Cut the binding strips 2½" wide and press them in half, 1¼" wide.'),
    ],
    [
      'the unfinished and the finished block',
      reedbed('## Blocks', 'The Reed block measures 5½" unfinished and finishes at 5".'),
    ],
    [
      'a sashing strip and what it finishes',
      geese('## Sashing', 'Cut the sashing 2" wide. It will finish 1½" wide.'),
    ],
  ],
};
