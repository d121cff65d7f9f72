/** Cutting lists for tests: sizes in eighths of an inch. */
import fc from 'fast-check';
import { type Rational, rational } from '../../../core/quantity/rational.ts';
import { type CutPiece, type Fabric, roll } from '../../../core/trade/plan/fabric.ts';

export function eighths(n: number): Rational {
  return rational(n, 8);
}

export interface ListShape {
  readonly kinds: number;
  readonly count: number;
  /** Largest side, in eighths. */
  readonly side: number;
}

/** Random pieces; a third must lie one way. */
export function piecesOf({ kinds, count, side }: ListShape): fc.Arbitrary<CutPiece[]> {
  const piece = fc.record({
    width: fc.integer({ min: 8, max: side }),
    length: fc.integer({ min: 8, max: side }),
    count: fc.integer({ min: 1, max: count }),
    lengthwise: fc.constantFrom(undefined, undefined, undefined, undefined, true, false),
  });
  return fc.array(piece, { minLength: 1, maxLength: kinds }).map((list) =>
    list.map(({ width, length, lengthwise, ...rest }, i) => ({
      id: `piece ${i + 1}`,
      width: eighths(width),
      length: eighths(length),
      ...rest,
      ...(lengthwise === undefined ? {} : { lengthwise }),
    })),
  );
}

export const FORTY: Fabric = roll(rational(40));

export function inEighths(length: Rational): number {
  return length.mul(8n).valueOf();
}
