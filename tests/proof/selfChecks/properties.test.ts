import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';

/** What manuscripts are made of, in any order. */
const PARTS = [
  'Cut ',
  'Make ',
  'Finished quilt: ',
  'Quilt size: ',
  'The quilt top should measure ',
  'The block finishes at ',
  'Each block uses ',
  'From the gold print, cut:\n\n- ',
  '; subcut ',
  ' cut once diagonally for ',
  ' rows of ',
  ' squares',
  ' strips',
  ' × WOF',
  ' triangles',
  ' blocks',
  ' HSTs',
  ' pairs of squares two at a time make ',
  ' binding',
  ' backing',
  ' batting',
  ' side borders',
  ' long',
  ' yards gold print',
  '5',
  '12 ',
  '(30)',
  'twelve (10)',
  '0"',
  '2½"',
  '36" × 48"',
  '0" × 0"',
  '5 (7, 9)',
  '12½in (32cm)',
  '1.2m (2yd)',
  '44/45"',
  ' x ',
  ', ',
  '. ',
  '\n\n',
  '\n\n## Binding\n\n',
  '\n| First cut | Next cut |\n|---|---|\n| ',
  ' | ',
  '**',
  '<!-- measure off -->',
  '```measure\nfinished: 36" x 48"\n```\n\n',
];

const manuscript = fc
  .array(fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...PARTS) }, fc.string({ maxLength: 8 })), {
    maxLength: 40,
  })
  .map((parts) => parts.join(''));

describe('whatever a manuscript says', () => {
  it('every number still has one account, and every finding of a check names two places inside the text', () => {
    fc.assert(
      fc.property(manuscript, (source) => {
        const { accounts, findings, manuscript } = proofread({ source });
        expect(accounts.map(({ number }) => number)).toEqual(manuscript.numbers);
        const own = findings.filter(({ code }) => /-disagree$|^not-enough$/.test(code));
        for (const { start, end, related } of own) {
          expect(related.length).toBeGreaterThan(0);
          for (const place of [{ start, end }, ...related]) {
            expect(place.start).toBeGreaterThanOrEqual(0);
            expect(place.end).toBeLessThanOrEqual(source.length);
            expect(place.start).toBeLessThan(place.end);
          }
        }
        const wrong = accounts.filter(({ kind, tie }) => kind === 'wrong' && !tie);
        expect(wrong.length).toBe(own.length);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a manuscript with a block', () => {
  const block = '```measure\nfinished: 60" x 72"\nbinding: { strip: 2 1/4", grain: straight }\n```\n\n';

  it('leaves a number to its figure where it has one', () => {
    const source = `${block}Finished quilt: 60" × 72"\n\n## Binding\n\nCut 5 <!-- = binding.strips --> strips 2¼" × WOF.`;
    expect(proofread({ source }).findings.map(({ code }) => code)).toEqual(['short-figure']);
  });

  it('compares a number that no figure fixes with one that a figure verifies', () => {
    const source = `${block}Finished quilt: 60" <!-- = finished.width --> × 72" <!-- = finished.length -->\n\nBacking: 58" × 80"`;
    const [finding, ...more] = proofread({ source }).findings;
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      code: 'not-enough',
      message: 'The backing of 58" × 80" is smaller than the quilt, which is 60" × 72".',
      start: source.indexOf('58"'),
    });
  });

  it('does not blame a number for another that is wrong itself', () => {
    const source = `${block}Finished quilt: 80" <!-- = finished.width --> × 72" <!-- = finished.length -->\n\nBacking: 68" × 80"`;
    expect(proofread({ source }).findings.map(({ code }) => code)).toEqual(['wrong-figure']);
  });

  it('leaves numbers alone where the author switched reading off', () => {
    const source =
      '<!-- measure off -->\n\nLay out the 20 blocks in 5 rows of 5 blocks.\n\n<!-- measure on -->';
    expect(proofread({ source }).findings).toEqual([]);
  });
});
