/** The hanging sleeve: a tube of fabric along the top of the back, for a rod. */
import type { Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import { type JoinedPieces, joinPieces, lostPerJoin } from './joining.ts';

/** All lengths in inches. */
export interface SleeveWish {
  readonly quiltWidth: Real;
  readonly finishedDepth: Rational;
  /** How far the sleeve ends before the edge of the quilt, on each side. */
  readonly shortOfEdge: Rational;
  readonly seam: Rational;
  /** What is turned under at each end, twice, so that no raw edge shows. */
  readonly hem: Rational;
  readonly usableWidth: Rational;
}

/** All lengths in inches. */
export interface Sleeve {
  readonly finishedLength: Real;
  readonly cutLength: Real;
  readonly cutDepth: Rational;
  /** The strips across the fabric that it is joined from. */
  readonly strips: JoinedPieces;
  /** strips · cut depth. */
  readonly fabricLength: Rational;
}

/**
 * A hanging sleeve (common practice: 4 in deep for a show, an inch short of the edge on either side).
 *
 * The tube lies flat, so around it goes twice the finished depth, and its long edges meet in one seam: cut depth
 * 2d + 2q. It ends e before either edge of the quilt: finished length W − 2e. Each end is turned twice by h:
 * cut length W − 2e + 4h. A longer one is joined from strips, straight, so each join takes two seam allowances.
 *
 * @throws RangeError when nothing of the width is left.
 */
export function hangingSleeve(wish: SleeveWish): Sleeve {
  const finishedLength = wish.quiltWidth.sub(Real.of(wish.shortOfEdge.mul(2n)));
  if (finishedLength.sign() <= 0)
    throw new RangeError('the sleeve stops so far from the edges that none is left');
  const cutLength = finishedLength.add(Real.of(wish.hem.mul(4n)));
  const cutDepth = wish.finishedDepth.add(wish.seam).mul(2n);
  const strips = joinPieces(cutLength, wish.usableWidth, lostPerJoin('straight', cutDepth, wish.seam));
  const fabricLength = cutDepth.mul(BigInt(strips.pieces));
  return { finishedLength, cutLength, cutDepth, strips, fabricLength };
}
