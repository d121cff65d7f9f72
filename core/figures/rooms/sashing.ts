/** Sashing of a straight set: the strips between the blocks, and the squares where they cross. */
import { Real } from '../../quantity/real.ts';
import type { SashPiece } from '../../trade/sashing.ts';
import type { Definition, Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { sashingOf } from './quilt.ts';
import { stated } from './stated.ts';
import { withSeams } from './withSeams.ts';

export function sashingFigures(withCornerstones: boolean): Definition[] {
  return [sashWidth, sashStrip, ...sashes, allSashes, ...(withCornerstones ? cornerstones : [])];
}

const sashWidth: Definition = {
  id: 'sashing.finished',
  title: 'The finished width of the sashing',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const finished = at.entries.layout?.sashing?.finished?.inches;
    return finished && stated(finished);
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
