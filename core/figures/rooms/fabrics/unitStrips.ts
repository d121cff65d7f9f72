/** The strips that the pieces of one unit are cut from: `unit.Ripple.1.square.strips`. */
import type { Pattern } from '../../../block/pattern.ts';
import { rational } from '../../../quantity/rational.ts';
import { Real } from '../../../quantity/real.ts';
import { type PlainCut, plainCut } from '../../../trade/plan/plain.ts';
import type { Definition } from '../../definition.ts';
import type { Derivation } from '../../derivation.ts';
import { counted, sentence } from '../../sentence.ts';
import { type CutName, cutNames, isUnit, type PartPlace, partsOf, requirementOf } from '../parts.ts';
import { fabricOf } from './cuts.ts';

export function unitStrips(pattern: Pattern): Definition[] {
  return partsOf(pattern.entries)
    .filter(({ part }) => isUnit(part))
    .flatMap((place) => cutNames(pattern, place).flatMap((cut, index) => figuresOf(place, cut, index)));
}

function figuresOf(place: PartPlace, { id, role }: CutName, index: number): Definition[] {
  const base = `unit.${place.block}.${place.index + 1}.${id}`;
  return [
    {
      id: `${base}.per-strip`,
      title: `The number of ${role}s from one strip`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const found = stripsFor(at, place, index);
        if (!found) return undefined;
        const { cut, usable, span } = found;
        const because = `a strip of ${at.show.length(usable)} gives ${cut.perStrip} of ${at.show.length(span)}`;
        return { need: Real.of(cut.perStrip), steps: [sentence(because)], because };
      },
    },
    {
      id: `${base}.strips`,
      title: `The number of strips for the ${role}s of ${place.block}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const found = stripsFor(at, place, index);
        if (!found) return undefined;
        const { cut } = found;
        const because = `at ${cut.perStrip} from a strip ${at.show.length(cut.stripWidth)} wide, ${counted(cut.piece.count, role)} ${cut.piece.count === 1 ? 'takes' : 'take'} ${counted(cut.strips, 'strip')}`;
        const spare = rational(Math.max(2, Math.ceil(cut.strips / 10)));
        return { need: Real.of(cut.strips), steps: [sentence(because)], because, spare };
      },
    },
  ];
}

/** The plain count of one cut; nothing for what is itself a strip, or comes from precuts. */
function stripsFor(at: Derivation, place: PartPlace, index: number) {
  const cut = requirementOf(at, place)?.cuts[index];
  const part = at.entries.blocks?.[place.block]?.of?.[place.index];
  if (!cut || !part || !isUnit(part) || cut.fullWidth || cut.count === 0) return undefined;
  const from = part.from?.[cut.from % part.from.length];
  const fabric = fabricOf(at, from?.label ?? '');
  if (fabric.stock.kind !== 'roll') return undefined;
  const usable = fabric.stock.usableWidth;
  const piece = { id: cut.role, width: cut.cutWidth, length: cut.cutLength, count: cut.count };
  const plain: PlainCut | undefined = plainCut(piece, usable, fabric);
  if (!plain) return undefined;
  return { cut: plain, usable, span: plain.run === 'crosswise' ? piece.length : piece.width };
}
