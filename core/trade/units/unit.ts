/**
 * What every kind of pieced unit tells about itself: its finished size, and by each method the pieces to cut.
 *
 * All lengths are inches. Sizes are exact (`Real`): nothing is rounded here; `requirement.ts` rounds once, up.
 */
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';

export interface Size {
  readonly width: Real;
  readonly length: Real;
}

/** What the author says about a unit. Which of the optional measures a kind needs stands in its `needs`. */
export interface UnitSpec extends Size {
  /** Finished size of a corner, measured along the edge of the unit (snowball corners). */
  readonly corner?: Real;
  /** How many corners are sewn, 1 to 4; 4 when left out. */
  readonly corners?: number;
  /** Finished widths of the strips of a strip set, in order. */
  readonly strips?: readonly Real[];
  /** Finished radius of a curve. */
  readonly radius?: Real;
}

export type Need = 'corner' | 'strips' | 'radius';

export interface CuttingRules {
  readonly seam: Rational;
  /** Added for trimming down afterwards; 0 cuts to the exact size. */
  readonly oversize: Rational;
  readonly usableWidth: Rational;
}

/** What happens to a piece after it is cut out. */
export type NextCut =
  | 'none'
  | 'once diagonally'
  | 'twice diagonally'
  | 'into segments'
  | 'into triangles'
  | 'by template';

export interface Cut extends Size {
  /** What the piece is, in the words of a cutting list: "large square". */
  readonly role: string;
  /** Position in the unit's list of fabrics, from 0. */
  readonly from: number;
  /** Pieces of this cut in one set. */
  readonly perSet: number;
  readonly next: NextCut;
  /** Patches that one piece gives after its next cut. */
  readonly patches: number;
  /** The piece reaches from selvage to selvage: its length is the usable width, never rounded. */
  readonly fullWidth?: true;
}

export interface Method {
  readonly name: string;
  /** Units that come from one set of pieces. */
  unitsPerSet(spec: UnitSpec, rules: CuttingRules): number;
  /** Whether only whole sets can be sewn; else each patch is counted by itself. */
  readonly wholeSets: boolean;
  /** Whether quilters cut a little more and trim the sewn unit down. */
  readonly trimmable: boolean;
  cuts(spec: UnitSpec, rules: CuttingRules): readonly Cut[];
}

export interface UnitKind {
  /** The name in the trade's words, plural. */
  readonly name: string;
  readonly otherNames: readonly string[];
  /** What one of them is called in a sentence. */
  readonly one: string;
  /** What several are called where it is not `name`: of strip sets, the segments are counted. */
  readonly several?: string;
  /** What the pieces that are sewn together are called, where they are no mere set of pieces. */
  readonly set?: string;
  /** How many fabrics a unit takes; one fabric may always stand for all of them. */
  readonly fabrics: (spec: UnitSpec) => number;
  readonly needs: readonly Need[];
  /** What a single finished length means: the side of a square, a height … */
  readonly oneLength: string;
  /** The first is the usual one. */
  readonly methods: readonly [Method, ...Method[]];
  /** Why no such unit can be sewn, in one sentence, or nothing. Call it before anything else. */
  problem(spec: UnitSpec, rules: CuttingRules): string | undefined;
  /** The smallest rectangle round the finished unit. */
  finished(spec: UnitSpec): Size;
  /** The same before the unit is sewn into a block: with its own seam allowances. */
  unfinished(spec: UnitSpec, seam: Rational): Size;
  /** The finished area in square inches; what the unit fills of a block. 0 for what lies on top of a block. */
  area(spec: UnitSpec): Real;
}

/** A cut that stays as it is, once per set. */
export function piece(role: string, from: number, size: Size, more: Partial<Cut> = {}): Cut {
  return { role, from, width: size.width, length: size.length, perSet: 1, next: 'none', patches: 1, ...more };
}

export function square(side: Real): Size {
  return { width: side, length: side };
}

/** A rectangle that grows by `both` in either direction. */
export function grown(size: Size, both: Real): Size {
  return { width: size.width.add(both), length: size.length.add(both) };
}

export function isSquare(size: Size): boolean {
  return size.width.compare(size.length) === 0;
}

/** What kinds share whose finished units are rectangles that fill their place: f + 2q, and the area of f. */
export const rectangular = {
  needs: [] as readonly Need[],
  finished: ({ width, length }: UnitSpec): Size => ({ width, length }),
  unfinished: (spec: UnitSpec, seam: Rational): Size => grown(spec, Real.of(seam.mul(2n))),
  area: ({ width, length }: UnitSpec): Real => width.mul(length),
};

/** The complaint of kinds that are square. */
export function mustBeSquare(name: string): (spec: UnitSpec) => string | undefined {
  return (spec) => (isSquare(spec) ? undefined : `${name} are square: both finished sides must be equal.`);
}
