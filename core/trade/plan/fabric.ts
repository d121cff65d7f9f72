/** What is cut, and from what. All lengths in inches; widths and lengths are final cut sizes, already rounded. */
import { type Rational, rational } from '../../quantity/rational.ts';

/** Fabric by the yard (ordinary or wide), or so many equal sheets. */
export type Stock =
  | { readonly kind: 'roll'; readonly usableWidth: Rational }
  | {
      readonly kind: 'sheets';
      /** One of them, in the trade's words: "fat quarter". */
      readonly name: string;
      /** From selvage side to selvage side. */
      readonly width: Rational;
      /** Along the selvage. */
      readonly length: Rational;
    };

export interface Fabric {
  readonly stock: Stock;
  /**
   * The print has an up and a down: pieces are cut as they stand, their width across the fabric and their length
   * along the selvage, unless a piece says otherwise.
   */
  readonly directional: boolean;
  /** Length lost once when the end of a roll is straightened; nothing for sheets. */
  readonly squaring: Rational;
  /**
   * The step in which a roll is sold, in inches. With it a plan need not be the shortest: it is enough that every
   * shorter one would be rounded up to the same length.
   */
  readonly sellBy?: Rational;
}

export interface CutPiece {
  readonly id: string;
  readonly width: Rational;
  readonly length: Rational;
  /** Whole, 0 or more. */
  readonly count: number;
  /** The length must run along the selvage (true) or across the fabric (false); left out, either way will do. */
  readonly lengthwise?: boolean;
}

export function roll(usableWidth: Rational, more: Partial<Fabric> = {}): Fabric {
  return { stock: { kind: 'roll', usableWidth }, directional: false, squaring: rational(0), ...more };
}

/** Half a yard by half the width; 18 × 21 in usable (common practice). */
export const FAT_QUARTER: Stock = sheets('fat quarter', rational(21), rational(18));
/** A quarter of a yard by half the width; 9 × 21 in usable (common practice). */
export const FAT_EIGHTH: Stock = sheets('fat eighth', rational(21), rational(9));

/** Strips that are sold cut across the fabric. */
export function precutStrips(width: Rational, usableWidth: Rational): Stock {
  return sheets('strip', usableWidth, width);
}

export function precutSquares(side: Rational): Stock {
  return sheets('square', side, side);
}

function sheets(name: string, width: Rational, length: Rational): Stock {
  return { kind: 'sheets', name, width, length };
}

/** Along the selvage, or across the fabric: the way in which the length of a piece runs. */
export type Run = 'lengthwise' | 'crosswise';

/** The ways in which a piece may lie on the fabric. */
export function allowedRuns(piece: CutPiece, { directional }: Pick<Fabric, 'directional'>): readonly Run[] {
  if (piece.lengthwise !== undefined) return [piece.lengthwise ? 'lengthwise' : 'crosswise'];
  return directional ? ['lengthwise'] : ['crosswise', 'lengthwise'];
}

/** How far a piece reaches across the fabric and along the selvage. */
export function extent(
  { width, length }: Pick<CutPiece, 'width' | 'length'>,
  run: Run,
): { across: Rational; along: Rational } {
  return run === 'lengthwise' ? { across: width, along: length } : { across: length, along: width };
}
