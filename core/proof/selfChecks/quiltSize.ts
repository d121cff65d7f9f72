/** The centre of a quilt, and the quilt, against its rows of blocks and its borders, where all of them are told. */
import { isInteger, max, min, type Rational, rational, ZERO } from '../../quantity/rational.ts';
import { writeInches } from '../../quantity/show.ts';
import { finishedBlock, hasSeveralBlocks } from './blocks.ts';
import { topOf } from './borders.ts';
import type { Contradiction } from './contradiction.ts';
import { finishedQuilt, type Rectangle } from './quilt.ts';
import { gridsOf, isWhole } from './rows.ts';
import type { Text, Told } from './said.ts';

/** Whatever else may lie between blocks or around them. */
const ELSE =
  /\b(?:sash\w*|cornerstones?|on point|on-point|diagonal (?:rows|set\w*)|setting|spacers?|coping|medallion|half[- ]blocks?|columns? of|alternat\w+|flanges?|frames?|offset|partial|panels? of|appliqu\w+ borders?)\b/i;

export function quiltSize(text: Text): Contradiction[] {
  const [grid, ...more] = gridsOf(text);
  const block = finishedBlock(text);
  if (!grid || more.length > 0 || !isWhole(text, grid)) return [];
  if (!block || ELSE.test(text.words) || hasSeveralBlocks(text) || block.number.unit !== 'in') return [];
  const inner = [grid.perRow, grid.rows].map(({ value }) => value.mul(block.value)) as [Rational, Rational];
  const working = `${grid.rows.text} rows of ${grid.perRow.text} blocks of ${block.text}`;
  const says = [
    { told: grid.rows, says: `There are ${grid.rows.text} rows here.` },
    { told: grid.perRow, says: `Each row has ${grid.perRow.text} here.` },
    { told: block, says: `The block finishes at ${block.text} here.` },
  ];
  const centre = centreOf(text);
  if (centre)
    return compared(centre, inner, rational(1, 2), ZERO, `${working}, seam allowance included, are`, says);
  const border = bordersOf(text);
  const quilt = finishedQuilt(text);
  if (!quilt || !border) return [];
  const outer = inner.map((side) => side.add(border.width.mul(2n))) as [Rational, Rational];
  return compared(quilt, outer, ZERO, rational(1, 2), `${working}${border.words} make`, says);
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
function bordersOf(text: Text): { readonly width: Rational; readonly words: string } | undefined {
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
  if (told.length < names.length || widths.size !== names.length) return undefined;
  const width = told.reduce((sum, { value }) => sum.add(value.sub(rational(1, 2))), ZERO);
  return {
    width,
    words: ` with borders of ${told.map(({ value }) => writeInches(value.sub(rational(1, 2)))).join(' and ')}`,
  };
}

function compared(
  told: Rectangle,
  finished: readonly [Rational, Rational],
  seams: Rational,
  tolerance: Rational,
  working: string,
  says: Contradiction['against'],
): Contradiction[] {
  const [a, b] = finished.map((side) => side.add(seams)) as [Rational, Rational];
  const [short, long] = [min(a, b), max(a, b)];
  const differs = (is: Rational, must: Rational) => is.sub(must).abs().compare(tolerance) > 0;
  const [isShort, isLong] = [differs(told.short, short), differs(told.long, long)];
  if ((!isShort && !isLong) || told.sides[0].number.unit !== 'in') return [];
  // Whole blocks off on both sides: another layout is meant.
  if (isShort && isLong && !isInteger(told.short.sub(short).mul(8n))) return [];
  const [one, other] = told.sides;
  const at = isLong === one.value.compare(other.value) >= 0 ? one : other;
  return [
    {
      code: 'sizes-disagree',
      message: `${working.charAt(0).toUpperCase()}${working.slice(1)} ${writeInches(a)} × ${writeInches(b)}, not ${told.text}.`,
      at,
      against: says,
    },
  ];
}
