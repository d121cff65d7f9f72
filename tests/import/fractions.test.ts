import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mendFractions } from '../../server/command-line/import/fractions.ts';

describe('A damaged fraction', () => {
  it.each([
    [
      '31/2"',
      '3 1/2"',
      'a lost space: three halves and more stand in no pattern, and only one place gives a fraction',
    ],
    ['121/2" square', '12 1/2" square', 'the same with two digits before it'],
    ['15/8 yd', '1 5/8 yd', 'a yardage that would be improper'],
    ['42/3 yards', '4 2/3 yards', 'a third of a yard'],
    ['21⁄2”', '2 1/2”', 'the bar that a compatibility normalisation leaves'],
    ['2^3/4"', '2 3/4"', 'a caret, whatever stands behind it'],
    ['2^3/4', '2 3/4', 'a caret without a unit'],
    ['2³/₄"', '2 3/4"', 'raised and lowered digits'],
    ['2 ³⁄₄', '2 3/4', 'the same with a space'],
    ['³/8 yd', '3/8 yd', 'a raised digit only'],
    ['2 3 / 4"', '2 3/4"', 'spaces beside the bar'],
    ['3 /4 yd', '3/4 yd', 'one space'],
    ['31/2 x 5"', '3 1/2 x 5"', 'one side of a size'],
  ])('%j becomes %j: %s', (text, mended) => {
    const { text: result, notes } = mendFractions(text);

    expect(result).toBe(mended);
    expect(notes).toHaveLength(1);
    expect(notes[0]?.mended).toBeDefined();
  });

  it.each([
    ['311/16"', 'it may be 3 11/16 or 31 1/16'],
    ['31/2 strips', 'it may be 3 1/2, but no unit stands behind it'],
    ['5² blocks', 'raised digits stand behind a number'],
  ])('%j stays, and a person is told that %s', (text, reason) => {
    expect(mendFractions(text)).toMatchObject({
      text,
      notes: [{ at: expect.any(Number), mended: undefined, reason }],
    });
  });

  it.each([
    '2 1/2"',
    '2-1/2"',
    '2½"',
    '1/2"',
    '11/16"',
    '13/16"',
    '44/45" wide',
    '42/44"',
    '12/8/2026',
    '80/12 needles',
    '60/40 blend',
    '3.21/2"',
    '12/10"',
    '20/8"',
    'A/B',
    'and/or',
    'Note¹',
    '5 / 7',
    '$31/2',
  ])('leaves %j alone and says nothing', (text) => {
    expect(mendFractions(text)).toEqual({ text, notes: [] });
  });

  it('has its place in the new text, whatever was mended before it', () => {
    const { text, notes } = mendFractions('Cut 31/2" and 2^3/4", then 41/2" by 311/16".');

    expect(text).toBe('Cut 3 1/2" and 2 3/4", then 4 1/2" by 311/16".');
    expect(notes.map(({ at, was, mended }) => text.slice(at, at + (mended ?? was).length))).toEqual([
      '3 1/2',
      '2 3/4',
      '4 1/2',
      '311/16',
    ]);
  });

  it('is mended once: nothing is left to mend in a second run', () => {
    const parts = fc.constantFrom(
      '31/2"',
      '2^3/4',
      '2³/₄',
      ' 3 / 4" ',
      '311/16"',
      '12',
      ' x ',
      '/',
      ' ',
      'yd',
      '½',
      '5²',
    );
    fc.assert(
      fc.property(fc.array(parts), (texts) => {
        const once = mendFractions(texts.join(' '));
        const again = mendFractions(once.text);

        expect(again.text).toBe(once.text);
        expect(again.notes.filter(({ mended }) => mended !== undefined)).toEqual([]);
      }),
    );
  });
});
