/**
 * Closed outlines: how long each is, how large, and whether it bends.
 *
 * All lengths are inches. An edge is plain data; ask `whyImpossible` before measuring one that came from outside.
 */
import { Real } from '../quantity/real.ts';
import { arcLength } from './arc.ts';
import type { Edge } from './edge.ts';
import { ellipsePerimeter } from './ellipse.ts';
import { regularPolygonBox } from './polygon.ts';
import { scallopChord } from './scallop.ts';

export type { Edge } from './edge.ts';
export { whyImpossible } from './impossibleEdge.ts';

export interface Box {
  readonly width: Real;
  readonly length: Real;
}

/**
 * The length around the edge, in inches: exact for straight sides, enclosed where π or an ellipse comes in.
 *
 * - rectangle 2(a + b); circle πd; regular polygon n·s; oval: see `ellipsePerimeter`.
 * - rounded rectangle: each corner replaces two straight pieces of r by a quarter of 2πr, so 2(a + b) − 8r + 2πr.
 * - scalloped rectangle: see `scallopChord`; number of scallops times the arc over that chord.
 */
export function perimeter(edge: Edge): Real {
  switch (edge.shape) {
    case 'rectangle':
      return Real.of(edge.width.add(edge.length).mul(2n));
    case 'circle':
      return Real.PI.mul(Real.of(edge.diameter));
    case 'oval':
      return ellipsePerimeter(edge.width, edge.length);
    case 'rounded rectangle': {
      const straight = edge.width.add(edge.length).mul(2n).sub(edge.radius.mul(8n));
      return Real.of(straight).add(Real.PI.mul(Real.of(edge.radius.mul(2n))));
    }
    case 'regular polygon':
      return Real.of(edge.side.mul(BigInt(edge.sides)));
    case 'scalloped rectangle':
      return arcLength(scallopChord(edge), edge.depth).mul(Real.of(edge.scallops));
    case 'measured':
      return Real.of(edge.around);
  }
}

/** The least upright rectangle around the edge; a polygon lies on one side. `undefined` for a taped edge. */
export function boundingBox(edge: Edge): Box | undefined {
  switch (edge.shape) {
    case 'rectangle':
    case 'oval':
    case 'rounded rectangle':
    case 'scalloped rectangle':
      return { width: Real.of(edge.width), length: Real.of(edge.length) };
    case 'circle':
      return { width: Real.of(edge.diameter), length: Real.of(edge.diameter) };
    case 'regular polygon':
      return regularPolygonBox(edge.sides, edge.side);
    case 'measured':
      return undefined;
  }
}

/** Whether any part of the edge bends; `undefined` for a taped edge, whose shape is not known. */
export function isCurved(edge: Edge): boolean | undefined {
  switch (edge.shape) {
    case 'rectangle':
    case 'regular polygon':
      return false;
    case 'rounded rectangle':
      return edge.radius.compare(0) > 0;
    case 'circle':
    case 'oval':
    case 'scalloped rectangle':
      return true;
    case 'measured':
      return undefined;
  }
}
