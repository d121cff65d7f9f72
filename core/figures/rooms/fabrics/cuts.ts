/** The cutting list of a fabric: every cut of every entry, in one place. */
import { ZERO } from '../../../quantity/rational.ts';
import type { Fabric } from '../../../trade/plan/fabric.ts';
import type { Derivation } from '../../derivation.ts';
import { isDirectional, stockOf } from '../usableWidth.ts';
import type { CutLine } from './cutLine.ts';
import { backingLines, bindingLines, pipingLines, sleeveLines } from './edges.ts';
import { blockPieceLines, ownPieceLines, unitLines } from './patches.ts';
import { borderLines, cornerSquareLines, cornerstoneLines, sashingLines, settingLines } from './setting.ts';
import type { Source } from './sources.ts';

/** The fabric of a label, as the cutting plan takes it. */
export function fabricOf(at: Derivation, label: string): Fabric {
  const stock = stockOf(at, { label });
  const squaring = stock.kind === 'roll' ? at.house.squaring : ZERO;
  return { stock, directional: isDirectional(at, { label }), squaring };
}

/** What is cut from a fabric for one entry; `undefined` when the pattern does not say enough. */
export function linesOf(
  at: Derivation,
  source: Source,
  label: string,
  fabric: Fabric,
): CutLine[] | undefined {
  const { path } = source;
  switch (source.kind) {
    case 'unit':
      return unitLines(at, source, label, fabric);
    case 'block piece':
      return blockPieceLines(at, source, fabric);
    case 'own piece':
      return ownPieceLines(at, source, fabric);
    case 'sashing':
      return sashingLines(at, path, fabric);
    case 'cornerstones':
      return cornerstoneLines(at, path, fabric);
    case 'setting triangles':
      return settingLines(at, fabric);
    case 'border':
      return borderLines(at, path, fabric);
    case 'corner squares':
      return cornerSquareLines(at, path, fabric);
    case 'binding':
      return bindingLines(at, fabric);
    case 'piping':
      return pipingLines(at, fabric);
    case 'backing':
      return backingLines(at, fabric);
    case 'sleeve':
      return sleeveLines(at, fabric);
  }
}
