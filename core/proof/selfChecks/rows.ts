/** Rows of so many blocks against the number of blocks. */
import { type Rational, ZERO } from '../../quantity/rational.ts';
import { partialPattern } from '../../reading/lexicon/partialWords.ts';
import { soleTotalOfBlocks } from './blocks.ts';
import type { Contradiction } from './contradiction.ts';
import type { Said, SaidLine, Text, Told } from './said.ts';

/** Rows by blocks in each. */
export interface Grid {
  readonly rows: Told;
  readonly perRow: Told;
  readonly line: SaidLine;
}

const ON_POINT =
  /\b(?:on point|on-point|diagonal(?:ly)?(?: rows| set)?|setting triangles?|half[- ]blocks?)\b/i;

/** "5 rows of 4 blocks", "5 rows with 4 blocks each", "5 blocks across and 6 down". */
export function gridsOf({ lines }: Text): Grid[] {
  return lines.flatMap((line) =>
    line.phrases.flatMap((first, index): Grid[] => {
      const second = line.phrases[index + 1];
      const [a, b] = [first.count, second?.count];
      if (!second || !a || !b || first.size.length > 0 || second.size.length > 0) return [];
      const between = second.before;
      const behind = line.text.slice(second.phrase.core.end);
      if (/\bborders?\b/i.test(second.sentence)) return [];
      if (/^\)?\s*rows?,?\s+(?:of|with|each (?:of|with))\s*\(?$/i.test(between) && isBlocks(behind, line))
        return [{ rows: a, perRow: b, line }];
      if (
        /^\)?\s*(?:blocks )?across (?:and|by)\s*\(?$/i.test(between) &&
        /^\)?\s*(?:blocks )?down\b/i.test(behind)
      )
        return [{ rows: b, perRow: a, line }];
      return [];
    }),
  );
}

/** What a row is made of, when it is said; "of 5" alone is read of blocks where the sentence speaks of them. */
function isBlocks(behind: string, { text }: SaidLine): boolean {
  if (/^\)?\s*(?:[\p{L}’'-]+ )?blocks?\b/iu.test(behind)) return true;
  return /^\)?(?:\s+(?:each|as)\b|\s*[.,;:]|\s*$)/.test(behind) && /\bblocks\b/i.test(text);
}

export function rows(text: Text): Contradiction[] {
  const grids = gridsOf(text);
  if (ON_POINT.test(text.words) || grids.length === 0) return [];
  const found = [...new Set(grids.map(({ line }) => line))].flatMap((line) =>
    inLine(
      line,
      grids.filter((grid) => grid.line === line),
    ),
  );
  return found.length > 0 ? found : overall(text, grids);
}

function inLine(line: SaidLine, grids: readonly Grid[]): Contradiction[] {
  const used = new Set(grids.flatMap(({ rows, perRow }) => [rows.number, perRow.number]));
  const totals = line.phrases.filter(
    (each) => each.count && !used.has(each.count.number) && isTotal(each) && each.size.length === 0,
  );
  const [total] = totals;
  if (!total?.count || totals.length !== 1) return [];
  return contradiction(total.count, grids, line.text);
}

const PARTIAL = partialPattern(['a part', 'one of several', 'left over', 'another kind']);

/** A number of blocks without a word that makes it a part: "blocks facing left", "blocks each day". */
const PLAIN_TOTAL =
  /^\)?\s*blocks(?:\s+(?:in all|total|altogether|in total))?\s*(?:[.,;:()]|$|(?:in|into|together|out)\b)/i;

function isTotal({ line, phrase, before }: Said): boolean {
  return (
    PLAIN_TOTAL.test(line.text.slice(phrase.core.end)) &&
    !PARTIAL.test(line.text.slice(Math.max(0, phrase.core.start - 16), phrase.core.end + 24)) &&
    !/\b(?:row|column)s? (?:of|with)\s*\(?$/i.test(before)
  );
}

/** The number of blocks that is made in another place, if there is one kind of blocks and one number of them. */
function overall(text: Text, grids: readonly Grid[]): Contradiction[] {
  const total = soleTotalOfBlocks(text);
  const [grid, ...more] = grids;
  if (!total || !grid || more.length > 0 || !isWhole(text, grid)) return [];
  const { passage, written } = total.number;
  if (!PLAIN_TOTAL.test(passage.text.slice(written.end))) return [];
  return contradiction(total, [grid], text.words);
}

const LEFT = partialPattern(['left over', 'another thing'], 'other', 'plus', 'join them to');

/** Whether no other number of rows is told, of which the rows may be a part. */
export function isWhole({ phrases }: Text, { rows }: Grid): boolean {
  return phrases.every(
    ({ count, line, phrase }) =>
      !count ||
      count.number === rows.number ||
      count.value.equals(rows.value) ||
      !/^\)?\s*(?:[\p{L}’'-]+ ){0,2}?rows\b/iu.test(line.text.slice(phrase.core.end)),
  );
}

/** @param around where blocks that are not in the rows would be told of */
function contradiction(total: Told, grids: readonly Grid[], around: string): Contradiction[] {
  const sum = grids.reduce((all: Rational, { rows, perRow }) => all.add(rows.value.mul(perRow.value)), ZERO);
  if (sum.equals(total.value)) return [];
  if (sum.compare(total.value) < 0 && LEFT.test(around)) return [];
  const shown = grids.map(({ rows, perRow }) => `${rows.text} rows of ${perRow.text}`).join(' and ');
  return [
    {
      code: 'counts-disagree',
      message: `${shown.charAt(0).toUpperCase()}${shown.slice(1)} make ${sum.toString()} blocks, not ${total.text}.`,
      at: total,
      against: grids.flatMap(({ rows, perRow }) => [
        { told: rows, says: `There are ${rows.text} rows here.` },
        { told: perRow, says: `Each of these rows has ${perRow.text}.` },
      ]),
    },
  ];
}
