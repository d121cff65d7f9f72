import type { Rational } from '../../quantity/rational.ts';
import { readDimensions, readLength } from '../../quantity/read.ts';
import { isProblem, text } from './schema.ts';

/** Width and length in inches. */
export interface Sides {
  readonly width: Rational;
  readonly length: Rational;
  /** Whether one length was written, so that the kind of unit decides what it means. */
  readonly single: boolean;
}

/** `3"` for what is square, or `3" x 6"`. */
export const sides = text<Sides>({ title: 'a size', examples: ['3"', '3" x 6"'] }, (raw) => {
  const both = readDimensions(raw);
  if (!isProblem(both)) return { width: both.width.inches, length: both.length.inches, single: false };
  const one = readLength(raw);
  if (!isProblem(one)) return { width: one.inches, length: one.inches, single: true };
  return /[x×]|\bby\b/i.test(raw) ? both : one;
});
