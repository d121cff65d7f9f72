/** The cuts of units and pieces: of blocks, and by themselves. */
import { Real } from '../../../quantity/real.ts';
import type { CutPiece, Fabric } from '../../../trade/plan/fabric.ts';
import type { Derivation } from '../../derivation.ts';
import { blocksMade, isUnit, requirementOf } from '../parts.ts';
import { type CutLine, cutLength, pieceLine } from './cutLine.ts';
import type { Source } from './sources.ts';
import { standsFor } from './standIns.ts';

/** What the units of one part of a block take of a fabric. */
export function unitLines(
  at: Derivation,
  source: Source,
  label: string,
  fabric: Fabric,
): CutLine[] | undefined {
  const [, block, , index] = source.path as [string, string, string, number];
  const requirement = requirementOf(at, { block, index });
  if (!requirement) return undefined;
  const across = fabric.stock.kind === 'roll' ? fabric.stock.usableWidth : fabric.stock.width;
  return requirement.cuts
    .filter(({ from }) => source.fabrics[from % source.fabrics.length] === label)
    .map((cut) =>
      pieceLine(
        `${cut.count} ${cut.role}${cut.count === 1 ? '' : 's'} of ${block}`,
        [...source.path, 'finished'],
        {
          width: cut.cutWidth,
          // Strips of a strip set are as long as the fabric that they are cut from is wide.
          length: cut.fullWidth ? across : cut.cutLength,
          count: cut.count,
          ...(cut.fullWidth ? { lengthwise: false } : {}),
        },
        fabric,
      ),
    );
}

/** A piece of a block. One that comes in several fabrics does not say how many are cut from which. */
export function blockPieceLines(at: Derivation, source: Source, fabric: Fabric): CutLine[] | undefined {
  const [, block, , index] = source.path as [string, string, string, number];
  const part = at.entries.blocks?.[block]?.of?.[index];
  const made = blocksMade(at, block);
  if (!part || isUnit(part) || made === undefined || !part.count) return undefined;
  const size = sizeOf(at, part);
  if (!size || new Set(source.fabrics).size > 1) return undefined;
  const count = Number(part.count.valueOf()) * made;
  const path = [...source.path, part.cut ? 'cut' : 'finished'];
  return [pieceLine(`${count} “${part.piece}” of ${block}`, path, { ...size, count }, fabric)];
}

export function ownPieceLines(at: Derivation, source: Source, fabric: Fabric): CutLine[] | undefined {
  const [, name] = source.path as [string, string];
  const piece = at.entries.pieces?.[name];
  const size = piece && sizeOf(at, piece);
  if (!size || !piece.count) return undefined;
  // Counted with the layout, where that names its fabric.
  if (standsFor(at, name)?.fabric !== undefined) return [];
  const count = Number(piece.count.valueOf());
  const run = piece.along === undefined ? {} : { lengthwise: piece.along === 'length' };
  const path = [...source.path, piece.cut ? 'cut' : 'finished'];
  return [pieceLine(`${count} “${name}”`, path, { ...size, count, ...run }, fabric)];
}

type Sized = Pick<CutPiece, 'width' | 'length'>;

function sizeOf(
  at: Derivation,
  piece: { readonly cut?: Sized | undefined; readonly finished?: Sized | undefined },
): Sized | undefined {
  if (piece.cut) return { width: piece.cut.width, length: piece.cut.length };
  if (!piece.finished) return undefined;
  const seams = Real.of(at.house.seam.mul(2n));
  const side = (finished: Sized['width']) => cutLength(at, Real.of(finished).add(seams));
  return { width: side(piece.finished.width), length: side(piece.finished.length) };
}
