/** Batting, and the size of any layer that lies under the top and stands out around it. */
import type { Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';

/** Inches, across and down. */
export interface LayerSize {
  readonly width: Real;
  readonly length: Real;
}

/**
 * The top and an overhang on every side: (W + 2o) × (L + 2o), in inches.
 *
 * Batting is one piece of this size. An overhang of 2 to 5 in on each side is common practice.
 */
export function layerSize(top: LayerSize, overhang: Rational): LayerSize {
  const both = Real.of(overhang.mul(2n));
  return { width: top.width.add(both), length: top.length.add(both) };
}
