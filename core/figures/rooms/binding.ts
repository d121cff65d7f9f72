/** Binding: how much the edge takes, and what it is cut from. */
import type { Pattern } from '../../block/pattern.ts';
import { type BiasTube, biasTube, ROOT_TWO } from '../../geometry/biasTube.ts';
import { ONE, type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import { biasSquare, biasStrips, fewestBiasStrips, judgeSquare } from '../../trade/bias.ts';
import { doubleFold, grainSuits, straightBinding } from '../../trade/binding.ts';
import { joinedLength, lostPerJoin } from '../../trade/joining.ts';
import type { Definition, Derived, Objection, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { aroundEdge } from './aroundEdge.ts';
import { usableWidth } from './usableWidth.ts';

export const bindingRoom: Room = {
  define: (pattern) => {
    if (!pattern.entries.binding) return [];
    const fromSquare = [square, ...whatSquareGives(pattern)];
    const pieces = { straight: [strips], strips: [strips], 'one square': fromSquare }[cutAs(pattern)];
    return [edge, length, strip, ...pieces, yardage, finishedWidth];
  },
  check: (pattern) => [...curves(pattern), ...tooWide(pattern)],
};

const edge: Definition = {
  id: 'binding.edge',
  title: 'The edge to bind',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const edge = at.figure('finished.edge');
    return edge && { need: edge.need, steps: edge.steps, because: edge.because };
  },
};

const length: Definition = {
  id: 'binding.length',
  title: 'The length of binding',
  kind: 'length',
  rule: 'at least',
  derive: (at) => aroundEdge(at, 'binding.edge'),
};

const strip: Definition = {
  id: 'binding.strip',
  title: 'The width of the binding strip',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const width = at.entries.binding?.strip?.inches;
    if (!width) return undefined;
    const because = `the binding strip is cut ${at.show.length(width)} wide`;
    return { need: Real.of(width), steps: [sentence(because)], because };
  },
};

const strips: Definition = {
  id: 'binding.strips',
  title: 'The number of binding strips',
  kind: 'count',
  rule: 'at least',
  derive: (at) => (grain(at) === 'bias' ? biasStripCount(at) : straightStripCount(at)),
};

const square: Definition = {
  id: 'binding.square',
  title: 'The square for the bias binding',
  kind: 'length',
  rule: 'at least',
  derive: (at) => {
    const cut = squareFor(at);
    if (!cut) return undefined;
    const { show } = at;
    const chosen = at.house['bias square by'] === 'area' ? cut.byArea : cut.byYield;
    const needed = `${show.length(cut.need)} of binding is needed`;
    const gives = (tube: typeof chosen) =>
      `a ${show.length(tube.side)} square gives ${show.length(tube.length)} in ${counted(tube.passes, 'pass', 'passes')}`;
    return {
      need: Real.of(chosen.side),
      steps: [
        sentence(needed),
        `Sewn into a tube, ${gives(chosen)} of ${show.length(chosen.perPass)} each.`,
        `By the rule of thumb, √(length × width), the square would be ${show.length(cut.byArea.side)}, which really gives ${show.length(cut.byArea.length)}.`,
      ],
      because: `${needed}, and ${gives(chosen)}`,
      against: (stated) => {
        const verdict = judgeSquare(stated, cut);
        const promise = verdict.enoughByAreaOnly
          ? `; the rule of thumb promises ${show.length(verdict.areaPromise)}, but forgets the seams and what is left beside the last line`
          : '';
        return gives(verdict.gives) + promise;
      },
    };
  },
};

/**
 * Of the square that the block states, exactly; else of the least square, and at least: a maker who cuts a larger
 * one goes around as often or more often, and gets as much or more.
 */
function whatSquareGives({ entries }: Pattern): Definition[] {
  const rule = entries.states?.[square.id] ? 'exact' : 'at least';
  return [
    {
      id: 'binding.passes',
      title: 'The number of passes around the bias tube',
      kind: 'count',
      rule,
      derive: (at) => {
        const tube = tubeOf(at);
        if (!tube) return undefined;
        const times = tube.passes === 1 ? 'once' : `${tube.passes} times`;
        const because = `lines ${at.show.length(tube.width)} apart fit ${times} on a ${at.show.length(tube.side)} square after its seams`;
        return { need: Real.of(tube.passes), steps: [sentence(because)], because };
      },
    },
    {
      id: 'binding.yield',
      title: 'The length that the bias square gives',
      kind: 'length',
      rule,
      derive: (at) => {
        const tube = tubeOf(at);
        if (!tube) return undefined;
        const because = `${counted(tube.passes, 'pass', 'passes')} of ${at.show.length(tube.perPass)} ${tube.passes === 1 ? 'makes' : 'make'} ${at.show.length(tube.length)}`;
        return { need: tube.length, round: 'down', steps: [sentence(because)], because };
      },
    },
  ];
}

