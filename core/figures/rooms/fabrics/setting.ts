/** What is cut for the layout: sashing, cornerstones, setting triangles and borders. */
import type { BlockPath } from '../../../block/place.ts';
import { borderName } from '../../../block/placeWords.ts';
import { floor, type Rational, ZERO } from '../../../quantity/rational.ts';
import { Real } from '../../../quantity/real.ts';
import { joinPieces, lostPerJoin } from '../../../trade/joining.ts';
import { waysOf } from '../../../trade/plan/anyWay.ts';
import type { CutPiece, Fabric } from '../../../trade/plan/fabric.ts';
import type { SashPiece } from '../../../trade/sashing.ts';
import type { Derivation } from '../../derivation.ts';
import { counted } from '../../sentence.ts';
import { bordersOf, onPoint, sashingOf } from '../quilt.ts';
import { acrossStrips, type CutLine, cutLength, joinedLine, type PlainStrips, pieceLine } from './cutLine.ts';

type Lines = CutLine[] | undefined;

export function sashingLines(at: Derivation, path: BlockPath, fabric: Fabric): Lines {
  const sashes = sashingOf(at);
  if (!sashes) return undefined;
  const { upright, lying } = sashes;
  // All of one length are one kind, unless the print is to stand upright in both.
  const alike = !fabric.directional && upright.cut.length.compare(lying.cut.length) === 0;
  const kinds = alike ? [{ ...upright, count: upright.count + lying.count }] : [upright, lying];
  const lines = kinds
    .filter(({ count }) => count > 0)
    .map((kind) =>
      sashLine(at, path, kind, fabric, fabric.directional ? { lengthwise: kind === upright } : {}),
    );
  return lines.every((line) => line !== undefined) ? lines : undefined;
}

/** Sashes that are longer than the fabric is wide are cut from joined strips. */
function sashLine(
  at: Derivation,
  path: BlockPath,
  { count, cut }: SashPiece,
  fabric: Fabric,
  run: Pick<CutPiece, 'lengthwise'>,
) {
  const what = counted(count, 'sash', 'sashes');
  const [width, length] = [cutLength(at, cut.width), cutLength(at, cut.length)];
  const each = across(fabric);
  const here = [...path, 'finished'];
  if (length.compare(each) <= 0) return pieceLine(what, here, { width, length, count, ...run }, fabric);
  const need = Real.of(length.mul(BigInt(count)));
  const lost = lostPerJoin(at.house.join, width, at.house.seam);
  if (lost.compare(each) >= 0) return undefined;
  const { pieces } = joinPieces(need, each, lost);
  return joinedLine(at, { what, path: here, strip: width, count: pieces, need, each, lost });
}

export function cornerstoneLines(at: Derivation, path: BlockPath, fabric: Fabric): Lines {
  const stones = sashingOf(at)?.cornerstones;
  if (!stones) return undefined;
  const side = cutLength(at, stones.cut.width);
  const { count } = stones;
  const piece = { width: side, length: side, count };
  return [pieceLine(counted(count, 'cornerstone'), [...path, 'finished'], piece, fabric)];
}

export function settingLines(at: Derivation, fabric: Fabric): Lines {
  const set = onPoint(at);
  if (!set) return undefined;
  return (['side', 'corner'] as const).flatMap((place) => {
    const { squares, cut } = set[place];
    if (squares === 0) return [];
    const what = `${counted(squares, 'square')} for ${place === 'side' ? 'side setting' : 'corner'} triangles`;
    return [pieceLine(what, ['layout', 'grid'], { width: cut, length: cut, count: squares }, fabric)];
  });
}

export function borderLines(at: Derivation, path: BlockPath, fabric: Fabric): Lines {
  const [, index] = path as [string, number];
  const n = index + 1;
  const strip = at.figure(`border.${n}.strip`)?.shown;
  const [side, top] = [at.figure(`border.${n}.side`), at.figure(`border.${n}.top`)];
  if (!strip || !side || !top) return undefined;
  const what = borderName(index, at.entries.borders?.length ?? 0);
  const here = [...path, 'finished'];
  const lengths = [cutLength(at, side.need), cutLength(at, top.need)];
  // Borders are strips across the fabric, whatever its print, unless the author says otherwise.
  const along = at.entries.borders?.[index]?.along ?? (fabric.directional ? 'width' : undefined);
  const each = across(fabric);
  const pieces = lengths.map((length, which) => ({
    id: `${which === 0 ? 'the sides' : 'top and bottom'} of ${what}`,
    width: strip,
    length,
    count: 2,
    ...(along === undefined ? {} : { lengthwise: along === 'length' }),
  }));
  const line = { what, path: here, pieces, ways: pieces.map((piece) => waysOf(piece, fabric)) };
  if (along === 'length') return [{ ...line, strips: lengthwise(strip, lengths, each) }];
  const strips = at.figure(`border.${n}.strips`)?.shown;
  if (!strips) return undefined;
  const count = Number(strips.valueOf());
  const total = lengths.reduce((sum, length) => sum.add(length)).mul(2n);
  if (lengths.every((length) => length.compare(each) <= 0))
    return [{ ...line, strips: acrossStrips(count, strip, each.mul(BigInt(count)).sub(total)) }];
  const lost = lostPerJoin(at.house.join, strip, at.house.seam);
  return [joinedLine(at, { what, path: here, strip, count, need: Real.of(total), each, lost })];
}

/** Two of each length, side by side where the fabric is wide enough for all four, else the longer pair first. */
function lengthwise(strip: Rational, lengths: readonly Rational[], each: Rational): PlainStrips {
  const abreast = Math.max(1, Number(floor(each.div(strip))));
  const sorted = lengths.flatMap((length) => [length, length]).sort((a, b) => b.compare(a));
  const rows = sorted.filter((_, index) => index % abreast === 0);
  const length = rows.reduce((sum, row) => sum.add(row), ZERO);
  return { kind: 'strips along the length', count: sorted.length, size: strip, length };
}

export function cornerSquareLines(at: Derivation, path: BlockPath, fabric: Fabric): Lines {
  const [, index] = path as [string, number];
  const squares = bordersOf(at)[index]?.cornerSquares;
  if (!squares) return undefined;
  const side = cutLength(at, squares.cut.width);
  const { count } = squares;
  const what = `${counted(count, 'corner square')} of ${borderName(index, at.entries.borders?.length ?? 0)}`;
  return [pieceLine(what, [...path, 'finished'], { width: side, length: side, count }, fabric)];
}

/** How long a strip across the fabric is. */
export function across({ stock }: Fabric): Rational {
  return stock.kind === 'roll' ? stock.usableWidth : stock.width;
}
