/** Cutting plans, kept for as long as the cutting list stays the same: to find one takes longer than a keystroke. */
import type { Rational } from '../../../quantity/rational.ts';
import { type CuttingPlan, cuttingPlan } from '../../../trade/plan/cuttingPlan.ts';
import type { CutPiece, Fabric } from '../../../trade/plan/fabric.ts';

/** More pieces than in any quilt are not planned: the plan would name each of them. */
export const MOST_PIECES = 5000;

/** Enough for the fabrics and sizes of a few patterns that are open at once. */
const MOST_KEPT = 64;
/** By the text of the list, the one asked for last at the end. */
const kept = new Map<string, CuttingPlan>();

/** `cuttingPlan` of the list, found once. */
export function keptPlan(fabric: Fabric, pieces: readonly CutPiece[]): CuttingPlan {
  const key = listText(fabric, pieces);
  const plan = kept.get(key) ?? cuttingPlan(fabric, pieces);
  kept.delete(key);
  kept.set(key, plan);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  return plan;
}

/** Equal texts for equal lists. */
function listText({ stock, directional, squaring }: Fabric, pieces: readonly CutPiece[]): string {
  const text = (length: Rational) => length.toFraction();
  const sheet =
    stock.kind === 'roll'
      ? ['roll', text(stock.usableWidth)]
      : [stock.name, text(stock.width), text(stock.length)];
  return JSON.stringify([
    sheet,
    directional,
    text(squaring),
    pieces.map(({ id, width, length, count, lengthwise }) => [
      id,
      text(width),
      text(length),
      count,
      lengthwise ?? null,
    ]),
  ]);
}
