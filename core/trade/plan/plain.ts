/** The plain count: every piece from strips of its own, as most patterns say it. Lengths in inches. */
import { ceil, floor, type Rational } from '../../quantity/rational.ts';
import { allowedRuns, type CutPiece, extent, type Fabric, type Run } from './fabric.ts';

export interface PlainCut {
  readonly piece: CutPiece;
  readonly run: Run;
  /** Cut width of the strips: for lengthwise pieces, their length. */
  readonly stripWidth: Rational;
  readonly perStrip: number;
  readonly strips: number;
  /** strips × strip width: the length of fabric they take. */
  readonly length: Rational;
}

/** How many pieces come from one strip: whole ones only. */
export function perStrip(usableWidth: Rational, span: Rational): number {
  return Number(floor(usableWidth.div(span)));
}

/** The fewest strips for a number of pieces. */
export function stripsFor(count: number, each: number): number {
  return Math.ceil(count / each);
}

/**
 * Strips for one piece, in whichever way takes less fabric; of equal ways the one with fewer strips, then the one
 * with strips as wide as the piece. `undefined` for a piece that does not fit the fabric.
 */
export function plainCut(piece: CutPiece, usableWidth: Rational, fabric: Fabric): PlainCut | undefined {
  return cuts(piece, usableWidth, fabric).sort(
    (a, b) => a.length.compare(b.length) || a.strips - b.strips,
  )[0];
}

/**
 * Strips for one piece that are as wide as its shorter side, as most patterns are written (common practice), though the
 * pieces might lie more closely when they are turned.
 */
export function usualCut(piece: CutPiece, usableWidth: Rational, fabric: Fabric): PlainCut | undefined {
  return cuts(piece, usableWidth, fabric).sort((a, b) => a.stripWidth.compare(b.stripWidth))[0];
}

function cuts(piece: CutPiece, usableWidth: Rational, fabric: Fabric): PlainCut[] {
  return allowedRuns(piece, fabric).flatMap((run) => {
    const { across, along } = extent(piece, run);
    const each = perStrip(usableWidth, across);
    if (each === 0) return [];
    const strips = stripsFor(piece.count, each);
    const length = along.mul(BigInt(strips), 1n);
    return [{ piece, run, stripWidth: along, perStrip: each, strips, length }];
  });
}

/**
 * How many pieces of one size come from a length of fabric, in the better of the ways they may lie: whole strips,
 * and whole pieces from each.
 */
export function piecesFrom(usableWidth: Rational, length: Rational, piece: CutPiece, fabric: Fabric): number {
  const counts = allowedRuns(piece, fabric).map((run) => {
    const { across, along } = extent(piece, run);
    return perStrip(usableWidth, across) * Number(floor(length.div(along)));
  });
  return Math.max(0, ...counts);
}

/** The least length of fabric whose area holds all pieces, however they are cut. */
export function areaBound(pieces: readonly CutPiece[], usableWidth: Rational): Rational {
  const zero = usableWidth.sub(usableWidth);
  return pieces
    .reduce((sum, { width, length, count }) => sum.add(width.mul(length).mul(BigInt(count), 1n)), zero)
    .div(usableWidth);
}

/** The least number of sheets whose area holds all pieces. */
export function sheetsByArea(pieces: readonly CutPiece[], width: Rational, length: Rational): number {
  return Number(ceil(areaBound(pieces, width).div(length)));
}
