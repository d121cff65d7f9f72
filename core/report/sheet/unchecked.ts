/** The technical editor's question: what has nobody checked? */
import type { Element } from 'hast';
import { h } from 'hastscript';
import type { Proof } from '../../proof/proof.ts';
import { placeOf } from '../place.ts';
import { sentencesAround } from '../sentence.ts';
import { marked } from './quotation.ts';
import { table } from './table.ts';

export function unchecked({ accounts, manuscript }: Proof): Element[] {
  const places = accounts.filter(({ kind }) => kind === 'unaccounted').map(({ number }) => placeOf(number));
  if (places.length === 0) return [h('p', 'Every number that measures something has been checked.')];
  const rows = sentencesAround(manuscript, places).map((sentence) => [
    String(sentence.line),
    marked(sentence),
  ]);
  return [
    h(
      'p',
      'These numbers measure something, and nothing in the pattern says what they should be. A person must check them.',
    ),
    table([{ number: 'Line' }, 'Sentence'], rows),
  ];
}
