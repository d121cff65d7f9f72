import type { CutPiece, Fabric } from './fabric.ts';
import { type RollPlan, rollPlan } from './rollPlan.ts';
import { type SheetPlan, sheetPlan } from './sheetPlan.ts';

export type CuttingPlan = RollPlan | SheetPlan;

/**
 * How to cut a list of pieces from a fabric: the plain count, the best plan that was found, and how much shorter
 * any other can be.
 *
 * @param work limit of the search in elementary steps, so that equal lists give equal plans on every computer.
 */
export function cuttingPlan(fabric: Fabric, pieces: readonly CutPiece[], work?: number): CuttingPlan {
  return fabric.stock.kind === 'roll' ? rollPlan(fabric, pieces, work) : sheetPlan(fabric, pieces, work);
}
