/** Units that are made several at a time: how many a set of pieces gives, how many sets, and what is left over. */
import { Real } from '../../quantity/real.ts';
import type { CutRequirement } from '../../trade/units/requirement.ts';
import type { Definition, Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { type PartPlace, type Requirement, requirementOf } from './parts.ts';

/**
 * @param what the units in a title: `flying geese of Ripple`
 * @param set what the pieces of one sewing are called: `set of pieces`, or `strip set`
 */
export function setFigures(id: string, place: PartPlace, what: string, set: string): Definition[] {
  const derive = (of: (found: Requirement) => { need: number; because: string }) => (at: Derivation) => {
    const found = requirementOf(at, place);
    if (!found?.method.wholeSets || (found.kind.set === undefined && found.unitsPerSet === 1))
      return undefined;
    const { need, because } = of(found);
    return { need: Real.of(need), steps: [sentence(because)], because };
  };
  const shown = (units: number) => counted(units, 'unit');
  return [
    {
      id: `${id}.per-set`,
      title: `The number of ${what} from one ${set}`,
      kind: 'count',
      rule: 'exact',
      derive: derive(({ unitsPerSet }) => ({
        need: unitsPerSet,
        because: `one ${set} gives ${shown(unitsPerSet)}`,
      })),
    },
    {
      id: `${id}.sets`,
      title: `The number of ${set.replace(/^set\b|set$/, 'sets')} for the ${what}`,
      kind: 'count',
      rule: 'at least',
      derive: derive(({ units, unitsPerSet, sets }) => ({
        need: sets,
        because: `${shown(units)} at ${unitsPerSet} from one ${set} ${units === 1 ? 'takes' : 'take'} ${counted(sets, 'set')}`,
      })),
    },
    {
      id: `${id}.spare`,
      title: `The number of ${what} left over`,
      kind: 'count',
      rule: 'at least',
      derive: derive(({ units, unitsPerSet, sets, made }) => ({
        need: made - units,
        because: `${sets} × ${unitsPerSet} = ${shown(made)}, of which ${units} ${units === 1 ? 'is' : 'are'} needed`,
      })),
    },
  ];
}

/** What one piece gives when it is cut on, and how many of it go into one set. */
export function cutYields(
  base: string,
  place: PartPlace,
  role: string,
  what: string,
  cutOf: (at: Derivation) => CutRequirement | undefined,
): Definition[] {
  const count = (id: string, title: string, derive: (at: Derivation) => Derived | undefined): Definition => ({
    id: `${base}.${id}`,
    title,
    kind: 'count',
    rule: 'exact',
    derive,
  });
  return [
    count('per-set', `The number of ${role}s in one set for the ${what}`, (at) => {
      const cut = cutOf(at);
      if (!cut || !requirementOf(at, place)?.method.wholeSets || cut.fullWidth) return undefined;
      const because = `one set has ${counted(cut.perSet, role)}`;
      return { need: Real.of(cut.perSet), steps: [sentence(because)], because };
    }),
    count('triangles', `The number of triangles from one ${role} for the ${what}`, (at) => {
      const cut = cutOf(at);
      if (!cut || (cut.next !== 'once diagonally' && cut.next !== 'twice diagonally')) return undefined;
      const because = `a ${role} cut ${cut.next} gives ${counted(cut.patches, 'triangle')}`;
      return { need: Real.of(cut.patches), steps: [sentence(because)], because };
    }),
  ];
}
