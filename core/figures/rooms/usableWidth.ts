/** How a fabric is bought, and how wide it is. */
import type { FabricLabel } from '../../block/values/fabricLabel.ts';
import type { Rational } from '../../quantity/rational.ts';
import {
  FAT_EIGHTH,
  FAT_QUARTER,
  precutSquares,
  precutStrips,
  roll,
  type Stock,
} from '../../trade/plan/fabric.ts';
import type { Derivation } from '../derivation.ts';

/**
 * The usable width of the fabric that something is cut from, in inches: its own, or that of the house. Of fat
 * quarters and precut squares it is how far one of them reaches across.
 */
export function usableWidth(at: Derivation, from: FabricLabel | undefined): Rational {
  const stock = stockOf(at, from);
  return stock.kind === 'roll' ? stock.usableWidth : stock.width;
}

/**
 * Whether the print of a fabric has an up and a down. Pieces stand on it as they are written, width across the fabric
 * and length along the selvage.
 */
export function isDirectional(at: Derivation, from: FabricLabel | undefined): boolean {
  return (from && at.entries.fabrics?.[from.label]?.directional) === 'yes';
}

/** What a fabric is cut from: by the yard unless it says otherwise. */
export function stockOf(at: Derivation, from: FabricLabel | undefined): Stock {
  const fabric = from && at.entries.fabrics?.[from.label];
  const form = fabric?.['cut from'];
  if (form?.kind === 'wide') return roll(form.width).stock;
  if (form?.kind === 'squares') return precutSquares(form.side);
  if (form?.kind === 'fat quarters') return FAT_QUARTER;
  if (form?.kind === 'fat eighths') return FAT_EIGHTH;
  const width = fabric?.['usable width']?.inches ?? at.house['usable width'];
  return form?.kind === 'strips' ? precutStrips(form.width, width) : roll(width).stock;
}
