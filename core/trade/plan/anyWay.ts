/** Below which length of fabric, or number of sheets, no way of cutting goes, however clever. Lengths in inches. */
import { type Rational, ZERO } from '../../quantity/rational.ts';
import { allowedRuns, type CutPiece, extent, type Fabric } from './fabric.ts';
import { commonScale } from './problem.ts';

/** Equal pieces in the place where they lie. */
export interface Lying {
  /** Across the fabric. */
  readonly across: Rational;
  /** Along the selvage. */
  readonly along: Rational;
  readonly count: number;
}

/** Something that is cut in one of several ways: each way is a list of pieces. */
export type Ways = readonly (readonly Lying[])[];

/** The ways in which the pieces of one kind may lie. */
export function waysOf(piece: CutPiece, fabric: Pick<Fabric, 'directional'>): Ways {
  return allowedRuns(piece, fabric).map((run) => [{ ...extent(piece, run), count: piece.count }]);
}

/**
 * The least length of a roll that may hold everything: the greatest of which it is proved that nothing shorter does.
 *
 * Pieces lie square with the selvage and do not overlap. Let f give every width a share, and g every length, so that
 * the shares of widths that fit side by side never add up to more than 1, nor those of lengths that fit one behind
 * the other. Then the products f(w)·g(l) of all pieces that fit on a cloth add up to 1 at most: replace each piece by
 * one of the size of its shares; whatever line is drawn across, those that it meets still fit side by side. So a
 * cloth for which they add up to more is too small.
 * - f(w) = w/U is such a share; for both ways it compares areas.
 * - fₖ(w) = (⌈(k + 1)·w/U⌉ − 1)/k is one: for widths with a sum of U at most, every term before the division is less
 *   than (k + 1)·w/U, so their sum is less than k + 1, and whole, therefore at most k. It knows that of pieces a
 *   little wider than U/(k + 1) only k lie side by side.
 *
 * A cloth that is no longer than needed is as long as some pieces one behind the other, so lengths that are no
 * multiple of the common measure need not be tried. Nothing shorter than the longest piece will do in any case.
 *
 * @param atMost a length that is known to do.
 */
export function leastLength(usableWidth: Rational, demand: readonly Ways[], atMost: Rational): Rational {
  const lying = demand.flatMap((ways) => ways.flat());
  if (lying.length === 0) return ZERO;
  const scale = commonScale([usableWidth, atMost, ...lying.flatMap(({ across, along }) => [across, along])]);
  const cloth = new Cloth(demand, scale.toUnits, scale.toUnits(usableWidth));
  let least = Math.min(cloth.longest, scale.toUnits(atMost));
  let enough = scale.toUnits(atMost);
  while (least < enough) {
    const middle = Math.floor((least + enough) / 2);
    if (cloth.load(middle, 1) > 1) least = middle + 1;
    else enough = middle;
  }
  return scale.toLength(least);
}

/** The least number of sheets that may hold everything: as many as the shares of all pieces on one add up to. */
export function leastSheets(width: Rational, length: Rational, demand: readonly Ways[]): number {
  const lying = demand.flatMap((ways) => ways.flat());
  const scale = commonScale([width, length, ...lying.flatMap(({ across, along }) => [across, along])]);
  return Math.ceil(new Cloth(demand, scale.toUnits, scale.toUnits(width)).load(scale.toUnits(length)));
}

/** The largest k of the shares; more parts make no difference to quilts. 0 stands for the share by size. */
const MOST_PARTS = 12;
/** Far less than one piece, far more than floating-point numbers lose in a sum. */
const MARGIN = 1e-9;

/** All pieces with their shares of the width: numbers one behind the other, for they are gone through many times. */
class Cloth {
  /** No piece can lie so that all of them are shorter. */
  readonly longest: number;
  readonly #ways: readonly Way[];

  constructor(demand: readonly Ways[], toUnits: (length: Rational) => number, width: number) {
    this.#ways = demand.flatMap((ways, kind) =>
      ways.map((way) => ({
        kind,
        lying: way.map(({ across, along, count }) => ({
          along: toUnits(along),
          shares: sharesOf(toUnits(across), width).map((share) => share * count),
        })),
      })),
    );
    const shortest = new Map<number, number>();
    for (const { kind, lying } of this.#ways) {
      const length = Math.max(...lying.map(({ along }) => along));
      shortest.set(kind, Math.min(length, shortest.get(kind) ?? Number.POSITIVE_INFINITY));
    }
    this.longest = Math.max(0, ...shortest.values());
  }

  /** How often a cloth of this length is filled at least; any value above `enough` will do. */
  load(length: number, enough = Number.POSITIVE_INFINITY): number {
    const known = new Map<number, readonly number[]>();
    const ways = this.#ways.map(({ kind, lying }) => ({
      kind,
      lying: lying.map(({ along, shares }) => {
        const parts = known.get(along) ?? sharesOf(along, length);
        known.set(along, parts);
        return { shares, parts };
      }),
    }));
    let most = 0;
    for (let across = 0; across <= MOST_PARTS; across++)
      for (let along = 0; along <= MOST_PARTS; along++) {
        let sum = 0;
        let open = -1;
        let least = 0;
        for (const { kind, lying } of ways) {
          let asks = 0;
          for (const { shares, parts } of lying) asks += (shares[across] ?? 0) * (parts[along] ?? 0);
          if (kind !== open) {
            sum += least;
            least = asks;
            open = kind;
          } else if (asks < least) least = asks;
        }
        most = Math.max(most, sum + least);
        if (most - MARGIN > enough) return most - MARGIN;
      }
    return most - MARGIN;
  }
}

/** One way in which a kind of piece may lie; the ways of a kind stand one behind the other. */
interface Way {
  readonly kind: number;
  /** `shares` of the width for each k, of all copies together. */
  readonly lying: readonly { readonly along: number; readonly shares: readonly number[] }[];
}

/**
 * The share of a side by its size, and for each k. Of something longer than the whole, which is joined from parts,
 * only the share by size is sure: in how many parts it is cut is open.
 */
function sharesOf(side: number, whole: number): number[] {
  const shares = [side / whole];
  for (let k = 1; k <= MOST_PARTS; k++)
    shares.push(side > whole ? 0 : (Math.ceil((k + 1) * (side / whole) - MARGIN) - 1) / k);
  return shares;
}
