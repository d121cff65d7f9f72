/** The author's own figures, which a text calls by the words of their names. */
import { stemsOf } from '../stems.ts';
import { mustSay, need, type Quilt, type Slot, slot, type Thing, thing, type Want } from './thing.ts';

export function ownThings(quilt: Quilt): Thing[] {
  return Object.keys(quilt.pattern.entries.figures ?? {}).flatMap((name) => {
    const kind = quilt.ledger.figure(name)?.kind;
    const takes: Slot['takes'] = kind === 'count' ? 'count' : kind === 'yardage' ? 'yardage' : 'side';
    const stems = stemsOf(name);
    return thing(quilt, `own.${name}`, '', wantsOf(stems), [slot(takes, name)], { against: ['axis'] });
  });
}

/** Rows, and what stands in one of them, are told apart by more than the word. */
function wantsOf(stems: readonly string[]): Want[] {
  if (stems.length === 1 && stems[0] === 'row') return [need(7, 'form:row')];
  const more = [mustSay(6 + stems.length, ...stems)];
  return stems.includes('row') ? [need(7, 'axis:per row')] : more;
}
