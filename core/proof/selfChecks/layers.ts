/** Backing and batting against the finished size of the quilt that they must reach beyond. */
import { type Rational, rational, ZERO } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { backing as planBacking } from '../../trade/backing.ts';
import type { Contradiction } from './contradiction.ts';
import { finishedQuilt, type Rectangle, rectangleOf } from './quilt.ts';
import { type Said, type Text, type Told, writeAs } from './said.ts';
import { isMetricLength } from './seams.ts';
import { usableWidth } from './widths.ts';

const LAYER = /\b(backing|batting|wadding|back(?= (?:should|must|wants|measures)))\b/i;
const PARTS = /\b(?:panels?|lengths|pieces?|halves|strips?|sleeve|label|each|pocket|pillow|cushion|block)\b/i;
/** "(cut 2)": the size of one of several pieces. */
const SEVERAL = /^[^.;]{0,20}(?:\bcut (?:two|three|four|\d)|[×x] ?\d\b|\btwo\b|\btwice\b)/i;
/** Backs that are no single layer as large as the quilt. */
const OTHER_BACKS = /\b(?:pillows?|cushions?|shams?|envelopes?|bags?|totes?|pouch|placemats?|coasters?)\b/i;
const OVERHANG =
  /\b(?:larger|bigger|more|beyond|wider|extra)\b[^.;]{0,40}\b(?:on (?:each|every|all|either)|all (?:the way )?(?:a)?round|(?:each|every|all(?: four)?) sides?)/i;

export function layers(text: Text): Contradiction[] {
  const quilt = finishedQuilt(text);
  if (!quilt || OTHER_BACKS.test(text.words)) return [];
  return text.phrases.flatMap((said) => {
    const layer = layerOf(said);
    if (!layer) return [];
    const size = rectangleOf(said);
    if (size) return tooSmall(layer, size, quilt, overhangBeside(said));
    return yardage(text, said, layer, quilt);
  });
}

/** Which layer the phrase measures: named right before its numbers, or behind them. */
function layerOf({ before, behind, own, count, line, phrase }: Said): string | undefined {
  if (count || PARTS.test(own) || SEVERAL.test(line.text.slice(phrase.core.end))) return undefined;
  const ahead = before.slice(-60);
  const cell = line.line.isRow ? line.text.slice(0, phrase.core.start) : ahead;
  const named = [...cell.matchAll(new RegExp(LAYER.source, 'gi'))].at(-1)?.[0];
  const follows = /^["”″)]?\s*(?:(?:piece )?of |for (?:the )?)?(backing|batting|wadding)\b/i.exec(
    behind,
  )?.[1];
  const word =
    follows ??
    (/[.;]\s[^.;]*$/.test(cell) && !LAYER.test(cell.split(/[.;]\s/).at(-1) ?? '') ? undefined : named);
  return word?.toLowerCase().replace(/^back$/, 'backing');
}

/** What the same sentence states to be added on every side, if no other layer is spoken of. */
function overhangBeside({ line, phrase, sentence }: Said): Told | undefined {
  if (/\b(?:batting|wadding)\b/i.test(sentence) && /\bbacking\b/i.test(sentence)) return undefined;
  const beside = line.phrases.filter(
    (other) =>
      other.phrase.core.start !== phrase.core.start &&
      other.size.length === 1 &&
      !other.count &&
      sentence.includes(other.own) &&
      OVERHANG.test(other.behind),
  );
  return beside.length === 1 ? beside[0]?.size[0] : undefined;
}

function tooSmall(
  layer: string,
  size: Rectangle,
  quilt: Rectangle,
  overhang: Told | undefined,
): Contradiction[] {
  const more = overhang ? overhang.value.mul(2n) : ZERO;
  const tolerance = isMixed(size, quilt) ? rational(1, 2) : ZERO;
  const lacks = (side: Rational, need: Rational) => side.add(tolerance).compare(need.add(more)) < 0;
  const [isShort, isNarrow] = [lacks(size.long, quilt.long), lacks(size.short, quilt.short)];
  if (!isShort && !isNarrow) return [];
  const [a, b] = size.sides;
  const at = isShort === a.value.compare(b.value) >= 0 || a === b ? a : b;
  const [is, need] = isShort ? [at.text, quilt.long] : [at.text, quilt.short];
  const message = overhang
    ? `The quilt is ${quilt.text}; with ${overhang.text} more on every side the ${layer} must reach ${writeAs(need.add(more), at)}, not ${is}.`
    : `The ${layer} of ${size.text} is smaller than the quilt, which is ${quilt.text}.`;
  return [
    {
      code: 'not-enough',
      message,
      at,
      against: [
        ...quiltSays(quilt),
        ...(overhang ? [{ told: overhang, says: 'So much more is said for every side here.' }] : []),
      ],
    },
  ];
}

function quiltSays({ sides, text }: Rectangle) {
  const [a, b] = sides;
  return (a === b ? [a] : [a, b]).map((told) => ({ told, says: `The quilt is ${text} here.` }));
}

function isMixed(a: Rectangle, b: Rectangle): boolean {
  return a.sides[0].number.unit !== b.sides[0].number.unit;
}

const WIDE = /\b(?:wide|108|wideback|directional|pieced|scraps?|fat|flannel|minky|or)\b/i;

/** The yardage of a backing from fabric of common width, without any overhang. */
function yardage(text: Text, said: Said, layer: string, quilt: Rectangle): Contradiction[] {
  const [yards, more] = said.size;
  const unit = yards?.number.unit;
  if (layer !== 'backing' || !yards || more || (unit !== 'yd' && unit !== 'm')) return [];
  if (WIDE.test(said.line.text)) return [];
  const plan = planBacking({
    top: { width: Real.of(quilt.short), length: Real.of(quilt.long) },
    overhang: ZERO,
    usableWidth: usableWidth(text),
    panelSeam: rational(1, 4),
  });
  const need = plan.best.fabricLength.exact;
  // Lengths may be pieced from parts, so that only less than the area is beyond doubt.
  const area = quilt.short.mul(quilt.long).div(usableWidth(text));
  if (!need || yards.value.compare(area) >= 0) return [];
  const length = isMetricLength(yards) ? '' : `${writeAs(yards.value, quilt.sides[0])} of fabric, `;
  return [
    {
      code: 'not-enough',
      message: `${yards.text} of backing is ${length}too little for a quilt of ${quilt.text}, which takes at least ${writeAs(need, quilt.sides[0])}.`,
      at: yards,
      against: quiltSays(quilt),
    },
  ];
}
