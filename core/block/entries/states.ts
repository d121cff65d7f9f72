import { many } from '../entry.ts';
import { quantity } from '../values/length.ts';
import { perSize } from '../values/perSize.ts';

export const states = many(perSize(quantity), {
  summary: 'What the author believes of a figure; each statement is checked.',
  example: 'states:\n  binding.square: 17"',
});
