/** Sashing of a straight set: strips between the blocks, with or without cornerstones. Lengths in inches. */
import type { Rational } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import type { Grid } from './setting.ts';
import { bothSeams } from './units/seams.ts';
import { grown, type Size, square } from './units/unit.ts';

export interface SashingSpec extends Grid {
  /** The finished block. */
  readonly block: Size;
  /** The finished width of the sashing. */
  readonly sash: Rational;
  /** Whether sashing also runs around the outside. */
  readonly outer: boolean;
  /** Whether squares stand where the sashes cross; else the sashes between rows run from side to side. */
  readonly cornerstones: boolean;
}

export interface SashPiece {
  readonly count: number;
  /** `width` is the width of the sash, `length` the way it runs. */
  readonly finished: Size;
  readonly cut: Size;
}

export interface Sashing {
  readonly blocks: number;
  readonly finished: Size;
  /** A row of blocks with the sashes in it. */
  readonly row: Size;
  /** Sashes that stand between blocks of a row. */
  readonly upright: SashPiece;
  /** Sashes that lie between rows: one per block with cornerstones, one per row without. */
  readonly lying: SashPiece;
  readonly cornerstones: SashPiece;
}

/**
 * A set of m × n blocks has m − 1 sashes in each row and n − 1 between the rows, two more each way when the
 * sashing also runs around the outside. With v and h of them, v·n stand upright, as long as a block; h lie
 * between rows, as m pieces as wide as a block with v·h cornerstones, or as one piece as long as the row.
 * The set finishes m·w + v·s by n·l + h·s.
 *
 * @param seam seam allowance; cut sizes are finished sizes + 2q, exact.
 */
export function sashing(spec: SashingSpec, seam: Rational): Sashing {
  const { across, down, block, outer, cornerstones } = spec;
  const s = Real.of(spec.sash);
  const upright = across + (outer ? 1 : -1);
  const lying = down + (outer ? 1 : -1);
  const piece = (count: number, finished: Size): SashPiece => ({
    count,
    finished,
    cut: grown(finished, bothSeams(seam)),
  });
  const total = (blocks: number, side: Real, sashes: number) =>
    side.mul(Real.of(blocks)).add(s.mul(Real.of(sashes)));
  const row = { width: total(across, block.width, upright), length: block.length };
  return {
    blocks: across * down,
    finished: { width: row.width, length: total(down, block.length, lying) },
    row,
    upright: piece(upright * down, { width: s, length: block.length }),
    lying: cornerstones
      ? piece(lying * across, { width: s, length: block.width })
      : piece(lying, { width: s, length: row.width }),
    cornerstones: piece(cornerstones ? upright * lying : 0, square(s)),
  };
}
