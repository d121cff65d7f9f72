/** Strips, panels and borders that are joined end to end or side by side because the fabric is not wide enough. */
import { type Rational, rational } from '../quantity/rational.ts';
import { Real, roundUp } from '../quantity/real.ts';

/** All lengths in inches. */
export interface JoinedPieces {
  readonly need: Real;
  /** What one piece contributes before joining: for strips across the fabric, its usable width. */
  readonly each: Rational;
  readonly lostPerJoin: Rational;
  readonly pieces: number;
  /** n·each − (n − 1)·lost: what the pieces give. */
  readonly joined: Rational;
  /** What one piece fewer would give: always less than the need. Nothing for a single piece. */
  readonly joinedOneFewer: Rational;
  /** joined − need. */
  readonly spare: Real;
}

/**
 * The fewest pieces that reach a length.
 *
 * n pieces have n − 1 joins, so n·e − (n − 1)·j ≥ N, that is n·(e − j) ≥ N − j, and the least whole n is
 * ⌈(N − j)/(e − j)⌉, but one at least.
 *
 * @param need N, in inches.
 * @param each e, in inches.
 * @param lostPerJoin j, in inches: not negative, and less than `each`.
 * @throws RangeError when a join takes as much as a piece gives.
 */
export function joinPieces(need: Real, each: Rational, lostPerJoin: Rational): JoinedPieces {
  const gain = each.sub(lostPerJoin);
  if (gain.compare(0) <= 0) throw new RangeError('a join takes as much as a piece gives');
  const short = need.sub(Real.of(lostPerJoin)).div(Real.of(gain));
  const pieces = Math.max(1, roundUp(short, rational(1)).valueOf());
  const joined = joinedLength(pieces, each, lostPerJoin);
  return {
    need,
    each,
    lostPerJoin,
    pieces,
    joined,
    joinedOneFewer: joinedLength(pieces - 1, each, lostPerJoin),
    spare: Real.of(joined).sub(need),
  };
}

/** n·each − (n − 1)·lost, in inches; nothing for no pieces. */
export function joinedLength(pieces: number, each: Rational, lostPerJoin: Rational): Rational {
  if (pieces === 0) return rational(0);
  return each.mul(BigInt(pieces)).sub(lostPerJoin.mul(BigInt(pieces - 1)));
}

export type Join = 'diagonal' | 'straight';

/**
 * What joining two strips takes from their length, in inches.
 *
 * Diagonal: the ends are laid across each other at right angles, right sides together, and sewn from corner to
 * corner of the square in which they overlap. Opened out, that square is covered once instead of twice, so two
 * strips of length L give 2L − w, whatever the seam is trimmed to.
 * Source: paper trial in Crayon Box Quilt Studio, "What is lost" (2012).
 * Straight: two seam allowances.
 */
export function lostPerJoin(join: Join, strip: Rational, seam: Rational): Rational {
  return join === 'diagonal' ? strip : seam.mul(2n);
}
