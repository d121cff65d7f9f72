/** The layout: how many blocks, how large the centre, and what stands between and beside the blocks. */
import type { Pattern } from '../../block/pattern.ts';
import { Real } from '../../quantity/real.ts';
import type { Definition, Derived, Objection, Room } from '../definition.ts';
import { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { blockCount, centre, gridBlock, onPoint } from './quilt.ts';
import { sashingFigures } from './sashing.ts';
import { triangles } from './setting.ts';
import { withSeams } from './withSeams.ts';

export const layoutRoom: Room = {
  define: ({ entries: { layout } }) => {
    if (!layout) return [];
    const pointed = layout.set === 'on point';
    return [
      ...(layout.grid ? [blocks, ...gridWays(pointed), ...(pointed ? diagonalRows : [])] : []),
      ...centreSides,
      ...(pointed ? triangles : []),
      ...(layout.sashing && !pointed ? sashingFigures(layout.sashing.cornerstones !== undefined) : []),
    ];
  },
  check: (pattern) => {
    const { layout, blocks } = pattern.entries;
    const objections: Objection[] = [];
    const name = layout?.block;
    if (layout && name !== undefined && !(name in (blocks ?? {})))
      objections.push({
        code: 'bad-value',
        path: ['layout', 'block'],
        message: `No block “${name}” is described under “blocks”.`,
      });
    if (layout?.grid && !blocks)
      objections.push({
        code: 'missing-entry',
        atKey: true,
        path: ['layout', 'grid'],
        message: 'The grid needs a block: describe it under “blocks”.',
      });
    if (layout?.sashing && layout.set === 'on point')
      objections.push({
        code: 'bad-value',
        path: ['layout', 'sashing'],
        message:
          'Sashing is computed for a straight set only; a quilt on point counts it as part of its blocks.',
      });
    return [...objections, ...notSquare(pattern)];
  },
};

/** On point only square blocks meet along their sides. */
function notSquare(pattern: Pattern): Objection[] {
  const { layout, blocks } = pattern.entries;
  if (layout?.set !== 'on point' || !layout.grid) return [];
  for (const size of pattern.sizes) {
    const at = Derivation.unrecorded(pattern, size);
    const block = gridBlock(at);
    if (!block || block.size.width.compare(block.size.length) === 0) continue;
    const stated = blocks?.[block.name]?.finished.pathAt(size) ?? [];
    const message = `Blocks on point are square, but “${block.name}” finishes ${at.show.size(block.size)}.`;
    return [{ code: 'block-not-square', path: ['blocks', block.name, 'finished', ...stated], message }];
  }
  return [];
}

const blocks: Definition = {
  id: 'layout.blocks',
  title: 'The number of blocks',
  kind: 'count',
  rule: 'exact',
  derive: (at) => {
    const found = blockCount(at);
    return found && { need: Real.of(found.count), steps: [sentence(found.because)], because: found.because };
  },
};

/** Blocks across and down; on point, of the main rows, between which others stand. */
function gridWays(pointed: boolean): Definition[] {
  const grid = (at: Derivation) => at.entries.layout?.grid;
  const way = (id: string, title: string, of: (at: Derivation) => Derived | undefined): Definition => ({
    id: `layout.${id}`,
    title,
    kind: 'count',
    rule: 'exact',
    derive: of,
  });
  const stated = (at: Derivation, side: 'across' | 'down'): Derived | undefined => {
    const blocks = grid(at)?.[side];
    if (blocks === undefined) return undefined;
    const because = `the grid has ${counted(blocks, 'block')} ${side}`;
    return { need: Real.of(blocks), steps: [sentence(because)], because };
  };
  const which = pointed ? 'main row' : 'row';
  return [
    way('columns', `The number of blocks in a ${which}`, (at) => stated(at, 'across')),
    way('rows', `The number of ${which}s`, (at) => stated(at, 'down')),
  ];
}

/** On point, rows are sewn along the diagonal: m across and n down stand in m + n − 1 of them. */
const diagonalRows: Definition[] = [
  {
    id: 'layout.diagonal-rows',
    title: 'The number of diagonal rows of blocks',
    kind: 'count',
    rule: 'exact',
    derive: (at) => {
      const grid = at.entries.layout?.grid;
      if (!grid || !onPoint(at)) return undefined;
      const { across, down } = grid;
      const rows = across + down - 1;
      const because = `along the diagonal a set of ${across} × ${down} has ${across} + ${down} − 1 = ${counted(rows, 'row')}`;
      return { need: Real.of(rows), steps: [sentence(because)], because };
    },
  },
  ...(['main', 'between'] as const).map(
    (which): Definition => ({
      id: `layout.${which}`,
      title:
        which === 'main'
          ? 'The number of blocks in the main rows'
          : 'The number of blocks between the main rows',
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const set = onPoint(at);
        const grid = at.entries.layout?.grid;
        if (!set || !grid) return undefined;
        const less = which === 'main' ? 0 : 1;
        const because = `${grid.across - less} × ${grid.down - less} = ${counted(set[which], 'block')}`;
        return { need: Real.of(set[which]), steps: [sentence(because)], because };
      },
    }),
  ),
];

const centreSides: Definition[] = (['width', 'length'] as const).flatMap((side) => [
  {
    id: `centre.${side}`,
    title: `The finished ${side} of the centre`,
    kind: 'length',
    rule: 'exact',
    derive: (at) => {
      const middle = centre(at);
      return middle && { need: middle.size[side], steps: middle.steps, because: middle.because };
    },
  },
  {
    id: `centre.unfinished-${side}`,
    title: `The unfinished ${side} of the centre`,
    kind: 'length',
    rule: 'exact',
    derive: (at) => {
      const finished = at.figure(`centre.${side}`);
      return finished && withSeams(at, finished.need, finished.steps);
    },
  },
]);
