/** The layout: how many blocks, how large the centre, and what stands between and beside the blocks. */
import { Real } from '../../quantity/real.ts';
import type { SashPiece } from '../../trade/sashing.ts';
import type { TriangleSquares } from '../../trade/setting.ts';
import type { Definition, Derived, Objection, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { blockCount, centre, onPoint, sashingOf } from './quilt.ts';

export const layoutRoom: Room = {
  define: ({ entries: { layout } }) => {
    if (!layout) return [];
    const pointed = layout.set === 'on point';
    return [
      ...(layout.grid ? [blocks, ...gridWays(pointed), ...(pointed ? diagonalRows : [])] : []),
      ...centreSides,
      ...(pointed ? triangles : []),
      ...(layout.sashing && !pointed
        ? [sashWidth, sashStrip, ...sashes, allSashes, ...(layout.sashing.cornerstones ? cornerstones : [])]
        : []),
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
    return objections;
  },
};

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

const triangles: Definition[] = (['side', 'corner'] as const).flatMap((place): Definition[] => {
  const name = place === 'side' ? 'side setting' : 'corner';
  const cut = place === 'side' ? 'twice' : 'once';
  const derive = (at: Derivation, of: (squares: TriangleSquares) => Derived): Derived | undefined => {
    const set = onPoint(at);
    return set && of(set[place]);
  };
  return [
    {
      id: `setting.${place}.count`,
      title: `The number of ${name} triangles`,
      kind: 'count',
      rule: 'exact',
      derive: (at) =>
        derive(at, ({ triangles }) => {
          const because = `the layout has ${triangles} ${name} triangles`;
          return { need: Real.of(triangles), steps: [sentence(because)], because };
        }),
    },
    {
      id: `setting.${place}.squares`,
      title: `The number of squares for the ${name} triangles`,
      kind: 'count',
      rule: 'at least',
      derive: (at) =>
        derive(at, ({ triangles, perSquare, squares }) => {
          const because = `${triangles} triangles at ${perSquare} from a square take ${counted(squares, 'square')}`;
          return { need: Real.of(squares), steps: [sentence(because)], because };
        }),
    },
    {
      id: `setting.${place}.per-square`,
      title: `The number of ${name} triangles from one square`,
      kind: 'count',
      rule: 'exact',
      derive: (at) =>
        derive(at, ({ perSquare }) => {
          const because = `a square cut ${cut} diagonally gives ${perSquare} triangles`;
          return { need: Real.of(perSquare), steps: [sentence(because)], because };
        }),
    },
    {
      id: `setting.${place}.spare`,
      title: `The number of ${name} triangles left over`,
      kind: 'count',
      rule: 'at least',
      derive: (at) =>
        derive(at, ({ triangles, perSquare, squares, spare }) => {
          const because = `${counted(squares, 'square')} of ${perSquare} triangles less the ${triangles} that are sewn in leave ${spare}`;
          return { need: Real.of(spare), steps: [sentence(because)], because };
        }),
    },
    {
      id: `setting.${place}.square`,
      title: `The square for the ${name} triangles`,
      kind: 'length',
      rule: 'at least',
      derive: (at) =>
        derive(at, ({ exact, shortSide, longSide }) => {
          const { show } = at;
          const finished = place === 'side' ? longSide : shortSide;
          const what = place === 'side' ? 'long side' : 'short side';
          const because = `the finished ${what} is ${show.length(finished)}, and its seams make the square ${show.length(exact)}, cut ${cut} diagonally`;
          return { need: exact, step: at.house['cut to'], steps: [sentence(because)], because };
        }),
    },
  ];
});

const sashWidth: Definition = {
  id: 'sashing.finished',
  title: 'The finished width of the sashing',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const finished = at.entries.layout?.sashing?.finished?.inches;
    if (!finished) return undefined;
    const because = `the sashing finishes ${at.show.length(finished)} wide`;
    return { need: Real.of(finished), steps: [sentence(because)], because };
  },
};

const sashStrip: Definition = {
  id: 'sashing.strip',
  title: 'The cut width of the sashing',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const finished = at.entries.layout?.sashing?.finished?.inches;
    return finished && withSeams(at, Real.of(finished), []);
  },
};

/** Sashes stand upright between the blocks of a row, and lie between the rows. */
const sashes: Definition[] = (['upright', 'lying'] as const).flatMap((way): Definition[] => {
  const name = way === 'upright' ? 'between the blocks of a row' : 'between the rows';
  return [
    {
      id: `sashing.${way}.count`,
      title: `The number of sashes ${name}`,
      kind: 'count',
      rule: 'exact',
      derive: (at) =>
        sash(at, way, ({ count }) => sashCount(at, count, `${counted(count, 'sash', 'sashes')} ${name}`)),
    },
    {
      id: `sashing.${way}.length`,
      title: `The cut length of the sashes ${name}`,
      kind: 'length',
      rule: 'exact',
      derive: (at) => sash(at, way, ({ finished }) => withSeams(at, finished.length, [])),
    },
  ];
});

const allSashes: Definition = {
  id: 'sashing.count',
  title: 'The number of sashes in all',
  kind: 'count',
  rule: 'exact',
  derive: (at) => {
    const found = sashingOf(at);
    if (!found) return undefined;
    const [upright, lying] = [found.upright.count, found.lying.count];
    const because = `${upright} between the blocks of a row and ${lying} between the rows make ${counted(upright + lying, 'sash', 'sashes')}`;
    return { need: Real.of(upright + lying), steps: [sentence(because)], because };
  },
};

const cornerstones: Definition[] = [
  {
    id: 'sashing.cornerstones.count',
    title: 'The number of cornerstones',
    kind: 'count',
    rule: 'exact',
    derive: (at) =>
      sash(at, 'cornerstones', ({ count }) =>
        sashCount(at, count, `${counted(count, 'crossing')} of its sashes`),
      ),
  },
  {
    id: 'sashing.cornerstones.square',
    title: 'The cut size of the cornerstones',
    kind: 'length',
    rule: 'exact',
    derive: (at) => sash(at, 'cornerstones', ({ finished }) => withSeams(at, finished.width, [])),
  },
];

function sash(
  at: Derivation,
  which: 'upright' | 'lying' | 'cornerstones',
  of: (piece: SashPiece) => Derived,
): Derived | undefined {
  const found = sashingOf(at);
  return found && of(found[which]);
}

function sashCount(at: Derivation, count: number, what: string): Derived {
  const { across, down } = at.entries.layout?.grid ?? { across: 0, down: 0 };
  const around = at.entries.layout?.sashing?.around === 'yes' ? ' with sashing around it' : '';
  const because = `a set of ${across} × ${down}${around} has ${what}`;
  return { need: Real.of(count), steps: [sentence(because)], because };
}

/** A finished length with its two seams. */
export function withSeams(at: Derivation, finished: Real, steps: readonly string[]): Derived {
  const { show } = at;
  const need = finished.add(Real.of(at.house.seam.mul(2n)));
  const because = `${show.length(finished)} plus two ${show.length(at.house.seam)} seams is ${show.length(need)}`;
  return { need, steps: [...steps, sentence(because)], because };
}
