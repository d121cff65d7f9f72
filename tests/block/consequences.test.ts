import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { summary } from '../support/pattern.ts';

/** Every finding of a manuscript as `[code, the text it stands at]`. */
function found(block: string, text: string): string[][] {
  const source = `\`\`\`measure\n${block}\n\`\`\`\n\n${text}\n`;
  return proofread({ source }).findings.map((finding) => summary(finding, source).slice(0, 2));
}

/** One mistake in a block, and right numbers that would be wrong by the rule that holds where the author is silent. */
const MISTAKES: readonly [title: string, block: string, text: string, ...expected: [string, string][]][] = [
  [
    'a rule of the house without its unit',
    'finished: 54" x 77"\nhouse: { usable width: 44 }\nbinding: { strip: 2 1/4", grain: straight }',
    'Cut 7 <!-- = binding.strips --> strips for 274" <!-- = binding.length --> of binding.',
    ['bad-value', '44'],
  ],
  [
    'a misspelled rule of the house',
    'finished: 54" x 77"\nhouse: { usable widht: 44" }\nbinding: { strip: 2 1/4", grain: straight }',
    'Cut 7 <!-- = binding.strips --> strips.',
    ['unknown-entry', 'usable widht'],
  ],
  [
    'a seam without its unit, which would tell whether the house is metric',
    'finished: 30 cm x 45 cm\nhouse: { seam: 0.75 }\nbinding: { strip: 6 cm, grain: straight }',
    'You need 180 cm <!-- = binding.length --> of binding.',
    ['bad-value', '0.75'],
  ],
  [
    'an unknown way to join strips',
    'finished: 54" x 77"\nbinding: { strip: 2 1/4", grain: straight, join: square }',
    'Cut 7 <!-- = binding.strips --> strips.',
    ['bad-value', 'square'],
  ],
  [
    'one border that cannot be read',
    'layout: { centre: 10" }\nborders: [{ finished: 3 }, { finished: 4" }]',
    'The quilt is 24" <!-- = finished.width --> wide; border 2 is cut 4½" <!-- = border.2.strip --> wide.',
    ['bad-value', '3'],
  ],
  [
    'the corners of a border in another spelling',
    'layout: { centre: 10" }\nborders: [{ finished: 3", corners: mitered }]',
    'Cut the sides 24" <!-- = border.1.side --> long.',
    ['bad-value', 'mitered'],
  ],
  [
    'the first value of a list by size',
    'sizes: [wall, throw]\nfinished: [36 x 48, 54" x 72"]',
    'It is 54" <!-- = finished.width @ throw --> wide, or 36" <!-- = finished.width @ wall -->.',
    ['bad-value', '36 x 48'],
  ],
  [
    'sizes that are no list',
    'sizes: wall\nfinished: { wall: 5" x 6", throw: 7" x 8" }\nbatting: {}',
    'It is 5" <!-- = finished.width @ wall --> wide.',
    ['bad-value', 'wall'],
  ],
  [
    'a size that stands twice, so that the places of a list are unknown',
    'sizes: [wall, wall, throw]\nfinished: [5" x 6", 6" x 7", 7" x 8"]',
    'It is 7" <!-- = finished.width @ throw --> wide.',
    ['duplicate-entry', 'wall'],
  ],
  [
    'fabrics in a list',
    'fabrics: [Deep water, Foam]\nfinished: 5" x 6"\nbinding: { from: A, strip: 2" }',
    'Cut 1 <!-- = binding.strips --> strip.',
    ['bad-value', '[Deep water, Foam]'],
  ],
  [
    'a fabric that no one defined, which may have a width of its own',
    'fabrics: { A: Deep water }\nfinished: 54" x 77"\nbinding: { from: Q, strip: 2 1/4" }',
    'Cut 7 <!-- = binding.strips --> strips.',
    ['unknown-fabric', 'Q'],
  ],
  [
    'an unknown kind of unit',
    'blocks:\n  Ripple:\n    finished: 6"\n    make: 12\n    of: [{ unit: flying gees, finished: 3", count: 3 }, { piece: corner, finished: 3", count: 4 }]\n  Shore: { finished: 9", make: 8 }\nlayout: { grid: 4 x 5 }',
    'Make 12 <!-- = block.Ripple.count --> blocks with 48 <!-- = piece.corner.count --> corners; it is 24" <!-- = finished.width --> wide.',
    ['bad-value', 'flying gees'],
  ],
  [
    'a finished size of the first block, so that none is known to lay the grid out',
    'blocks: { Ripple: { finished: 6, make: 12 }, Shore: { finished: 9", make: 8 } }\nlayout: { grid: 4 x 5 }',
    'Make 12 <!-- = block.Ripple.count --> and 8 <!-- = block.Shore.count --> blocks; it is 24" <!-- = finished.width --> wide.',
    ['bad-value', '6'],
  ],
  [
    'how many blocks are made, which else would follow from the layout',
    'blocks: { Ripple: { finished: 6", make: 9 pieces } }\nlayout: { grid: 3 x 4 }',
    'Make 9 <!-- = block.Ripple.count --> blocks.',
    ['bad-value', '9 pieces'],
  ],
  [
    'the cut size of a piece, beside which its absence is no second mistake',
    'pieces: { sash: { cut: 2 x 12, count: 4 } }',
    'Cut 4 <!-- = piece.sash.count --> pieces 2" <!-- = piece.sash.width --> wide.',
    ['bad-value', '2 x 12'],
  ],
  [
    'a way of setting that does not exist',
    'blocks: { Ripple: { finished: 6" } }\nlayout: { grid: 3 x 4, set: diamond }',
    'Make 18 <!-- = layout.blocks --> blocks; it is 25½" <!-- = finished.width --> wide.',
    ['bad-value', 'diamond'],
  ],
  [
    'the layout that borders go around',
    'layout: { centre: 10 }\nborders: [{ finished: 3" }]',
    'It is 16" <!-- = finished.width --> wide.',
    ['bad-value', '10'],
  ],
  [
    'a finished size that own figures, statements and tags rest on',
    'finished: 5 x 6\nbacking: {}\nfigures: { a: finished.edge * 2, b: a + 1" }\nstates: { finished.edge: 20", unfinished.width: 5 1/2" }',
    'It is 22" <!-- = finished.edge -->, 45" <!-- = b -->, and 9" <!-- = backing.width --> or 3" <!-- = pillow.edge -->.',
    ['bad-value', '5 x 6'],
  ],
  [
    'a misspelled entry',
    'finnished: 5" x 6"\nbatting: {}',
    'It is 22" <!-- = finished.edge -->, and 9" <!-- = batting.width -->.',
    ['unknown-entry', 'finnished'],
  ],
  [
    'a misspelled part, beside which the part it means is not missing',
    'finished: 5" x 6"\nbinding: { strp: 2 1/4" }',
    'It takes 2¼" <!-- = binding.strip --> strips.',
    ['unknown-entry', 'strp'],
  ],
  [
    'a bracket that is not closed',
    'finished: 50" x 60"\nbinding: { strip: 2 1/4"\nbacking: { overhang: 3" }',
    'Cut 5 <!-- = binding.strips --> strips; the backing is 50" <!-- = backing.width --> wide.',
    ['block-syntax', 'binding: { strip: 2 1/4"'],
  ],
  [
    'a tab where spaces must stand',
    'house:\n\tusable width: 44"\nfinished: 54" x 77"\nbinding: { strip: 2 1/4" }',
    'Cut 7 <!-- = binding.strips --> strips; they cover 262" <!-- = binding.edge -->.',
    ['block-syntax', '\t'],
  ],
  [
    'seam allowances as wide as the fabric',
    'finished: 40" x 40"\nhouse: { backing seam: 30" }\nbacking: {}',
    'Cut 5 <!-- = backing.panels --> panels.',
    ['bad-value', '30"'],
  ],
];

