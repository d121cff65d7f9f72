/** What the blocks are made of, and all other pieces of the cutting list. */
import { isInteger, type Rational, ZERO } from '../quantity/rational.ts';
import { type CutPiece, findCutPieces } from './cutList.ts';
import type { Fact } from './row.ts';
import { withoutSeams } from './seams.ts';
import { findStripSet } from './stripSets.ts';
import type { Text } from './text.ts';
import { findUnits } from './units.ts';
import { writeName, writePair, writeTold } from './write.ts';

/** The one kind of block there is. */
export interface OneBlock {
  readonly name: string;
  /** How many of it are made, per size. */
  readonly made: readonly Rational[];
  /** Finished, in square inches. */
  readonly area: Rational | undefined;
  /** The finished side of a square block. */
  readonly side: Rational | undefined;
}

interface Share {
  readonly piece: CutPiece;
  readonly each: Rational;
  /** Whether a sentence about one block tells just so many. */
  readonly isTold: boolean;
}

/** So many pieces of the cutting list may belong to the block that every choice of them is tried. */
const MOST_SHARES = 10;

/** The one choice of pieces that fills the block, with as many as possible of those that are told of a block. */
function filling(
  shares: readonly Share[],
  area: Rational | undefined,
  text: Text,
): readonly Share[] | undefined {
  if (!area || shares.length > MOST_SHARES) return undefined;
  const choices = Array.from({ length: 2 ** shares.length }, (_, choice) =>
    shares.filter((_, index) => (choice >> index) % 2 === 1),
  ).filter((choice) => choice.reduce((sum, share) => sum.add(areaOf(share, text)), ZERO).equals(area));
  const told = (choice: readonly Share[]) => choice.filter(({ isTold }) => isTold).length;
  const most = Math.max(...choices.map(told));
  const best = choices.filter((choice) => told(choice) === most);
  return best.length === 1 ? best[0] : undefined;
}

function areaOf({ piece: { width, length }, each }: Share, text: Text): Rational {
  const [w, l] = [withoutSeams(width, text), withoutSeams(length, text)];
  return w && l ? w.values[0].mul(l.values[0]).mul(each) : ZERO;
}

/** @param block `undefined` where there are others, or its number is not told */
export function findParts(text: Text, block: OneBlock | undefined): Fact[] {
  const pieces = findCutPieces(text);
  if (!block) return pieces.map((piece) => pieceFact(piece, pieces, text));
  const set = findStripSet(text, block);
  const units = set ? [set] : findUnits(text, pieces, block.made);
  const rest = pieces.filter((piece) => !units.some(({ cuts }) => cuts.includes(piece)));
  const inBlock = filling(
    rest.flatMap((piece) => {
      const each = shareOf(piece, block.made);
      return each && block.made.length > 0 ? [{ piece, each, isTold: isToldOfBlock(each, text) }] : [];
    }),
    block.area && units.reduce((left, { area }) => left.sub(area), block.area),
    text,
  );
  if (!inBlock) return pieces.map((piece) => pieceFact(piece, pieces, text));
  const path = (index: number) => ['blocks', block.name, 'of', index] as const;
  return [
    ...units.map(({ text: unit, from }, index) => ({ path: path(index), title: 'a unit', text: unit, from })),
    ...inBlock.flatMap(({ piece, each }, index) =>
      blockPiece(piece, each, text).map((part) => ({
        path: path(units.length + index),
        title: 'a piece of the block',
        text: part,
        from: [{ start: piece.start, end: piece.end }],
      })),
    ),
    ...rest
      .filter((piece) => !inBlock.some((other) => other.piece === piece))
      .map((piece) => pieceFact(piece, rest, text)),
  ];
}

/** How many one block takes, where the pieces can be shared out among the blocks. */
function shareOf({ count }: CutPiece, made: readonly Rational[]): Rational | undefined {
  const shares = made.map((blocks, index) => (count.values[index] ?? count.values[0]).div(blocks));
  const [first] = shares;
  return first && isInteger(first) && shares.every((share) => share.equals(first)) ? first : undefined;
}

/** A sentence about one block tells just so many of something. */
function isToldOfBlock(each: Rational, { clauses }: Text): boolean {
  return clauses.some(
    (clause) =>
      clause.says('scope:each', 'scope:laid out') >= 0.3 &&
      clause.count?.values.every((value) => value.equals(each)),
  );
}

function blockPiece(piece: CutPiece, each: Rational, text: Text): string[] {
  const { width, length, fabric } = piece;
  const [w, l] = [withoutSeams(width, text), withoutSeams(length, text)];
  if (!w || !l) return [];
  const isSquare =
    width === length || width.values.every((value, index) => length.values[index]?.equals(value));
  const size = isSquare ? writeTold(w, text.pattern) : writePair([w, l], text.pattern);
  return [
    `{ unit: ${isSquare ? 'squares' : 'rectangles'}, finished: ${size}, count: ${each.toFraction()}, from: ${writeName(fabric)} }`,
  ];
}

function pieceFact(piece: CutPiece, all: readonly CutPiece[], text: Text): Fact {
  const { width, length, count, fabric, start, end } = piece;
  const name = nameOf(piece, all);
  const cut = writePair([width, length], text.pattern);
  return {
    path: ['pieces', name],
    title: `the pieces “${name}”`,
    text: `{ cut: ${cut}, count: ${writeTold(count, text.pattern)}, from: ${writeName(fabric)} }`,
    from: [{ start, end }],
  };
}

/** What the list calls it, else its fabric; with a number where two are called alike. */
function nameOf(piece: CutPiece, all: readonly CutPiece[]): string {
  const isSquare = piece.width.values[0].equals(piece.length.values[0]);
  const plain = ({ purpose, fabric }: CutPiece) =>
    purpose ?? `${fabric} ${isSquare ? 'square' : 'rectangle'}`;
  const alike = all.filter((other) => plain(other) === plain(piece));
  return alike.length > 1 ? `${plain(piece)} ${alike.indexOf(piece) + 1}` : plain(piece);
}
