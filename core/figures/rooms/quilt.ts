/**
 * The quilt as it grows: blocks, centre, borders. Every room that needs a size of the quilt asks here, through a
 * derivation, so that what was read is recorded.
 */

import { borderName } from '../../block/placeWords.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { type Border, type BorderCorners, borders } from '../../trade/borders.ts';
import { type Sashing, sashing } from '../../trade/sashing.ts';
import { type OnPointSetting, onPointSetting, straightSetting } from '../../trade/setting.ts';
import type { Size } from '../../trade/units/unit.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { SAYS_SO } from './stated.ts';

/** A size, and how it came about. */
export interface Grown {
  readonly size: Size;
  readonly steps: readonly string[];
  readonly because: string;
}

/** The block that the grid is laid out by: the one that the layout names, or the first. */
export function gridBlock(at: Derivation): { readonly name: string; readonly size: Size } | undefined {
  const named = at.entries.layout?.block;
  const blocks = at.entries.blocks;
  const name = named ?? Object.keys(blocks ?? {})[0];
  const finished = name === undefined ? undefined : blocks?.[name]?.finished;
  if (name === undefined || !finished) return undefined;
  return { name, size: { width: Real.of(finished.width), length: Real.of(finished.length) } };
}

export function isOnPoint(at: Derivation): boolean {
  return at.entries.layout?.set === 'on point';
}

/** Blocks set on point: only square blocks stand so. */
export function onPoint(at: Derivation): OnPointSetting | undefined {
  return at.once('on point', setOnPoint);
}

function setOnPoint(at: Derivation): OnPointSetting | undefined {
  const grid = at.entries.layout?.grid;
  const block = gridBlock(at);
  if (!isOnPoint(at) || !grid || !block || block.size.width.compare(block.size.length) !== 0)
    return undefined;
  return onPointSetting(grid, block.size.width, at.house.seam, at.house['cut to']);
}

/** The sashing of a straight set. */
export function sashingOf(at: Derivation): Sashing | undefined {
  return at.once('sashing', addSashing);
}

function addSashing(at: Derivation): Sashing | undefined {
  const { layout } = at.entries;
  const block = gridBlock(at);
  const sash = layout?.sashing?.finished;
  if (!layout?.grid || !sash || !block || isOnPoint(at)) return undefined;
  const { across, down } = layout.grid;
  return sashing(
    {
      across,
      down,
      block: block.size,
      sash: sash.inches,
      outer: layout.sashing?.around === 'yes',
      cornerstones: layout.sashing?.cornerstones !== undefined,
    },
    at.house.seam,
  );
}

/** How many blocks the layout takes. */
export function blockCount(at: Derivation): { readonly count: number; readonly because: string } | undefined {
  const grid = at.entries.layout?.grid;
  if (!grid) return undefined;
  const { across, down } = grid;
  if (!isOnPoint(at))
    return {
      count: across * down,
      because: `${across} across × ${down} down = ${counted(across * down, 'block')}`,
    };
  const [main, between] = [across * down, (across - 1) * (down - 1)];
  return {
    count: main + between,
    because: `${across} × ${down} = ${counted(main, 'block')} in the main rows and ${across - 1} × ${down - 1} = ${between} between them make ${main + between}`,
  };
}

/** The centre before any border, finished. */
export function centre(at: Derivation): Grown | undefined {
  return at.once('centre', layOutCentre);
}

function layOutCentre(at: Derivation): Grown | undefined {
  const { show } = at;
  const given = at.entries.layout?.centre;
  if (given) {
    const size = { width: Real.of(given.width), length: Real.of(given.length) };
    return { size, steps: [sentence(`the centre finishes ${show.size(size)}`)], because: SAYS_SO };
  }
  const block = gridBlock(at);
  const grid = at.entries.layout?.grid;
  if (!block || !grid) return undefined;
  const set = onPoint(at);
  if (set) {
    const diagonal = show.length(block.size.width.mul(Real.of(2).sqrt()));
    const steps = [
      `A ${show.length(block.size.width)} block on point is ${show.length(block.size.width)} × √2 = ${diagonal} across.`,
    ];
    const because = `${grid.across} × ${diagonal} by ${grid.down} × ${diagonal} is ${show.size(set.finished)}`;
    return { size: set.finished, steps: [...steps, sentence(because)], because };
  }
  if (isOnPoint(at)) return undefined;
  const sashed = sashingOf(at);
  if (!sashed) {
    const { finished: size } = straightSetting(grid, block.size);
    const because = `${grid.across} × ${show.length(block.size.width)} by ${grid.down} × ${show.length(block.size.length)} is ${show.size(size)}`;
    return { size, steps: [sentence(because)], because };
  }
  const sash = at.entries.layout?.sashing?.finished?.inches ?? rational(0);
  const more = at.entries.layout?.sashing?.around === 'yes' ? 1 : -1;
  const way = (blocks: number, side: Real) =>
    `${blocks} × ${show.length(side)} + ${blocks + more} × ${show.length(sash)}`;
  const because = `${way(grid.across, block.size.width)} by ${way(grid.down, block.size.length)} is ${show.size(sashed.finished)}`;
  return { size: sashed.finished, steps: [sentence(because)], because };
}

/** The borders, each with the quilt after it; as many as can be computed from the inside out. */
export function bordersOf(at: Derivation): Border[] {
  return at.once('borders', addBorders);
}

function addBorders(at: Derivation): Border[] {
  const inner = centre(at)?.size;
  if (!inner) return [];
  const specs: { finished: Rational; corners: BorderCorners }[] = [];
  for (const entry of at.entries.borders ?? []) {
    if (!entry.finished) break;
    specs.push({ finished: entry.finished.inches, corners: entry.corners ?? 'butted' });
  }
  return borders(inner, specs, at.house.seam);
}

/** The whole quilt, finished, as it follows from layout and borders. */
export function wholeQuilt(at: Derivation): Grown | undefined {
  return at.once('quilt', growQuilt);
}

function growQuilt(at: Derivation): Grown | undefined {
  const middle = centre(at);
  if (!middle) return undefined;
  const entries = at.entries.borders ?? [];
  const grown = bordersOf(at);
  if (grown.length < entries.length) return undefined;
  const last = grown.at(-1);
  if (!last) return middle;
  const { show } = at;
  const widths = entries.map(({ finished }) => show.length(finished?.inches ?? rational(0)));
  const steps = grown.map((border, index) =>
    sentence(
      `${borderName(index, grown.length)}, ${widths[index]} on each side, makes it ${show.size(border.finished)}`,
    ),
  );
  const because = `${show.size(middle.size)} and ${widths.length === 1 ? 'a border' : 'borders'} of ${widths.join(' and ')} on each side make ${show.size(last.finished)}`;
  return { size: last.finished, steps: [...middle.steps, ...steps], because };
}
