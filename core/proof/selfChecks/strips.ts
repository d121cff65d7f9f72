/** Strips against the pieces that the same sentence cuts from them: whole pieces only, so many from each strip. */
import { ceil, floor, min, type Rational, rational } from '../../quantity/rational.ts';
import type { Contradiction } from './contradiction.ts';
import { isLenient, type Said, type SaidLine, type Text, type Told, writeAs } from './said.ts';
import { stripLength, usableWidth } from './widths.ts';

const SUBCUT =
  /\b(?:sub|re|cross)[- ]?cut|\bcut (?:them|these|this|it|each|the strips?|all|every)\b[^.;]{0,24}\b(?:into|at)\b|\bfrom (?:these|them|those|this)\b|\bthen into\b|\b(?:into|for|yields?|yielding|gives?|giving|to make)\s*(?:a total of\s*)?\(?$/i;
const PIECES = /\b(?:squares?|rectangles?|pieces?|segments?|bricks?|units?)\b/i;
/** Shapes that do not lie side by side in a strip like boxes, and counts of something else. */
const OTHER =
  /\b(?:triangles?|diamonds?|hexagons?|wedges?|sets?|template|angle|60°|60-degree|45°|fabrics|prints?|colou?rs?|fat|quarters?|scraps?|total(?= of \d+ strips)|in all)\b/i;
const EACH = /\b(?:from each|each into|each strip|per strip|every strip|each of|from every|one strip)\b/i;

export function strips(text: Text): Contradiction[] {
  const fabric = usableWidth(text);
  return text.lines.flatMap((line) => inLine(line, fabric));
}

function inLine(line: SaidLine, fabric: Rational): Contradiction[] {
  return line.phrases.flatMap((cut, index) => {
    const piece = line.phrases[index + 1];
    if (!piece || !isStrips(cut) || !isSubcut(cut, piece) || isLenient(line.text)) return [];
    const others = line.phrases.filter((each) => each !== cut && isStrips(each));
    if (others.some((other) => overlaps(other, piece)) || /\b(?:each|every) of\b|\bsets?\b/i.test(line.text))
      return [];
    const length = stripLength(cut, fabric);
    return length ? (compared(cut, piece, length) ?? []) : [];
  });
}

function isStrips({ count, size, own }: Said): boolean {
  return count !== undefined && size.length > 0 && /\bstrips?\b|\bWOF\b/i.test(own) && !OTHER.test(own);
}

/** Whether other strips may be meant by "these" as well. */
function overlaps({ phrase }: Said, piece: Said): boolean {
  return phrase.core.end <= piece.phrase.core.start && phrase.sentence.end >= piece.phrase.sentence.start;
}

function isSubcut(cut: Said, piece: Said): boolean {
  const { count, size, own, before, line } = piece;
  if (!count || size.length === 0 || isStrips(piece) || OTHER.test(own) || /\bWOF\b/.test(own)) return false;
  if (!PIECES.test(own) && size.length < 2) return false;
  const column = piece.phrase.count?.sides[0].spots[0]?.column ?? '';
  if (line.line.isRow && before.includes('|'))
    return /\b(?:next|second|sub|re|then|into|cross)/i.test(column);
  return (
    SUBCUT.test(before) &&
    !/[.!?]\s+(?!(?:sub|re|cross|then|from (?:these|them|this)|cut (?:them|these|the strips|each)))/i.test(
      `${cut.behind}`,
    )
  );
}

function compared(cut: Said, piece: Said, length: Rational): Contradiction | undefined {
  const [strip] = cut.size;
  const { count: strips } = cut;
  const { count: pieces } = piece;
  if (!strip || !strips || !pieces) return undefined;
  const width = narrow(cut.size);
  const [a, b] = [piece.size[0] as Told, (piece.size[1] ?? piece.size[0]) as Told];
  // A single side may be the length of a segment as wide as the strip.
  const isSegment =
    piece.size.length === 1 && /\b(?:segments?|pieces?|units?|rectangles?|bricks?)\b/i.test(piece.own);
  const sides: [Rational, Rational] = isSegment ? [width, a.value] : [a.value, b.value];
  const each = perStrip(sides, width, length);
  const shape = piece.size.map(({ text }) => text).join(' × ');
  if (each === 0n) {
    const across = min(...sides);
    if (across.compare(width) <= 0) return undefined;
    return {
      code: 'strips-disagree',
      message: `Strips ${strip.text} wide are too narrow for pieces of ${shape}.`,
      at: narrowest(cut.size),
      against: [{ told: a, says: `These pieces are ${shape}.` }],
    };
  }
  // "49 sashes (4 per strip)": what is told of another number in the line says nothing of this one.
  const isEach = EACH.test(`${piece.before} ${piece.own}`);
  if (isEach && /\b(?:total|in all|altogether)\b/i.test(piece.line.text)) return undefined;
  const given = rational(each).mul(isEach ? rational(1) : strips.value);
  if (pieces.value.compare(given) <= 0) return undefined;
  const need = ceil(pieces.value.div(each));
  const from = `${each} from each length of ${writeAs(length, strip)}`;
  const give = strips.value.equals(1) ? '1 strip gives' : `${strips.value.toString()} strips give`;
  if (isEach)
    return {
      code: 'strips-disagree',
      message: `A strip of ${writeAs(length, strip)} gives at most ${each} pieces of ${shape}, not ${pieces.text}.`,
      at: pieces,
      against: [{ told: a, says: `Each piece is ${shape}.` }],
    };
  return {
    code: 'strips-disagree',
    message: `${give} at most ${given.toString()} pieces of ${shape}, ${from}, but ${pieces.text} are cut from them; that takes ${need} strips.`,
    at: strips,
    against: [{ told: pieces, says: `${pieces.text} pieces are cut from them here.` }],
  };
}

/** Pieces that lie side by side in a strip, in the better of both directions. */
function perStrip([a, b]: readonly [Rational, Rational], width: Rational, length: Rational): bigint {
  const way = (across: Rational, along: Rational) => floor(width.div(across)) * floor(length.div(along));
  if (a.compare(0) <= 0 || b.compare(0) <= 0) return 0n;
  const [one, other] = [way(a, b), way(b, a)];
  return one > other ? one : other;
}

function narrow(size: readonly Told[]): Rational {
  return size.map(({ value }) => value).reduce((x, y) => min(x, y));
}

function narrowest(size: readonly Told[]): Told {
  return size.reduce((x, y) => (y.value.compare(x.value) < 0 ? y : x));
}
