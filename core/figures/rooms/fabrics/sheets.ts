/** How many fat quarters, precut strips or squares a cutting list takes when it is cut plainly. Lengths in inches. */
import type { Rational } from '../../../quantity/rational.ts';
import { allowedRuns, type CutPiece, extent, type Fabric } from '../../../trade/plan/fabric.ts';
import { perStrip, stripsFor } from '../../../trade/plan/plain.ts';

/** Strips for one kind of piece, all across the sheet or all along it. */
export interface SheetLine {
  readonly piece: CutPiece;
  readonly width: Rational;
  readonly perStrip: number;
  readonly strips: number;
}

export interface PlainSheets {
  readonly count: number;
  readonly lines: readonly SheetLine[];
}

/**
 * Every kind of piece from strips of its own, as on a roll; the strips share sheets, the widest first, each on the
 * first sheet that has room. All strips run the same way, whichever takes fewer sheets. `undefined` when a piece
 * does not fit.
 */
export function plainSheets(fabric: Fabric, pieces: readonly CutPiece[]): PlainSheets | undefined {
  const { stock } = fabric;
  if (stock.kind !== 'sheets') return undefined;
  const plans = [
    stripsIn(fabric, pieces, stock.width, stock.length, false),
    stripsIn(fabric, pieces, stock.length, stock.width, true),
  ].filter((plan) => plan !== undefined);
  return plans.sort((a, b) => a.count - b.count)[0];
}

function stripsIn(
  fabric: Fabric,
  pieces: readonly CutPiece[],
  capacity: Rational,
  room: Rational,
  turned: boolean,
): PlainSheets | undefined {
  const lines: SheetLine[] = [];
  for (const piece of pieces) {
    const ways = allowedRuns(piece, fabric).flatMap((run) => {
      const { across, along } = extent(piece, run);
      const [span, width] = turned ? [along, across] : [across, along];
      const each = perStrip(capacity, span);
      if (each === 0 || width.compare(room) > 0) return [];
      return [{ piece, width, perStrip: each, strips: stripsFor(piece.count, each) }];
    });
    const [best] = ways.sort(
      (a, b) => a.width.mul(BigInt(a.strips)).compare(b.width.mul(BigInt(b.strips))) || a.strips - b.strips,
    );
    if (!best) return undefined;
    lines.push(best);
  }
  return { count: sheetsFor(lines, room), lines };
}

/** More strips than in any quilt are not laid out one by one. */
const MOST_STRIPS = 2000;

function sheetsFor(lines: readonly SheetLine[], room: Rational): number {
  if (lines.reduce((sum, { strips }) => sum + strips, 0) > MOST_STRIPS)
    return lines.reduce((sum, { width, strips }) => sum + stripsFor(strips, perStrip(room, width)), 0);
  const widths = lines
    .flatMap(({ width, strips }) => Array.from({ length: strips }, () => width))
    .sort((a, b) => b.compare(a));
  const rests: Rational[] = [];
  for (const width of widths) {
    const at = rests.findIndex((rest) => rest.compare(width) >= 0);
    if (at < 0) rests.push(room.sub(width));
    else rests[at] = (rests[at] as Rational).sub(width);
  }
  return rests.length;
}
