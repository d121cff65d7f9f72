/** The centre of a quilt, and the quilt, against its rows of blocks and its borders, where all of them are told. */
import { isInteger, max, min, type Rational, rational, ZERO } from '../../quantity/rational.ts';
import { INCHES_PER } from '../../quantity/units.ts';
import { finishedBlock, hasSeveralBlocks } from './blocks.ts';
import { topOf } from './borders.ts';
import type { Contradiction } from './contradiction.ts';
import { finishedQuilt, type Rectangle } from './quilt.ts';
import { gridsOf, isWhole } from './rows.ts';
import { type Text, type Told, writeAs } from './said.ts';
import { isMetricLength, seamsFor } from './seams.ts';

/** Whatever else may lie between blocks or around them. */
const ELSE =
  /\b(?:sash\w*|cornerstones?|on point|on-point|diagonal (?:rows|set\w*)|setting|spacers?|coping|medallion|half[- ]blocks?|columns? of|alternat\w+|flanges?|frames?|offset|partial|panels? of|appliqu\w+ borders?)\b/i;

export function quiltSize(text: Text): Contradiction[] {
  const [grid, ...more] = gridsOf(text);
  const block = finishedBlock(text);
  if (!grid || more.length > 0 || !isWhole(text, grid)) return [];
  if (!block || ELSE.test(text.words) || hasSeveralBlocks(text)) return [];
  const inner = [grid.perRow, grid.rows].map(({ value }) => value.mul(block.value)) as [Rational, Rational];
  const working = `${grid.rows.text} rows of ${grid.perRow.text} blocks of ${block.text}`;
  const says = [
    { told: grid.rows, says: `There are ${grid.rows.text} rows here.` },
    { told: grid.perRow, says: `Each row has ${grid.perRow.text} here.` },
    { told: block, says: `The block finishes at ${block.text} here.` },
  ];
  const centre = centreOf(text);
  const seams = seamsFor(text, block);
  const both = isMetricLength(block) ? seams.both : HALF;
  const [exact, edge] = isMetricLength(block) ? [ROUNDING, METRIC_EDGE] : [ZERO, HALF];
  if (centre) {
    const unfinished = both && grown(inner, both);
    const included = `${working}, seam allowance included, are`;
    return unfinished ? compared(centre, unfinished, exact, block, included, says) : [];
  }
  const border = bordersOf(text, block, both);
  const quilt = finishedQuilt(text);
  if (!quilt || !border) return [];
  return compared(
    quilt,
    grown(inner, border.width.mul(2n)),
    edge,
    block,
    `${working}${border.words} make`,
    says,
  );
}

/** Two seam allowances, in inches. */
const HALF = rational(1, 2);
/** The quilt may be measured with its outer seam allowances: with two of 1 cm at most. */
const METRIC_EDGE = INCHES_PER.mm.mul(22n);
/** Half a centimetre over the whole quilt. */
const ROUNDING = INCHES_PER.mm.mul(5n);

function grown([a, b]: readonly [Rational, Rational], more: Rational): [Rational, Rational] {
  return [a.add(more), b.add(more)];
}

/** The first measure of the centre, or of the top where there are no borders. */
function centreOf(text: Text): Rectangle | undefined {
  const hasBorders = /\bborders?\b/i.test(text.words);
  const tops = text.phrases.flatMap((said) => {
    const isCentre = /\bcent(?:er|re)\b[^.;]{0,60}$/i.test(said.before);
    const top = isCentre || !hasBorders ? topOf(said) : undefined;
    return top ?? [];
  });
  return tops[0];
}

/** All borders together on one side, finished; `undefined` when one of them is not told plainly. */
function bordersOf(
  text: Text,
  block: Told,
  seams: Rational | undefined,
): { readonly width: Rational; readonly words: string } | undefined {
  if (!/\bborders?\b/i.test(text.words)) return { width: ZERO, words: '' };
  const named = new Set(
    [...text.words.matchAll(/\b(inner|outer|middle|first|second|third|final)(?= borders?\b)/gi)].map(
      ([word]) => word.toLowerCase(),
    ),
  );
  const widths = new Map<string, Told>();
  for (const { own, size, count } of text.phrases) {
    const [name = '', ...others] = [
      ...own.matchAll(/\b(inner|outer|middle|first|second|third|final)(?= borders?\b)/gi),
    ].map(([word]) => word.toLowerCase());
    const [width] = size;
    if (!count || !width || !/\bborders?\b/i.test(own) || !/\bstrips?\b|\bWOF\b/i.test(own)) continue;
    const known = widths.get(name);
    if (others.length > 0 || (known && !known.value.equals(width.value))) return undefined;
    widths.set(name, width);
  }
  const names = named.size > 0 ? [...named] : [''];
  const told = names.flatMap((name) => widths.get(name) ?? []);
  if (!seams || told.length < names.length || widths.size !== names.length) return undefined;
  const finished = told.map(({ value }) => value.sub(seams));
  const width = finished.reduce((sum, value) => sum.add(value), ZERO);
  return {
    width,
    words: ` with borders of ${finished.map((value) => writeAs(value, block)).join(' and ')}`,
  };
}

function compared(
  told: Rectangle,
  [a, b]: readonly [Rational, Rational],
  tolerance: Rational,
  block: Told,
  working: string,
  says: Contradiction['against'],
): Contradiction[] {
  const [short, long] = [min(a, b), max(a, b)];
  const differs = (is: Rational, must: Rational) => is.sub(must).abs().compare(tolerance) > 0;
  const [isShort, isLong] = [differs(told.short, short), differs(told.long, long)];
  if ((!isShort && !isLong) || told.sides[0].number.unit !== block.number.unit) return [];
  // Whole blocks off on both sides: another layout is meant.
  if (isShort && isLong && (isMetricLength(block) || !isInteger(told.short.sub(short).mul(8n)))) return [];
  const [one, other] = told.sides;
  const at = isLong === one.value.compare(other.value) >= 0 ? one : other;
  return [
    {
      code: 'sizes-disagree',
      message: `${working.charAt(0).toUpperCase()}${working.slice(1)} ${writeAs(a, block)} × ${writeAs(b, block)}, not ${told.text}.`,
      at,
      against: says,
    },
  ];
}
