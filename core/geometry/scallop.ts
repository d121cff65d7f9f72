/** Rectangles whose sides are rows of arcs. */
import type { Rational } from '../quantity/rational.ts';
import type { Scalloped } from './edge.ts';

/**
 * The chord under one scallop, in inches.
 *
 * The inner points, where two scallops meet, lie on the rectangle that is one depth inside the tops on every
 * side; its perimeter 2(a − 2h) + 2(b − 2h) is shared equally among the scallops (common practice: the outline is
 * drawn as chords along that rectangle). A scallop that turns a corner is counted like any other, with its chord
 * measured along the rectangle around the corner.
 */
export function scallopChord(edge: Scalloped): Rational {
  const inner = edge.width.add(edge.length).sub(edge.depth.mul(4n)).mul(2n);
  return inner.div(BigInt(edge.scallops));
}
