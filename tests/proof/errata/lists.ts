import { type Kind, manuscript } from './erratum.ts';

const orchard = (...paragraphs: string[]) =>
  manuscript(
    'Orchard Wall',
    [
      'fabrics: { A: Plum, B: Bark }',
      'pieces: { brick: { cut: 4 1/2" x 8 1/2", count: 48, from: A }, cap: { cut: 2 1/2" x 8 1/2", count: 24, from: B } }',
      'finished: 64" x 72"',
      'binding: { from: B, strip: 2 1/4" }',
      'batting: {}',
    ],
    ...paragraphs,
  );

/** The list says something else than the text, or one unit something else than the other. */
export const LISTS: Kind = {
  kind: 'a list and a text that disagree',
  wrong: [
    {
      mistake: 'the count of another piece',
      text: orchard('## Cutting', '- Plum: cut «24» bricks, 4½" × 8½"'),
    },
    {
      mistake: 'the size of another piece',
      text: orchard('## Cutting', '- Bark: cut 24 caps, «4½"» × 8½"'),
    },
    {
      mistake: 'centimetres for inches',
      text: orchard('The batting is «72 cm» wide.'),
      slip: 'another unit',
    },
    {
      mistake: 'without a block: words and digits',
      text: '# Wall\n\nSew «twelve» (10) bricks into a row.\n',
    },
    {
      mistake: 'without a block: two units that disagree',
      text: '# Wall\n\nThe wall hanging is «24"» (51 cm) wide.\n',
    },
    {
      mistake: 'a piece that is cut and used in different numbers',
      text: orchard('## Sewing', 'Sew the «42» bricks into rows.'),
    },
  ],
  right: [
    [
      'another fabric has the other count',
      orchard('## Cutting', '- Plum: cut 48 bricks, 4½" × 8½"', '- Bark: cut 24 caps, 2½" × 8½"'),
    ],
    ['some of the pieces', orchard('## Sewing', 'Sew 6 of the bricks into a row. Make 8 rows.')],
    ['both units', orchard('The batting is 72" (183 cm) wide.')],
    ['words and digits', '# Wall\n\nSew twelve (12) bricks into a row.\n'],
    ['two units that agree', '# Wall\n\nThe wall hanging is 24" (61 cm) wide.\n'],
    [
      'some more pieces than needed',
      orchard('## Cutting', 'From plum, cut 50 bricks, 4½" × 8½"; two will be left over.'),
    ],
  ],
};
