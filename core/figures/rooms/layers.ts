/** Backing and batting: what lies under the top and stands out around it. */
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { type Backing, backing, type PanelPlan } from '../../trade/backing.ts';
import { layerSize } from '../../trade/batting.ts';
import type { Definition, Derived, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import type { FigureValue } from '../figure.ts';
import { counted, sentence } from '../sentence.ts';
import { stated } from './stated.ts';
import { usableWidth } from './usableWidth.ts';

type Layer = 'backing' | 'batting';

export const layersRoom: Room = {
  define: ({ entries }) => [
    ...(entries.backing
      ? [overhang('backing'), ...sides('backing'), panels, seams, panelLength, yardage]
      : []),
    ...(entries.batting ? [overhang('batting'), ...sides('batting')] : []),
  ],
};

function overhang(layer: Layer): Definition {
  return {
    id: `${layer}.overhang`,
    title: `The overhang of the ${layer} on each side`,
    kind: 'length',
    rule: 'exact',
    derive: (at) => {
      const own = at.entries[layer]?.overhang?.inches;
      if (own) return stated(own);
      const usual = at.figure('house.overhang');
      return usual && { need: usual.need, steps: usual.steps, because: usual.because };
    },
  };
}

function sides(layer: Layer): Definition[] {
  return (['width', 'length'] as const).map((side) => ({
    id: `${layer}.${side}`,
    title: `The ${side} of the ${layer}`,
    kind: 'length',
    rule: 'at least',
    derive: (at) => {
      const top = topSide(at, side);
      if (!top) return undefined;
      const { show } = at;
      const overhang = overhangOf(at, layer);
      const need = layerSize({ width: top.need, length: top.need }, overhang)[side];
      const because = `${show.length(top.need)} plus ${show.length(overhang)} on each side is ${show.length(need)}`;
      return { need, steps: [sentence(because)], because };
    },
  }));
}

const panels: Definition = {
  id: 'backing.panels',
  title: 'The number of backing panels',
  kind: 'count',
  rule: 'exact',
  derive: (at) => {
    const plan = chosenPlan(at);
    return plan && { need: Real.of(plan.pieces), ...explain(at, plan) };
  },
};

const seams: Definition = {
  id: 'backing.seams',
  title: 'The number of seams in the backing',
  kind: 'count',
  rule: 'exact',
  derive: (at) => {
    const plan = chosenPlan(at);
    if (!plan) return undefined;
    const because =
      plan.pieces === 1
        ? 'a single panel has no seam'
        : `${counted(plan.pieces, 'panel')} are joined by ${counted(plan.pieces - 1, `${plan.seams} seam`)}`;
    return { need: Real.of(plan.pieces - 1), steps: [sentence(because)], because };
  },
};

const panelLength: Definition = {
  id: 'backing.panel-length',
  title: 'The length of a backing panel',
  kind: 'length',
  rule: 'at least',
  derive: (at) => {
    const plan = chosenPlan(at);
    if (!plan) return undefined;
    const way = plan.seams === 'vertical' ? 'long' : 'wide';
    const runs = plan.pieces === 1 ? 'the single panel runs' : `with ${plan.seams} seams each panel runs`;
    const because = `${runs} the whole way of the backing, which is ${at.show.length(plan.panelLength)} ${way}`;
    return { need: plan.panelLength, steps: [sentence(because)], because };
  },
};

const yardage: Definition = {
  id: 'backing.yardage',
  title: 'The fabric for the backing',
  kind: 'yardage',
  rule: 'at least',
  derive: (at): Derived | undefined => {
    const cut = backingOf(at);
    const plan = chosenPlan(at);
    if (!cut || !plan) return undefined;
    const { show } = at;
    const { squaring } = at.house;
    const takes = (p: PanelPlan) =>
      `${counted(p.pieces, 'panel')} of ${show.length(p.panelLength)} ${p.pieces === 1 ? 'takes' : 'take'} ${show.length(p.fabricLength)}`;
    const because = takes(plan);
    const other = plan === cut.vertical ? cut.horizontal : cut.vertical;
    const steps = [...explain(at, plan).steps, sentence(because)];
    if (other.pieces > 1) steps.push(`With ${other.seams} seams, ${takes(other)}.`);
    else if (plan.pieces > 1) steps.push(`Turned the other way, ${takes(other)}.`);
    if (squaring.n !== 0n) steps.push(`Straightening the end takes another ${show.length(squaring)}.`);
    return { need: plan.fabricLength.add(Real.of(squaring)), step: at.house['sell by'], steps, because };
  },
};

function explain(at: Derivation, plan: PanelPlan): { steps: string[]; because: string } {
  const { show } = at;
  const across = `the backing must reach ${show.length(plan.need)} ${plan.seams === 'vertical' ? 'across' : 'down'}`;
  const fabric =
    plan.pieces === 1
      ? `one width of ${show.length(plan.each)} is enough`
      : `${plan.pieces} widths of ${show.length(plan.each)}, joined, give ${show.length(plan.joined)}`;
  const because = `${across}, and ${fabric}`;
  return { steps: [sentence(because)], because };
}

/** The backing with its seams either way. */
export function backingOf(at: Derivation): Backing | undefined {
  return at.once('backing', planBacking);
}

function planBacking(at: Derivation): Backing | undefined {
  const [width, length] = [topSide(at, 'width'), topSide(at, 'length')];
  if (!width || !length) return undefined;
  return backing({
    top: { width: width.need, length: length.need },
    overhang: overhangOf(at, 'backing'),
    usableWidth: usableWidth(at, at.entries.backing?.from),
    panelSeam: at.house['backing seam'],
  });
}

export function chosenPlan(at: Derivation): PanelPlan | undefined {
  const cut = backingOf(at);
  const stated = at.entries.backing?.seams;
  return cut && (stated ? cut[stated] : cut.best);
}

function topSide(at: Derivation, side: 'width' | 'length'): FigureValue | undefined {
  return at.figure(`finished.${side}`);
}

export function overhangOf(at: Derivation, layer: Layer): Rational {
  return at.entries[layer]?.overhang?.inches ?? at.house.overhang;
}
