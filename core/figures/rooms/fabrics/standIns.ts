/**
 * Pieces of their own that are what the layout is made of: the author says the sashing under `layout` and lists the
 * sashes under `pieces` too. They are counted once, and as many are cut as the layout takes.
 */
import type { Pattern } from '../../../block/pattern.ts';
import type { Rational } from '../../../quantity/rational.ts';
import type { Objection } from '../../definition.ts';
import type { Derivation } from '../../derivation.ts';
import { counted } from '../../sentence.ts';
import { spareCount } from '../blocks.ts';
import { bordersOf, sashingOf } from '../quilt.ts';
import { cutLength } from './cutLine.ts';

/** Something that the layout takes, under the name that pieces of it go by. */
interface Taken {
  readonly name: RegExp;
  readonly noun: readonly [one: string, several: string];
  readonly width: Rational;
  readonly length: Rational;
  readonly count: number;
  readonly fabric: string | undefined;
}

function takenBy(at: Derivation): Taken[] {
  const taken: Taken[] = [];
  const { layout, borders } = at.entries;
  const sashes = sashingOf(at);
  for (const { count, cut } of sashes ? [sashes.upright, sashes.lying] : []) {
    const size = { width: cutLength(at, cut.width), length: cutLength(at, cut.length) };
    const alike = taken.find(({ width, length }) => width.equals(size.width) && length.equals(size.length));
    const fabric = layout?.sashing?.from?.label;
    const sash: Taken = { name: /\bsash/i, noun: ['sash', 'sashes'], ...size, count, fabric };
    if (alike) taken[taken.indexOf(alike)] = { ...sash, count: count + alike.count };
    else taken.push(sash);
  }
  if (sashes && sashes.cornerstones.count > 0) {
    const side = cutLength(at, sashes.cornerstones.cut.width);
    taken.push({
      name: /\bcorner ?stones?\b/i,
      noun: ['cornerstone', 'cornerstones'],
      width: side,
      length: side,
      count: sashes.cornerstones.count,
      fabric: layout?.sashing?.cornerstones?.label,
    });
  }
  for (const [index, { cornerSquares }] of bordersOf(at).entries()) {
    if (cornerSquares.count === 0) continue;
    const side = cutLength(at, cornerSquares.cut.width);
    taken.push({
      name: /\bcorner (?:square|block)s?\b/i,
      noun: ['corner square', 'corner squares'],
      width: side,
      length: side,
      count: cornerSquares.count,
      fabric: borders?.[index]?.['corners from']?.label,
    });
  }
  return taken.filter(({ count }) => count > 0);
}

/** What a piece of its own is of the layout: by its name, its cut size and its fabric. */
export function standsFor(at: Derivation, name: string): Taken | undefined {
  const piece = at.entries.pieces?.[name];
  if (!piece || !/\b(?:sash|corner)/i.test(name)) return undefined;
  const both = at.house.seam.mul(2n);
  const sides = piece.cut ?? {
    width: piece.finished?.width.add(both),
    length: piece.finished?.length.add(both),
  };
  const { width, length } = sides;
  if (!width || !length) return undefined;
  return takenBy(at).find(
    (taken) =>
      taken.name.test(name) &&
      (piece.from === undefined || taken.fabric === undefined || piece.from.label === taken.fabric) &&
      ((taken.width.equals(width) && taken.length.equals(length)) ||
        (taken.width.equals(length) && taken.length.equals(width))),
  );
}

/** Whether such pieces are as many as the layout takes, with a few to spare. */
export function checkStandIns(pattern: Pattern, at: Derivation): Objection[] {
  return Object.entries(pattern.entries.pieces ?? {}).flatMap(([name, piece]): Objection[] => {
    const taken = standsFor(at, name);
    const stated = at.entries.pieces?.[name]?.count;
    if (!taken || !stated) return [];
    const cut = Number(stated.valueOf());
    const most = taken.count + Number(spareCount(taken.count).valueOf());
    if (cut >= taken.count && cut <= most) return [];
    const forSize = at.size.name === '' ? '' : ` for the size “${at.size.name}”`;
    const message = `The layout takes ${counted(taken.count, ...taken.noun)}${forSize}, but ${cut} ${cut === 1 ? 'is' : 'are'} cut.`;
    const code = cut < taken.count ? 'too-few-made' : 'too-many-made';
    return [{ code, path: ['pieces', name, 'count', ...piece.count.pathAt(at.size)], message }];
  });
}
