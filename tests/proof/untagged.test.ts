import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';

/** A pattern of 30 blocks with two borders, for sentences that a hasty reader takes for its numbers. */
const BLOCK = `\`\`\`measure
pattern: Windmill Lane
fabrics:
  A: Navy
  B: Cream
  C: Backing print
blocks:
  Windmill:
    finished: 8"
    of:
      - { unit: half-square triangles, finished: 4", count: 4, from: [A, B], method: two at a time }
layout: { grid: 5 x 6 }
borders:
  - { finished: 1 1/2", from: B }
  - { finished: 5", from: A }
binding: { from: A, strip: 2 1/2" }
backing: { from: C }
batting: {}
\`\`\``;

/** Each is right, or speaks of a part or of something that no figure fixes. */
const RIGHT = [
  'Lay out 4 HSTs in 2 rows of 2.',
  'Lay out 4 HSTs as shown, 2 across and 2 down.',
  'The backing is joined with a ½" seam. Quilt lines 1" apart.',
  'Press the binding strip in half; it is now 1¼" wide.',
  'Make 15 blocks with navy in the upper left and 15 with cream there.',
  'Make 60 HSTs from the first 30 squares, and another 60 from the rest.',
  'From the navy, cut 2 strips 4⅞" x 20" first.',
  'Cut 7 binding strips 2½" x 39".',
  'You will have 4 strips left.',
  'Sew 3 pairs of rows.',
  'Sew the blocks in 3 columns of 10.',
  'Make 30 blocks.',
  'Join the panels and trim them (4" excess per side).',
  'Cut 2 top and bottom borders.',
  'Mine ended up as one big piece of backing.',
  'Sew a cream strip to a navy one: 2½ + 2½ − ½ = 4½".',
  'The quilt is roughly 50 x 61 in.',
  '2.1 Sew an HST to each end.',
  'Block rows: 3 blocks at a time.',
  'From each of the ten fat quarters, cut 2 squares 4⅞".',
];

const WRONG = [
  ['Make 29 blocks.', '29', 'The number of blocks is 30, not 29: 5 across × 6 down = 30 blocks.'],
];

describe('A sentence without a tag', () => {
  it.each(RIGHT)('raises no alarm: %s', (sentence) => {
    const { findings } = proofread({ source: `# Windmill\n\n${BLOCK}\n\n## Sewing\n\n${sentence}\n` });
    expect(findings.map(({ message }) => message)).toEqual([]);
  });

  it.each(WRONG)('is told what is wrong: %s', (sentence, text, message) => {
    const source = `# Windmill\n\n${BLOCK}\n\n## Sewing\n\n${sentence}\n`;
    const { findings } = proofread({ source });
    expect(findings.map((each) => [source.slice(each.start, each.end), each.message])).toEqual([
      [text, message],
    ]);
  });
});
