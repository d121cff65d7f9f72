/** Values that an entry does not take, each with its sentence at its place. */
import { describe, expect, it } from 'vitest';
import { complaints } from '../support/pattern.ts';

/** The finding, the text that is underlined, and the sentence. Each block has the one finding. */
const BAD: readonly [title: string, block: string, expected: [string, string, string]][] = [
  [
    'a fabric where none is listed',
    'binding: { from: B, strip: 2" }\nfinished: 3" x 4"',
    ['unknown-fabric', 'B', 'No fabric “B” is defined; list the fabrics under “fabrics:”.'],
  ],
  [
    'a fabric beside the only one',
    'fabrics: { A: Mist }\nbinding: { from: B, strip: 2" }\nfinished: 3" x 4"',
    ['unknown-fabric', 'B', 'No fabric “B” is defined; the only one is A.'],
  ],
  [
    'a misspelled label of a fabric',
    'fabrics: { Ann: Mist, Bob: Reed }\nbinding: { from: Anna, strip: 2" }\nfinished: 3" x 4"',
    ['unknown-fabric', 'Anna', 'No fabric “Anna” is defined. Did you mean “Ann”?'],
  ],
  [
    'borders that are no list',
    'borders: { finished: 3" }\nlayout: { centre: 10" }',
    [
      'bad-value',
      '{ finished: 3" }',
      'Borders are a list from the inside out, each line beginning with a dash.',
    ],
  ],
  [
    'a part of a block that is a word',
    'blocks: { R: { finished: 6", make: 4, of: [corner] } }',
    ['bad-value', 'corner', 'A part of a block is a unit or a piece: { unit: …, finished: …, count: … }.'],
  ],
  [
    'a part of a block that is neither unit nor piece',
    'blocks: { R: { finished: 6", make: 4, of: [{ finished: 3", count: 4 }] } }',
    [
      'bad-value',
      '{ finished: 3", count: 4 }',
      'A part of a block is a unit or a piece: { unit: …, finished: …, count: … }.',
    ],
  ],
  [
    'a size whose name would end a tag',
    'sizes: [wa@ll, throw]',
    ['bad-value', 'wa@ll', 'The name of a size cannot hold @, < or >.'],
  ],
  [
    'sizes that are no list',
    'sizes: wall',
    ['bad-value', 'wall', 'Write a list of names here, for example [wall, throw, queen].'],
  ],
  [
    'a size that stands twice',
    'sizes: [wall, wall]',
    ['duplicate-entry', 'wall', 'The size “wall” stands here twice.'],
  ],
  [
    'a list of no sizes',
    'sizes: []',
    ['bad-value', '[]', 'The list names no size; leave “sizes” out if there is only one.'],
  ],
  [
    'fabrics without labels',
    'fabrics: red',
    ['bad-value', 'red', 'Under “fabrics” write names, each with a colon and a value.'],
  ],
  [
    'blocks without names',
    'blocks: 6"',
    ['bad-value', '6"', 'Under “blocks” write names, each with a colon and a value.'],
  ],
  [
    'a length where entries must stand',
    'batting: 3"',
    ['bad-value', '3"', 'Write entries here, each with its name, a colon and a value.'],
  ],
  [
    'entries where a name must stand',
    'pattern: { a: b }',
    ['bad-value', '{ a: b }', 'Write a name here, for example Kettle Pond.'],
  ],
  [
    'a list where a length must stand',
    'house: { seam: [1, 2] }',
    ['bad-value', '[1, 2]', 'Write a length here, for example 2 1/4".'],
  ],
  [
    'a grid of one number',
    'layout: { grid: 3 }\nblocks: { R: { finished: 6" } }',
    ['bad-value', '3', 'A grid is written across x down, for example 3 x 4.'],
  ],
  [
    'a grid of no blocks',
    'layout: { grid: 0 x 3 }\nblocks: { R: { finished: 6" } }',
    ['bad-value', '0 x 3', 'A grid has between 1 and 500 blocks each way.'],
  ],
  [
    'a grid of broken blocks',
    'layout: { grid: 2.5 x 3 }\nblocks: { R: { finished: 6" } }',
    ['bad-value', '2.5 x 3', 'A count is a whole number, and 2.5 is not one.'],
  ],
  [
    'a form in which no fabric is bought',
    'fabrics: { A: { cut from: bolts } }',
    [
      'bad-value',
      'bolts',
      'A fabric is cut from yardage, fat quarters, fat eighths, strips 2 1/2", squares 5" or wide 108".',
    ],
  ],
  [
    'precut strips without their unit',
    'fabrics: { A: { cut from: strips 2 1/2 } }',
    ['bad-value', 'strips 2 1/2', '2 1/2 has no unit; write 2 1/2" for inches, or 2 1/2 cm.'],
  ],
  [
    'a rounded shape without corners',
    'finished: rounded 5" x 6"',
    ['bad-value', 'rounded 5" x 6"', 'A rounded shape gives its corners too: rounded 50" x 60", corners 4".'],
  ],
  [
    'a scalloped shape without scallops',
    'finished: scalloped 60" x 80"',
    [
      'bad-value',
      'scalloped 60" x 80"',
      'A scalloped shape gives its scallops too: scalloped 60" x 80", 28 scallops 2" deep.',
    ],
  ],
  [
    'too few scallops',
    'finished: scalloped 60" x 80", 3 scallops 2" deep',
    ['bad-value', 'scalloped 60" x 80", 3 scallops 2" deep', 'There must be at least 4 scallops.'],
  ],
  [
    'scallops that meet in the middle',
    'finished: scalloped 60" x 80", 28 scallops 30" deep',
    [
      'bad-value',
      'scalloped 60" x 80", 28 scallops 30" deep',
      'The scallops are so deep that nothing is left between them.',
    ],
  ],
  [
    'a circle of a street',
    'finished: circle 2000"',
    ['bad-value', 'circle 2000"', 'The diameter is more than a hundred feet.'],
  ],
  [
    'a circle of nothing',
    'finished: circle 0"',
    ['bad-value', 'circle 0"', 'A length must be more than nothing, and 0" is not.'],
  ],
  [
    'an edge longer than any',
    'finished: measured 5000"',
    ['bad-value', 'measured 5000"', 'The length around is more than a hundred yards.'],
  ],
  [
    'one side of two',
    'finished: 3" x',
    ['bad-value', '3" x', '“3" x” cannot be read as a width and a length; write it as 36" x 48".'],
  ],
  [
    'a negative side',
    'finished: -3" x 4"',
    ['bad-value', '-3" x 4"', 'A length cannot be negative, as -3" x 4" is.'],
  ],
  [
    'an oval of one length',
    'finished: oval 3"',
    ['bad-value', 'oval 3"', '“3"” cannot be read as a width and a length; write it as 36" x 48".'],
  ],
  [
    'half a block',
    'blocks: { R: { finished: 6", make: 4.5 } }',
    ['bad-value', '4.5', 'A count is a whole number, and 4.5 is not one.'],
  ],
  [
    'a way to make units that no one knows',
    'blocks: { R: { finished: 6", make: 4, of: [{ unit: squares, finished: 3", count: 4, method: quickly }] } }',
    ['bad-value', 'quickly', '“quickly” is no way to make units that is known here.'],
  ],
  [
    'a statement that is neither length nor count',
    'finished: 3" x 4"\nbinding: { strip: 2" }\nstates: { binding.strip: wide }',
    ['bad-value', 'wide', '“wide” cannot be read as a length; write it as 2 1/4", 57 cm or 1 1/8 yd.'],
  ],
  [
    'a negative seam',
    'house: { seam: -1/4" }',
    ['bad-value', '-1/4"', 'A length cannot be negative, as -1/4" is.'],
  ],
  [
    'a seam of nothing',
    'house: { seam: 0" }',
    ['bad-value', '0"', 'A length must be more than nothing, and 0" is not.'],
  ],
  [
    'a place in a row where a length must stand',
    'finished: 3rd x 4"',
    ['bad-value', '3rd x 4"', '3rd is not a length.'],
  ],
  [
    'an own figure that holds a comma between braces',
    'finished: 36" x 50"\nfigures: { side: min(finished.width, finished.length), twice: side * 2 }',
    [
      'bad-value',
      'min(finished.width',
      'A comma ends a value between brackets: put quotation marks around a value that holds one, or give it a line of its own.',
    ],
  ],
];

describe('a value that an entry does not take', () => {
  it.each(BAD)('%s', (_, block, expected) => {
    expect(complaints(block)).toEqual([expected]);
  });
});
