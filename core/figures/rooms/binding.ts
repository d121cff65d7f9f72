/** Binding: how much the edge takes, and what it is cut from. */
import type { Pattern } from '../../block/pattern.ts';
import { ROOT_TWO } from '../../geometry/biasTube.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { biasStrips, fewestBiasStrips } from '../../trade/bias.ts';
import { doubleFold, grainSuits, straightBinding } from '../../trade/binding.ts';
import { joinedLength, lostPerJoin } from '../../trade/joining.ts';
import type { Definition, Derived, Objection, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { aroundEdge } from './aroundEdge.ts';
import { square, tooSmallByArea, tubeOf, whatSquareGives } from './biasSquare.ts';
import { grainOf } from './grain.ts';
import { stated } from './stated.ts';
import { usableWidth } from './usableWidth.ts';

export const bindingRoom: Room = {
  define: (pattern) => {
    if (!pattern.entries.binding) return [];
    const fromSquare = [square, ...whatSquareGives(pattern)];
    const pieces = { straight: [strips], strips: [strips], 'one square': fromSquare }[cutAs(pattern)];
    return [edge, length, strip, ...pieces, yardage, finishedWidth];
  },
  check: (pattern, ledger) => [
    ...curves(pattern),
    ...tooWide(pattern),
    ...(cutAs(pattern) === 'one square' ? tooSmallByArea(pattern, ledger) : []),
  ],
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
    return stated(width);
  },
};

const strips: Definition = {
  id: 'binding.strips',
  title: 'The number of binding strips',
  kind: 'count',
  rule: 'at least',
  derive: (at) =>
    grainOf(at, at.entries.binding?.grain) === 'bias' ? biasStripCount(at) : straightStripCount(at),
};

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
  if (grainOf(at, at.entries.binding?.grain) === 'straight') {
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
  const strips = binding?.strip;
  if (!strips) return [];
  const width =
    fabrics?.[binding.from?.label ?? '']?.['usable width']?.inches ?? pattern.house['usable width'];
  const wide = pattern.sizes.find((size) => (strips.at(size)?.inches.compare(width) ?? -1) >= 0);
  if (!wide) return [];
  const message = 'The strip is as wide as the fabric or wider, so it cannot be cut across it.';
  return [{ code: 'too-wide', path: ['binding', 'strip', ...strips.pathAt(wide)], message }];
}
