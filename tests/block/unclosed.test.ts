import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { summary } from '../support/pattern.ts';

const OPEN = '```measure\nfinished: 36" x 48"\nbinding: { strip: 2 1/4", grain: straight }\n';
const UNCLOSED = [
  'block-syntax',
  '```measure',
  'This measure block is not closed, so the text behind it is taken for a part of it; put ``` on a line of its own behind the last entry.',
];

const found = (source: string) => proofread({ source }).findings.map((finding) => summary(finding, source));

describe('a measure block whose fence is not closed', () => {
  it.each([
    [
      'headings, lists and lead-ins',
      '\n# Cutting\n\nFrom the gold, cut:\n\n- 5 strips 2¼" × WOF\n\nInner: 5"\n',
    ],
    ['a paragraph right behind it', 'Sew the strips together.\n\nFabrics: see below: there.\n'],
    ['a table and stars', '\n| a | b |\n|---|---|\n| 5 | 6 |\n\n**Materials**\n* [x] "a" b\n'],
    [
      'another block, whose end closes both',
      '\nText.\n\n```measure\nbacking: { overhang: 4" }\n```\n\nCut the rest.\n',
    ],
    [
      'a block that needs what is hidden',
      '\n```measure\nlayout: { grid: 2 x 3 }\n```\n\n```measure\nborders: [{ finished: 3" }]\n```\n',
    ],
  ])('has one finding, at its opening, over %s', (_, behind) => {
    expect(found(OPEN + behind)).toEqual([UNCLOSED]);
  });

  it('still holds the entries that stand before the text', () => {
    const source = `Cut 2" <!-- = binding.strip --> strips.\n\n${OPEN}\n# Cutting\n`;
    expect(found(source).map(([code, at]) => [code, at])).toEqual([
      ['wrong-figure', '2"'],
      ['block-syntax', '```measure'],
    ]);
  });

  it('is no mistake at the end of the manuscript, and tells of its own mistakes there', () => {
    expect(found(OPEN)).toEqual([]);
    expect(found(`${OPEN}\n# a note\nbacking: { overhang: 4 }`).map(([code, at]) => [code, at])).toEqual([
      ['block-syntax', '```measure'],
    ]);
    expect(found(`${OPEN}# a note\nbacking: { overhang: 4 }`).map(([code, at]) => [code, at])).toEqual([
      ['bad-value', '4'],
    ]);
  });

  it('may stand in a quotation or a list, and may be fenced with other marks', () => {
    expect(found('> ```measure\n> finished: 36" x 48"\n> Text.\n')).toEqual([UNCLOSED]);
    expect(
      found('- ~~~~measure\n  finished: 36" x 48"\n  ~~~\n  Text.\n').map(([code, at]) => [code, at]),
    ).toEqual([['block-syntax', '~~~~measure']]);
    expect(found('- ~~~measure\n  finished: 36" x 48"\n  ~~~~ \n\n  Text.\n')).toEqual([]);
  });
});
