import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { textListing } from '../../core/report/listing.ts';
import { PLAIN } from '../../core/report/paint.ts';

const block = (...lines: string[]) => `\`\`\`measure\n${lines.join('\n')}\n\`\`\`\n\n`;

/** The listing below the block, without its last line. */
function listed(source: string, width = 120): string[] {
  return textListing('flag.md', proofread({ source }), { paint: PLAIN, width }).split('\n').slice(0, -3);
}

describe('The listing of what was read', () => {
  it('says of each number in its line which figure it is, whether it is right, and by which words it was read', () => {
    const source = `${block('finished: 54" x 77"', 'binding: { strip: 2 1/4" }')}Cut (7) 2¼" × WOF strips for the binding.`;

    expect(listed(source)).toEqual([
      '  6 │ Cut (7) 2¼" × WOF strips for the binding.',
      '      7    The number of binding strips: at least 8. Here stands 7; it should be 8.',
      '           Why: “binding” beside it; “WOF” beside it.',
      '      2¼"  The width of the binding strip: 2¼". 2¼" is right.',
      '           Why: “binding” beside it; “WOF” beside it.',
    ]);
  });

  it('names the heading and the line above where they tell what a number is', () => {
    const pattern = block(
      'finished: 54" x 77"',
      'fabrics: { A: Slate }',
      'borders: [{ finished: 4", from: A }]',
      'binding: { from: A, strip: 2 1/4" }',
    );

    expect(
      listed(`${pattern}# Flag\n\n## Binding\n\nFrom the slate fabric:\n\n- Cut 8 strips 2¼"`).slice(1),
    ).toEqual([
      '       8    The number of binding strips: at least 8. 8 is right.',
      '            Why: “strips” beside it; the heading “Binding”; “slate” in the line above “From the slate fabric:”.',
      '       2¼"  The width of the binding strip: 2¼". 2¼" is right.',
      '            Why: “strips” beside it; the heading “Binding”; “slate” in the line above “From the slate fabric:”.',
    ]);
  });

  it('gives the values of all sizes, and says which one is meant', () => {
    const source = `${block(
      'sizes: [lap, twin]',
      'finished: { lap: 54" x 66", twin: 72" x 90" }',
      'binding: { strip: 2 1/4" }',
    )}| | Lap | Twin |\n|---|---|---|\n| Binding strips | 7 | 9 |`;

    expect(listed(source)).toEqual([
      '  9 │ | Binding strips | 7 | 9 |',
      '      7  The number of binding strips: at least lap 7, twin 9. This one is for lap. 7 is right.',
      '         Why: “Binding” beside it; “strips” beside it; its column is headed “Lap”.',
      '      9  The number of binding strips: at least lap 7, twin 9. This one is for twin. 9 is right.',
      '         Why: “Binding” beside it; “strips” beside it; its column is headed “Twin”.',
    ]);
  });

  it('says of an unchecked number what it is, and that the words do not say more', () => {
    expect(listed(`${block('finished: 54" x 77"')}Lay out 14 leaves 2½" apart.`)).toEqual([
      '  5 │ Lay out 14 leaves 2½" apart.',
      '      14   A count: 14. The words do not say surely which figure it is, so nobody has checked it.',
      '      2½"  A length: 2 1/2 in. The words do not say surely which figure it is, so nobody has checked it.',
    ]);
  });

  it('says of a number that is none of the figures it may state what they are', () => {
    const source = `${block(
      'blocks: { Wave: { finished: 6" } }',
      'layout: { grid: 8 x 10 }',
      'borders: [{ finished: 2" }, { finished: 4" }]',
    )}Cut 5 border strips.`;

    expect(listed(source).slice(-2)).toEqual([
      '      5  A count: 5. 5 is neither the number of strips for the inner border (6) nor the number of strips for the outer',
      '         border (7).',
    ]);
  });

  it('says why a number is no measurement', () => {
    expect(listed('See step 3.')).toEqual(['  1 │ See step 3.', '      3  Not a measurement: step number.']);
  });

  it('shows a long line once for each number, cut around it, and wraps what it says', () => {
    const source = `${'word '.repeat(30)}17" ${'word '.repeat(30)}18" and so on`;

    expect(listed(source, 60)).toEqual([
      expect.stringMatching(/^ {2}1 │ ….* 17" .*…$/),
      '      17"  A length: 17 in.',
      '',
      expect.stringMatching(/^ {2}1 │ ….* 18" and so on$/),
      '      18"  A length: 18 in.',
    ]);
  });
});
