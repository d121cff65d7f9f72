/** A house that goes by the rule of thumb for bias squares. */
import { describe, expect, it } from 'vitest';
import { complaints, figureOf, patternOf, shown } from '../support/pattern.ts';

const block = (around: string, strip: string, more = '') =>
  `house: { bias square by: area, joining allowance: 0" }
finished: measured ${around}
binding: { strip: ${strip}, grain: bias }
${more}`;

describe('the rule of thumb for a bias square', () => {
  // Hamel's, Continuous bias binding (shop): 230 in of 2 in take a square of 21.45, 22 in.
  it('gives the published square, and the working says what it really gives', () => {
    const { ledger } = patternOf(block('230"', '2"'));
    expect(shown(ledger, 'binding.square')).toEqual({ '': '22"' });
    const value = figureOf(ledger, 'binding.square').values.get('');
    expect(value?.working).toEqual([
      '230" of binding is needed.',
      'By the rule of thumb √(230" × 2") = 21.45", so the square is 22".',
      'Sewn into a tube, a 22" square gives 212.84" in 7 passes of 30.41" each, 17.16" less than is needed; a 24" square gives 265.87" in 8 passes.',
    ]);
    expect(value?.because).toBe('by the rule of thumb √(230" × 2") = 21.45", so the square is 22"');
  });

  it('is told by a warning where its square gives too little', () => {
    expect(complaints(block('230"', '2"'))).toEqual([
      [
        'area-rule-short',
        'area',
        '230" of binding is needed, but a 22" square gives 212.84" in 7 passes: the rule of thumb forgets the seams and what is left beside the last line, and a 24" square gives 265.87" in 8 passes.',
      ],
    ]);
  });

  it('is not told where the pattern states a square that is large enough, and told where it is not', () => {
    expect(complaints(block('230"', '2"', 'states: { binding.square: 24" }'))).toEqual([]);
    expect(complaints(block('230"', '2"', 'states: { binding.square: 23" }'))[0]?.[2]).toMatch(
      /^230" of binding is needed, but a 23" square gives 222\.74" in 7 passes/,
    );
  });

  it('is not told where its square happens to be enough', () => {
    // √(2 × 1) = 1.41, so 2 in; once around its tube, 1½ in from seam to seam, is 1½ × √2 = 2.12 in.
    expect(complaints(block('2"', '1"'))).toEqual([]);
  });

  it('is not told where the binding is not cut from a square', () => {
    expect(complaints(block('230"', '2"').replace('grain: bias', 'grain: straight'))).toEqual([]);
  });
});
