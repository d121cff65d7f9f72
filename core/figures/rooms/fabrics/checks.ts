/** Pieces that their fabric cannot give, and pieces that are cut in another number than the layout takes. */
import type { Pattern } from '../../../block/pattern.ts';
import type { Size } from '../../../block/values/perSize.ts';
import { type CutPiece, extent, type Fabric } from '../../../trade/plan/fabric.ts';
import { type Misfit, misfit } from '../../../trade/plan/problem.ts';
import type { Objection } from '../../definition.ts';
import { Derivation } from '../../derivation.ts';
import type { Ledger } from '../../ledger.ts';
import type { Show } from '../../show.ts';
import { type CutLine, misfitOf } from './cutLine.ts';
import { fabricOf, linesOf } from './cuts.ts';
import { across } from './setting.ts';
import { type Source, sourcesOf } from './sources.ts';
import { checkStandIns } from './standIns.ts';

export function checkCuts(pattern: Pattern, ledger: Ledger): Objection[] {
  const { all } = sourcesOf(pattern);
  const found = pattern.sizes.flatMap((size) => {
    const at = Derivation.reading(pattern, size, ledger);
    const cuts = all.flatMap((source) =>
      [...new Set(source.fabrics)].flatMap((label) => objections(at, pattern, size, source, label)),
    );
    return [...cuts, ...checkStandIns(pattern, at)];
  });
  return [...new Map(found.map((one) => [`${one.code} ${one.path.join('\u0000')}`, one])).values()];
}

function objections(
  at: Derivation,
  pattern: Pattern,
  size: Size,
  source: Source,
  label: string,
): Objection[] {
  const fabric = fabricOf(at, label);
  const lines = linesOf(at, source, label, fabric) ?? [];
  return lines.flatMap((line): Objection[] => {
    const path = placeOf(pattern, line, size);
    const bad = misfitOf(line, fabric);
    if (bad) return [{ ...refusal(at.show, bad.piece, bad.why, fabric, label), path }];
    const [piece] = line.pieces;
    if (source.kind === 'own piece' && piece && isLong(piece, fabric))
      return [{ code: 'longer-than-width', path, message: long(at.show, piece, fabric, label) }];
    return [];
  });
}

/** The place of the value that holds for a size. */
function placeOf({ entries }: Pattern, { path }: CutLine, size: Size): Objection['path'] {
  const value = path.reduce<unknown>(
    (inner, step) => (inner as Record<string, unknown> | undefined)?.[step],
    entries,
  );
  const perSize = value as { pathAt?: (size: Size) => Objection['path'] } | undefined;
  return perSize?.pathAt ? [...path, ...perSize.pathAt(size)] : path;
}

function refusal(
  show: Show,
  piece: CutPiece,
  why: Misfit,
  fabric: Fabric,
  label: string,
): Pick<Objection, 'code' | 'message'> {
  const turned = fabric.directional && !misfit(piece, { ...fabric, directional: false });
  if (fabric.stock.kind === 'sheets') {
    const whose = turned ? ' whose print has a direction' : '';
    const message = `A ${fabric.stock.name} of ${show.size(fabric.stock)} is too small for a piece of ${show.size(piece)}${whose}.`;
    return { code: 'precut-too-small', message };
  }
  if (why === 'longer than the fabric is wide')
    return { code: 'longer-than-width', message: long(show, piece, fabric, label) };
  const message = `A piece of ${show.size(piece)} cannot be cut from fabric ${label}, which is ${show.length(across(fabric))} wide${turned ? ' and whose print has a direction' : ''}.`;
  return { code: 'too-wide', message };
}

function long(show: Show, piece: CutPiece, fabric: Fabric, label: string): string {
  return `The piece is ${show.length(piece.length)} long, but fabric ${label} is only ${show.length(across(fabric))} wide; write “along: length” if it is cut along the length of the fabric.`;
}

/** Whether a piece that does not say which way it is cut can only be cut along the length. */
function isLong(piece: CutPiece, fabric: Fabric): boolean {
  if (fabric.stock.kind !== 'roll' || fabric.directional || piece.lengthwise !== undefined) return false;
  return extent(piece, 'crosswise').across.compare(fabric.stock.usableWidth) > 0;
}
