/** Binding on the straight grain, and what any double-fold binding needs and shows. */
import { type Edge, isCurved } from '../geometry/edges.ts';
import type { Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import { type Join, type JoinedPieces, joinPieces, lostPerJoin } from './joining.ts';

export type Grain = 'straight' | 'bias';

/** All lengths in inches. */
export interface BindingNeed {
  readonly edge: Real;
  /** Beyond the edge, for the corners and for closing the loop. */
  readonly allowance: Rational;
  /** edge + allowance. */
  readonly need: Real;
}

/** How much binding an edge takes: its length and the joining allowance (10 to 12 in are common practice). */
export function bindingNeed(edge: Real, allowance: Rational): BindingNeed {
  return { edge, allowance, need: edge.add(Real.of(allowance)) };
}

/**
 * Whether binding of this grain lies flat on the edge.
 *
 * Straight grain does not stretch, so it puckers on a curve; bias suits every edge. A taped edge, whose shape is
 * not known, gets the benefit of the doubt.
 * Source: American Patchwork & Quilting, "Save fabric with this magic way to make bias binding" (scallops and
 * curves need bias).
 */
export function grainSuits(grain: Grain, edge: Edge): boolean {
  return grain === 'bias' || isCurved(edge) !== true;
}

export interface StripCutting {
  /** Usable width of the fabric: the length of a strip cut across it. */
  readonly usableWidth: Rational;
  /** Cut width of the strip. */
  readonly strip: Rational;
  readonly join: Join;
  readonly seam: Rational;
}

/** `pieces` strips, `each` the usable width; all lengths in inches. */
export interface StraightBinding extends JoinedPieces, StripCutting {
  /** strips · strip width: the length of fabric they are cut from. */
  readonly fabricLength: Rational;
}

/**
 * Binding from strips cut across the width of the fabric.
 *
 * The fewest strips n with n·U − (n − 1)·j ≥ need (see `joinPieces`), each strip w wide, so n·w of fabric.
 * Rounding happens once, up, in n.
 *
 * @throws RangeError when the strip is as wide as the fabric, so that a join takes as much as a strip gives.
 */
export function straightBinding(need: Real, cutting: StripCutting): StraightBinding {
  const lost = lostPerJoin(cutting.join, cutting.strip, cutting.seam);
  const joined = joinPieces(need, cutting.usableWidth, lost);
  return { ...cutting, ...joined, fabricLength: cutting.strip.mul(BigInt(joined.pieces)) };
}

/** All lengths in inches. */
export interface DoubleFold {
  /** w/2: the strip folded along its middle. */
  readonly folded: Rational;
  /** What shows on the front: from the seam to the trimmed edge. */
  readonly front: Rational;
  /** What shows on the back. */
  readonly back: Rational;
  /** Whether the fold on the back reaches the line of stitches, so that it can be sewn down over it. */
  readonly coversSeam: boolean;
}

/**
 * What a double-fold binding shows.
 *
 * The strip is folded to w/2 and sewn q from its raw edges onto the edge of the quilt, trimmed flush. From the
 * seam it runs q to the edge (the front), then around the thickness t; what is left lies on the back:
 * w/2 − q − q − t. It covers the seam when that is at least q.
 *
 * @param thickness of the layers at the edge, in inches; nothing if it is to be left out.
 */
export function doubleFold(strip: Rational, seam: Rational, thickness: Rational): DoubleFold {
  const folded = strip.div(2n);
  const back = folded.sub(seam.mul(2n)).sub(thickness);
  return { folded, front: seam, back, coversSeam: back.compare(seam) >= 0 };
}
