/** The length of a border against the top so far: the two edges that are sewn together must be equally long. */
import { isInteger, type Rational, rational } from '../../quantity/rational.ts';
import { writeInches } from '../../quantity/show.ts';
import type { Contradiction } from './contradiction.ts';
import { type Rectangle, rectangleOf } from './quilt.ts';
import { isLenient, type Said, type Text, type Told } from './said.ts';

/** The top, or its centre, as it measures before the next border is on. */
const MEASURES =
  /\b(?:quilt (?:top|cent(?:er|re))|quilt|top|cent(?:er|re))\b[^.;\d]{0,30}\b(?:measures?|be|is now)\b[^.;\d]{0,12}$/i;
const OTHER = /\b(?:blocks?|units?|rows?|finish\w*|backing|batting|wadding|medallion|panel)\b/i;
/** Borders that are not cut to the length of the edge. */
const UNEQUAL =
  /\b(?:mit(?:er|re)\w*|corners?|cornerstones?|posts?|pieced|partial|log[- ]cabin|longer|excess|extra|at least|about)\b/i;

export function borders({ phrases }: Text): Contradiction[] {
  const found: Contradiction[] = [];
  let top: Rectangle | undefined;
  let before: Said | undefined;
  for (const said of phrases) {
    const measured = topOf(said);
    if (measured) [top, before] = [measured, undefined];
    else if (top) {
      const length = borderLength(said);
      if (!length || !isNextBorder(said, before)) continue;
      found.push(...(before ? [] : compared(said, length, top)));
      before = said;
    }
  }
  return found;
}

/** The size of the top, if the phrase tells it with the seam allowance still on. */
export function topOf(said: Said): Rectangle | undefined {
  const { before, count, behind } = said;
  const last = before.split(/[.;]\s/).at(-1) ?? '';
  if (count || !MEASURES.test(last) || OTHER.test(last) || /^[^.;\d]{0,20}\bfinish/i.test(behind))
    return undefined;
  return rectangleOf(said);
}

/** Only the first border behind the measure has the length of an edge; the others depend on its width. */
function isNextBorder({ line }: Said, before: Said | undefined): boolean {
  return before === undefined && /\bborders?\b/i.test(line.about);
}

const SIDES = /\b(?:sides?|left and right|long)\b/i;
const ENDS = /\b(?:top and bottom|top|bottom|ends?)\b/i;

function borderLength({ size, own, line, sentence, phrase }: Said): Told | undefined {
  if (UNEQUAL.test(sentence) || isLenient(sentence) || !/\bborders?\b|\bstrips?\b/i.test(own))
    return undefined;
  if (
    !/\b(?:cut|trim)\b/i.test(sentence) ||
    (!SIDES.test(own) && !ENDS.test(own)) ||
    /\bWOF\b|width of/i.test(own)
  )
    return undefined;
  const [first, second] = size;
  // 42" is the width of the fabric, from which longer borders are joined.
  if (second)
    return isInteger(second.value) && second.value.compare(40) >= 0 && second.value.compare(46) <= 0
      ? undefined
      : second;
  return first && /^["”″]?\s*(?:-?long\b|in length|lengths?\b)/i.test(line.text.slice(phrase.core.end))
    ? first
    : undefined;
}

function compared({ own }: Said, length: Told, top: Rectangle): Contradiction[] {
  const edges = top.sides.map(({ value }) => value);
  if (edges.some((edge) => edge.equals(length.value)) || !isLikely(length.value, edges)) return [];
  if (length.number.unit !== top.sides[0].number.unit) return [];
  const isSide = SIDES.test(own) && !ENDS.test(own);
  const right = isSide ? top.sides[1] : nearest(length.value, top.sides);
  const where = top.sides[0] === top.sides[1] ? 'edges' : isSide ? 'sides' : 'nearest edges';
  return [
    {
      code: 'sizes-disagree',
      message: `The border is cut ${length.text} long, but the ${where} of the top that it is sewn to are ${writeInches(right.value)}: the top measures ${top.text}.`,
      at: length,
      against: [{ told: right, says: `The top measures ${top.text} here.` }],
    },
  ];
}

/** Whether it may be meant for an edge at all: within four inches of one. */
function isLikely(length: Rational, edges: readonly Rational[]): boolean {
  return edges.some((edge) => length.sub(edge).abs().compare(rational(4)) <= 0);
}

function nearest(length: Rational, [a, b]: readonly [Told, Told]): Told {
  return length.sub(a.value).abs().compare(length.sub(b.value).abs()) < 0 ? a : b;
}
