/** How many pieces to cut for a number of units, and how large by the ruler. */
import type { Rational } from '../../quantity/rational.ts';
import { roundUp } from '../../quantity/real.ts';
import type { Cut, CuttingRules, Method, UnitSpec } from './unit.ts';

export interface CutRequirement extends Cut {
  /** Pieces to cut. */
  readonly count: number;
  /** Patches that are left over after all units are sewn. */
  readonly spare: number;
  /** The cut size by the ruler: the exact size rounded up to the step. */
  readonly cutWidth: Rational;
  readonly cutLength: Rational;
}

export interface UnitRequirement {
  readonly units: number;
  /** Sets to sew: units / units per set, rounded up. */
  readonly sets: number;
  readonly unitsPerSet: number;
  /** Units that can be sewn from the pieces cut; at least `units`. */
  readonly made: number;
  readonly cuts: readonly CutRequirement[];
}

/**
 * The pieces for `units` units. Methods that sew whole sets cut whole sets; the others count each patch by
 * itself, so that five geese from cut triangles take two large squares but only five small ones.
 *
 * @param units a whole number, 0 or more.
 * @param cutTo the step that cut sizes are rounded up to, in inches.
 * @throws RangeError when no unit comes from a set (ask the kind for its `problem` first).
 */
export function unitRequirement(
  method: Method,
  spec: UnitSpec,
  rules: CuttingRules,
  units: number,
  cutTo: Rational,
): UnitRequirement {
  const unitsPerSet = method.unitsPerSet(spec, rules);
  if (!(unitsPerSet > 0)) throw new RangeError('one set of pieces gives no unit');
  const sets = Math.ceil(units / unitsPerSet);
  const counted = method.cuts(spec, rules).map((cut) => {
    const count = method.wholeSets ? sets * cut.perSet : Math.ceil((units * cut.perSet) / unitsPerSet);
    return { cut, count, unitsMade: Math.floor((count * unitsPerSet) / cut.perSet) };
  });
  const made = method.wholeSets ? sets * unitsPerSet : Math.min(...counted.map(({ unitsMade }) => unitsMade));
  return {
    units,
    sets,
    unitsPerSet,
    made,
    cuts: counted.map(({ cut, count }) => ({
      ...cut,
      count,
      spare: count * cut.patches - Math.ceil((units * cut.perSet * cut.patches) / unitsPerSet),
      cutWidth: roundUp(cut.width, cutTo),
      cutLength: cut.fullWidth ? rules.usableWidth : roundUp(cut.length, cutTo),
    })),
  };
}
