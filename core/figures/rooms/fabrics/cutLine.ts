/** One line of a fabric's cutting list, and how it is cut. Lengths in inches. */
import type { BlockPath } from '../../../block/place.ts';
import { type Rational, ZERO } from '../../../quantity/rational.ts';
import { type Real, roundDown, roundUp } from '../../../quantity/real.ts';
import { type Ways, waysOf } from '../../../trade/plan/anyWay.ts';
import type { CutPiece, Fabric } from '../../../trade/plan/fabric.ts';
import { type Misfit, misfit } from '../../../trade/plan/problem.ts';
import type { Derivation } from '../../derivation.ts';

export interface CutLine {
  /** What it is cut for, to follow “for”: `168 squares of Gull`, `the binding`. */
  readonly what: string;
  /** The entry that says its size. */
  readonly path: BlockPath;
  /** As the cutting plan takes it. */
  readonly pieces: readonly CutPiece[];
  /** What it takes however one cuts it. */
  readonly ways: readonly Ways[];
  /** The length it takes even if nothing else is cut from the fabric, where that is more than its ways tell. */
  readonly alone?: Rational;
  /** How it is cut plainly, where that is not each kind of piece from strips of its own. */
  readonly strips?: PlainStrips;
}

/** Strips, or what else is cut off the fabric, as a pattern counts them. */
export interface PlainStrips {
  readonly kind: 'strips' | 'strips along the length' | 'panels' | 'square' | 'bias cloth';
  readonly count: number;
  /** Cut width of a strip, length of a panel, side of a square, length of the cloth. */
  readonly size: Rational;
  /** The length of fabric that all of them take. */
  readonly length: Rational;
  /** What is left of the strips together, measured along them. */
  readonly left?: Rational;
}

/** Pieces of one kind. */
export function pieceLine(
  what: string,
  path: BlockPath,
  piece: Omit<CutPiece, 'id'>,
  fabric: Fabric,
): CutLine {
  const named = { id: what, ...piece };
  return { what, path, pieces: [named], ways: [waysOf(named, fabric)] };
}

export interface Joining {
  readonly what: string;
  readonly path: BlockPath;
  readonly strip: Rational;
  /** As many strips as reach `need`, each `each` long, when a join takes `lost`. */
  readonly count: number;
  readonly need: Real;
  readonly each: Rational;
  readonly lost: Rational;
  /** Whether they must be whole and across the fabric. */
  readonly alone?: boolean;
}

/**
 * Strips across the fabric that are joined end to end. Of the last one only a part is needed, and a clever cutter
 * may cut all of them along the selvage, with fewer joins.
 */
export function joinedLine(at: Derivation, wish: Joining): CutLine {
  const { what, path, strip, count, need, each, lost } = wish;
  const step = at.house['cut to'];
  const others = each.sub(lost).mul(BigInt(count - 1));
  const within = (length: Rational) => {
    const rest = length.sub(others);
    return rest.compare(each) > 0 ? each : rest.compare(ZERO) < 0 ? ZERO : rest;
  };
  const last = within(roundUp(need, step));
  const wholes = { id: what, width: strip, length: each, lengthwise: false };
  const pieces = [
    { ...wholes, count: count - 1 },
    { ...wholes, id: `the last strip for ${what}`, length: last, count: 1 },
  ].filter((piece) => piece.count > 0 && piece.length.n > 0n);
  const across = [
    { across: each, along: strip, count: count - 1 },
    { across: within(roundDown(need, step)), along: strip, count: 1 },
  ];
  const along = [{ across: strip, along: roundDown(need, step), count: 1 }];
  return {
    what,
    path,
    pieces,
    ways: [[across.filter((lying) => lying.count > 0 && lying.across.n > 0n), along]],
    ...(wish.alone ? { alone: strip.mul(BigInt(count)) } : {}),
    strips: acrossStrips(count, strip, each.sub(last)),
  };
}

export function acrossStrips(count: number, size: Rational, left: Rational): PlainStrips {
  return { kind: 'strips', count, size, length: size.mul(BigInt(count)), left };
}

/** A piece of a line that cannot be cut from the fabric, and why. */
export function misfitOf(line: CutLine, fabric: Fabric): { piece: CutPiece; why: Misfit } | undefined {
  for (const piece of line.pieces) {
    const why = misfit(piece, fabric);
    if (why) return { piece, why };
  }
  return undefined;
}

/** A length that is cut: as it is, or by the ruler where no ruler measures it. */
export function cutLength(at: Derivation, length: Real): Rational {
  return length.exact ?? roundUp(length, at.house['cut to']);
}
