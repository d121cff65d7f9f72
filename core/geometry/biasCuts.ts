/**
 * Parallel cuts at 45° across a rectangle of cloth, each strip cut singly and joined to the next.
 *
 * Lay the rectangle U wide (x) and F long (y) and cut along x − y = t for t = k·d, d = w·√2 (lines w apart are
 * w·√2 apart along either edge), the first through the corner at the origin. Measure along the cut by
 * v = x + y = √2 times the distance. The line t runs from v = |t| (the left or the lower edge) to
 * v = min(2U − t, 2F + t) (the right or the upper edge).
 *
 * A strip lies between t and t + d, its middle at m = t + d/2. Because a line runs through the corner, no strip
 * has that corner in its lower end, which on the middle line stands at v = |m|. Its upper end is cut along the
 * upper edge's slant (v = p + t') or the right edge's (v = p − t'), whichever keeps more:
 *
 *     along the upper edge  p = min(2F, 2U − 2(t + d)),  end at p + m
 *     along the right edge  p = min(2U, 2F + 2t),        end at p − m
 *     length on the middle line = (end − |m|)/√2
 *
 * A strip that reaches from edge to edge at both lines comes out as F·√2 (or U·√2 if the cloth is longer than
 * wide), a corner strip as half the sum of its long and its short side.
 *
 * A strip whose middle line is no longer than its width, or than what its join takes, is scrap.
 *
 * Strips are joined end to end, slanted end on slanted end (a strip with a corner in it joins to another one
 * turned about, so no end is cut twice). A seam q from the raw ends runs at 45° to the strip, so it takes
 * 2q·√2 of the length.
 *
 * Derivation: ours; checked against cuts followed across the cloth.
 */
import { min, type Rational, rational, ZERO } from '../quantity/rational.ts';
import { Real, roundDown, roundUp } from '../quantity/real.ts';
import { ROOT_TWO } from './biasTube.ts';

const TWO = Real.of(2);
const UNIT = rational(1);

export interface BiasStrip {
  /** On the middle line, before joining. */
  readonly length: Real;
  /** Whether it reaches from edge to edge over its whole width. */
  readonly full: boolean;
}

/** Lengths in the unit of the arguments. */
export interface BiasCuts {
  readonly across: Rational;
  readonly along: Rational;
  readonly width: Rational;
  /** d = w·√2 along the edge. */
  readonly spacing: Real;
  /** As they lie on the cloth, from the one corner to the other. */
  readonly strips: readonly BiasStrip[];
  readonly fullStrips: number;
  /** The length of a full strip: the shorter side times √2. */
  readonly fullLength: Real;
  /** 2q·√2. */
  readonly lostPerJoin: Real;
  /** All strips end to end. */
  readonly length: Real;
}

/** What to cut: strips `width` wide, joined with seams `allowance` from the raw edge. */
export interface BiasCutting {
  readonly width: Rational;
  readonly allowance: Rational;
}

/**
 * The strips of a rectangle of cloth.
 *
 * @throws RangeError when a side or the width is not positive, or the allowance is negative.
 */
export function biasCuts(across: Rational, along: Rational, cutting: BiasCutting): BiasCuts {
  check(across, along, cutting);
  const { width, allowance } = cutting;
  const spacing = ROOT_TWO.mul(Real.of(width));
  const lostPerJoin = ROOT_TWO.mul(Real.of(allowance.mul(2n)));
  const fullLength = ROOT_TWO.mul(Real.of(min(across, along)));
  const scrap = longer(Real.of(width), lostPerJoin);
  const strips: BiasStrip[] = [];
  const right = lastLine(across, spacing);
  for (let k = -lastLine(along, spacing); k <= right; k++) {
    const strip = isFull(k, across, along, spacing)
      ? { length: fullLength, full: true }
      : { length: cornerStrip(k, Real.of(across), Real.of(along), spacing), full: false };
    if (strip.length.compare(scrap) > 0) strips.push(strip);
  }
  const sum = strips.reduce((total, strip) => total.add(strip.length), Real.of(ZERO));
  const joins = Real.of(Math.max(0, strips.length - 1));
  return {
    across,
    along,
    width,
    spacing,
    strips,
    fullStrips: strips.filter((strip) => strip.full).length,
    fullLength,
    lostPerJoin,
    length: sum.sub(joins.mul(lostPerJoin)),
  };
}

/**
 * The least length of cloth, in whole steps, whose strips joined are at least `need` long.
 *
 * Longer cloth shortens no strip and takes none away, so the joined length never falls and halving finds the
 * least. The search starts from the area, which no cutting can beat: F ≥ N·w/U.
 *
 * @throws RangeError as `biasCuts`, when the step is not positive, or when the cloth is too narrow for any strip.
 */
export function leastBiasCloth(need: Real, across: Rational, cutting: BiasCutting, step: Rational): BiasCuts {
  if (step.compare(0) <= 0) throw new RangeError('the step must be longer than nothing');
  check(across, step, cutting);
  const given = (steps: bigint) => biasCuts(across, step.mul(steps, 1n), cutting);
  const enough = (steps: bigint) => given(steps).length.compare(need) >= 0;
  if (need.sign() <= 0) return given(1n);
  const longest = ROOT_TWO.mul(Real.of(across));
  const lostPerJoin = ROOT_TWO.mul(Real.of(cutting.allowance.mul(2n)));
  if (longest.compare(longer(Real.of(cutting.width), lostPerJoin)) <= 0) {
    throw new RangeError('the cloth is too narrow for these strips');
  }
  let low = roundUp(need.mul(Real.of(cutting.width)).div(Real.of(across.mul(step))), UNIT).n - 1n;
  let high = low + 1n;
  for (let stride = 1n; !enough(high); stride *= 2n) [low, high] = [high, high + stride];
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return given(high);
}

/** Whether the strip between lines k and k + 1 reaches from edge to edge over its whole width. */
function isFull(k: number, across: Rational, along: Rational, spacing: Real): boolean {
  const corner = Real.of(across.sub(along));
  return k >= 0
    ? spacing.mul(Real.of(k + 1)).compare(corner) <= 0
    : spacing.mul(Real.of(k)).compare(corner) >= 0;
}

/** The length on the middle line of the strip between lines k and k + 1; negative outside the cloth. */
function cornerStrip(k: number, across: Real, along: Real, spacing: Real): Real {
  const near = spacing.mul(Real.of(k));
  const far = spacing.mul(Real.of(k + 1));
  const middle = near.add(far).div(TWO);
  const atTop = shorter(TWO.mul(along), TWO.mul(across.sub(far))).add(middle);
  const atRight = shorter(TWO.mul(across), TWO.mul(along.add(near))).sub(middle);
  return longer(atTop, atRight)
    .sub(k >= 0 ? middle : middle.neg())
    .div(ROOT_TWO);
}

/** The number of the last line that still crosses a side of this length. */
function lastLine(side: Rational, spacing: Real): number {
  return Number(roundDown(Real.of(side).div(spacing), UNIT).n) + 1;
}

function check(across: Rational, along: Rational, { width, allowance }: BiasCutting): void {
  if (across.compare(0) <= 0 || along.compare(0) <= 0) {
    throw new RangeError('the cloth must be longer and wider than nothing');
  }
  if (width.compare(0) <= 0) throw new RangeError('a strip must be wider than nothing');
  if (allowance.compare(0) < 0) throw new RangeError('a seam allowance cannot be less than nothing');
}

function longer(a: Real, b: Real): Real {
  return a.compare(b) >= 0 ? a : b;
}

function shorter(a: Real, b: Real): Real {
  return a.compare(b) <= 0 ? a : b;
}
