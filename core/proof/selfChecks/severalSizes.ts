/** Whether a manuscript gives its numbers for several sizes of the quilt, and for which. */
import type { Pattern } from '../../block/pattern.ts';
import { CELL_BREAK, type Line } from '../../reading/line.ts';

const SIZE =
  '(?:crib|cot|baby|toddler|child|lap|throw|sofa|single|twin|full|double|queen|king|wall|runner|large|larger|small|smaller|medium|bigger|mini)';

const NAMED = new RegExp(`\\b${SIZE}\\b`, 'gi');
/** 5 (7, 9); 5 (7) strips; 12/20/30 blocks; [72, 110]; 62" × 74" (80" × 98"). */
const LISTS = [
  /\d["”″]?\s*[([{]\s*\d+\s*(?:[,;/]\s*\d+\s*)*[)\]}]/,
  /\d["”″]?\s*[([{]\s*[\d½¼¾⅛⅜⅝⅞][^)\]}\p{L}]{0,24}["”″]?\s*[,;/×x]\s*[\d½¼¾⅛⅜⅝⅞][^)\]}\p{L}]{0,30}[)\]}]/u,
  /(?<![\d/])\d{1,3}\s*\/\s*\d{1,3}\s*\/\s*\d{1,3}(?![\d/])/,
  /(?<!\d["”″]?\s?[x×X]\s?)\b\d{2,3}\/\d{2,3}\s+(?:squares|blocks|strips|units|rectangles|triangles)/,
];
const WORDS =
  /\b(?:for|in) (?:the )?(?:larger|smaller|bigger|other|second|first|each|all|both|three|two|four) (?:quilt )?sizes?\b|\b(?:sizes? in (?:brackets|parentheses)|(?:larger|smaller|bigger) (?:quilt|version|size)|(?:two|three|four|five|several|all) sizes)\b/i;

/** @returns none where the quilt has one size; `undefined` where it has several that cannot be told apart */
export function sizesOf(lines: readonly Line[], pattern: Pattern): readonly string[] | undefined {
  if (pattern.sizes.length > 1) return pattern.sizes.map(({ name }) => name);
  return hasSeveral(lines) ? toldSizes(lines) : [];
}

function hasSeveral(lines: readonly Line[]): boolean {
  if (WORDS.test(lines.map(({ text }) => text).join('\n'))) return true;
  return lines.some((line) => {
    const { text, isRow, isHeading } = line;
    if (namesIn(text).length > 1 && (isRow || isHeading || /\d/.test(text))) return true;
    return LISTS.some((list) => list.test(text));
  });
}

function namesIn(text: string): string[] {
  return [...new Set([...text.matchAll(NAMED)].map(([name]) => name.toLowerCase()))];
}

/** Cells that are nothing but the name of a size. */
const CELL = new RegExp(`^\\W*${SIZE}(?: quilt| size)?\\W*$`, 'i');
/** Lap (twin, queen); the twin in brackets; sizes: lap, twin and queen. */
const INTRODUCED = new RegExp(
  `\\b${SIZE} ?[(\\[]${SIZE}\\b|\\b${SIZE}\\b[^.]*\\bin (?:brackets|parentheses)|\\bsizes?:?(?: are)? ${SIZE}\\b`,
  'i',
);

/** The sizes in the order in which lists give them: as the columns of a table stand, or as a sentence introduces them. */
function toldSizes(lines: readonly Line[]): readonly string[] | undefined {
  const heads = lines.flatMap(({ text, isRow }) => {
    const cells = isRow ? text.split(CELL_BREAK).filter((cell) => CELL.test(cell)) : [];
    return cells.length > 1 ? [namesIn(cells.join(' '))] : [];
  });
  const introduced = lines.flatMap(({ text, isRow }) =>
    !isRow && INTRODUCED.test(text) && namesIn(text).length > 1 ? [namesIn(text)] : [],
  );
  const all = [...heads, ...introduced];
  const [names] = all;
  const isOne = names && all.every((each) => each.join() === names.join());
  const lengths = new Set(lines.flatMap(({ text }) => listLengths(text)));
  return isOne && [...lengths].every((length) => length === names.length) ? names : undefined;
}

const BRACKETS = /\d["”″]?\s*[([{]\s*(\d[^()[\]{}\p{L}]*)[)\]}]/gu;

/** How many numbers stand in lists such as 5 (7, 9). */
function listLengths(text: string): number[] {
  return [...text.matchAll(BRACKETS)].map(([, rest = '']) => rest.split(/[,;/]/).length + 1);
}
