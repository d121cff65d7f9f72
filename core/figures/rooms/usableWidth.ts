import type { FabricLabel } from '../../block/values/fabricLabel.ts';
import type { Rational } from '../../quantity/rational.ts';
import type { Derivation } from '../derivation.ts';

/** The usable width of the fabric that something is cut from, in inches: its own, or that of the house. */
export function usableWidth(at: Derivation, from: FabricLabel | undefined): Rational {
  const fabric = from && at.entries.fabrics?.[from.label];
  const form = fabric?.['cut from'];
  if (form?.kind === 'wide') return form.width;
  return fabric?.['usable width']?.inches ?? at.house['usable width'];
}
