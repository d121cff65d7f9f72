/** The borders, from the inside out, and the quilt after each of them. */
import type { Pattern } from '../../block/pattern.ts';
import { borderName } from '../../block/placeWords.ts';
import { Real, roundUp } from '../../quantity/real.ts';
import { type Border, type BorderStrips, borderStrips } from '../../trade/borders.ts';
import { joinPieces, lostPerJoin } from '../../trade/joining.ts';
import type { Definition, Derived, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { bordersOf, centre } from './quilt.ts';
import { stated } from './stated.ts';
import { usableWidth } from './usableWidth.ts';
import { withSeams } from './withSeams.ts';

export const bordersRoom: Room = {
  define: ({ entries }) =>
    (entries.borders ?? []).flatMap((entry, index, all) =>
      border(index, borderName(index, all.length), entry),
    ),
  check: ({ entries }) =>
    entries.borders && !entries.layout
      ? [
          {
            code: 'missing-entry',
            atKey: true,
            path: ['borders'],
            message:
              'Borders need what they go around: describe it under “layout”, as a grid of blocks or a centre.',
          },
        ]
      : [],
};

type BorderEntry = NonNullable<Pattern['entries']['borders']>[number];

function border(index: number, name: string, { corners, along }: BorderEntry): Definition[] {
  return [
    ...widths(index, name),
    ...pieces(index, name, corners === 'mitred'),
    ...(corners === 'corner squares' ? cornerSquares(index, name) : []),
    ...(along === 'length' ? [] : strips(index, name)),
    ...quiltWith(index, name),
  ];
}

const exactLength = { kind: 'length', rule: 'exact' } as const;

function widths(index: number, name: string): Definition[] {
  return [
    {
      id: `border.${index + 1}.finished`,
      title: `The finished width of ${name}`,
      ...exactLength,
      derive: (at) => {
        const finished = at.entries.borders?.[index]?.finished?.inches;
        return finished && stated(finished);
      },
    },
    {
      id: `border.${index + 1}.strip`,
      title: `The cut width of ${name}`,
      ...exactLength,
      derive: (at) => {
        const finished = at.entries.borders?.[index]?.finished?.inches;
        return finished && withSeams(at, Real.of(finished), []);
      },
    },
  ];
}

/** A strip that is to be mitred may be longer: what is too much falls away with the corners. */
function pieces(index: number, name: string, mitred: boolean): Definition[] {
  const rule = mitred ? 'at least' : 'exact';
  return [
    {
      id: `border.${index + 1}.side`,
      title: `The cut length of the sides of ${name}`,
      kind: 'length',
      rule,
      isCut: true,
      derive: (at) => own(at, index, (found) => cutLength(at, found, 'sides', found.sides.finished.length)),
    },
    {
      id: `border.${index + 1}.top`,
      title: `The cut length of the top and bottom of ${name}`,
      kind: 'length',
      rule,
      isCut: true,
      derive: (at) =>
        own(at, index, (found) => cutLength(at, found, 'top and bottom', found.ends.finished.length)),
    },
  ];
}

function cornerSquares(index: number, name: string): Definition[] {
  return [
    {
      id: `border.${index + 1}.corner.count`,
      title: `The number of corner squares of ${name}`,
      kind: 'count',
      rule: 'exact',
      derive: (at) =>
        own(at, index, ({ cornerSquares: { count } }) => {
          const because = `one in each corner makes ${count}`;
          return { need: Real.of(count), steps: [sentence(because)], because };
        }),
    },
    {
      id: `border.${index + 1}.corner.cut`,
      title: `The cut size of the corner squares of ${name}`,
      ...exactLength,
      derive: (at) => own(at, index, ({ cornerSquares: { finished } }) => withSeams(at, finished.width, [])),
    },
  ];
}

function strips(index: number, name: string): Definition[] {
  const one = (id: string, title: string, which: 'sides' | 'ends'): Definition => ({
    id: `border.${index + 1}.${id}.strips`,
    title,
    kind: 'count',
    rule: 'at least',
    derive: (at) => own(at, index, (found) => stripsForOne(at, index, found, which)),
  });
  return [
    {
      id: `border.${index + 1}.strips`,
      title: `The number of strips for ${name}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => own(at, index, (found) => allStrips(at, index, found)),
    },
    {
      id: `border.${index + 1}.joined`,
      title: `The length of the joined strips for ${name}`,
      kind: 'length',
      rule: 'at least',
      derive: (at) =>
        own(at, index, (found) => {
          const needed = stripsOf(at, index, found);
          if (!needed?.pieced) return undefined;
          const because = `${fourPieces(at, found)} together measure ${at.show.length(needed.reach)}`;
          return { need: Real.of(needed.reach), steps: [sentence(because)], because };
        }),
    },
    one('side', `The number of strips joined for one side of ${name}`, 'sides'),
    one('top', `The number of strips joined for the top of ${name}`, 'ends'),
  ];
}

function quiltWith(index: number, name: string): Definition[] {
  const n = index + 1;
  return (['width', 'length'] as const).flatMap((side): Definition[] => [
    {
      id: `border.${n}.finished-${side}`,
      title: `The finished ${side} of the quilt with ${name}`,
      ...exactLength,
      derive: (at) =>
        own(at, index, ({ finished }) => {
          const { show } = at;
          const inside = bordersOf(at)[index - 1]?.finished ?? centre(at)?.size;
          const width = at.entries.borders?.[index]?.finished?.inches;
          if (!inside || !width) return undefined;
          const because = `${show.size(inside)} and ${show.length(width)} on each side make ${show.size(finished)}`;
          return { need: finished[side], steps: [sentence(because)], because };
        }),
    },
    {
      id: `border.${n}.quilt-${side}`,
      title: `The ${side} of the quilt top with ${name}`,
      ...exactLength,
      derive: (at) => own(at, index, ({ finished }) => withSeams(at, finished[side], [])),
    },
  ]);
}

function own(
  at: Derivation,
  index: number,
  of: (border: Border) => Derived | undefined,
): Derived | undefined {
  const found = bordersOf(at)[index];
  return found && of(found);
}

function cutLength(at: Derivation, found: Border, which: string, finished: Real): Derived {
  const plain = withSeams(at, finished, [`The ${which} finish ${at.show.length(finished)} long.`]);
  if (found.mitreReserve.sign() === 0) return plain;
  const easier = `With ${at.show.length(found.mitreReserve)} more the mitre keeps a whole seam allowance to its tip until it is trimmed.`;
  return { ...plain, steps: [...plain.steps, easier] };
}

/** What strips across the fabric are cut from; `undefined` where a join would take the whole strip. */
function stripCutting(at: Derivation, index: number, found: Border) {
  const width = usableWidth(at, at.entries.borders?.[index]?.from);
  const cut = found.sides.cut.width.exact;
  if (!cut) return undefined;
  const lost = lostPerJoin(at.house.join, cut, at.house.seam);
  return lost.compare(width) < 0 ? { width, lost } : undefined;
}

function stripsOf(at: Derivation, index: number, found: Border): BorderStrips | undefined {
  const cutting = stripCutting(at, index, found);
  return cutting && borderStrips(found, cutting.width, cutting.lost, at.house['cut to']);
}

function allStrips(at: Derivation, index: number, found: Border): Derived | undefined {
  const cutting = stripCutting(at, index, found);
  const needed = stripsOf(at, index, found);
  if (!cutting || !needed) return undefined;
  const because = `${fourPieces(at, found)} are ${needed.pieced ? 'joined' : 'cut'} from ${counted(needed.strips, 'strip')} of ${at.show.length(cutting.width)}`;
  return { need: Real.of(needed.strips), steps: [sentence(because)], because };
}

function fourPieces(at: Derivation, { sides, ends }: Border): string {
  return `two sides of ${at.show.length(sides.cut.length)} and two of ${at.show.length(ends.cut.length)}`;
}

/** One side by itself: the fewest strips that reach its cut length. */
function stripsForOne(
  at: Derivation,
  index: number,
  found: Border,
  which: 'sides' | 'ends',
): Derived | undefined {
  const cutting = stripCutting(at, index, found);
  if (!cutting) return undefined;
  const { show, house } = at;
  const length = roundUp(found[which].cut.length, house['cut to']);
  const joined = joinPieces(Real.of(length), cutting.width, cutting.lost);
  const gives =
    joined.pieces === 1
      ? `one strip of ${show.length(cutting.width)} is enough`
      : `${counted(joined.pieces, 'strip')} joined give ${show.length(joined.joined)}`;
  const because = `it is cut ${show.length(length)} long, and ${gives}`;
  return { need: Real.of(joined.pieces), steps: [sentence(because)], because };
}
