import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';

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
