import type { Rational } from '../../quantity/rational.ts';
import { readCount, readDimensions, readLength } from '../../quantity/read.ts';
import type { LengthUnit } from '../../quantity/units.ts';
import { text } from './schema.ts';

/** A length as the author gave it: exact inches, and the unit for showing it again. */
export interface Length {
  readonly inches: Rational;
  readonly unit: LengthUnit;
}

/** Width and length of a piece, in the order in which they are written. */
export interface Dimensions {
  readonly width: Length;
  readonly length: Length;
}

/** A count of things, or a length: what a figure can be. With its text, without quotation marks of the block. */
export type Quantity = { readonly text: string } & (
  | { readonly kind: 'count'; readonly count: Rational }
  | ({ readonly kind: 'length' } & Length)
);

const LENGTH_WORDS = { title: 'a length', examples: ['2 1/4"', '2¼"', '57 cm', '1 1/8 yd'] };

/** A length greater than nothing. */
export const length = text<Length>(LENGTH_WORDS, (raw) => readLength(raw));

/** A length that may be nothing, for what can be done without. */
export const lengthOrZero = text<Length>({ title: 'a length', examples: ['1"', '0"', '2 cm'] }, (raw) =>
  readLength(raw, { zero: true }),
);

export const count = text<Rational>({ title: 'a whole number', examples: ['4', '12'] }, (raw) => {
  const read = readCount(raw);
  return 'problem' in read ? read : read.value;
});

/** `3" x 6"`. */
export const dimensions = text<Dimensions>(
  { title: 'a width and a length', examples: ['3" x 6"', '7 cm x 14 cm'] },
  (raw) => readDimensions(raw),
);

export const quantity = text<Quantity>(
  { title: 'a length or a whole number', examples: ['17"', '8', '1 1/8 yd'] },
  (raw) => {
    const asCount = readCount(raw);
    if (!('problem' in asCount)) return { text: raw, kind: 'count', count: asCount.value };
    const asLength = readLength(raw, { zero: true });
    return 'problem' in asLength ? asLength : { text: raw, kind: 'length', ...asLength };
  },
);
