import { type Kind, manuscript } from './erratum.ts';

const harvest = (...paragraphs: string[]) =>
  manuscript(
    'Late Harvest',
    [
      'house: { usable width: 40" }',
      'fabrics: { A: Rust, B: Straw, C: Backing print }',
      'pieces:',
      '  square: { cut: 5" x 5", count: 90, from: A }',
      '  rail: { cut: 2 1/2" x 10 1/4", count: 40, from: B }',
      'finished: 60" x 72"',
      'binding: { from: B, strip: 2 3/4" }',
      'backing: { from: C }',
    ],
    ...paragraphs,
  );

const sizes = (...paragraphs: string[]) =>
  manuscript(
    'Long Evening',
    [
      'sizes: [crib, throw, queen]',
      'house: { usable width: 40" }',
      'fabrics: { A: Dusk, B: Backing print }',
      'blocks: { Lamp: { finished: 12", of: [{ piece: pane, finished: 12" x 12", count: 1, from: A }] } }',
      'layout: { grid: { crib: 3 x 4, throw: 5 x 6, queen: 7 x 8 } }',
      'backing: { from: B }',
    ],
    ...paragraphs,
  );

const cushion = (...paragraphs: string[]) =>
  manuscript(
    'Pebble Cushion',
    [
      'fabrics: { A: Slate }',
      'finished: circle 18"',
      'binding: { from: A, strip: 2 1/4", grain: bias, cut as: one square }',
    ],
    ...paragraphs,
  );

/** Too little, or enough only of a fabric that the buyer does not get. */
export const YARDAGES: Kind = {
  kind: 'a short yardage',
  wrong: [
    {
      mistake: 'whole strips forgotten',
      text: harvest('## Fabric', '- Rust: «1½ yd»'),
    },
    {
      mistake: 'another size',
      text: sizes('## Throw', '- Backing: «3⅛ yd»'),
      slip: 'the number of another size',
    },
    {
      mistake: 'the area rule for a bias tube',
      text: cushion('## Binding', 'Cut a «13"» square for the bias binding.'),
      slip: 'the area rule for a bias tube',
    },
    {
      mistake: 'the diameter for the way around',
      text: cushion('## Binding', 'You need «30"» of bias binding.'),
      slip: 'the diameter for the way around',
    },
    {
      mistake: 'rounded down',
      text: harvest('## Binding', 'The fabric for the binding: «½ yd».'),
      slip: 'rounded down',
    },
    {
      mistake: 'one side of overhang for the backing',
      text: harvest('## Backing', 'Cut the backing 68" × «76"».'),
      slip: 'the overhang of one side only',
    },
    {
      mistake: 'a backing as large as the quilt',
      text: harvest('## Backing', 'Cut the backing 68" × «72"».'),
      slip: 'the overhang left out',
    },
  ],
  right: [
    ['rounded up to the next quarter', harvest('## Fabric', '- Rust: 1¾ yd')],
    ['a comfortable amount', harvest('## Fabric', '- Rust: 1⅞ yd', '- Backing: 4½ yd')],
    ['a larger square', cushion('## Binding', 'Cut a 15" square for the bias binding.')],
    ['a larger joining allowance', cushion('## Binding', 'You need 72" of bias binding.')],
    ['a larger backing', harvest('## Backing', 'Cut the backing 70" × 82".')],
    ['about so much', harvest('## Binding', 'You need about 270" of binding.')],
    ['a list of sizes', sizes('## Fabric', '- Dusk: 1½ (3½, 6⅝) yd')],
  ],
};
