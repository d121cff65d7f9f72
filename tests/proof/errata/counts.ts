import { type Kind, manuscript } from './erratum.ts';

const reedbed = (...paragraphs: string[]) =>
  manuscript(
    'Reedbed',
    [
      'house: { usable width: 40" }',
      'fabrics: { A: Moss, B: Linen }',
      'blocks:',
      '  Reed:',
      '    finished: 5"',
      '    of: [{ unit: half-square triangles, finished: 2 1/2", count: 4, from: [A, B], method: two at a time }]',
      'pieces: { rail: { cut: 2 1/2" x 10 1/2", count: 40, from: B } }',
      'layout: { grid: 5 x 6 }',
      'borders: [{ finished: 3 1/2", from: A }]',
      'binding: { from: A, strip: 2 1/2" }',
    ],
    ...paragraphs,
  );

const sizes = (...paragraphs: string[]) =>
  manuscript(
    'Hillside',
    [
      'sizes: [crib, throw, queen]',
      'blocks: { Hill: { finished: 12" } }',
      'layout: { grid: { crib: 3 x 4, throw: 5 x 6, queen: 7 x 8 }, sashing: { finished: 2" } }',
      'binding: { strip: 2 1/4" }',
    ],
    ...paragraphs,
  );

/** Pieces and strips counted wrongly. */
export const COUNTS: Kind = {
  kind: 'a wrong count',
  wrong: [
    {
      mistake: 'a block too few',
      text: reedbed('## Blocks', 'Make «29» Reed blocks.'),
      slip: 'one short',
    },
    {
      mistake: 'the units of one block for those of all',
      text: reedbed('## Half-square triangles', 'You need «116» half-square triangles in all.'),
    },
    {
      mistake: 'the fabric counted wider than the pattern says',
      text: reedbed(
        '## Cutting',
        'From linen, cut «14» strips 2½" × WOF for the rails; subcut 40 rails, 2½" × 10½".',
      ),
    },
    {
      mistake: 'another size in a table',
      text: sizes(
        '## Blocks',
        ['| | Crib | Throw | Queen |', '|---|---|---|---|', '| Blocks | 12 | «56» | 56 |'].join('\n'),
      ),
      slip: 'the number of another size',
    },
    {
      mistake: 'sashes counted around the outside',
      text: sizes('## Queen', 'Cut «127» sashes in all.'),
      slip: 'sashing around the outside mistaken',
    },
    {
      mistake: 'a binding strip too few',
      text: sizes('## Queen', 'Cut «9» binding strips 2¼" wide.'),
    },
    {
      mistake: 'rows and columns swapped',
      text: reedbed('## Assembly', 'Lay the Reed blocks out in «5» rows of «6» blocks.'),
      slip: 'width and length swapped',
    },
  ],
  right: [
    ['one spare strip', reedbed('## Binding', 'Cut 5 binding strips 2½" wide.')],
    [
      'a few spare pieces',
      reedbed(
        '## Half-square triangles',
        'Cut 62 moss squares 3⅜" for the half-square triangles; two will be left over.',
      ),
    ],
    [
      'the units of one block',
      reedbed('## Blocks', 'Sew 4 half-square triangles into one Reed block. Make 30.'),
    ],
    [
      'a part of all',
      reedbed(
        '## Blocks',
        'Make 15 Reed blocks with the moss on the left, and 15 with the moss on the right.',
      ),
    ],
    ['a list of sizes', sizes('## Blocks', 'Make 12 (30, 56) Hill blocks.')],
    ['rows of blocks', reedbed('## Assembly', 'Lay the Reed blocks out in 6 rows of 5 blocks.')],
    [
      'squares for two units each',
      reedbed(
        '## Half-square triangles',
        'Pair 60 moss squares with 60 linen squares to make 120 half-square triangles.',
      ),
    ],
  ],
};
