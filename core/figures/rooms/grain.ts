/** The grain of what goes around an edge, binding or piping. */
import { grainSuits } from '../../trade/binding.ts';
import type { Derivation } from '../derivation.ts';

/** As stated; left out, it is what the edge asks for. */
export function grainOf(at: Derivation, stated: 'straight' | 'bias' | undefined): 'straight' | 'bias' {
  if (stated) return stated;
  const edge = at.entries.finished?.edge;
  return !edge || grainSuits('straight', edge) ? 'straight' : 'bias';
}
