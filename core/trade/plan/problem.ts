/**
 * A cutting list in whole numbers: all lengths are multiples of one unit (the greatest common measure), pieces
 * of equal size are one kind, and every way in which a kind may lie in a strip is one placement.
 */
import { type Rational, rational } from '../../quantity/rational.ts';
import { allowedRuns, type CutPiece, extent, type Fabric, type Run } from './fabric.ts';

export interface Kind {
  readonly width: number;
  readonly length: number;
  readonly demand: number;
  readonly runs: readonly Run[];
  readonly pieces: readonly CutPiece[];
}

export interface Placement {
  /** Index of the kind. */
  readonly kind: number;
  readonly run: Run;
  /** What the piece takes of the width of its strip, and of its length. */
  readonly height: number;
  readonly span: number;
  /** Most copies for which a strip is long enough, and most that are also wanted. */
  readonly fit: number;
  readonly most: number;
}

export interface StripProblem {
  /** Length of a strip. */
  readonly capacity: number;
  readonly kinds: readonly Kind[];
  /** Sorted by height, then kind. */
  readonly placements: readonly Placement[];
  /** For each kind the indices of its placements. */
  readonly ways: readonly (readonly number[])[];
}

/** Which way strips run: across the fabric (the only way on a roll), or along the selvage. */
export type StripRun = 'across' | 'along';

/** Converts lengths into whole units and back. */
export interface Scale {
  readonly unit: Rational;
  toUnits(length: Rational): number;
  toLength(units: number): Rational;
}

/** The largest unit of which all lengths are multiples. */
export function commonScale(lengths: readonly Rational[]): Scale {
  const positive = lengths.filter(({ n }) => n > 0n);
  const unit = positive.length ? positive.reduce((a, b) => a.gcd(b)) : rational(1);
  return {
    unit,
    toUnits: (length) => Number(length.div(unit).n),
    toLength: (units) => unit.mul(BigInt(units), 1n),
  };
}

/**
 * Pieces of the same size that may lie the same ways, taken together; pieces with count 0 are left out. The kinds
 * are sorted by size, so that the plan does not depend on the order of the list.
 */
export function kindsOf(pieces: readonly CutPiece[], fabric: Fabric, scale: Scale): Kind[] {
  const kinds = new Map<string, Kind>();
  for (const piece of pieces) {
    if (piece.count === 0) continue;
    const runs = allowedRuns(piece, fabric);
    const [width, length] = [scale.toUnits(piece.width), scale.toUnits(piece.length)];
    const key = `${width} ${length} ${runs.join()}`;
    const known = kinds.get(key);
    kinds.set(key, {
      width,
      length,
      runs,
      demand: (known?.demand ?? 0) + piece.count,
      pieces: [...(known?.pieces ?? []), piece],
    });
  }
  return [...kinds.values()].sort(
    (a, b) => a.width - b.width || a.length - b.length || (a.runs.join() < b.runs.join() ? -1 : 1),
  );
}

/** All placements of the kinds in strips of a length; `tallest` is the widest strip that can be cut. */
export function stripProblem(
  kinds: readonly Kind[],
  strips: StripRun,
  capacity: number,
  tallest = Number.POSITIVE_INFINITY,
): StripProblem {
  const placements = kinds.flatMap((kind, index) => {
    const ways = kind.runs.map((run) => {
      // On strips across the fabric a crosswise piece lies along its strip; on strips along the selvage it stands.
      const lies = (run === 'crosswise') === (strips === 'across');
      const [height, span] = lies ? [kind.width, kind.length] : [kind.length, kind.width];
      const fit = Math.floor(capacity / span);
      return { kind: index, run, height, span, fit, most: Math.min(kind.demand, fit) };
    });
    const distinct = kind.width === kind.length ? ways.slice(0, 1) : ways;
    return distinct.filter(({ most, height }) => most > 0 && height <= tallest);
  });
  placements.sort((a, b) => a.height - b.height || a.kind - b.kind);
  const ways = kinds.map((_, kind) => placements.flatMap((p, index) => (p.kind === kind ? [index] : [])));
  return { capacity, kinds, placements, ways };
}

export type Misfit = 'wider than the fabric' | 'longer than the fabric is wide';

/**
 * Why a piece cannot be cut at all, or nothing: it is wider than the fabric whichever way it may lie, or would
 * fit if its length ran along the selvage, which it may not.
 */
export function misfit(piece: CutPiece, fabric: Fabric): Misfit | undefined {
  const { stock } = fabric;
  const fits = (run: Run) => {
    const { across, along } = extent(piece, run);
    if (stock.kind === 'roll') return across.compare(stock.usableWidth) <= 0;
    return across.compare(stock.width) <= 0 && along.compare(stock.length) <= 0;
  };
  if (allowedRuns(piece, fabric).some(fits)) return undefined;
  return fits('lengthwise') ? 'longer than the fabric is wide' : 'wider than the fabric';
}

export function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
