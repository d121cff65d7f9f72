/** Binding strips, and the length that they make, against the edge of the finished quilt. */
import { type Rational, rational } from '../../quantity/rational.ts';
import { joinedLength } from '../../trade/joining.ts';
import type { Contradiction } from './contradiction.ts';
import { finishedQuilt, type Rectangle } from './quilt.ts';
import type { Said, Text, Told } from './said.ts';
import { isLenient, writeAs } from './said.ts';
import { stripLength, usableWidth } from './widths.ts';

const OTHER =
  /\b(?:bias|scraps?|left ?overs?|fat|pillow|cushion|sleeve|borders?|sashing|blocks?|piping|more|another|remaining|from each|each (?:of|fabric|print|colou?r))\b/i;

export function binding(text: Text): Contradiction[] {
  const quilt = finishedQuilt(text);
  const fabric = usableWidth(text);
  if (!quilt) return [];
  const parts = text.phrases.filter(isBinding);
  const cut = parts.filter((said) => countOfStrips(said) && said.size.length > 0);
  // Strips that are cut in several places, perhaps from several fabrics, may all be joined.
  const [only] = cut;
  const few = only && cut.length === 1 ? tooFew(only, quilt, fabric) : [];
  return [...few, ...parts.flatMap((said) => (countOfStrips(said) ? [] : tooShort(said, quilt)))];
}

/** The binding is named in the item itself, or it is what the section is about. */
function isBinding({ line, own, sentence }: Said): boolean {
  if (OTHER.test(own) || OTHER.test(sentence)) return false;
  if (/\bbinding\b/i.test(own)) return true;
  const [heading] = line.line.layers.filter(({ where }) => where === 'heading' || where === 'lead-in');
  return /^[\s\d.*]*(?:the )?binding:?$/i.test(heading?.text.trim() ?? '');
}

function countOfStrips({ count, own }: Said): Told | undefined {
  return count && /\bstrips?\b|\bWOF\b/i.test(own) ? count : undefined;
}

function edgeOf({ short, long }: Rectangle): Rational {
  return short.add(long).mul(2n);
}

function tooFew(said: Said, quilt: Rectangle, fabric: Rational): Contradiction[] {
  const strips = countOfStrips(said);
  const [width] = said.size;
  if (!strips || strips.value.compare(200) > 0 || !width || width.value.compare(rational(13, 4)) > 0)
    return [];
  const length = stripLength(said, fabric);
  if (!length) return [];
  // Joined straight, which takes the least.
  const joined = joinedLength(Number(strips.value.n), length, rational(1, 2));
  const edge = edgeOf(quilt);
  if (joined.compare(edge) >= 0) return [];
  const give = strips.value.equals(1) ? 'strip gives' : 'strips of binding give';
  return [
    {
      code: 'not-enough',
      message: `${capital(strips.text)} ${give} at most ${writeAs(joined, quilt.sides[0])} when joined, and the quilt of ${quilt.text} is ${writeAs(edge, quilt.sides[0])} around.`,
      at: strips,
      against: quiltSays(quilt),
    },
  ];
}

/** "a strip at least 240" long" that does not even reach around. */
function tooShort(said: Said, quilt: Rectangle): Contradiction[] {
  const { size, count, before, behind, own } = said;
  const [length, more] = size;
  if (count || !length || more || length.number.unit === 'yd') return [];
  const isTotal =
    /\b(?:to make|total(?:ling|s)?|at least|need|of|makes?|into|long strip)\b[^.;]{0,30}$/i.test(before) &&
    /^["”″)]?\s*(?:-?long\b|of (?:(?:double-fold )?binding)|in length|total|$|[.,;])/i.test(behind);
  const edge = edgeOf(quilt);
  // A length far below the edge is one of something else: of a tail, or of one side.
  if (!isTotal || isLenient(own.replace(/at least/i, '')) || length.value.mul(3n).compare(edge.mul(2n)) < 0)
    return [];
  if (length.value.compare(edge) >= 0) return [];
  return [
    {
      code: 'not-enough',
      message: `${length.text} of binding does not reach around the quilt of ${quilt.text}, which is ${writeAs(edge, quilt.sides[0])} around.`,
      at: length,
      against: quiltSays(quilt),
    },
  ];
}

function quiltSays({ sides, text }: Rectangle) {
  const [a, b] = sides;
  return (a === b ? [a] : [a, b]).map((told) => ({ told, says: `The quilt is ${text} here.` }));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
