import { describe, expect, it } from 'vitest';
import { complaints, figureOf, patternOf, shown } from '../support/pattern.ts';

const SAMPLER = `sizes: [wall, throw]
fabrics: { A: Deep water, B: Foam, C: Shore }
blocks:
  Ripple:
    finished: 12"
    of:
      - { unit: half-square triangles, finished: 3", count: 8, from: [A, B], method: two at a time }
      - { unit: flying geese, finished: 6" x 3", count: 2, from: [A, B], method: four at a time }
      - { piece: corner, finished: 3", count: 4, from: B }
layout:
  grid: { wall: 3 x 3, throw: 4 x 5 }
  sashing: { finished: 2", from: C, cornerstones: B }
borders:
  - { finished: 2", from: A }
  - { finished: 4", from: B }
`;

describe('a quilt from blocks', () => {
  const { ledger, pattern } = patternOf(SAMPLER);
  const figures = (...ids: string[]) => Object.fromEntries(ids.map((id) => [id, shown(ledger, id)]));

  it('has no finding when its parts fill the block', () => {
    expect([...pattern.findings, ...ledger.findings]).toEqual([]);
  });

  it('counts blocks, units and pieces from the grid', () => {
    expect(
      figures('block.Ripple.count', 'unit.Ripple.1.count', 'unit.Ripple.2.count', 'piece.corner.count'),
    ).toEqual({
      'block.Ripple.count': { wall: '9', throw: '20' },
      'unit.Ripple.1.count': { wall: '72', throw: '160' },
      'unit.Ripple.2.count': { wall: '18', throw: '40' },
      'piece.corner.count': { wall: '36', throw: '80' },
    });
  });

  it('cuts squares for two half-square triangles at a time, in both fabrics', () => {
    expect(figures('unit.Ripple.1.cut', 'unit.Ripple.1.squares', 'unit.Ripple.1.square-1.count')).toEqual({
      'unit.Ripple.1.cut': { wall: '3⅞"', throw: '3⅞"' },
      'unit.Ripple.1.squares': { wall: '72', throw: '160' },
      'unit.Ripple.1.square-1.count': { wall: '36', throw: '80' },
    });
  });

  it('cuts whole sets for four flying geese at a time, and says what is left over', () => {
    expect(figures('unit.Ripple.2.large-square.cut', 'unit.Ripple.2.large-square.count')).toEqual({
      'unit.Ripple.2.large-square.cut': { wall: '7¼"', throw: '7¼"' },
      'unit.Ripple.2.large-square.count': { wall: '5', throw: '10' },
    });
    expect(figureOf(ledger, 'unit.Ripple.2.large-square.count').values.get('wall')?.working).toEqual([
      '18 units at 4 from a set take 5 sets with 1 large square each.',
      '2 patches will be left over.',
    ]);
  });

  it('measures the quilt after every step', () => {
    expect(
      figures(
        'centre.width',
        'centre.length',
        'border.1.side',
        'border.1.top',
        'border.1.quilt-width',
        'finished.length',
      ),
    ).toEqual({
      'centre.width': { wall: '40"', throw: '54"' },
      'centre.length': { wall: '40"', throw: '68"' },
      'border.1.side': { wall: '40½"', throw: '68½"' },
      'border.1.top': { wall: '44½"', throw: '58½"' },
      'border.1.quilt-width': { wall: '44½"', throw: '58½"' },
      'finished.length': { wall: '52"', throw: '80"' },
    });
  });

  it('counts sashes and cornerstones', () => {
    expect(figures('sashing.upright.count', 'sashing.lying.count', 'sashing.cornerstones.count')).toEqual({
      'sashing.upright.count': { wall: '6', throw: '15' },
      'sashing.lying.count': { wall: '6', throw: '16' },
      'sashing.cornerstones.count': { wall: '4', throw: '12' },
    });
  });
});

describe('a quilt on point', () => {
  const { ledger } = patternOf(`blocks: { Gull: { finished: 12" } }
layout: { set: on point, grid: 4 x 5 }
binding: { strip: 2 1/4" }
`);

  // The counts of a 4 x 5 set are published: APQS, "Reference chart for squares on point" (32 blocks); the squares
  // for 12 in blocks on the on-point chart at lukas.is-a-geek.org/tani (18 1/4 and 9 3/8 in).
  it('needs the published number of blocks, and the published squares for its triangles', () => {
    expect(shown(ledger, 'layout.blocks')).toEqual({ '': '32' });
    expect(shown(ledger, 'setting.side.square')).toEqual({ '': '18¼"' });
    expect(shown(ledger, 'setting.corner.square')).toEqual({ '': '9⅜"' });
    expect(shown(ledger, 'setting.side.count')).toEqual({ '': '14' });
    expect(shown(ledger, 'setting.side.squares')).toEqual({ '': '4' });
  });

  it('finishes at a width that no ruler measures, and is bound all the same', () => {
    expect(figureOf(ledger, 'finished.width').values.get('')?.need.toNumber()).toBeCloseTo(67.882, 3);
    expect(shown(ledger, 'finished.edge')).toEqual({ '': '305½"' });
  });
});

