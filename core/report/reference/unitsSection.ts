/** The kinds of units that a block can be made of, written from their table. */

import { methodNames, UNIT_KINDS } from '../../trade/units/kinds.ts';
import type { Need, UnitKind } from '../../trade/units/unit.ts';
import { plain } from '../plainMarkdown.ts';
import { code, table } from './markdown.ts';

/** The words of a unit that a kind needs besides its finished size. */
const NEEDS: Readonly<Record<Need, string>> = {
  corner: 'the size of the corners',
  strips: 'the widths of the strips',
  radius: 'the radius of the curve',
};

export function unitsSection(): string[] {
  return [
    '## Kinds of units',
    'A unit of a block names its kind, and by `method` the way in which it is made. Where none is named, the first one ' +
      'counts. A way with “, trimmed” behind it cuts the pieces a little larger, so that the sewn unit can be trimmed down.',
    table(
      ['Kind', 'Also called', 'One length means', 'Also give', 'Ways to make it'],
      UNIT_KINDS.map((kind) => [
        plain(kind.name),
        plain(kind.otherNames.join(', ')),
        plain(kind.oneLength),
        needs(kind),
        methodNames(kind).map(code).join('\n'),
      ]),
    ),
  ];
}

function needs({ needs: all }: UnitKind): string {
  return all.map((need) => `${code(need)}, ${NEEDS[need]}`).join('\n');
}
