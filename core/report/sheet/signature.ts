/** Room for what a person writes on the sheet by hand. */
import type { Element } from 'hast';
import { h } from 'hastscript';

const LINES = 8;

export function remarks(): Element[] {
  return [
    h(
      'div.ruled',
      { ariaHidden: 'true' },
      Array.from({ length: LINES }, () => h('div')),
    ),
  ];
}

export function signature(): Element[] {
  const box = h('span.box', { ariaHidden: 'true' });
  return [
    h('p.choice', [box, ' Ready to print as it stands']),
    h('p.choice', [box, ' Ready to print after the corrections above']),
    h('p.choice', [box, ' To be proofread again']),
    h(
      'div.sign',
      ['Name', 'Date', 'Signature'].map((label) => h('p', h('span', label))),
    ),
  ];
}
