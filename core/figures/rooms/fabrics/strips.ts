/** Strips of one width: how many the plain count cuts, and how few can do. Lengths in inches. */
import { ceil, floor, type Rational, ZERO } from '../../../quantity/rational.ts';
import { allowedRuns, extent, type Fabric } from '../../../trade/plan/fabric.ts';
import { perStrip, stripsFor } from '../../../trade/plan/plain.ts';
import type { CuttingList, PlainLine } from './cuttingList.ts';

/** The strips of one width that a list is cut from. */
export interface Strips {
  readonly count: number;
  readonly least: number;
  readonly lines: readonly PlainLine[];
}

/** The widths of strips that pieces may be cut from. */
export function widthsOf(
  piece: Parameters<typeof extent>[0] & { lengthwise?: boolean },
  fabric: Fabric,
): Rational[] {
  if (fabric.stock.kind !== 'roll') return [];
  const { usableWidth } = fabric.stock;
  return allowedRuns({ id: '', count: 1, ...piece }, fabric)
    .map((run) => extent(piece, run))
    .filter(({ across }) => across.compare(usableWidth) <= 0)
    .map(({ along }) => along);
}

/**
 * The strips of one width in the plain count. A width that the plain count does not cut is taken for the pieces that
 * would fit it if they lay the other way; `undefined` when there is none.
 */
export function stripsOf(
  list: CuttingList,
  plain: readonly PlainLine[],
  width: Rational,
): Strips | undefined {
  const cut = plain.filter(({ strips }) => strips.kind === 'strips' && strips.size.equals(width));
  const lines = cut.length > 0 ? cut : turned(list, width);
  if (lines.length === 0) return undefined;
  const count = lines.reduce((sum, { strips }) => sum + strips.count, 0);
  return { count, least: leastOf(list, plain, lines, width), lines };
}

/** The pieces of a list in strips of a width in which they do not lie in the plain count. */
function turned({ fabric, lines }: CuttingList, width: Rational): PlainLine[] {
  if (fabric.stock.kind !== 'roll') return [];
  const { usableWidth } = fabric.stock;
  return lines.flatMap(({ what, pieces, strips }) => {
    const [piece] = pieces;
    if (strips || !piece) return [];
    const lying = allowedRuns(piece, fabric)
      .map((run) => extent(piece, run))
      .find(({ along, across }) => along.equals(width) && across.compare(usableWidth) <= 0);
    if (!lying) return [];
    const each = perStrip(usableWidth, lying.across);
    const count = stripsFor(piece.count, each);
    return [
      {
        what: [what],
        strips: { kind: 'strips', count, size: width, length: width.mul(BigInt(count)) },
        pieces: { count: piece.count, span: lying.across, perStrip: each },
      },
    ];
  });
}

/** The fewest strips: pieces may share them, and come from the ends of wider strips as far as these have room. */
function leastOf(
  { fabric }: CuttingList,
  plain: readonly PlainLine[],
  lines: readonly PlainLine[],
  width: Rational,
): number {
  if (fabric.stock.kind !== 'roll') return 0;
  const { usableWidth } = fabric.stock;
  const wider = plain.filter(
    ({ strips, pieces }) =>
      (strips.kind === 'strips' && strips.size.compare(width) > 0) || (!pieces && strips.kind !== 'strips'),
  );
  const pieces = lines.flatMap((line) => line.pieces ?? []);
  const joined = lines.filter((line) => !line.pieces).reduce((sum, { strips }) => sum + strips.count, 0);
  const left = pieces.map(({ count, span, perStrip: each }) => {
    const spare = wider.reduce((sum, line) => sum + inEnds(line, span, usableWidth), 0);
    return { count: Math.max(0, count - spare), span, each };
  });
  const [only, ...more] = left;
  if (!only) return joined;
  if (more.length === 0 && joined === 0) return stripsFor(only.count, only.each);
  const length = left.reduce((sum, { count, span }) => sum.add(span.mul(BigInt(count))), ZERO);
  // What is left of the last of the joined strips may hold pieces too.
  return Number(ceil(length.div(usableWidth))) + Math.max(0, joined - 1);
}

/** How many pieces of a span the ends of a line's strips have room for; beside what is no strip, a strip's worth. */
function inEnds({ strips, pieces }: PlainLine, span: Rational, usableWidth: Rational): number {
  const room = (length: Rational) => Number(floor(length.div(span)));
  if (!pieces) return room(strips.left ?? usableWidth);
  const after = (used: number) => usableWidth.sub(pieces.span.mul(BigInt(used)));
  const last = pieces.count - (strips.count - 1) * pieces.perStrip;
  return (strips.count - 1) * room(after(pieces.perStrip)) + room(after(last));
}
