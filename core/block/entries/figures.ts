import { many } from '../entry.ts';
import { perSize } from '../values/perSize.ts';
import { text } from '../values/schema.ts';

export const figures = many(
  perSize(
    text({ title: 'an expression', examples: ['finished.edge + 18"', 'binding.strips * 2'] }, (raw) => raw),
  ),
  {
    summary: "The author's own figures: sums of lengths, counts and other figures.",
    example: 'figures:\n  ribbon: finished.edge + 18"',
  },
);
