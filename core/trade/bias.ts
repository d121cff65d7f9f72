/** Bias binding: from one square, or from strips cut singly. */
import { type BiasCuts, leastBiasCloth } from '../geometry/biasCuts.ts';
import { type BiasTube, biasTube, leastBiasSquare, ROOT_TWO } from '../geometry/biasTube.ts';
import type { Rational } from '../quantity/rational.ts';
import { Real, roundUp } from '../quantity/real.ts';
import { type JoinedPieces, joinPieces } from './joining.ts';

/** What is wanted, in inches. */
export interface BiasWish {
  readonly need: Real;
  /** Cut width of the strip. */
  readonly strip: Rational;
  readonly seam: Rational;
  /** Squares and lengths are rounded up to a multiple of this. */
  readonly step: Rational;
}

/** All lengths in inches. */
export interface BiasSquare extends BiasWish {
  /** The least square whose tube is long enough, and what it gives: side, passes, length per pass, length. */
  readonly byYield: BiasTube;
  /** √(need · strip), before rounding. */
  readonly areaRoot: Real;
  /** The square of the area rule, and what its tube really gives. */
  readonly byArea: BiasTube;
  /** need − what the area rule's square gives; nothing or negative when it is enough after all. */
  readonly areaShortfall: Real;
}

/**
 * One continuous bias strip from one square.
 *
 * By yield: see `biasTube` for what a square really gives, `leastBiasSquare` for the least one.
 * By the area rule (common practice): s = √(N·w), rounded up. It spreads the whole area of the square over the
 * strip, as if nothing went into the two seams or beside the last line, so it is never too large.
 *
 * @throws RangeError when strip or step is not positive, or the seam is negative.
 */
export function biasSquare(wish: BiasWish): BiasSquare {
  const { need, strip, seam, step } = wish;
  const byYield = leastBiasSquare(need, strip, seam, step);
  const areaRoot = need.mul(Real.of(strip)).sqrt();
  const byArea = biasTube(roundUp(areaRoot, step), strip, seam);
  return { ...wish, byYield, areaRoot, byArea, areaShortfall: need.sub(byArea.length) };
}

/** Whether a stated square is enough, in inches. */
export interface SquareVerdict {
  readonly gives: BiasTube;
  /** s²/w: what the area rule promises. */
  readonly areaPromise: Rational;
  readonly enough: boolean;
  /** Enough by the area rule, but not in truth. */
  readonly enoughByAreaOnly: boolean;
}

/** Judges a square somebody else chose against a need, all in inches. */
export function judgeSquare(side: Rational, wish: Omit<BiasWish, 'step'>): SquareVerdict {
  const gives = biasTube(side, wish.strip, wish.seam);
  const areaPromise = areaRule(side, wish.strip);
  const enough = gives.length.compare(wish.need) >= 0;
  const promised = Real.of(areaPromise).compare(wish.need) >= 0;
  return { gives, areaPromise, enough, enoughByAreaOnly: promised && !enough };
}

/** The area rule the other way round (common practice): a square of side s is said to give s²/w inches. */
export function areaRule(side: Rational, strip: Rational): Rational {
  return side.mul(side).div(strip);
}

/** All lengths in inches. */
export interface BiasStrips extends BiasWish {
  readonly usableWidth: Rational;
  /** The least length of fabric, a multiple of the step. */
  readonly fabricLength: Rational;
  /** The strips it gives, whole ones and those in the corners, and their joined length. */
  readonly cuts: BiasCuts;
}

/**
 * Bias strips cut singly at 45° from the full width of the fabric: the least length of fabric whose strips,
 * joined on the straight grain, reach the need. See `biasCuts` for the strips and `leastBiasCloth` for the search.
 *
 * The strips in the two corners count as long as they are longer than wide, so this is the least that can do; a
 * maker who leaves the corners needs more.
 *
 * @throws RangeError when strip, step or width is not positive, the seam is negative, or the fabric is too narrow.
 */
export function biasStrips(wish: BiasWish, usableWidth: Rational): BiasStrips {
  const cutting = { width: wish.strip, allowance: wish.seam };
  const cuts = leastBiasCloth(wish.need, usableWidth, cutting, wish.step);
  return { ...wish, usableWidth, fabricLength: cuts.along, cuts };
}

/** Lengths along the selvage, in inches: `joined` and the others times √2 are lengths of bias. */
export type FewestBiasStrips = JoinedPieces;

/**
 * The fewest bias strips that reach a length, however much fabric they are cut from.
 *
 * No strip at 45° is longer than U·√2, from selvage to selvage, and joined on the straight grain each join takes
 * 2q·√2 of it. So n·U·√2 − (n − 1)·2q·√2 ≥ N, which divided by √2 is `joinPieces` for N/√2.
 *
 * @throws RangeError when two seams take the whole width.
 */
export function fewestBiasStrips(need: Real, usableWidth: Rational, seam: Rational): FewestBiasStrips {
  return joinPieces(need.div(ROOT_TWO), usableWidth, seam.mul(2n));
}