const BAD: readonly [title: string, block: string, ...expected: [string, string, string][]][] = [
  [
    'parts that leave a hole in the block',
    'blocks:\n  Ripple:\n    finished: 6"\n    make: 4\n    of:\n      - { unit: half-square triangles, finished: 3", count: 3 }',
    [
      'block-not-filled',
      '- { unit: half-square triangles, finished: 3", count: 3 }',
      'The parts fill 27 square inches, but the block has 36: something is missing.',
    ],
  ],
  [
    'parts with the area of the block that cannot be laid into it',
    'blocks:\n  Ripple:\n    finished: 6"\n    make: 4\n    of: [{ piece: slab, finished: 4" x 5", count: 1 }, { piece: bar, finished: 4" x 4", count: 1 }]',
    [
      'block-not-filled',
      '[{ piece: slab, finished: 4" x 5", count: 1 }, { piece: bar, finished: 4" x 4", count: 1 }]',
      'The parts have the area of the block, but they cannot be laid side by side so that they fill its 6" × 6".',
    ],
  ],
  [
    'blocks on point that are not square',
    'blocks: { Ripple: { finished: 6" x 9" } }\nlayout: { set: on point, grid: 3 x 4 }',
    ['block-not-square', '6" x 9"', 'Blocks on point are square, but “Ripple” finishes 6" × 9".'],
  ],
  [
    'a part larger than its block',
    'blocks: { Ripple: { finished: 6", make: 4, of: [{ piece: slab, finished: 3" x 12", count: 1 }] } }',
    ['block-not-filled', '3" x 12"', 'This part is larger than the block, which finishes 6" × 6".'],
  ],
  [
    'too few blocks for the layout',
    'blocks: { Ripple: { finished: 6", make: 11 } }\nlayout: { grid: 3 x 4 }',
    ['too-few-made', '11', 'The layout takes 12 blocks, but 11 are made: 3 across × 4 down = 12 blocks.'],
  ],
  [
    'too many blocks for the layout',
    'blocks: { Ripple: { finished: 6", make: 13 } }\nlayout: { grid: 3 x 4 }',
    ['too-many-made', '13', 'The layout takes 12 blocks, but 13 are made: 3 across × 4 down = 12 blocks.'],
  ],
  [
    'too many blocks for the layout already, before those that do not say how many they are',
    'blocks: { Ripple: { finished: 6", make: 13 }, Shore: { finished: 6" } }\nlayout: { grid: 3 x 4 }',
    [
      'too-many-made',
      '13',
      'The layout takes 12 blocks, but 13 are made, even without any “Shore”: 3 across × 4 down = 12 blocks.',
    ],
  ],
  [
    'as many blocks as the layout takes, beside others that do not say how many they are',
    'blocks: { Ripple: { finished: 6", make: 12 }, Shore: { finished: 6" } }\nlayout: { grid: 3 x 4 }',
  ],
  [
    'a kind of unit that no one knows',
    'blocks: { Ripple: { finished: 6", make: 4, of: [{ unit: flying geeze, finished: 6" x 3", count: 2 }] } }',
    [
      'bad-value',
      'flying geeze',
      '“flying geeze” is no kind of unit that is known here. Did you mean “flying geese”?',
    ],
  ],
  [
    'geese that are not twice as wide as high',
    'blocks: { Ripple: { finished: 6", make: 4, of: [{ unit: flying geese, finished: 6" x 2", count: 3 }] } }',
    ['bad-value', '6" x 2"', 'Flying geese finish twice as wide as they are high.'],
  ],
  [
    'a way to make units that belongs to another kind',
    'blocks: { R: { finished: 6", make: 4, of: [{ unit: flying geese, finished: 6" x 3", count: 2, method: eight at a time }] } }',
    [
      'bad-value',
      'eight at a time',
      'Flying geese are made four at a time, stitch and flip or cut triangles.',
    ],
  ],
  [
    'a snowball without the size of its corners',
    'blocks: { R: { finished: 6", make: 4, of: [{ unit: snowball corners, finished: 6", count: 1 }] } }',
    [
      'missing-entry',
      '{ unit: snowball corners, finished: 6", count: 1 }',
      'Snowball corners need “corner”.',
    ],
  ],
  [
    'a grid without a block',
    'layout: { grid: 3 x 4 }',
    ['missing-entry', 'grid', 'The grid needs a block: describe it under “blocks”.'],
  ],
  [
    'borders around nothing',
    'borders: [{ finished: 3" }]',
    [
      'missing-entry',
      'borders',
      'Borders need what they go around: describe it under “layout”, as a grid of blocks or a centre.',
    ],
  ],
  [
    'a piece without a size',
    'pieces: { sash: { count: 12 } }',
    ['missing-entry', 'sash', 'A piece needs its size: cut, or finished.'],
  ],
];

describe('a bad quilt', () => {
  it.each(BAD)('%s', (_, block, ...expected) => {
    expect(complaints(block)).toEqual(expected);
  });
});