const yardage: Definition = {
  id: 'binding.yardage',
  title: 'The fabric for the binding',
  kind: 'yardage',
  rule: 'at least',
  derive: (at) => {
    const cut = fabricLength(at);
    if (!cut) return undefined;
    const { squaring } = at.house;
    const need = cut.length.add(squaring);
    const steps = [sentence(cut.because)];
    if (squaring.n !== 0n)
      steps.push(`Straightening the end takes ${at.show.length(squaring)}: ${at.show.length(need)} in all.`);
    return { need: Real.of(need), step: at.house['sell by'], steps, because: cut.because };
  },
};

const finishedWidth: Definition = {
  id: 'binding.finished-width',
  title: 'The width of binding that shows',
  kind: 'length',
  rule: 'exact',
  derive: (at) => {
    const width = at.figure('binding.strip')?.need.exact;
    if (!width) return undefined;
    const { front } = doubleFold(width, at.house.seam, rational(0));
    const because = `double-fold binding sewn with a ${at.show.length(at.house.seam)} seam shows ${at.show.length(front)} on the front`;
    return { need: Real.of(front), steps: [sentence(because)], because };
  },
};

function straightStripCount(at: Derivation): Derived | undefined {
  const cut = straightCut(at);
  const need = at.figure('binding.length');
  if (!cut || !need) return undefined;
  const { show } = at;
  const joined = (n: number, inches: Rational) =>
    `${n} ${n === 1 ? 'strip gives' : 'strips joined give'} ${show.length(inches)}`;
  return {
    need: Real.of(cut.pieces),
    steps: [
      ...need.steps,
      `A strip is ${show.length(cut.usableWidth)} long; each ${cut.join} join takes ${show.length(cut.lostPerJoin)}.`,
      sentence(joined(cut.pieces, cut.joined)),
    ],
    because: need.because,
    against: (stated) => {
      const n = Number(stated.valueOf());
      return Number.isInteger(n) && n > 0
        ? joined(n, joinedLength(n, cut.usableWidth, cut.lostPerJoin))
        : undefined;
    },
  };
}

/** How many strips there are depends on the length of the cloth that is cut; so these are the fewest of any cloth. */
function biasStripCount(at: Derivation): Derived | undefined {
  const need = at.figure('binding.length');
  const width = usableWidth(at, at.entries.binding?.from);
  const { show, house } = at;
  if (!need || !singleBiasCut(at) || house.seam.mul(2n).compare(width) >= 0) return undefined;
  const { pieces, each, lostPerJoin } = fewestBiasStrips(need.need, width, house.seam);
  const bias = (along: Rational) => Real.of(along).mul(ROOT_TWO);
  const most = (n: number) =>
    `${counted(n, 'bias strip')} ${n === 1 ? 'gives' : 'joined give'} ${show.length(bias(joinedLength(n, each, lostPerJoin)))} at the most`;
  return {
    need: Real.of(pieces),
    steps: [
      ...need.steps,
      `No bias strip is longer than ${show.length(width)} × √2 = ${show.length(bias(width))}; each join takes ${show.length(bias(lostPerJoin))}.`,
      sentence(most(pieces)),
    ],
    because: `${need.because}, and ${most(pieces)}`,
    against: (stated) => {
      const n = Number(stated.valueOf());
      return Number.isInteger(n) && n > 0 ? most(n) : undefined;
    },
  };
}

function straightCut(at: Derivation) {
  return at.once('binding strips', cutStraight);
}

function cutStraight(at: Derivation) {
  const need = at.figure('binding.length')?.need;
  const strip = at.figure('binding.strip')?.need.exact;
  const width = usableWidth(at, at.entries.binding?.from);
  if (!need || !strip || strip.compare(width) >= 0) return undefined;
  const join = at.entries.binding?.join ?? at.house.join;
  if (lostPerJoin(join, strip, at.house.seam).compare(width) >= 0) return undefined;
  return straightBinding(need, { usableWidth: width, strip, join, seam: at.house.seam });
}

