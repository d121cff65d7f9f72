/** Questions about what a pattern says on cutting, as plain predicates. All lengths in inches. */
import type { Rational } from '../../quantity/rational.ts';
import { perStrip } from './plain.ts';

/** How many pieces a number of strips gives. */
export function subcuts(strips: number, usableWidth: Rational, span: Rational): number {
  return strips * perStrip(usableWidth, span);
}

/** Whether so many strips give so many pieces, each taking `span` of a strip's length. */
export function stripsGive(strips: number, usableWidth: Rational, span: Rational, pieces: number): boolean {
  return subcuts(strips, usableWidth, span) >= pieces;
}

/**
 * The usable width that a pattern counts on: the least at which so many strips give so many pieces. More than the
 * stated width means that the pattern silently needs wider fabric.
 *
 * @throws RangeError for no strips.
 */
export function impliedWidth(strips: number, span: Rational, pieces: number): Rational {
  if (!(strips > 0)) throw new RangeError('no strips');
  return span.mul(BigInt(Math.ceil(pieces / strips)), 1n);
}

/** Whether a piece that must run along the selvage is longer than the fabric that the pattern asks for. */
export function longerThanFabric(lengthwise: Rational, statedLength: Rational): boolean {
  return lengthwise.compare(statedLength) > 0;
}
