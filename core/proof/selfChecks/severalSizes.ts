/** Whether a manuscript gives its numbers for several sizes of the quilt, so that a number alone says little. */
import type { Pattern } from '../../block/pattern.ts';
import type { Text } from './said.ts';

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

export function hasSeveralSizes({ words, lines }: Text, pattern: Pattern): boolean {
  if (pattern.sizes.length > 1 || WORDS.test(words)) return true;
  return lines.some(({ text, line }) => {
    const names = new Set([...text.matchAll(NAMED)].map(([name]) => name.toLowerCase()));
    if (names.size > 1 && (line.isRow || line.isHeading || /\d/.test(text))) return true;
    return LISTS.some((list) => list.test(text));
  });
}
