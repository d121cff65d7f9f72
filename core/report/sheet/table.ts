import type { Element } from 'hast';
import { h } from 'hastscript';

export type Cell = string | Element | readonly (string | Element)[];

/** The head of a column; numbers stand on the right. */
export type Head = string | { readonly number: string };

/** A table whose first column is the head of its rows. A last row of sums stands apart. */
export function table(
  heads: readonly Head[],
  rows: readonly (readonly Cell[])[],
  sums?: readonly Cell[],
): Element {
  const isNumber = heads.map((head) => typeof head !== 'string');
  const line = (cells: readonly Cell[]) =>
    h(
      'tr',
      cells.map((cell, column) =>
        h(
          column === 0 ? 'th' : 'td',
          { ...(column === 0 && { scope: 'row' }), ...(isNumber[column] && { className: 'number' }) },
          cell as (string | Element)[],
        ),
      ),
    );
  return h('div.scroll', { tabIndex: 0, role: 'group', ariaLabel: 'Table' }, [
    h('table', [
      h(
        'thead',
        h(
          'tr',
          heads.map((head) =>
            typeof head === 'string'
              ? h('th', { scope: 'col' }, head)
              : h('th.number', { scope: 'col' }, head.number),
          ),
        ),
      ),
      h('tbody', rows.map(line)),
      ...(sums ? [h('tfoot', line(sums))] : []),
    ]),
  ]);
}
