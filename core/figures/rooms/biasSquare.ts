/** The square that bias binding is cut from in one strip, and what it gives. */
import type { House } from '../../block/house.ts';
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import { type BiasTube, biasTube } from '../../geometry/biasTube.ts';
import { ONE, type Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import { type BiasSquare, biasSquare, judgeSquare } from '../../trade/bias.ts';
import type { Definition, Derived, Objection } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import type { Ledger } from '../ledger.ts';
import { counted, sentence } from '../sentence.ts';
import type { Show } from '../show.ts';

export const square: Definition = {
  id: 'binding.square',
  title: 'The square for the bias binding',
  kind: 'length',
  rule: 'at least',
  derive: (at) => {
    const cut = squareFor(at);
    return cut && (at.house['bias square by'] === 'area' ? squareByArea(at, cut) : squareByYield(at, cut));
  },
};

function squareByYield({ show }: Derivation, cut: BiasSquare): Derived {
  const { byYield, byArea } = cut;
  const needed = `${show.length(cut.need)} of binding is needed`;
  return {
    need: Real.of(byYield.side),
    steps: [
      sentence(needed),
      `Sewn into a tube, ${gives(byYield, show)} of ${show.length(byYield.perPass)} each.`,
      `By the rule of thumb, √(length × width), the square would be ${show.length(byArea.side)}, which really gives ${show.length(byArea.length)}.`,
    ],
    because: `${needed}, and ${gives(byYield, show)}`,
    against: (stated) => {
      const verdict = judgeSquare(stated, cut);
      const promise = verdict.enoughByAreaOnly
        ? `; the rule of thumb promises ${show.length(verdict.areaPromise)}, but forgets the seams and what is left beside the last line`
        : '';
      return gives(verdict.gives, show) + promise;
    },
  };
}

/** The house goes by the rule of thumb: the working says what that square really gives, and what would be enough. */
function squareByArea({ show }: Derivation, cut: BiasSquare): Derived {
  const { byYield, byArea } = cut;
  const thumb = `√(${show.length(cut.need)} × ${show.length(cut.strip)}) = ${show.length(cut.areaRoot)}`;
  const because = `by the rule of thumb ${thumb}, so the square is ${show.length(byArea.side)}`;
  const short =
    cut.areaShortfall.sign() > 0
      ? `, ${show.length(cut.areaShortfall)} less than is needed; ${gives(byYield, show)}`
      : '';
  return {
    need: Real.of(byArea.side),
    steps: [
      `${show.length(cut.need)} of binding is needed.`,
      sentence(because),
      `Sewn into a tube, ${gives(byArea, show)} of ${show.length(byArea.perPass)} each${short}.`,
    ],
    because,
    against: (stated) => gives(judgeSquare(stated, cut).gives, show),
  };
}

function gives(tube: BiasTube, show: Show): string {
  return `a ${show.length(tube.side)} square gives ${show.length(tube.length)} in ${counted(tube.passes, 'pass', 'passes')}`;
}

/**
 * Of the square that the block states, exactly; else of the least square, and at least: a maker who cuts a larger
 * one goes around as often or more often, and gets as much or more.
 */
export function whatSquareGives({ entries }: Pattern): Definition[] {
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

function squareFor(at: Derivation) {
  return at.once('binding square', findSquare);
}

function findSquare(at: Derivation): BiasSquare | undefined {
  const need = at.figure('binding.length')?.need;
  const strip = at.figure('binding.strip')?.need.exact;
  if (!need || !strip) return undefined;
  return biasSquare({ need, strip, seam: at.house.seam, step: wholeStep(at.house) });
}

/** The square to cut: the one that the block states where it is large enough, else the least. */
export function tubeOf(at: Derivation): BiasTube | undefined {
  const cut = squareFor(at);
  if (!cut) return undefined;
  const least = at.house['bias square by'] === 'area' ? cut.byArea : cut.byYield;
  const stated = at.entries.states?.[square.id];
  if (stated?.kind !== 'length' || stated.inches.compare(least.side) <= 0) return least;
  return biasTube(stated.inches, cut.strip, cut.seam);
}

/** Squares for bias are cut to whole inches, or whole centimetres (common practice). */
function wholeStep({ system }: House): Rational {
  return system === 'inch' ? ONE : toInches(ONE, 'cm');
}

/** The house goes by the rule of thumb, and no larger square is stated than it gives. */
export function tooSmallByArea(pattern: Pattern, ledger: Ledger): Objection[] {
  const { entries, house } = pattern;
  if (house['bias square by'] !== 'area') return [];
  const path: BlockPath = ['house', 'bias square by'];
  for (const size of pattern.sizes) {
    const need = ledger.figure('binding.length')?.values.get(size.name)?.need;
    const strip = ledger.figure('binding.strip')?.values.get(size.name)?.need.exact;
    if (!need || !strip) continue;
    const wish = { need, strip, seam: house.seam, step: wholeStep(house) };
    const { byYield, byArea } = biasSquare(wish);
    const stated = entries.states?.[square.id]?.at(size);
    const isLarger = stated?.kind === 'length' && stated.inches.compare(byArea.side) > 0;
    const cut = isLarger ? judgeSquare(stated.inches, wish).gives : byArea;
    if (cut.side.compare(byYield.side) >= 0) continue;
    const { show } = ledger;
    const forSize = size.name === '' ? '' : ` for the size “${size.name}”`;
    const message = `${show.length(need)} of binding is needed${forSize}, but ${gives(cut, show)}: the rule of thumb forgets the seams and what is left beside the last line, and ${gives(byYield, show)}.`;
    return [{ code: 'area-rule-short', path, message }];
  }
  return [];
}
