/**
 * Pieced units: one is taken from the text where its name is said, its size and number are told, and the squares and
 * rectangles of the cutting list are just those that one of the trade's methods cuts for so many of such a size.
 */
import type { Range } from '../findings/finding.ts';
import { isInteger, type Rational, rational, ZERO } from '../quantity/rational.ts';
import { Real } from '../quantity/real.ts';
import { toInches } from '../quantity/units.ts';
import { UNIT_WORDS } from '../reading/unitWords.ts';
import { wholeWords } from '../reading/wholeWords.ts';
import { UNIT_KINDS } from '../trade/units/kinds.ts';
import { type CutRequirement, unitRequirement } from '../trade/units/requirement.ts';
import { USUAL_OVERSIZE } from '../trade/units/seams.ts';
import type { Method, UnitKind, UnitSpec } from '../trade/units/unit.ts';
import { type CutPiece, isSame } from './cutList.ts';
import type { Clause, Text, Told } from './text.ts';
import { writeName, writePerSize, writeValue } from './write.ts';

export interface FoundUnit {
  readonly text: string;
  /** Of all that one block takes, finished, in square inches. */
  readonly area: Rational;
  readonly from: readonly Range[];
  /** The pieces of the cutting list that it is made of. */
  readonly cuts: readonly CutPiece[];
}

interface Size extends Range {
  readonly width: Rational;
  readonly length: Rational;
  readonly unit: Told['unit'];
}

/** @param blocks how many blocks there are, per size */
export function findUnits(text: Text, pieces: readonly CutPiece[], blocks: readonly Rational[]): FoundUnit[] {
  const found: FoundUnit[] = [];
  let left = pieces;
  for (const kind of UNIT_KINDS) {
    const words = UNIT_WORDS[kind.name]?.words;
    if (!words || kind.needs.length > 0 || /patches/.test(kind.name)) continue;
    const named = text.clauses.filter((clause) => isAbout(clause, wholeWords(words, 'iu')));
    for (let unit = unitOf(kind, named, text, left, blocks); unit; ) {
      const { cuts } = unit;
      found.push(unit);
      left = left.filter((piece) => !cuts.includes(piece));
      unit = unitOf(kind, named, text, left, blocks);
    }
  }
  return found;
}

/** Named in its line, or in the heading that is nearest. */
function isAbout({ line }: Clause, words: RegExp): boolean {
  const heading = line.layers.find(({ where }) => where === 'heading')?.text ?? '';
  return words.test(line.text) || words.test(heading);
}

/** The one unit of this kind whose pieces are all cut; nothing where several would do. */
function unitOf(
  kind: UnitKind,
  named: readonly Clause[],
  text: Text,
  pieces: readonly CutPiece[],
  blocks: readonly Rational[],
): FoundUnit | undefined {
  const { house } = text.pattern;
  const oversize = house.system === 'inch' ? USUAL_OVERSIZE : toInches(rational(1, 2), 'cm');
  for (const size of sizesOf(named, text))
    for (const each of countsOf(named, blocks))
      for (const method of kind.methods)
        for (const extra of method.trimmable ? [ZERO, oversize] : [ZERO]) {
          const cuts = cutsOf(kind, method, size, each, extra, text, blocks);
          const match = cuts && matching(cuts, pieces);
          if (match) return written(kind, method, size, each, extra, match, text);
        }
  return undefined;
}

/** Every size that is told of it, finished, and the same where it is told with its seam allowances. */
function sizesOf(named: readonly Clause[], { pattern }: Text): Size[] {
  const seams = pattern.house.seam.mul(2n);
  const sizes = named.flatMap(({ sides: [a, b] }): Size[] => {
    if (!a?.unit || a.values.length > 1 || (b && b.values.length > 1)) return [];
    const [width, length] = [a.values[0], (b ?? a).values[0]];
    const at = { start: a.start, end: (b ?? a).end, unit: a.unit };
    const turned = [
      { width, length, ...at },
      { width: length, length: width, ...at },
    ];
    return turned.flatMap((size) => [
      { ...size, width: size.width.sub(seams), length: size.length.sub(seams) },
      size,
    ]);
  });
  return sizes.filter(
    (size, index) =>
      size.width.compare(ZERO) > 0 &&
      size.length.compare(ZERO) > 0 &&
      sizes.findIndex((other) => other.width.equals(size.width) && other.length.equals(size.length)) ===
        index,
  );
}

