/** Pieces: of a block, or by themselves. */
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import type { FabricLabel } from '../../block/values/fabricLabel.ts';
import type { Sides } from '../../block/values/sides.ts';
import { floor, type Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Definition, Derived, Objection, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { perBlock, spareCount } from './blocks.ts';
import { isUnit, partsOf } from './parts.ts';
import { bothSides } from './sizes.ts';
import { stated } from './stated.ts';
import { isDirectional, usableWidth } from './usableWidth.ts';

export const piecesRoom: Room = {
  define: (pattern) => piecesOf(pattern).flatMap(pieceFigures),
  check: (pattern) =>
    Object.entries(pattern.entries.pieces ?? {}).flatMap(([name, { cut, finished }]): Objection[] => {
      const path: BlockPath = ['pieces', name];
      if (!cut && !finished)
        return [
          { code: 'missing-entry', path, atKey: true, message: 'A piece needs its size: cut, or finished.' },
        ];
      return [];
    }),
};

/** A piece of the pattern, wherever it is described. */
export interface PatternPiece {
  /** `piece.sash`, or `piece.Ripple.corner` where two blocks call a piece the same. */
  readonly id: string;
  readonly name: string;
  /** Its entry, for this size. */
  entry(at: Derivation): PieceEntry | undefined;
  /** How many are needed in all. */
  needed(at: Derivation): Derived | undefined;
  /** The block that it stands in, and how many of it stand in one; absent for a piece that belongs to no block. */
  readonly inBlock?: { readonly block: string; each(at: Derivation): Rational | undefined };
}

interface PieceEntry {
  readonly cut?: Sides | undefined;
  readonly finished?: Sides | undefined;
  readonly from: FabricLabel | undefined;
  readonly along: 'width' | 'length' | undefined;
}

export function piecesOf({ entries }: Pattern): PatternPiece[] {
  const inBlocks = partsOf(entries).flatMap(({ block, index, part }) =>
    isUnit(part) ? [] : [{ block, index, name: part.piece }],
  );
  const own = Object.keys(entries.pieces ?? {});
  const names = [...own, ...inBlocks.map(({ name }) => name)];
  const isUnique = (name: string) => names.filter((other) => other === name).length === 1;
  return [
    ...own.map(
      (name): PatternPiece => ({
        id: `piece.${name}`,
        name,
        entry: (at) => {
          const piece = at.entries.pieces?.[name];
          return piece && { cut: piece.cut, finished: piece.finished, from: piece.from, along: piece.along };
        },
        needed: (at) => {
          const count = at.entries.pieces?.[name]?.count;
          return count && stated(count);
        },
      }),
    ),
    ...inBlocks.map(
      ({ block, index, name }): PatternPiece => ({
        id: isUnique(name) ? `piece.${name}` : `piece.${block}.${name}`,
        name,
        entry: (at) => {
          const part = at.entries.blocks?.[block]?.of?.[index];
          if (!part || isUnit(part)) return undefined;
          return { cut: part.cut, finished: part.finished, from: part.from?.[0], along: undefined };
        },
        needed: (at) => {
          const each = at.entries.blocks?.[block]?.of?.[index]?.count;
          return perBlock(at, { block, index }, each && Real.of(each));
        },
        inBlock: { block, each: (at) => at.entries.blocks?.[block]?.of?.[index]?.count },
      }),
    ),
  ];
}

/** The cut size in inches: as stated, or the finished size with its seams. */
export function cutSides(
  at: Derivation,
  piece: PatternPiece,
): { width: Rational; length: Rational } | undefined {
  const entry = piece.entry(at);
  if (entry?.cut) return entry.cut;
  if (!entry?.finished) return undefined;
  const seams = at.house.seam.mul(2n);
  return { width: entry.finished.width.add(seams), length: entry.finished.length.add(seams) };
}

function pieceFigures(piece: PatternPiece): Definition[] {
  const { id, name } = piece;
  const title = `the piece “${name}”`;
  return [
    ...eachBlock(piece),
    {
      id: `${id}.count`,
      title: `The number of pieces “${name}”`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const needed = piece.needed(at);
        return needed && { ...needed, spare: spareCount(needed.need.toNumber()) };
      },
    },
    ...bothSides(
      id,
      `The cut size of ${title}`,
      'exact',
      (side) => (at) => cutSide(at, piece, side),
      (at) => {
        const sides = cutSides(at, piece);
        return sides?.width.equals(sides.length);
      },
    ),
    {
      id: `${id}.per-strip`,
      title: `The number of pieces “${name}” from one strip`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const found = fromStrips(at, piece);
        if (!found) return undefined;
        const because = `a strip of ${at.show.length(found.usable)} gives ${found.perStrip} of ${at.show.length(found.span)}`;
        return { need: Real.of(found.perStrip), steps: [sentence(because)], because };
      },
    },
    {
      id: `${id}.strips`,
      title: `The number of strips for the pieces “${name}”`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const found = fromStrips(at, piece);
        const count = at.figure(`${id}.count`)?.need.exact;
        if (!found || !count) return undefined;
        const strips = Number(floor(count.add(found.perStrip - 1).div(found.perStrip)));
        const because = `${counted(Number(count.valueOf()), 'piece')} at ${found.perStrip} from a strip ${count.equals(1) ? 'takes' : 'take'} ${counted(strips, 'strip')}`;
        return { need: Real.of(strips), steps: [sentence(because)], because, spare: spareCount(strips) };
      },
    },
  ];
}

function eachBlock({ id, name, inBlock }: PatternPiece): Definition[] {
  if (!inBlock) return [];
  return [
    {
      id: `${id}.each`,
      title: `The number of pieces “${name}” in one ${inBlock.block} block`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const each = inBlock.each(at);
        return each && stated(each);
      },
    },
  ];
}

function cutSide(at: Derivation, piece: PatternPiece, side: 'width' | 'length'): Derived | undefined {
  const entry = piece.entry(at);
  const sides = cutSides(at, piece);
  if (!entry || !sides) return undefined;
  if (entry.cut) return stated(sides[side]);
  const { show } = at;
  const because = `${show.length(sides[side].sub(at.house.seam.mul(2n)))} finished plus two ${show.length(at.house.seam)} seams is ${show.length(sides[side])}`;
  return { need: Real.of(sides[side]), steps: [sentence(because)], because };
}

/**
 * How many pieces a strip across the fabric gives, when the strip is as wide as the piece; of a directional fabric,
 * when it is as wide as the piece is long.
 */
function fromStrips(at: Derivation, piece: PatternPiece) {
  const sides = cutSides(at, piece);
  const entry = piece.entry(at);
  if (!sides || !entry || entry.along === 'length') return undefined;
  const usable = usableWidth(at, entry.from);
  const stands = entry.along === undefined && isDirectional(at, entry.from);
  const span = stands ? sides.width : sides.length;
  const perStrip = Number(floor(usable.div(span)));
  return perStrip > 0 ? { usable, span, perStrip } : undefined;
}
