/** The triangles that fill the edges and corners of blocks set on point. */
import { Real } from '../../quantity/real.ts';
import type { TriangleSquares } from '../../trade/setting.ts';
import type { Definition, Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { onPoint } from './quilt.ts';

export const triangles: Definition[] = (['side', 'corner'] as const).flatMap((place): Definition[] => {
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