interface Each extends Range {
  readonly count: Rational;
}

/** How many one block takes: told of a block, or all that are told, shared out among the blocks. */
function countsOf(named: readonly Clause[], blocks: readonly Rational[]): Each[] {
  const found = named.flatMap(({ count }): Each[] => {
    if (!count || count.unit) return [];
    const { start, end } = count;
    const shares = blocks.map((made, index) => (count.values[index] ?? count.values[0]).div(made));
    const [share] = shares;
    const isShared = share && shares.every((other) => other.equals(share)) && isInteger(share);
    return [
      ...(isShared ? [{ count: share, start, end }] : []),
      ...(count.values.length === 1 ? [{ count: count.values[0], start, end }] : []),
    ];
  });
  return found.filter(
    ({ count }, index) =>
      count.compare(ZERO) > 0 &&
      count.compare(100) < 0 &&
      found.findIndex((other) => other.count.equals(count)) === index,
  );
}

/** Per size of the quilt, the pieces to cut; nothing where no such unit can be sewn. */
function cutsOf(
  kind: UnitKind,
  method: Method,
  { width, length }: Size,
  { count }: Each,
  oversize: Rational,
  { pattern: { house } }: Text,
  blocks: readonly Rational[],
): (readonly CutRequirement[])[] | undefined {
  const spec: UnitSpec = { width: Real.of(width), length: Real.of(length) };
  const rules = { seam: house.seam, oversize, usableWidth: house['usable width'] };
  if (kind.problem(spec, rules) !== undefined) return undefined;
  return blocks.map((made) => {
    const units = Number(count.mul(made).valueOf());
    return unitRequirement(method, spec, rules, units, house['cut to']).cuts;
  });
}

/** For each cut the piece of the list that it is, so that what is of one fabric is cut from one. */
function matching(
  cuts: readonly (readonly CutRequirement[])[],
  pieces: readonly CutPiece[],
): { readonly cut: CutRequirement; readonly piece: CutPiece }[] | undefined {
  const matched: { readonly cut: CutRequirement; readonly piece: CutPiece }[] = [];
  for (const [index, cut] of (cuts[0] ?? []).entries()) {
    const counts = cuts.map((list) => rational(list[index]?.count ?? 0));
    const fit = pieces.filter(
      (piece) =>
        !matched.some((other) => other.piece === piece) &&
        isSame(piece.count.values, counts) &&
        isSized(piece, cut) &&
        matched.every((other) => (other.cut.from === cut.from) === (other.piece.fabric === piece.fabric)),
    );
    const [piece] = fit;
    if (!piece) return undefined;
    matched.push({ cut, piece });
  }
  return matched.length > 0 ? matched : undefined;
}

function isSized({ width, length }: CutPiece, { cutWidth, cutLength }: CutRequirement): boolean {
  if (width.values.length > 1 || length.values.length > 1) return false;
  const [a, b] = [width.values[0], length.values[0]];
  return (a.equals(cutWidth) && b.equals(cutLength)) || (a.equals(cutLength) && b.equals(cutWidth));
}

function written(
  kind: UnitKind,
  method: Method,
  size: Size,
  { count, ...told }: Each,
  oversize: Rational,
  match: readonly { readonly cut: CutRequirement; readonly piece: CutPiece }[],
  { pattern }: Text,
): FoundUnit {
  const fabrics: string[] = [];
  for (const { cut, piece } of match) fabrics[cut.from] = piece.fabric;
  const sides = size.width.equals(size.length) ? [size.width] : [size.width, size.length];
  const finished = writePerSize([sides.map((side) => writeValue(side, size.unit)).join(' x ')], pattern);
  const name = `${method.name}${oversize.equals(ZERO) ? '' : ', trimmed'}`;
  const parts = [
    `unit: ${kind.name}`,
    `finished: ${finished}`,
    `count: ${count.toFraction()}`,
    `from: [${fabrics.map(writeName).join(', ')}]`,
    `method: ${writeName(name)}`,
  ];
  const cuts = match.map(({ piece }) => piece);
  return {
    text: `{ ${parts.join(', ')} }`,
    area: size.width.mul(size.length).mul(count),
    from: [
      { start: told.start, end: told.end },
      { start: size.start, end: size.end },
      ...cuts.map(({ start, end }) => ({ start, end })),
    ],
    cuts,
  };
}
