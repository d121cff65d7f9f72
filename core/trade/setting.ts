/** How blocks are set into a quilt top: straight, or on point. All lengths in inches. */
import type { Rational } from '../quantity/rational.ts';
import { Real, roundUp } from '../quantity/real.ts';
import { halfSquareSeams, quarterSquareSeams, ROOT_2 } from './units/seams.ts';
import type { Size } from './units/unit.ts';

export interface Grid {
  /** Blocks across; whole, 1 or more. */
  readonly across: number;
  /** Blocks down; whole, 1 or more. */
  readonly down: number;
}

export interface StraightSetting {
  readonly blocks: number;
  readonly finished: Size;
}

export interface TriangleSquares {
  /** Triangles that the setting needs. */
  readonly triangles: number;
  /** Finished sides of one triangle. */
  readonly shortSide: Real;
  readonly longSide: Real;
  /** Squares to cut, and triangles that one square gives. */
  readonly squares: number;
  readonly perSquare: number;
  /** Triangles left over. */
  readonly spare: number;
  /** The side of the square: exact, and rounded up to the step. */
  readonly exact: Real;
  readonly cut: Rational;
  /**
   * As charts compute it: the finished side rounded up, plus the constant rounded up (1 1/4 or 7/8 in). Never
   * less than `cut`, at most two steps more.
   */
  readonly customary: Rational;
}

export interface OnPointSetting {
  /** All blocks; `main` stand in the rows of the grid, `between` in the rows between them. */
  readonly blocks: number;
  readonly main: number;
  readonly between: number;
  readonly finished: Size;
  /** Triangles along the sides, from squares cut twice diagonally, so that their long side is on the grain. */
  readonly side: TriangleSquares;
  /** Triangles in the four corners, from squares cut once diagonally. */
  readonly corner: TriangleSquares;
}

/** Blocks edge to edge: m·b wide and n·b long. */
export function straightSetting({ across, down }: Grid, block: Size): StraightSetting {
  return {
    blocks: across * down,
    finished: { width: block.width.mul(Real.of(across)), length: block.length.mul(Real.of(down)) },
  };
}

/**
 * Square blocks with finished side b turned by 45°, m across and n down.
 *
 * - A turned block is b√2 wide, so the top finishes m·b√2 × n·b√2.
 * - Between the m × n blocks stand (m − 1)(n − 1) more.
 * - Between two neighbours along each edge lies one side triangle: 2(m − 1) + 2(n − 1). Its legs are sides of
 *   blocks, b, so its long side is b√2: a quarter-square triangle, four from a square of b√2 + (2 + 2√2)q
 *   (1.414 b + 1 1/4 in).
 * - Four corner triangles; the long side is a side of a block, b, so the legs are b/√2: half-square triangles,
 *   two from a square of b/√2 + (2 + √2)q (0.707 b + 7/8 in).
 *
 * @param cutTo the step that cut sizes are rounded up to.
 */
export function onPointSetting(
  { across, down }: Grid,
  block: Real,
  seam: Rational,
  cutTo: Rational,
): OnPointSetting {
  const diagonal = block.mul(ROOT_2);
  const main = across * down;
  const between = (across - 1) * (down - 1);
  const cornerLeg = block.div(ROOT_2);
  return {
    blocks: main + between,
    main,
    between,
    finished: { width: diagonal.mul(Real.of(across)), length: diagonal.mul(Real.of(down)) },
    side: {
      ...squaresFor(2 * (across - 1) + 2 * (down - 1), 4),
      shortSide: block,
      longSide: diagonal,
      ...squareSide(diagonal, quarterSquareSeams(seam), cutTo),
    },
    corner: {
      ...squaresFor(4, 2),
      shortSide: cornerLeg,
      longSide: block,
      ...squareSide(cornerLeg, halfSquareSeams(seam), cutTo),
    },
  };
}

/** The least grid of square blocks that covers a wanted size. */
export function gridFor(wanted: { width: Rational; length: Rational }, block: Rational): Grid {
  const blocks = (length: Rational) => Math.max(1, Number(length.div(block).ceil(0).valueOf()));
  return { across: blocks(wanted.width), down: blocks(wanted.length) };
}

function squareSide(finished: Real, seams: Real, cutTo: Rational) {
  const exact = finished.add(seams);
  const customary = roundUp(finished, cutTo).add(roundUp(seams, cutTo));
  return { exact, cut: roundUp(exact, cutTo), customary };
}

function squaresFor(triangles: number, perSquare: number) {
  const squares = Math.ceil(triangles / perSquare);
  return { triangles, perSquare, squares, spare: squares * perSquare - triangles };
}
