import { describe, expect, it } from 'vitest';
import { complaints, patternOf } from '../support/pattern.ts';

/** What a bad block gets: the finding, the text that is underlined, and the sentence. */
const BAD: readonly [title: string, block: string, ...expected: [string, string, string][]][] = [
  [
    'an entry that does not exist is named with the nearest known one',
    'finnished: 36" x 48"',
    ['unknown-entry', 'finnished', '“finnished” is no entry of the measure block. Did you mean “finished”?'],
  ],
  [
    'an unknown part of an entry is named with the nearest known one',
    'finished: 36" x 48"\nbinding: { strp: 2", strip: 2 1/4" }',
    ['unknown-entry', 'strp', '“strp” is no entry here. Did you mean “strip”?'],
  ],
  [
    'an unknown part that resembles nothing is answered with the known ones',
    'batting: { colour: blue }',
    ['unknown-entry', 'colour', '“colour” is no entry here; the only one is “overhang”.'],
  ],
  [
    'a length without a unit is told apart from a wrong one',
    'binding: { strip: 2 1/4 }',
    ['bad-value', '2 1/4', '2 1/4 has no unit; write 2 1/4" for inches, or 2 1/4 cm.'],
  ],
  [
    'a missing part is reported at the entry that needs it',
    'finished: 36" x 48"\nbinding: { grain: straight }',
    [
      'missing-entry',
      'binding',
      '“strip” is missing. Write a length, for example 2 1/4", here or as “binding strip” under “house”.',
    ],
  ],
  [
    'a step for the other system of units that belongs to the same one',
    'house: { convert to: 1/2" }',
    [
      'bad-value',
      '1/2"',
      'The house works in inches itself; write here the step for the other system, for example 0.5 cm.',
    ],
  ],
  [
    'a word that is no choice is answered with the choices',
    'house: { join: mitred }',
    ['bad-value', 'mitred', 'Write diagonal or straight here, not “mitred”.'],
  ],
  [
    'a size that is left out is named',
    'sizes: [wall, throw]\nfinished: { wall: 36" x 48" }',
    ['missing-size', 'finished', 'The value for “throw” is missing here.'],
  ],
  [
    'a size that does not exist is named with the nearest known one',
    'sizes: [wall, throw]\nfinished: { wall: 36" x 48", throw: 5" x 7", trow: 5" x 7" }',
    ['extra-size', 'trow', 'The pattern has no size “trow”. Did you mean “throw”?'],
  ],
  [
    'a list with one value too many is reported at that value',
    'sizes: [wall, throw]\nfinished: [36" x 48", 5" x 7", 6" x 8"]',
    ['extra-size', '6" x 8"', 'The pattern has 2 sizes; this value is one too many.'],
  ],
  [
    'values per size need sizes',
    'finished: { wall: 36" x 48" }',
    [
      'extra-size',
      '{ wall: 36" x 48" }',
      'The pattern has one size, so write one value here; if it comes in several, list them under “sizes:”.',
    ],
  ],
  [
    'a fabric that no one defined is reported where it is used',
    'fabrics: { A: Deep water, B: Foam }\nbinding: { from: C, strip: 2" }\nfinished: 9" x 9"',
    ['unknown-fabric', 'C', 'No fabric “C” is defined; the fabrics are A and B.'],
  ],
  [
    'the same entry twice in one block',
    'finished: 36" x 48"\nfinished: 36" x 50"',
    ['duplicate-entry', 'finished', 'This entry stands in the block twice; the first one counts.'],
  ],
  [
    'a strip wider than the fabric',
    'finished: 36" x 48"\nbinding: { strip: 50", grain: straight }',
    ['too-wide', '50"', 'The strip is as wide as the fabric or wider, so it cannot be cut across it.'],
  ],
  [
    'an unknown shape is named with the nearest known one',
    'finished: hexagone 5"',
    ['bad-value', 'hexagone 5"', '“hexagone” is no shape that is known here. Did you mean “hexagon”?'],
  ],
  [
    'an unknown shape that resembles nothing is answered with the known ones',
    'finished: kite 5"',
    [
      'bad-value',
      'kite 5"',
      '“kite” is no shape that is known here. Those are square, circle, hexagon, octagon, measured, oval, rounded and scalloped, or a size such as 36" x 48".',
    ],
  ],
  [
    'a shape that cannot exist',
    'finished: rounded 5" x 6", corners 4"',
    ['bad-value', 'rounded 5" x 6", corners 4"', 'The corner radius is more than half of the shorter side.'],
  ],
  [
    'a thousand with a comma between braces',
    'pieces: { sash: { cut: 3", count: 1,200 } }',
    ['unknown-entry', '200', 'A comma ends a value between brackets: write the number without it.'],
  ],
  [
    'a word where a list must stand',
    'blocks: { Ripple: { finished: 6", of: corners } }',
    ['bad-value', 'corners', 'Write a list here, each of its lines beginning with a dash.'],
  ],
  [
    'a mistake in an own figure between quotation marks, at the very place',
    `finished: 36" x 48"\nfigures: { ribbon: '2 * finished.egde', bows: "1' + 3" }`,
    ['unknown-figure', 'finished.egde', 'There is no figure “finished.egde”. Did you mean “finished.edge”?'],
    ['bad-expression', "' + 3", 'The figure should end here.'],
  ],
  [
    'a strip that its seams take up',
    'finished: 36" x 48"\nbinding: { strip: 0.001", grain: bias, cut as: strips }',
    ['bad-value', '0.001"', 'This strip is so narrow that its two seam allowances take it up.'],
  ],
  [
    'a fabric that its seams take up',
    'fabrics: { A: { name: Ribbon, usable width: 1" } }\nfinished: 36" x 48"\nbacking: { from: A }',
    ['bad-value', '1"', 'This fabric is no wider than two seam allowances.'],
  ],
  [
    'seams that take up the fabric',
    'finished: 36" x 48"\nhouse: { seam: 30" }\nbacking: {}\nsleeve: { finished depth: 4" }',
    ['bad-value', '30"', 'Two seam allowances are as wide as the fabric or wider; check both lengths.'],
  ],
  [
    'straight-grain binding on a curve',
    'finished: circle 24"\nbinding: { strip: 2 1/4", grain: straight }',
    [
      'curve-needs-bias',
      'straight',
      'A curved edge needs bias binding; straight-grain binding puckers on the curve.',
    ],
  ],
  [
    'an own figure that names no figure, at the name',
    'finished: 36" x 48"\nfigures: { ribbon: 2 * finished.egde }',
    ['unknown-figure', 'finished.egde', 'There is no figure “finished.egde”. Did you mean “finished.edge”?'],
  ],
  [
    'a length added to a count, at the sum',
    'finished: 36" x 48"\nfigures: { ribbon: finished.edge + 18 }',
    ['bad-expression', '+ 18', 'A length and a count cannot be added.'],
  ],
  [
    'a division by nothing',
    'figures: { part: 36" / (2 - 2) }',
    ['bad-expression', '/ (2 - 2)', 'Nothing can be divided by zero.'],
  ],
  [
    'figures that go round in a circle are all named',
    'figures: { a: b + 1", b: c * 2, c: a - 1" }',
    ['figure-circle', 'b + 1"', 'This figure depends on itself: a → b → c → a.'],
  ],
  [
    'a reference of YAML is refused',
    'fabrics: { A: &x Deep, B: *x }',
    ['block-syntax', '*x', 'A reference with * is not part of the measure block; write the value itself.'],
  ],
  [
    'a block that holds no entries',
    'just a sentence',
    [
      'block-syntax',
      'just a sentence',
      'A measure block holds entries, each with its name, a colon, a space and a value.',
    ],
  ],
  ['an empty block is no mistake', ''],
];

describe('a bad block', () => {
  it.each(BAD)('%s', (_, block, ...expected) => {
    expect(complaints(block)).toEqual(expected);
  });

  it('reports an entry of a second block with the first one as related place', () => {
    const { pattern } = patternOf('finished: 36" x 48"\n', 'finished: 36" x 50"');
    expect(pattern.findings.map(({ code, related }) => [code, related.map(({ start }) => start)])).toEqual([
      ['duplicate-entry', [0]],
    ]);
  });
});