describe('a value of the block that cannot be read', () => {
  it.each(MISTAKES)('leaves unknown what follows from it: %s', (_, block, text, ...expected) => {
    expect(found(block, text)).toEqual(expected);
  });

  it('leaves known what does not follow from it', () => {
    expect(
      found(
        'finished: 54" x 77"\nhouse: { seam: 1/4", usable width: 44 }\nbinding: { strip: 2 1/4", grain: straight }',
        'You need 270" <!-- = binding.length --> of binding.',
      ),
    ).toEqual([
      ['bad-value', '44'],
      ['short-figure', '270"'],
    ]);
  });

  it('leaves the other sizes known', () => {
    expect(
      found(
        'sizes: [wall, throw]\nfinished: [36 x 48, 54" x 72"]',
        'It is 55" <!-- = finished.width @ throw -->.',
      ),
    ).toEqual([
      ['bad-value', '36 x 48'],
      ['wrong-figure', '55"'],
    ]);
  });

  it('does not excuse an unknown figure when only a statement cannot be read', () => {
    expect(
      found(
        'finished: 36" x 48"\nstates: { finished.edge: long }',
        'It is 168" <!-- = finished.egde --> around.',
      ),
    ).toEqual([
      ['bad-value', 'long'],
      ['unknown-figure', 'finished.egde'],
    ]);
  });
});
