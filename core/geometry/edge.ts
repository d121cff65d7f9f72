/** The outlines that can be measured, as plain data. All lengths are inches. */
import type { Rational } from '../quantity/rational.ts';

export type Edge =
  | { readonly shape: 'rectangle'; readonly width: Rational; readonly length: Rational }
  | { readonly shape: 'circle'; readonly diameter: Rational }
  /** An ellipse, by its two full axes. */
  | { readonly shape: 'oval'; readonly width: Rational; readonly length: Rational }
  /** A rectangle whose four corners are quarter circles of the radius given. */
  | {
      readonly shape: 'rounded rectangle';
      readonly width: Rational;
      readonly length: Rational;
      readonly radius: Rational;
    }
  | { readonly shape: 'regular polygon'; readonly sides: number; readonly side: Rational }
  /** Width and length over the tops of the scallops; `depth` from the top to the inner points. */
  | {
      readonly shape: 'scalloped rectangle';
      readonly width: Rational;
      readonly length: Rational;
      readonly scallops: number;
      readonly depth: Rational;
    }
  /** Any other outline, measured around with a tape. */
  | { readonly shape: 'measured'; readonly around: Rational };

export type Scalloped = Extract<Edge, { shape: 'scalloped rectangle' }>;
