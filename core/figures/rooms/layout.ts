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
      ...(layout.grid ? [blocks] : []),
      ...centreSides,
      ...(pointed ? triangles : []),
      ...(layout.sashing && !pointed
        ? [sashStrip, ...sashes, ...(layout.sashing.cornerstones ? cornerstones : [])]
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
      derive: (at) => sash(at, way, ({ count }) => sashCount(at, count, name)),
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

const cornerstones: Definition[] = [
  {
    id: 'sashing.cornerstones.count',
    title: 'The number of cornerstones',
    kind: 'count',
    rule: 'exact',
    derive: (at) => sash(at, 'cornerstones', ({ count }) => sashCount(at, count, 'at the crossings')),
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

function sashCount(at: Derivation, count: number, where: string): Derived {
  const { across, down } = at.entries.layout?.grid ?? { across: 0, down: 0 };
  const around = at.entries.layout?.sashing?.around === 'yes' ? ' with sashing around them' : '';
  const because = `${across} × ${down} blocks${around} have ${count} ${where}`;
  return { need: Real.of(count), steps: [sentence(because)], because };
}

/** A finished length with its two seams. */
export function withSeams(at: Derivation, finished: Real, steps: readonly string[]): Derived {
  const { show } = at;
  const need = finished.add(Real.of(at.house.seam.mul(2n)));
  const because = `${show.length(finished)} plus two ${show.length(at.house.seam)} seams is ${show.length(need)}`;
  return { need, steps: [...steps, sentence(because)], because };
}
