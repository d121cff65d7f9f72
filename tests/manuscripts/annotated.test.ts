import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { readAnnotated } from './annotated.ts';
import { compare } from './compare.ts';

describe('An annotated manuscript', () => {
  it('gives the manuscript without annotations, and each number with its place', () => {
    const { source, expected } = readAnnotated('Cut (7⟦a.strips⟧) 2¼"⟦?⟧ strips, see step 3⟦-⟧.');
    expect(source).toBe('Cut (7) 2¼" strips, see step 3.');
    expect(expected).toEqual([
      { start: 5, end: 6, text: '7', account: 'verified', figures: [{ id: 'a.strips', size: undefined }] },
      { start: 8, end: 11, text: '2¼"', account: 'unaccounted', figures: [] },
      { start: 29, end: 30, text: '3', account: 'not-measurement', figures: [] },
    ]);
  });

  it('reads several figures, each with its size, over a line break', () => {
    const { expected } = readAnnotated('7⟦binding.strips @ throw |\n  piece.sash.count @ queen⟧');
    expect(expected[0]?.figures).toEqual([
      { id: 'binding.strips', size: 'throw' },
      { id: 'piece.sash.count', size: 'queen' },
    ]);
  });

  it.each([
    ['8--3-1/2"⟦?⟧ squares', '3-1/2"'],
    ['6⟦?⟧--3/4"⟦-⟧ strips', '6'],
    ['a 44/45"⟦?⟧ width', '45"'],
    ['one hundred and twenty⟦?⟧ squares', 'one hundred and twenty'],
    ['twenty-two⟦?⟧ squares', 'twenty-two'],
    ['B2 6.1/2"⟦?⟧ square', '6.1/2"'],
    ['half a yard⟦?⟧ of plum', 'half a yard'],
    ['30cm x 45cm⟦?⟧', '45cm'],
    ['1,200⟦?⟧ hexagons', '1,200'],
    ['stitch 2.5⟦-⟧', '2.5'],
  ])('knows where the number starts in: %s', (text, number) => {
    const { source, expected } = readAnnotated(text);
    expect(expected[0]?.text).toBe(number);
    expect(source.slice(expected[0]?.start, expected[0]?.end)).toBe(number);
  });

  it.each([
    ['two lines\nand squares⟦?⟧', 'line 2: ⟦?⟧ cannot be read'],
    ['seven 7⟦⟧', 'line 1: ⟦⟧ cannot be read'],
    ['7⟦a |⟧', 'line 1: ⟦a |⟧ cannot be read'],
    ['7⟦a and\n8⟦b⟧', 'line 1: a bracket has no partner'],
  ])('names the line of an annotation that cannot be read: %j', (text, message) => {
    expect(() => readAnnotated(text)).toThrow(message);
  });
});

const BLOCK = '```measure\nfinished: 36" x 48"\nbinding: { strip: 2 1/4" }\n```\n\n';

function differences(annotated: string) {
  const { source, expected } = readAnnotated(BLOCK + annotated);
  return compare(proofread({ source }), expected).map((each) => [each.number, each.expected, each.got]);
}

describe('The comparison of a proof with its annotations', () => {
  it('has nothing to say where they agree', () => {
    expect(
      differences(
        '1. Join 5⟦binding.strips⟧ <!-- = binding.strips --> strips. The pond is 9"⟦?⟧ deep. Nine-patches, step 3⟦-⟧.',
      ),
    ).toEqual([]);
  });

  it('says what is expected and what the proof has, in reading order', () => {
    expect(
      differences(
        'Cut 4⟦binding.strips⟧ <!-- = binding.strips --> strips. The pond is 9" deep, with 7⟦-⟧ frogs and 5⟦binding.edge⟧ newts.',
      ),
    ).toEqual([
      ['4', 'verified by binding.strips', 'short by binding.strips, should be 5'],
      ['9"', 'not-measurement', 'unaccounted'],
      ['7', 'not-measurement', 'unaccounted'],
      ['5', 'verified by binding.edge', 'unaccounted'],
    ]);
  });

  it('tells a number that is tied to another figure, and one that is not found', () => {
    expect(differences('Cut 5⟦binding.edge⟧ <!-- = binding.strips --> strips with `3⟦?⟧`')).toEqual([
      ['5', 'verified by binding.edge', 'verified by binding.strips'],
      ['3', 'unaccounted', 'no number is found here'],
    ]);
  });

  it('asks for the size that an annotation names', () => {
    const block = '```measure\nsizes: [mini, wall]\nfinished: { mini: 20" x 20", wall: 30" x 40" }\n```\n\n';
    const text = 'It is 20"⟦finished.width @ wall⟧ <!-- = finished.width @ mini --> wide.';
    const { source, expected } = readAnnotated(block + text);
    expect(compare(proofread({ source }), expected)).toEqual([
      {
        start: source.indexOf('20" <!--'),
        number: '20"',
        expected: 'verified by finished.width @ wall',
        got: 'verified by finished.width @ mini',
      },
    ]);
  });
});
