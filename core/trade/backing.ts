/** Backing: one wide piece, or panels joined side by side. */
import type { Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import { type LayerSize, layerSize } from './batting.ts';
import { type JoinedPieces, joinPieces } from './joining.ts';

/** All lengths in inches. */
export interface BackingWish {
  readonly top: LayerSize;
  /** Beyond the top, on every side. */
  readonly overhang: Rational;
  /** Of the fabric, selvages off. */
  readonly usableWidth: Rational;
  /** Seam allowance where panels are joined; half an inch is common practice. */
  readonly panelSeam: Rational;
}

/** `pieces` panels side by side, `each` the usable width; all lengths in inches. */
export interface PanelPlan extends JoinedPieces {
  /** The way the seams run on the finished quilt; without a seam, the way the fabric's length runs. */
  readonly seams: 'vertical' | 'horizontal';
  readonly panelLength: Real;
  /** pieces · panel length. */
  readonly fabricLength: Real;
}

/** All lengths in inches. */
export interface Backing {
  readonly size: LayerSize;
  readonly vertical: PanelPlan;
  readonly horizontal: PanelPlan;
  /** The one that takes less fabric; vertical seams when both take the same. */
  readonly best: PanelPlan;
}

/**
 * The backing of a top, cut from the full width of the fabric.
 *
 * The backing is (W + 2o) × (L + 2o). With vertical seams, panels lie side by side until they reach across the
 * width, each as long as the backing; with horizontal seams they reach down the length, each as long as the
 * backing is wide. Every join takes two seam allowances, so the panels are counted by `joinPieces`. A fabric wide
 * enough (a wide backing) comes out as one panel without a seam. Nothing is rounded but the number of panels, up.
 *
 * @throws RangeError when a panel seam takes the whole fabric.
 */
export function backing(wish: BackingWish): Backing {
  const size = layerSize(wish.top, wish.overhang);
  const vertical = panels('vertical', size.width, size.length, wish);
  const horizontal = panels('horizontal', size.length, size.width, wish);
  const best = horizontal.fabricLength.compare(vertical.fabricLength) < 0 ? horizontal : vertical;
  return { size, vertical, horizontal, best };
}

function panels(seams: PanelPlan['seams'], reach: Real, panelLength: Real, wish: BackingWish): PanelPlan {
  const joined = joinPieces(reach, wish.usableWidth, wish.panelSeam.mul(2n));
  return { ...joined, seams, panelLength, fabricLength: panelLength.mul(Real.of(joined.pieces)) };
}
