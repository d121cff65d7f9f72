/** What is found wrong only by computing with the pattern, each with its sentence at its place. */
import { describe, expect, it } from 'vitest';
import { complaints } from '../support/pattern.ts';

/** The finding, the text that is underlined, and the sentence. Each block has the one finding. */
const BAD: readonly [title: string, block: string, expected: [string, string, string]][] = [
  [
    'a point that begins no number',
    'finished: 36" x 50"\nfigures: { a: .x }',
    ['bad-expression', '.', 'This number cannot be read.'],
  ],
  [
    'the root of a negative length',
    'finished: 36" x 50"\nfigures: { a: 2 * sqrt(0" - 3") }',
    ['bad-expression', 'sqrt(0" - 3")', 'A negative value has no square root.'],
  ],
  [
    'a count rounded up to a length',
    'finished: 36" x 50"\nfigures: { a: 3 round up to 1/2 yd }',
    ['bad-expression', 'round up to 1/2 yd', 'A count cannot be rounded up to a length.'],
  ],
  [
    'a length rounded up to nothing',
    'finished: 36" x 50"\nfigures: { a: 3" round up to 0" }',
    [
      'bad-expression',
      'round up to 0"',
      'The step to round to must be more than nothing, and a plain number.',
    ],
  ],
  [
    'a sum that breaks off',
    'finished: 36" x 50"\nfigures: { a: 3 +  }',
    ['bad-expression', '+', 'A length, a count or the name of a figure is missing here.'],
  ],
  [
    'a bracket that is not closed',
    'finished: 36" x 50"\nfigures: { a: 3 * (4 + 5 }',
    ['bad-expression', '5', 'A closing bracket is missing here.'],
  ],
  [
    'an area',
    'finished: 36" x 50"\nfigures: { a: 3" * 4" }',
    [
      'bad-expression',
      '3" * 4"',
      'This is neither a length nor a count; perhaps two lengths are multiplied.',
    ],
  ],
  [
    'one divided by a length',
    'finished: 36" x 50"\nfigures: { a: 1 / 3" }',
    ['bad-expression', '1 / 3"', 'This is neither a length nor a count; perhaps two lengths are multiplied.'],
  ],
  [
    'a count subtracted from a length',
    'finished: 36" x 50"\nfigures: { a: 3" - 4 }',
    ['bad-expression', '- 4', 'A length and a count cannot be subtracted.'],
  ],
  [
    'a length added to an area',
    'finished: 36" x 50"\nfigures: { a: finished.width * finished.width + 3" }',
    ['bad-expression', '+ 3"', 'An area and a length cannot be added.'],
  ],
  [
    'a count compared with a length',
    'finished: 36" x 50"\nfigures:\n  a: min(3, 4")',
    ['bad-expression', 'min(3, 4")', 'A count and a length cannot be compared.'],
  ],
  [
    'rounding up without a step',
    'finished: 36" x 50"\nfigures: { a: round up to(3") }',
    ['bad-expression', 'round up to(3")', '“round up to” takes 2 values.'],
  ],
  [
    'a count for one size and a length for another',
    'sizes: [wall, throw]\nfinished: { wall: 36" x 48", throw: 54" x 72" }\nfigures: { a: { wall: 3, throw: 3" } }',
    ['bad-expression', '{ wall: 3, throw: 3" }', 'This is a count for one size and a length for another.'],
  ],
  [
    'a piece of a block without a size',
    'blocks: { R: { finished: 6", make: 4, of: [{ piece: corner, count: 4 }] } }',
    ['missing-entry', '{ piece: corner, count: 4 }', 'A piece needs its size: finished, or cut.'],
  ],
  [
    'a layout by a block that is not described',
    'blocks: { R: { finished: 6", make: 4 } }\nlayout: { block: Q, grid: 2 x 2 }',
    ['bad-value', 'Q', 'No block “Q” is described under “blocks”.'],
  ],
  [
    'sashing on point',
    'blocks: { R: { finished: 6" } }\nlayout: { set: on point, grid: 2 x 2, sashing: { finished: 2" } }',
    [
      'bad-value',
      '{ finished: 2" }',
      'Sashing is computed for a straight set only; a quilt on point counts it as part of its blocks.',
    ],
  ],
  [
    'a sleeve of no length',
    'finished: 10" x 12"\nsleeve: { finished depth: 4", short of edge: 5" }',
    ['bad-value', '5"', 'The sleeve stops so far from both edges that none of it is left.'],
  ],
  [
    'half-square triangles that are not square',
    'blocks: { R: { finished: 6", make: 4, of: [{ unit: half-square triangles, finished: 3" x 4", count: 4 }] } }',
    ['bad-value', '3" x 4"', 'Half-square triangles are square: both finished sides must be equal.'],
  ],
  [
    'more fabrics than the unit takes',
    'blocks: { R: { finished: 6", make: 4, of: [{ unit: half-square triangles, finished: 3", count: 4, from: [A, B, C] }] } }\nfabrics: { A: Mist, B: Reed, C: Silt }',
    ['bad-value', '[A, B, C]', 'Half-square triangles take 2 fabrics, not 3.'],
  ],
  [
    'a piece larger than a fat quarter',
    'fabrics: { A: { cut from: fat quarters } }\npieces: { flag: { cut: 19" x 22", count: 2, from: A } }',
    ['precut-too-small', '19" x 22"', 'A fat quarter of 21" × 18" is too small for a piece of 19" × 22".'],
  ],
  [
    'a piece wider than the fabric whichever way it lies',
    'fabrics: { A: Mist }\npieces: { flag: { cut: 44" x 50", count: 2, from: A } }',
    ['too-wide', '44" x 50"', 'A piece of 44" × 50" cannot be cut from fabric A, which is 40" wide.'],
  ],
  [
    'parts that leave a hole in a metric block',
    'house: { seam: 0.75 cm }\nblocks: { R: { finished: 12 cm, make: 4, of: [{ piece: tab, finished: 6 cm, count: 3 }] } }',
    [
      'block-not-filled',
      '[{ piece: tab, finished: 6 cm, count: 3 }]',
      'The parts fill 108 square centimetres, but the block has 144: something is missing.',
    ],
  ],
];

describe('what cannot be computed, cut or sewn', () => {
  it.each(BAD)('%s', (_, block, expected) => {
    expect(complaints(block)).toEqual([expected]);
  });
});
