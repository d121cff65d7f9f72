/** The widths of the strips that a fabric may be cut into, over all sizes: each is a figure of its own. */
import type { Pattern } from '../../../block/pattern.ts';
import { floor, type Rational } from '../../../quantity/rational.ts';
import { fromInches } from '../../../quantity/units.ts';
import { Derivation } from '../../derivation.ts';
import { grainOf } from '../grain.ts';
import { fabricOf, linesOf } from './cuts.ts';
import type { Source, Sources } from './sources.ts';
import { widthsOf } from './strips.ts';

export interface StripWidth {
  readonly inches: Rational;
  /** In the unit of the house, as it stands in the name of the figure: `2 1/2`. */
  readonly id: string;
  /** As the working writes it: `2½"`. */
  readonly shown: string;
}

export function stripWidths(pattern: Pattern, { all }: Sources, label: string): StripWidth[] {
  const found = new Map<string, StripWidth>();
  for (const size of pattern.sizes) {
    const at = Derivation.unrecorded(pattern, size);
    const fabric = fabricOf(at, label);
    const widths = all
      .filter(({ fabrics }) => fabrics.includes(label))
      .flatMap((source) => {
        const joined = joinedWidth(at, source);
        if (joined) return [joined];
        const lines = linesOf(at, source, label, fabric) ?? [];
        return lines.flatMap(({ pieces, strips }) =>
          strips ? [strips.size] : pieces.flatMap((piece) => widthsOf(piece, fabric)),
        );
      });
    for (const inches of widths) {
      const id = mixed(at.house.system === 'metric' ? fromInches(inches, 'cm') : inches);
      found.set(id, { inches, id, shown: at.show.length(inches) });
    }
  }
  return [...found.values()].sort((a, b) => b.inches.compare(a.inches));
}

/** Of strips whose number waits for other figures, the width that the entry tells by itself. */
function joinedWidth(at: Derivation, { kind, path }: Source): Rational | undefined {
  const { borders, binding, sleeve } = at.entries;
  const both = at.house.seam.mul(2n);
  const border = kind === 'border' ? borders?.[Number(path[1])] : undefined;
  if (border) return border.finished?.inches.add(both);
  if (kind === 'binding' && grainOf(at, binding?.grain) === 'straight') return binding?.strip?.inches;
  if (kind === 'sleeve') return sleeve?.['finished depth']?.inches.mul(2n).add(both);
  return undefined;
}

/** `2 1/2` for 5/2. */
function mixed(value: Rational): string {
  const whole = floor(value);
  const rest = value.sub(whole);
  const part = rest.n === 0n ? '' : `${rest.n}/${rest.d}`;
  return [whole === 0n && part ? '' : String(whole), part].filter(Boolean).join(' ');
}
