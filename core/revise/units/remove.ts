/** Takes away the equivalents in the other system of units. */
import type { Edit } from '../../findings/finding.ts';
import type { Proof } from '../../proof/proof.ts';
import { type UnitPair, unitPairs } from '../../proof/unitPairs.ts';
import { isMetric } from '../../quantity/units.ts';
import type { Revision } from '../revision.ts';
import { rangeOf } from './addition.ts';
import type { System } from './system.ts';

const BEFORE_BRACKET = /[ \t]?\([ \t]*$/;
const BEHIND_BRACKET = /^[ \t]*\)/;
const BEFORE_STROKE = /[ \t]?\/[ \t]*$/;

export function partnersToRemove({ manuscript }: Proof, own: System): Revision {
  const edits: Edit[] = [];
  const open: Revision['open'][number][] = [];
  for (const passage of manuscript.passages) {
    if (passage.kind === 'heading') continue;
    for (const pair of unitPairs(passage)) {
      if (isMetric(pair.first[0].unit ?? 'in') !== (own === 'metric')) continue;
      const edit = removal(pair, manuscript.source);
      if (edit) edits.push(edit);
      else open.push({ ...rangeOf({ sides: pair.second }), message: WOVEN });
    }
  }
  return { edits, open };
}

const WOVEN = 'This equivalent stands neither in brackets nor behind a stroke; take it out yourself.';

function removal({ second }: UnitPair, source: string): Edit | undefined {
  const { start, end } = rangeOf({ sides: second });
  const [before, behind] = [source.slice(0, start), source.slice(end)];
  const [bracket, close] = [BEFORE_BRACKET.exec(before)?.[0], BEHIND_BRACKET.exec(behind)?.[0]];
  if (bracket !== undefined && close !== undefined)
    return { start: start - bracket.length, end: end + close.length, text: '' };
  const stroke = BEFORE_STROKE.exec(before)?.[0];
  return stroke === undefined ? undefined : { start: start - stroke.length, end, text: '' };
}
