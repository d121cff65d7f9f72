import type { Element } from 'hast';
import { h } from 'hastscript';
import type { Sentence } from '../sentence.ts';

/** A sentence of the author, in which the numbers that are spoken of are marked. */
export function quotation(sentence: Sentence): Element {
  return h('blockquote', h('p', marked(sentence)));
}

export function marked({ lead, text, marks }: Sentence): (string | Element)[] {
  const parts: (string | Element)[] = lead === undefined ? [] : [h('span.lead', `${lead}: `)];
  let at = 0;
  for (const { start, end } of marks) {
    parts.push(text.slice(at, start), h('mark', text.slice(start, end)));
    at = Math.max(at, end);
  }
  parts.push(text.slice(at));
  return parts.filter((part) => part !== '');
}
