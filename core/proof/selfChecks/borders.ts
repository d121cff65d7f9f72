/**
 * The length of a border against the top so far: two edges that are sewn together must be equally long. Each ring of
 * borders, sides and ends, makes the top larger for the next one.
 */
import { isInteger } from '../../quantity/rational.ts';
import type { Contradiction } from './contradiction.ts';
import { type Rectangle, rectangleOf } from './quilt.ts';
import { againstTop, type Border, grown, grownBy, type Top } from './rings.ts';
import { isLenient, type Said, type Text, type Told } from './said.ts';
import { seamsFor } from './seams.ts';

/** The top, or its centre, as it measures before the next border is on. */
const MEASURES =
  /\b(?:quilt (?:top|cent(?:er|re))|quilt|top|cent(?:er|re))\b[^.;\d]{0,30}\b(?:measures?|be|is now)\b[^.;\d]{0,12}$/i;
const OTHER = /\b(?:blocks?|units?|rows?|finish\w*|backing|batting|wadding|medallion|panel)\b/i;
/** Borders that are not cut to the length of the edge. */
const UNEQUAL =
  /\b(?:mit(?:er|re)\w*|corners?|cornerstones?|posts?|pieced|partial|log[- ]cabin|longer|excess|extra|at least|about)\b/i;

/** Wherever it is said, borders do not go on one behind the other. */
const CORNERED =
  /\b(?:mit(?:er|re)\w*|corner ?stones?|corner (?:squares?|blocks?|posts?|units?)|posts|partial seams?|log[- ]cabin)\b/i;
/** Borders that are told of before those that lie further in. */
const FURTHER_OUT = /^(?:outer|middle|second|third|final)$/;

export function borders(text: Text): Contradiction[] {
  const found: Contradiction[] = [];
  let top: Top | undefined;
  let ring: Border[] = [];
  const close = () => {
    if (top) found.push(...againstTop(ring, top));
    top = top && ring.length > 0 ? grown(top, ring) : top;
    ring = [];
  };
  for (const said of text.phrases) {
    const measured = topOf(said);
    if (measured) {
      const before = found.length;
      close();
      if (top && found.length === before) found.push(...grownBy(top, measured));
      top = startOf(measured, text);
    } else if (top && /\bborders?\b/i.test(said.line.about)) {
      const border = borderOf(said);
      // What is not cut to the length of an edge leaves open how large the top is behind it.
      const isEarly =
        border?.name !== undefined && FURTHER_OUT.test(border.name) && ring.length + top.added.length === 0;
      if ((!border && isUnequal(said)) || (isEarly && /\b(?:inner|first)\b/i.test(text.words))) {
        close();
        top = undefined;
      } else if (border) {
        if (!isSameRing(border, ring)) close();
        ring.push(border);
      }
    }
  }
  close();
  return found;
}

function startOf(measured: Rectangle, text: Text): Top {
  const [across, down] = measured.sides;
  const seams = CORNERED.test(text.words) ? undefined : seamsFor(text, across).both;
  return { measured, seams, across: across.value, down: down.value, before: [], added: [] };
}

/** The size of the top, if the phrase tells it with the seam allowance still on. */
export function topOf(said: Said): Rectangle | undefined {
  const { before, count, behind } = said;
  const last = before.split(/[.;]\s/).at(-1) ?? '';
  if (count || !MEASURES.test(last) || OTHER.test(last) || /^[^.;\d]{0,20}\bfinish/i.test(behind))
    return undefined;
  return rectangleOf(said);
}

const SIDES = /\b(?:sides?|left and right)\b/i;
const ENDS = /\b(?:top and bottom|top|bottom|ends?)\b/i;
const RING = /\b(inner|outer|middle|first|second|third|final)(?= (?:[\p{L}’'-]+ )?borders?\b)/iu;

function isUnequal({ size, sentence }: Said): boolean {
  return size.length > 0 && (UNEQUAL.test(sentence) || isLenient(sentence));
}

function isSameRing({ where, name, width }: Border, ring: readonly Border[]): boolean {
  return ring.every(
    (other) =>
      other.where !== where &&
      (name === undefined || other.name === undefined || other.name === name) &&
      (!width || !other.width || width.value.equals(other.width.value)),
  );
}

/** A border that is cut to the length of an edge. */
function borderOf(said: Said): Border | undefined {
  const length = borderLength(said);
  if (!length) return undefined;
  const { own, size, line } = said;
  const [isSide, isEnd] = [SIDES.test(own), ENDS.test(own)];
  return {
    length,
    width: size.length > 1 ? size[0] : undefined,
    where: isSide === isEnd ? 'either' : isSide ? 'sides' : 'ends',
    name: (RING.exec(own) ?? RING.exec(line.about))?.[1]?.toLowerCase(),
  };
}

function borderLength({ size, own, line, sentence, phrase }: Said): Told | undefined {
  if (UNEQUAL.test(sentence) || isLenient(sentence) || !/\bborders?\b|\bstrips?\b/i.test(own))
    return undefined;
  if (
    !/\b(?:cut|trim)\b/i.test(sentence) ||
    (!SIDES.test(own) && !ENDS.test(own) && !/\blong\b/i.test(own)) ||
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
