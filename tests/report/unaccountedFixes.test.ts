import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { unaccountedFixes } from '../../core/report/unaccountedFixes.ts';

const block = (...lines: string[]) => `\`\`\`measure\n${lines.join('\n')}\n\`\`\`\n\n`;
const ONE_SIZE = block('finished: 60" x 72"', 'binding: { strip: 2 1/4" }');
const TWO_SIZES = block(
  'sizes: [lap, twin]',
  'finished: { lap: 54" x 66", twin: 72" x 90" }',
  'binding: { strip: 2 1/4" }',
);

/** The title of every fix for the number in « », with the text that it makes, and how the number then comes out. */
function offered(head: string, text: string) {
  const source = head + text.replace(/[«»]/g, '');
  const start = head.length + text.indexOf('«');
  return unaccountedFixes(proofread({ source }), { start, end: start }).map(({ title, preferred, edits }) => {
    expect(preferred).toBe(false);
    const fixed = applyEdits(source, edits);
    const account = proofread({ source: fixed }).accounts.find(
      ({ number }) => number.ranges[0].start === start,
    );
    return [title, fixed.slice(head.length), account?.kind];
  });
}

describe('A number that no figure accounts for', () => {
  it('can be tied to the figure that its words and its value speak of, or be left alone', () => {
    expect(offered(ONE_SIZE, 'Keep the «8» long strips in a bag.')).toEqual([
      [
        'This is the number of binding strips: 8',
        'Keep the 8 <!-- = binding.strips --> long strips in a bag.',
        'verified',
      ],
      ['Leave “8” alone', 'Keep the 8 <!-- measure skip --> long strips in a bag.', 'not-measurement'],
    ]);
  });

  it('is tied to the size that is named beside it', () => {
    expect(offered(TWO_SIZES, 'For the twin, cut «31» strips for the binding.')).toEqual([
      [
        'This is the number of binding strips in the size “twin”: 9',
        'For the twin, cut 31 <!-- = binding.strips @ twin --> strips for the binding.',
        'verified',
      ],
      [
        'Leave “31” alone',
        'For the twin, cut 31 <!-- measure skip --> strips for the binding.',
        'not-measurement',
      ],
    ]);
  });

  it('is tied to the one size whose value it has, where no word names one', () => {
    expect(offered(TWO_SIZES, 'Cut «9» strips for the binding.')[0]).toEqual([
      'This is the number of binding strips in the size “twin”: 9',
      'Cut 9 <!-- = binding.strips @ twin --> strips for the binding.',
      'verified',
    ]);
  });

  it('is tied without a size where nothing tells which, and the tag then asks for it', () => {
    const source = `${TWO_SIZES}Cut 31 strips for the binding.`;
    const start = source.indexOf('31');
    const [first] = unaccountedFixes(proofread({ source }), { start, end: start });

    expect(first?.title).toBe('This is the number of binding strips');
    const fixed = applyEdits(source, first?.edits ?? []);
    expect(proofread({ source: fixed }).findings.map(({ code }) => code)).toEqual(['size-needed']);
  });

  it('has at most five figures to choose from, and no two that are called the same', () => {
    const pieces = [1, 2, 3, 4, 5, 6, 7].map(
      (n) => `  square ${n}: { finished: ${n + 1}", count: ${n + 20} }`,
    );
    const titles = offered(block('pieces:', ...pieces), 'Cut «400» squares.').map(([title]) => title);

    expect(titles.length).toBeLessThanOrEqual(6);
    expect(new Set(titles).size).toBe(titles.length);
    expect(titles.at(-1)).toBe('Leave “400” alone');
  });

  it('that is told with reserve can only be left alone, since it is never called wrong', () => {
    expect(offered(ONE_SIZE, 'Cut about «31» strips for the binding.').map(([title]) => title)).toEqual([
      'Leave “31” alone',
    ]);
  });

  it('is offered nothing where a tag behind it waits to be mended', () => {
    expect(offered(ONE_SIZE, 'Cut «8» <!-- = bindings --> strips for the binding.')).toEqual([]);
  });
});

it('Nothing is offered for a number that is accounted for, or that measures nothing', () => {
  expect(offered(ONE_SIZE, 'Cut «8» strips for the binding.')).toEqual([]);
  expect(offered(ONE_SIZE, 'Step «3». Press.')).toEqual([]);
});
