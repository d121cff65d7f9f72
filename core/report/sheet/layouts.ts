/** What can be drawn: how fabrics are cut, how the backing is joined, where the bias square is marked. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import { drawingsOf, drawnSubjects } from '../../figures/drawings.ts';
import type { Drawing } from '../../geometry/drawing.ts';
import type { Proof } from '../../proof/proof.ts';
import { groupBy } from '../groupBy.ts';
import { picture } from '../pictures/picture.ts';

/** @returns `undefined` where nothing can be drawn */
export function layouts({ pattern, ledger }: Proof, id: string): Element[] | undefined {
  const figures = drawnSubjects(ledger).flatMap((subject) => {
    const drawn = pattern.sizes.flatMap(({ name }) =>
      drawingsOf(pattern, ledger, subject, name).map((drawing) => ({ size: name, drawing })),
    );
    // Sizes that are cut alike share a drawing.
    return [...groupBy(drawn, ({ drawing }) => JSON.stringify(drawing)).values()];
  });
  if (figures.length === 0) return undefined;
  const shown = figures.flatMap((alike, index) => {
    const [first] = alike;
    const sizes = [...new Set(alike.map(({ size }) => size))].filter((size) => size !== '');
    return first ? [figure(first.drawing, sizes, `${id}-p${index + 1}`)] : [];
  });
  return [h('div.pictures', shown)];
}

function figure(drawing: Drawing, sizes: readonly string[], id: string): Element {
  const { svg, keys, isWide } = picture(drawing, id);
  const where = sizes.length === 0 ? '' : ` (${sizes.join(', ')})`;
  return h('figure', { className: isWide ? 'wide' : 'narrow' }, [
    h('figcaption', h('strong', `${drawing.title}${where}`)),
    svg,
    ...(keys.length > 0
      ? [
          h(
            'p.keys',
            keys.flatMap(({ key, label }, index) => [...(index > 0 ? ['; '] : []), h('b', key), ` ${label}`]),
          ),
        ]
      : []),
    h('p.seen', drawing.description),
  ]);
}
