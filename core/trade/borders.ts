/** Borders from the inside out. All lengths in inches. */
import type { Rational } from '../quantity/rational.ts';
import { Real, roundUp } from '../quantity/real.ts';
import { joinPieces } from './joining.ts';
import { bothSeams, quarterSquareSeams } from './units/seams.ts';
import { grown, type Size, square } from './units/unit.ts';

/**
 * How the corners of a border are made.
 * - `butted`: the sides first, as long as the quilt; then top and bottom over the sides.
 * - `mitred`: every border as long as the outer edge, joined at 45°.
 * - `corner squares`: sides and ends as long as the quilt, with a square in each corner.
 */
export type BorderCorners = 'butted' | 'mitred' | 'corner squares';

export interface BorderSpec {
  /** The finished width. */
  readonly finished: Rational;
  readonly corners: BorderCorners;
}

export interface BorderPiece {
  readonly count: number;
  /** `width` across the border, `length` along it. */
  readonly finished: Size;
  /** Exact: finished + 2q both ways. */
  readonly cut: Size;
}

export interface Border {
  /** Left and right. */
  readonly sides: BorderPiece;
  /** Top and bottom. */
  readonly ends: BorderPiece;
  readonly cornerSquares: BorderPiece;
  /**
   * For mitred borders, how much longer than `cut` a strip is when even the tip of the mitre keeps its whole seam
   * allowance. 0 for the others. See `borders` why it is never needed.
   */
  readonly mitreReserve: Real;
  /** The quilt top after this border. */
  readonly finished: Size;
  readonly unfinished: Size;
}

/**
 * Adds borders one after the other to a top of a finished size.
 *
 * Mitred: the finished border is a trapezoid whose long side is the outer edge L of the quilt. Cut straight
 * across, a strip of L + 2q reaches from raw edge to raw edge, which is the least. Moved outwards by q, the long
 * side of the trapezoid itself grows by 2q/tan(45°/2) = (2 + 2√2)q, like a quarter-square triangle; the
 * difference 2√2·q is the reserve. What it adds lies beyond the raw edges of the quilt once the seam is pressed:
 * with the corner at (0, 0) and the seam along x = y, the allowance at (x, y) comes to lie there, or folded back at
 * (y, x), and either way sticks out of x ≤ 0, y ≤ 0 when x > 0. It makes sewing easier and is trimmed away.
 */
export function borders(top: Size, specs: readonly BorderSpec[], seam: Rational): Border[] {
  const steps: Border[] = [];
  let inner = top;
  for (const spec of specs) {
    const step = border(inner, spec, seam);
    steps.push(step);
    inner = step.finished;
  }
  return steps;
}

function border(inner: Size, { finished, corners }: BorderSpec, seam: Rational): Border {
  const width = Real.of(finished);
  const seams = bothSeams(seam);
  const outer = grown(inner, width.mul(Real.of(2)));
  const piece = (count: number, size: Size): BorderPiece => ({
    count,
    finished: size,
    cut: grown(size, seams),
  });
  return {
    sides: piece(2, { width, length: corners === 'mitred' ? outer.length : inner.length }),
    ends: piece(2, { width, length: corners === 'corner squares' ? inner.width : outer.width }),
    cornerSquares: piece(corners === 'corner squares' ? 4 : 0, square(width)),
    mitreReserve: corners === 'mitred' ? quarterSquareSeams(seam).sub(seams) : Real.of(0),
    finished: outer,
    unfinished: grown(outer, seams),
  };
}

export interface BorderStrips {
  /** Whether a border is longer than the usable width, so that strips are joined end to end. */
  readonly pieced: boolean;
  /** What all sides and ends measure together, end to end. */
  readonly reach: Rational;
  readonly strips: number;
  /** Fabric length: strips × cut width. */
  readonly length: Rational;
}

/**
 * Strips across the width of the fabric for the sides and ends of one border.
 *
 * When every piece fits into the usable width U, pieces are cut from strips one by one, each from the first
 * strip that has room. When one is longer, all strips are joined end to end and the borders are cut off: their
 * cut lengths add up to the length that `joinPieces` reaches.
 *
 * @param cutTo the step that cut sizes are rounded up to.
 * @param lostPerJoin j: the strip width for diagonal joins, 2q for straight ones.
 * @throws RangeError when a join loses as much as a strip is long.
 */
export function borderStrips(
  { sides, ends }: Pick<Border, 'sides' | 'ends'>,
  usableWidth: Rational,
  lostPerJoin: Rational,
  cutTo: Rational,
): BorderStrips {
  const width = roundUp(sides.cut.width, cutTo);
  const pieces = [sides, ends]
    .flatMap(({ count, cut }) => Array.from({ length: count }, () => roundUp(cut.length, cutTo)))
    .sort((a, b) => b.compare(a));
  const pieced = pieces.some((length) => length.compare(usableWidth) > 0);
  const reach = pieces.reduce((a, b) => a.add(b));
  const strips = pieced
    ? joinPieces(Real.of(reach), usableWidth, lostPerJoin).pieces
    : firstFit(pieces, usableWidth);
  return { pieced, reach, strips, length: width.mul(BigInt(strips), 1n) };
}

/** First fit, longest first. With four pieces of two lengths that is the least number of strips. */
function firstFit(pieces: readonly Rational[], usableWidth: Rational): number {
  const rests: Rational[] = [];
  for (const length of pieces) {
    const at = rests.findIndex((rest) => rest.compare(length) >= 0);
    if (at < 0) rests.push(usableWidth.sub(length));
    else rests[at] = rests[at]?.sub(length) as Rational;
  }
  return rests.length;
}
