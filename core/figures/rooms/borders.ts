/** The borders, from the inside out, and the quilt after each of them. */
import { Real } from '../../quantity/real.ts';
import { type Border, borderStrips } from '../../trade/borders.ts';
import { lostPerJoin } from '../../trade/joining.ts';
import type { Definition, Derived, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { withSeams } from './layout.ts';
import { bordersOf } from './quilt.ts';
import { usableWidth } from './usableWidth.ts';

export const bordersRoom: Room = {
  define: ({ entries }) => (entries.borders ?? []).flatMap((_, index) => border(index)),
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

function border(index: number): Definition[] {
  const n = index + 1;
  const name = `border ${n}`;
  const own = (at: Derivation, of: (border: Border) => Derived | undefined): Derived | undefined => {
    const found = bordersOf(at)[index];
    return found && of(found);
  };
  const length = { kind: 'length', rule: 'exact' } as const;
  return [
    {
      id: `border.${n}.strip`,
      title: `The cut width of ${name}`,
      ...length,
      derive: (at) => {
        const finished = at.entries.borders?.[index]?.finished?.inches;
        return finished && withSeams(at, Real.of(finished), []);
      },
    },
    {
      id: `border.${n}.side`,
      title: `The cut length of the sides of ${name}`,
      ...length,
      derive: (at) => own(at, (found) => cutLength(at, found, 'sides', found.sides.finished.length)),
    },
    {
      id: `border.${n}.top`,
      title: `The cut length of the top and bottom of ${name}`,
      ...length,
      derive: (at) => own(at, (found) => cutLength(at, found, 'top and bottom', found.ends.finished.length)),
    },
    {
      id: `border.${n}.strips`,
      title: `The number of strips for ${name}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) =>
        at.entries.borders?.[index]?.along === 'length'
          ? undefined
          : own(at, (found) => strips(at, index, found)),
    },
    ...(['width', 'length'] as const).flatMap((side): Definition[] => [
      {
        id: `border.${n}.finished-${side}`,
        title: `The finished ${side} of the quilt with ${name}`,
        ...length,
        derive: (at) =>
          own(at, (found) => {
            const because = `the quilt with ${name} finishes ${at.show.size(found.finished)}`;
            return { need: found.finished[side], steps: [sentence(because)], because };
          }),
      },
      {
        id: `border.${n}.quilt-${side}`,
        title: `The ${side} of the quilt top with ${name}`,
        ...length,
        derive: (at) => own(at, (found) => withSeams(at, found.finished[side], [])),
      },
    ]),
  ];
}

/** Mitred strips must be longer by what the tip of the mitre needs. */
function cutLength(at: Derivation, found: Border, which: string, finished: Real): Derived {
  const plain = withSeams(at, finished, [`The ${which} finish ${at.show.length(finished)} long.`]);
  if (found.mitreReserve.sign() === 0) return plain;
  const need = plain.need.add(found.mitreReserve);
  const because = `${plain.because}, and the mitres take ${at.show.length(found.mitreReserve)} more`;
  return { ...plain, need, steps: [...plain.steps, sentence(because)], because };
}

function strips(at: Derivation, index: number, found: Border): Derived | undefined {
  const entry = at.entries.borders?.[index];
  const width = usableWidth(at, entry?.from);
  const { house, show } = at;
  const cut = found.sides.cut.width.exact;
  if (!cut) return undefined;
  const lost = lostPerJoin(house.join, cut, house.seam);
  if (lost.compare(width) >= 0) return undefined;
  const needed = borderStrips(found, width, lost, house['cut to']);
  const pieces = `two sides of ${show.length(found.sides.cut.length)} and two of ${show.length(found.ends.cut.length)}`;
  const because = needed.pieced
    ? `${pieces} are joined from ${counted(needed.strips, 'strip')} of ${show.length(width)}`
    : `${pieces} are cut from ${counted(needed.strips, 'strip')} of ${show.length(width)}`;
  return { need: Real.of(needed.strips), steps: [sentence(because)], because };
}
