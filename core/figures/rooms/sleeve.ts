/** The sleeve that a wall quilt hangs by. */

import { rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import { hangingSleeve, type Sleeve } from '../../trade/sleeve.ts';
import type { Definition, Objection, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { sentence } from '../sentence.ts';
import { usableWidth } from './usableWidth.ts';

export const sleeveRoom: Room = {
  define: ({ entries }) => (entries.sleeve ? [depth, cutLength, finishedLength] : []),
  check: (pattern, ledger) => {
    const sleeve = pattern.entries.sleeve;
    if (!sleeve) return [];
    const short = sleeve['short of edge']?.inches ?? rational(0);
    return pattern.sizes.flatMap((size): Objection[] => {
      const width = ledger.figure('finished.width')?.values.get(size.name)?.need;
      if (!width || width.compare(Real.of(short.mul(2n))) > 0) return [];
      const message = 'The sleeve stops so far from both edges that none of it is left.';
      return [{ code: 'bad-value', path: ['sleeve', 'short of edge'], message }];
    });
  },
};

const depth: Definition = {
  id: 'sleeve.cut-depth',
  title: 'The cut depth of the sleeve',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const cut = cutOf(at);
    const finished = at.entries.sleeve?.['finished depth'].inches;
    if (!cut || !finished) return undefined;
    const { show } = at;
    const because = `twice ${show.length(finished)} plus two ${show.length(at.house.seam)} seams is ${show.length(cut.cutDepth)}`;
    return { need: Real.of(cut.cutDepth), steps: [sentence(because)], because };
  },
};

const finishedLength: Definition = {
  id: 'sleeve.length',
  title: 'The finished length of the sleeve',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const cut = cutOf(at);
    const width = at.figure('finished.width');
    if (!cut || !width) return undefined;
    const { show } = at;
    const because = `${show.length(width.need)} wide less ${show.length(shortOf(at))} on each side is ${show.length(cut.finishedLength)}`;
    return { need: cut.finishedLength, steps: [sentence(because)], because };
  },
};

const cutLength: Definition = {
  id: 'sleeve.cut-length',
  title: 'The cut length of the sleeve',
  kind: 'length',
  rule: 'exact',
  isCut: true,
  derive: (at) => {
    const cut = cutOf(at);
    if (!cut) return undefined;
    const { show } = at;
    const because = `${show.length(cut.finishedLength)} plus ${show.length(hem(at))} turned under twice at each end is ${show.length(cut.cutLength)}`;
    return { need: cut.cutLength, steps: [sentence(because)], because };
  },
};

function cutOf(at: Derivation): Sleeve | undefined {
  const finishedDepth = at.entries.sleeve?.['finished depth'].inches;
  const quiltWidth = at.figure('finished.width')?.need;
  if (!finishedDepth || !quiltWidth || quiltWidth.compare(Real.of(shortOf(at).mul(2n))) <= 0)
    return undefined;
  return hangingSleeve({
    quiltWidth,
    finishedDepth,
    shortOfEdge: shortOf(at),
    seam: at.house.seam,
    hem: hem(at),
    usableWidth: usableWidth(at, at.entries.sleeve?.from),
  });
}

function shortOf(at: Derivation) {
  return at.entries.sleeve?.['short of edge']?.inches ?? rational(0);
}

/** A quarter inch, or half a centimetre, turned twice at each end (common practice). */
function hem(at: Derivation) {
  return at.house.system === 'inch' ? rational(1, 4) : toInches(rational(1, 2), 'cm');
}
