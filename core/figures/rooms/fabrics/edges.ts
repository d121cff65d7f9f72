/** What goes around the edge and behind the top: binding, piping, backing and sleeve. */
import type { Rational } from '../../../quantity/rational.ts';
import { type Real, roundDown } from '../../../quantity/real.ts';
import { biasStrips } from '../../../trade/bias.ts';
import { straightBinding } from '../../../trade/binding.ts';
import { joinPieces, lostPerJoin } from '../../../trade/joining.ts';
import type { Lying } from '../../../trade/plan/anyWay.ts';
import type { Fabric } from '../../../trade/plan/fabric.ts';
import type { Derivation } from '../../derivation.ts';
import { tubeOf } from '../biasSquare.ts';
import { grainOf } from '../grain.ts';
import { type CutLine, cutLength, joinedLine, pieceLine } from './cutLine.ts';
import { across } from './setting.ts';

type Lines = CutLine[] | undefined;

export function bindingLines(at: Derivation, fabric: Fabric): Lines {
  const { binding } = at.entries;
  const what = 'the binding';
  const path = ['binding', 'strip'];
  if (at.figure('binding.square')) {
    const side = tubeOf(at)?.side;
    if (!side) return undefined;
    const line = pieceLine(what, path, { width: side, length: side, count: 1 }, fabric);
    return [{ ...line, strips: { kind: 'square', count: 1, size: side, length: side } }];
  }
  const strip = at.figure('binding.strip')?.shown;
  const need = at.figure('binding.length')?.need;
  if (!strip || !need) return undefined;
  if (grainOf(at, binding?.grain) === 'bias') {
    const cloth = at.figure('binding.yardage')?.need.exact?.sub(at.house.squaring);
    return cloth && [biasLine(at, what, strip, need, cloth, fabric)];
  }
  const strips = at.figure('binding.strips')?.shown;
  if (!strips) return undefined;
  const count = Number(strips.valueOf());
  const lost = lostPerJoin(binding?.join ?? at.house.join, strip, at.house.seam);
  return [joinedLine(at, { what, path, strip, count, need, each: across(fabric), lost, alone: true })];
}

/** Piping is cut as binding is, in strips. */
export function pipingLines(at: Derivation, fabric: Fabric): Lines {
  const strip = at.figure('piping.strip')?.shown;
  const need = at.figure('piping.length')?.need;
  const each = across(fabric);
  if (!strip || !need || strip.compare(each) >= 0) return undefined;
  const what = 'the piping';
  const { seam, join } = at.house;
  if (grainOf(at, at.entries.piping?.grain ?? 'bias') === 'bias') {
    const { fabricLength } = biasStrips({ need, strip, seam, step: at.house['cut to'] }, each);
    return [biasLine(at, what, strip, need, fabricLength, fabric)];
  }
  const lost = lostPerJoin(join, strip, seam);
  if (lost.compare(each) >= 0) return undefined;
  const { pieces: count } = straightBinding(need, { usableWidth: each, strip, join, seam });
  return [joinedLine(at, { what, path: ['piping', 'cord'], strip, count, need, each, lost, alone: true })];
}

/** A length of the whole fabric for bias strips; a clever cutter takes no more of it than the strips cover. */
function biasLine(
  at: Derivation,
  what: string,
  strip: Rational,
  need: Real,
  cloth: Rational,
  fabric: Fabric,
): CutLine {
  const covered: Lying = { across: strip, along: roundDown(need, at.house['cut to']), count: 1 };
  return {
    what,
    path: [what === 'the piping' ? 'piping' : 'binding'],
    pieces: [{ id: what, width: cloth, length: across(fabric), count: 1, lengthwise: false }],
    ways: [[[covered]]],
    alone: cloth,
    strips: { kind: 'bias cloth', count: 1, size: cloth, length: cloth },
  };
}

/** Panels from selvage to selvage, the last one only as wide as the backing still needs. */
export function backingLines(at: Derivation, fabric: Fabric): Lines {
  const [width, length] = [at.figure('backing.width')?.need, at.figure('backing.length')?.need];
  const panel = at.figure('backing.panel-length')?.need;
  const panels = at.figure('backing.panels')?.shown;
  if (!width || !length || !panel || !panels) return undefined;
  const each = across(fabric);
  const lost = at.house['backing seam'].mul(2n);
  const lying = (reach: Real, runs: Real): Lying[] => {
    const { pieces } = joinPieces(reach, each, lost);
    const along = cutLength(at, runs);
    const last = cutLength(at, reach).sub(each.sub(lost).mul(BigInt(pieces - 1)));
    const whole = { across: each, along, count: pieces - 1 };
    return [whole, { across: last, along, count: 1 }].filter(({ count }) => count > 0);
  };
  const stated = at.entries.backing?.seams;
  const vertical = lying(width, length);
  const horizontal = lying(length, width);
  const chosen = panel.compare(length) === 0 && stated !== 'horizontal' ? vertical : horizontal;
  const [count, size] = [Number(panels.valueOf()), cutLength(at, panel)];
  const alone = size.mul(BigInt(count));
  return [
    {
      what: 'the backing',
      path: ['backing'],
      pieces: chosen.map((part, index) => ({
        id: index === 0 && count > 1 ? 'panels of the backing' : 'panel of the backing',
        width: part.across,
        length: part.along,
        count: part.count,
        lengthwise: true,
      })),
      ways: [stated ? [chosen] : [vertical, horizontal]],
      alone,
      strips: { kind: 'panels', count, size, length: alone },
    },
  ];
}

export function sleeveLines(at: Derivation, fabric: Fabric): Lines {
  const depth = at.figure('sleeve.cut-depth')?.need;
  const run = at.figure('sleeve.cut-length')?.need;
  if (!depth || !run) return undefined;
  const what = 'the sleeve';
  const path = ['sleeve', 'finished depth'];
  const [strip, length, each] = [cutLength(at, depth), cutLength(at, run), across(fabric)];
  if (length.compare(each) <= 0) {
    // Nobody sees which way the print of a sleeve runs.
    const run = fabric.directional ? { lengthwise: false } : {};
    return [pieceLine(what, path, { width: strip, length, count: 1, ...run }, fabric)];
  }
  const lost = lostPerJoin('straight', strip, at.house.seam);
  const { pieces: count } = joinPieces(run, each, lost);
  return [joinedLine(at, { what, path, strip, count, need: run, each, lost })];
}
