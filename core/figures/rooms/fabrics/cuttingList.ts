/** The cutting list of a fabric in one size, and how much of the fabric it takes. Lengths in inches. */
import { max, type Rational, ZERO } from '../../../quantity/rational.ts';
import { leastLength, leastSheets } from '../../../trade/plan/anyWay.ts';
import type { CutPiece, Fabric } from '../../../trade/plan/fabric.ts';
import { type PlainCut, plainCut } from '../../../trade/plan/plain.ts';
import type { Derivation } from '../../derivation.ts';
import { type CutLine, misfitOf, type PlainStrips } from './cutLine.ts';
import { fabricOf, linesOf } from './cuts.ts';
import type { Sources } from './sources.ts';

export interface CuttingList {
  readonly fabric: Fabric;
  readonly lines: readonly CutLine[];
}

/** A line of the plain count: pieces of one size from strips of their own, or strips that are counted elsewhere. */
export interface PlainLine {
  readonly what: readonly string[];
  readonly strips: PlainStrips;
  /** For pieces from strips: how many of them there are, how long each lies in its strip, how many a strip gives. */
  readonly pieces: { readonly count: number; readonly span: Rational; readonly perStrip: number } | undefined;
}

/**
 * Everything that is cut from a fabric. `undefined` when the pattern does not say enough of one of its entries, or
 * when one of them cannot be read: a list with gaps would be worse than none.
 */
export function cuttingList(at: Derivation, sources: Sources, label: string): CuttingList | undefined {
  if (sources.isUnsure) return undefined;
  return at.once(`what is cut from ${label}`, (inner) => {
    const fabric = fabricOf(inner, label);
    const lines: CutLine[] = [];
    for (const source of sources.all) {
      if (!source.fabrics.includes(label)) continue;
      const found = linesOf(inner, source, label, fabric);
      if (!found) return undefined;
      lines.push(...found);
    }
    const wanted = lines.filter(({ pieces }) => pieces.some(({ count }) => count > 0));
    return wanted.length > 0 ? { fabric, lines: wanted } : undefined;
  });
}

/** Whether every piece of the list can be cut from the fabric. */
export function fits({ fabric, lines }: CuttingList): boolean {
  return lines.every((line) => !misfitOf(line, fabric));
}

/**
 * The plain count of a roll, the lines in the order of the block; pieces of equal size count together.
 *
 * @param cut how pieces are laid into strips of their own: closely, or as most patterns are written
 */
export function plainLines({ fabric, lines }: CuttingList, cut = plainCut): PlainLine[] {
  if (fabric.stock.kind !== 'roll') return [];
  const { usableWidth } = fabric.stock;
  const found: PlainLine[] = [];
  const kinds = new Map<string, { what: string[]; piece: CutPiece; place: number }>();
  for (const { what, pieces, strips } of lines) {
    const [piece] = pieces;
    if (strips || !piece) {
      if (strips) found.push({ what: [what], strips, pieces: undefined });
      continue;
    }
    const key = [piece.width.toFraction(), piece.length.toFraction(), piece.lengthwise].join(' ');
    const known = kinds.get(key);
    const kind = known ?? { what: [], piece: { ...piece, count: 0 }, place: found.length };
    const together = {
      ...kind,
      what: [...kind.what, what],
      piece: { ...kind.piece, count: kind.piece.count + piece.count },
    };
    kinds.set(key, together);
    const line = piecesLine(together.what, cut(together.piece, usableWidth, fabric), usableWidth);
    if (line) found[kind.place] = line;
  }
  return found;
}

function piecesLine(what: string[], cut: PlainCut | undefined, width: Rational): PlainLine | undefined {
  if (!cut) return undefined;
  const { piece } = cut;
  // What is longer than the fabric is wide runs along it; nobody speaks of a strip that is wider than long.
  if (cut.stripWidth.compare(width) > 0) {
    const { length } = cut;
    const strips = {
      kind: 'strips along the length',
      count: piece.count,
      size: piece.width,
      length,
    } as const;
    return { what, strips, pieces: undefined };
  }
  const span = cut.run === 'crosswise' ? piece.length : piece.width;
  return {
    what,
    strips: { kind: 'strips', count: cut.strips, size: cut.stripWidth, length: cut.length },
    pieces: { count: piece.count, span, perStrip: cut.perStrip },
  };
}

/** The length that the plain count takes, without straightening the end. */
export function plainLength(lines: readonly PlainLine[]): Rational {
  return lines.reduce((sum, { strips }) => sum.add(strips.length), ZERO);
}

/** The least length of a roll that can do, however it is cut, with straightening the end; no more than the plain one. */
export function leastOfRoll({ fabric, lines }: CuttingList, plain: Rational): Rational {
  if (fabric.stock.kind !== 'roll') return ZERO;
  const together = leastLength(
    fabric.stock.usableWidth,
    lines.flatMap(({ ways }) => ways),
    plain,
  );
  const least = lines.reduce((most, { alone }) => (alone ? max(most, alone) : most), together);
  return least.add(fabric.squaring);
}

export function leastOfSheets({ fabric, lines }: CuttingList): number {
  if (fabric.stock.kind !== 'sheets') return 0;
  const { width, length } = fabric.stock;
  return leastSheets(
    width,
    length,
    lines.flatMap(({ ways }) => ways),
  );
}
