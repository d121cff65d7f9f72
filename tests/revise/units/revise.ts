import { applyEdits } from '../../../core/findings/finding.ts';
import { reviseUnits, type UnitsRequest } from '../../../core/revise/units/reviseUnits.ts';

/** The text after a request, and the places that are left to its author. */
export function revisedUnits(source: string, request: UnitsRequest) {
  const revision = reviseUnits(source, request);
  if ('refusal' in revision) throw new Error(revision.refusal);
  return {
    text: applyEdits(source, revision.edits),
    open: revision.open.map(({ start, end }) => source.slice(start, end)),
  };
}
