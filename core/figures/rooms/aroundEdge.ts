import { bindingNeed } from '../../trade/binding.ts';
import type { Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { sentence } from '../sentence.ts';

/** What goes once around an edge and is joined to itself, binding or piping: the edge and the joining allowance. */
export function aroundEdge(at: Derivation, edgeId: string): Derived | undefined {
  const edge = at.figure(edgeId);
  if (!edge) return undefined;
  const { show } = at;
  const { need, allowance } = bindingNeed(edge.need, at.house['joining allowance']);
  const because = `${show.length(edge.need)} around plus ${show.length(allowance)} to join is ${show.length(need)}`;
  return { need, steps: [...edge.steps, sentence(because)], because };
}
