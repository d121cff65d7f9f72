/** From cut to finished: two seam allowances less. */
import { ZERO } from '../quantity/rational.ts';
import type { Text, Told } from './text.ts';

/** Nothing where the piece is all seam allowance. */
export function withoutSeams(told: Told | undefined, { pattern }: Text): Told | undefined {
  if (!told?.unit) return undefined;
  const values = told.values.map((value) => value.sub(pattern.house.seam.mul(2n)));
  return values.every((value) => value.compare(ZERO) > 0)
    ? { ...told, values: values as unknown as Told['values'] }
    : undefined;
}
