/** The author's own figures, which a text calls by the words of their names. */
import type { Concept } from '../concept.ts';
import { stemsOf } from '../stems.ts';
import { tradeWordsIn } from '../vocabulary.ts';
import { mustSay, need, type Quilt, type Slot, slot, type Thing, thing, type Want } from './thing.ts';

export function ownThings(quilt: Quilt): Thing[] {
  return Object.keys(quilt.pattern.entries.figures ?? {}).flatMap((name) => {
    const kind = quilt.ledger.figure(name)?.kind;
    const takes: Slot['takes'] = kind === 'count' ? 'count' : kind === 'yardage' ? 'yardage' : 'side';
    return [
      ...thing(quilt, `own.${name}`, '', wordForWord(name), [slot(takes, name)], { against: ['axis'] }),
      ...inOtherWords(name).flatMap((wants) =>
        thing(quilt, `own.${name}`, 'in other words', wants, [slot(takes, name)]),
      ),
    ];
  });
}

/** Rows, and what stands in one of them, are told apart by more than the word. */
function wordForWord(name: string): Want[] {
  const stems = stemsOf(name);
  if (stems.length === 1 && stems[0] === 'row') return [need(7, 'form:row')];
  return stems.includes('row') ? [need(7, 'axis:per row')] : [mustSay(6 + stems.length, ...stems)];
}

/** How much the trade's words in a name say: measures and shapes more than what is done. */
const SAYS = 3;

/** "plank cut width" is how wide planks are cut: the trade's words of a name may be others of the same meaning. */
function inOtherWords(name: string): Want[][] {
  const { concepts, others } = tradeWordsIn(name);
  const telling = concepts.filter((concept) => !IDLE.test(concept));
  if (telling.length === 0 || others.length === 0) return [];
  return [[mustSay(2 + others.length, ...others), ...telling.map((concept: Concept) => need(SAYS, concept))]];
}

/** What is done with a thing is said in many words, or not at all. */
const IDLE = /^(?:act|state):/;