function squareFor(at: Derivation) {
  return at.once('binding square', findSquare);
}

function findSquare(at: Derivation) {
  const need = at.figure('binding.length')?.need;
  const strip = at.figure('binding.strip')?.need.exact;
  if (!need || !strip) return undefined;
  return biasSquare({ need, strip, seam: at.house.seam, step: wholeStep(at) });
}

/** The square to cut: the one that the block states where it is large enough, else the least. */
function tubeOf(at: Derivation): BiasTube | undefined {
  const cut = squareFor(at);
  if (!cut) return undefined;
  const least = at.house['bias square by'] === 'area' ? cut.byArea : cut.byYield;
  const stated = at.entries.states?.[square.id];
  if (stated?.kind !== 'length' || stated.inches.compare(least.side) <= 0) return least;
  return biasTube(stated.inches, cut.strip, cut.seam);
}

function singleBiasCut(at: Derivation) {
  return at.once('binding bias strips', cutBiasSingly);
}

function cutBiasSingly(at: Derivation) {
  const need = at.figure('binding.length')?.need;
  const strip = at.figure('binding.strip')?.need.exact;
  const width = usableWidth(at, at.entries.binding?.from);
  if (!need || !strip || strip.compare(width) >= 0) return undefined;
  return biasStrips({ need, strip, seam: at.house.seam, step: at.house['cut to'] }, width);
}

/** The length of fabric that the binding takes, and why. */
function fabricLength(at: Derivation): { length: Rational; because: string } | undefined {
  const { show } = at;
  if (grain(at) === 'straight') {
    const cut = straightCut(at);
    if (!cut) return undefined;
    const because = `${counted(cut.pieces, 'strip')} × ${show.length(cut.strip)} = ${show.length(cut.fabricLength)}`;
    return { length: cut.fabricLength, because };
  }
  if (at.entries.binding?.['cut as'] === 'strips') {
    const cut = singleBiasCut(at);
    if (!cut) return undefined;
    const strips = counted(cut.cuts.strips.length, 'bias strip');
    const because = `${show.length(cut.fabricLength)} of fabric gives ${strips}, which join to ${show.length(cut.cuts.length)}`;
    return { length: cut.fabricLength, because };
  }
  const tube = tubeOf(at);
  if (!tube || tube.side.compare(usableWidth(at, at.entries.binding?.from)) > 0) return undefined;
  return { length: tube.side, because: `the bias square is ${show.length(tube.side)}` };
}

/** Squares for bias are cut to whole inches, or whole centimetres (common practice). */
function wholeStep(at: Derivation): Rational {
  return at.house.system === 'inch' ? ONE : toInches(ONE, 'cm');
}

/** Left out, the grain is what the edge asks for. */
function grain(at: Derivation): 'straight' | 'bias' {
  const stated = at.entries.binding?.grain;
  if (stated) return stated;
  const edge = at.entries.finished?.edge;
  return !edge || grainSuits('straight', edge) ? 'straight' : 'bias';
}

function cutAs(pattern: Pattern): 'straight' | 'strips' | 'one square' {
  const { binding, finished } = pattern.entries;
  const bias = binding?.grain
    ? binding.grain === 'bias'
    : finished?.values.some(({ edge }) => !grainSuits('straight', edge));
  return bias ? (binding?.['cut as'] ?? 'one square') : 'straight';
}

function curves(pattern: Pattern): Objection[] {
  const { binding, finished } = pattern.entries;
  if (binding?.grain !== 'straight' || !finished?.values.some(({ edge }) => !grainSuits('straight', edge)))
    return [];
  const message = 'A curved edge needs bias binding; straight-grain binding puckers on the curve.';
  return [{ code: 'curve-needs-bias', path: ['binding', 'grain'], message }];
}

function tooWide(pattern: Pattern): Objection[] {
  const { binding, fabrics } = pattern.entries;
  if (!binding) return [];
  const width =
    fabrics?.[binding.from?.label ?? '']?.['usable width']?.inches ?? pattern.house['usable width'];
  const wide = pattern.sizes.find((size) => (binding.strip.at(size)?.inches.compare(width) ?? -1) >= 0);
  if (!wide) return [];
  const message = 'The strip is as wide as the fabric or wider, so it cannot be cut across it.';
  return [{ code: 'too-wide', path: ['binding', 'strip', ...binding.strip.pathAt(wide)], message }];
}
