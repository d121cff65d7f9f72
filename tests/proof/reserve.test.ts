import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../core/manuscript/manuscript.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { isReserved, isReservedBy, RESERVATIONS, standingOf } from '../../core/proof/reserve.ts';

/** The number between « and ». */
function marked(sentence: string) {
  const at = sentence.indexOf('«');
  const shown = sentence.slice(at + 1, sentence.indexOf('»'));
  const { numbers } = readManuscript(sentence.replace(/[«»]/g, ''));
  const found = numbers.find(({ ranges }) => ranges[0].start === at);
  if (!found?.text.startsWith(shown)) throw new Error(`${shown} is not read as a number in: ${sentence}`);
  return found;
}

describe('a reserve', () => {
  it.each(RESERVATIONS.map(({ example }) => example))('is heard in: %s', (sentence) => {
    expect(isReserved(marked(sentence), false)).toBe(true);
  });

  it.each(RESERVATIONS.map(({ counterexample }) => counterexample))('is not heard in: %s', (sentence) => {
    expect(isReserved(marked(sentence), false)).toBe(false);
  });

  it('needs every row of the table', () => {
    const needless = RESERVATIONS.filter((row) => {
      const standing = standingOf(marked(row.example), false);
      return RESERVATIONS.some((other) => other !== row && isReservedBy(other, standing));
    });
    expect(needless.map(({ example }) => example)).toEqual([]);
  });

  it.each([
    'It measures roughly «65»".',
    'It is ~«65»" wide.',
    'Cut approx. «7» strips.',
    'Buy «4» yards or more.',
    'Cut «7» strips or so.',
    'Tack every «4»" or so.',
    'It is «65»" (approx.) wide.',
    'A «65»"-ish square.',
    'If the block measures only «6¼»", press again.',
    'You may need «8» strips.',
    'No more than «8» strips.',
    'It is a little over «65»".',
    'Trim to slightly under «2½»".',
  ])('is heard in these words too: %s', (sentence) => {
    expect(isReserved(marked(sentence), false)).toBe(true);
  });

  it.each([
    'Sew a scant «¼»" seam.',
    'Sew with a generous «⅜»" seam.',
    'It should be at least «65»" wide.',
    'It should be no less than «65»" wide.',
    'Sew up to «¼»" from the edge.',
    'Press seams over «¼»".',
    'Fold the raw edges under «¼»".',
    'Turn the hem under «½»" twice.',
    'Stitch around all «4» sides.',
    'Cut «8»--3½" squares.',
    'It is exactly «65»" wide.',
    'Yours must be «65»" wide.',
    'You need «7» strips more.',
    'Cut a strip «65»" long for each side.',
  ])('is not heard in these words: %s', (sentence) => {
    expect(isReserved(marked(sentence), false)).toBe(false);
  });
});

const BLOCK = '```measure\nfinished: 66" x 77"\nbinding: { strip: 2 1/4" }\nbacking: {}\n```\n\n';

/** Numbers that seem to contradict their figure, and prove nothing. */
const RESERVED = [
  `The edge is 23' 10" <!-- = finished.edge --> long.`,
  'It is 5 ft 6 in <!-- = finished.width --> wide.',
  'It is 1 yd 30 in <!-- = finished.width --> wide.',
  'Buy 2–3 yd <!-- = backing.yardage --> for the back.',
  'Cut 5-6 <!-- = binding.strips --> strips.',
  'Buy 2 to 3 yards <!-- = backing.yardage -->.',
  'It is about 65" <!-- = finished.width --> wide.',
  'It is less than 67" <!-- = finished.width --> wide.',
];

describe('a number that does not say exactly what it seems to say', () => {
  it.each(RESERVED)('is never called wrong: %s', (text) => {
    expect(proofread({ source: BLOCK + text }).findings).toEqual([]);
  });

  it.each(['It is 65" <!-- = finished.width --> wide.', 'Cut 6 <!-- = binding.strips --> strips.'])(
    'is told from one that does: %s',
    (text) => {
      expect(proofread({ source: BLOCK + text }).findings).toHaveLength(1);
    },
  );
});
