/** Strips across the fabric, from which pieces are cut. */
import type { FabricLabel } from '../../block/values/fabricLabel.ts';
import { readNumberAt } from '../../quantity/read.ts';
import { INCHES_PER } from '../../quantity/units.ts';
import { need, type Quilt, slot, type Thing, thing, type Want, want } from './thing.ts';

/**
 * The strips of a piece, as wide as the piece.
 *
 * @param key the piece, whose `.width` is theirs
 * @param own the figure of their number where the piece has one of its own
 */
export function stripsThing(
  quilt: Quilt,
  key: string,
  fabric: FabricLabel | undefined,
  wants: readonly (Want | undefined)[],
  own?: string,
  width = `${key}.width`,
): Thing[] {
  const counts = [own, fabric && stripsOfWidth(quilt, fabric, width)].flatMap((id) =>
    id ? [slot('count', id)] : [],
  );
  return thing(
    quilt,
    key,
    'strips',
    [...wants, need(4, 'form:strip'), want(0.5, 'state:cut', 'state:trimmed')],
    [
      ...counts,
      slot('width', width, want(1, 'axis:width', 'axis:depth')),
      slot('length', 'house.usable width'),
    ],
  );
}

/** The figure of the strips that are cut of a fabric in the width of a figure. */
function stripsOfWidth(
  { ledger, pattern }: Quilt,
  { label }: FabricLabel,
  width: string,
): string | undefined {
  const values = [...(ledger.figure(width)?.values.values() ?? [])].map(({ shown }) => shown);
  const head = `fabric.${label}.strips.`;
  const unit = INCHES_PER[pattern.house.system === 'inch' ? 'in' : 'cm'];
  return ledger.ids.find((id) => {
    if (!id.startsWith(head)) return false;
    const written = readNumberAt(id, head.length);
    return values.some((value) => written?.value.mul(unit).equals(value));
  });
}
