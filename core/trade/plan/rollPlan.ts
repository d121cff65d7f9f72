/** Cutting fabric by the yard: the plain count and the shortest plan. All lengths in inches. */
import { type Rational, ZERO } from '../../quantity/rational.ts';
import type { CutPiece, Fabric } from './fabric.ts';
import { areaBound, type PlainCut, plainCut } from './plain.ts';
import { commonScale, kindsOf, type Misfit, misfit, stripProblem } from './problem.ts';
import { shortestStrips } from './search.ts';
import { gathered, namedStrips, PieceStore, type PlannedStrip } from './strips.ts';
import { yardageIsProved } from './yardage.ts';

export interface RollPlan {
  readonly kind: 'roll';
  readonly usableWidth: Rational;
  /** Pieces that cannot be cut from this fabric; the rest of the plan goes without them. */
  readonly misfits: readonly { readonly piece: CutPiece; readonly why: Misfit }[];
  readonly plain: { readonly cuts: readonly PlainCut[]; readonly length: Rational };
  readonly best: { readonly strips: readonly PlannedStrip[]; readonly length: Rational };
  /** No plan of strips across the fabric and pieces from strips is shorter. */
  readonly bound: Rational;
  /** best − bound: 0 when the best plan is proved to be the shortest. */
  readonly gap: Rational;
  /** No way of cutting at all is shorter: by area, and by the longest piece that must run lengthwise. */
  readonly anyWayBound: Rational;
}

/**
 * Plans a roll. Lengths include the squaring loss when anything is cut.
 *
 * @param work limit of the search in elementary steps; left out, enough for the lists of most patterns.
 * @throws RangeError for a roll of sheets.
 */
export function rollPlan(fabric: Fabric, pieces: readonly CutPiece[], work?: number): RollPlan {
  const { stock } = fabric;
  if (stock.kind !== 'roll') throw new RangeError('not fabric by the yard');
  const { usableWidth } = stock;
  const wanted = pieces.filter(({ count }) => count > 0);
  const misfits = wanted.flatMap((piece) => {
    const why = misfit(piece, fabric);
    return why ? [{ piece, why }] : [];
  });
  const fitting = wanted.filter((piece) => !misfit(piece, fabric));
  const squaring = fitting.length > 0 ? fabric.squaring : ZERO;

  const cuts = fitting.flatMap((piece) => plainCut(piece, usableWidth, fabric) ?? []);
  const plainLength = cuts.reduce((sum, { length }) => sum.add(length), squaring);

  const scale = commonScale([usableWidth, ...fitting.flatMap(({ width, length }) => [width, length])]);
  const problem = stripProblem(kindsOf(fitting, fabric, scale), 'across', scale.toUnits(usableWidth));
  const inches = (units: number) => squaring.add(scale.toLength(units));
  const { sellBy } = fabric;
  const suffices =
    sellBy && ((height: number, least: number) => yardageIsProved(inches(height), inches(least), sellBy));
  const plan = shortestStrips(problem, { work, suffices });
  const length = inches(plan.height);
  const bound = inches(plan.bound);
  const longest = cuts.reduce((most, { stripWidth }) => {
    return stripWidth.compare(most) > 0 && stripWidth.compare(usableWidth) > 0 ? stripWidth : most;
  }, ZERO);
  const area = areaBound(fitting, usableWidth);
  return {
    kind: 'roll',
    usableWidth,
    misfits,
    plain: { cuts, length: plainLength },
    best: {
      strips: gathered(namedStrips(plan.strips, problem, scale, new PieceStore(problem))),
      length,
    },
    bound,
    gap: length.sub(bound),
    anyWayBound: squaring.add(area.compare(longest) >= 0 ? area : longest),
  };
}
