/** Strips as a quilter cuts them: from placements in whole units back to pieces with names, in inches. */
import type { Rational } from '../../quantity/rational.ts';
import type { CutPiece, Run } from './fabric.ts';
import type { Strip } from './greedy.ts';
import type { Scale, StripProblem } from './problem.ts';

export interface StripCut {
  readonly piece: CutPiece;
  readonly run: Run;
  readonly count: number;
  /** What one piece takes of the length of the strip, and how wide it is in it; less than the strip: trim. */
  readonly span: Rational;
  readonly width: Rational;
}

export interface PlannedStrip {
  /** Strips that are cut alike. */
  readonly count: number;
  readonly width: Rational;
  /** The widest pieces first. */
  readonly cuts: readonly StripCut[];
  /** What is left at the end of the strip. */
  readonly left: Rational;
}

/** Hands out the pieces of a kind, in the order of the list, to the places that a plan has for them. */
export class PieceStore {
  readonly #left: { piece: CutPiece; count: number }[][];

  constructor({ kinds }: Pick<StripProblem, 'kinds'>) {
    this.#left = kinds.map(({ pieces }) => pieces.map((piece) => ({ piece, count: piece.count })));
  }

  take(kind: number, wanted: number): { piece: CutPiece; count: number }[] {
    const taken: { piece: CutPiece; count: number }[] = [];
    let missing = wanted;
    for (const entry of this.#left[kind] ?? []) {
      const count = Math.min(entry.count, missing);
      entry.count -= count;
      missing -= count;
      if (count > 0) taken.push({ piece: entry.piece, count });
    }
    return taken;
  }
}

/** Names the pieces of each strip. Pieces beyond the demand get no place. */
export function namedStrips(
  strips: readonly Strip[],
  problem: StripProblem,
  scale: Scale,
  store: PieceStore,
): PlannedStrip[] {
  return strips.map((strip) => {
    const cuts = [...strip]
      .sort(([a], [b]) => b - a) // placements are sorted by height
      .flatMap(([index, copies]) => {
        const placement = problem.placements[index];
        if (!placement) return [];
        const [span, width] = [scale.toLength(placement.span), scale.toLength(placement.height)];
        return store
          .take(placement.kind, copies)
          .map(({ piece, count }) => ({ piece, run: placement.run, count, span, width }));
      });
    const used = cuts.reduce(
      (sum, { span, count }) => sum.add(span.mul(BigInt(count), 1n)),
      scale.unit.sub(scale.unit),
    );
    const width = cuts.reduce(
      (widest, cut) => (cut.width.compare(widest) > 0 ? cut.width : widest),
      used.sub(used),
    );
    return { count: 1, width, cuts, left: scale.toLength(problem.capacity).sub(used) };
  });
}

/** Strips that are cut alike taken together, the widest first. */
export function gathered(strips: readonly PlannedStrip[]): PlannedStrip[] {
  const groups = new Map<string, PlannedStrip>();
  for (const strip of strips) {
    const key = `${strip.width.toFraction()} ${stripKey(strip)}`;
    const known = groups.get(key);
    groups.set(key, { ...strip, count: (known?.count ?? 0) + strip.count });
  }
  return [...groups.values()].sort((a, b) => b.width.compare(a.width));
}

export function stripKey({ cuts }: PlannedStrip): string {
  return cuts.map(({ piece, run, count }) => `${count} ${run} ${piece.id}`).join('|');
}
