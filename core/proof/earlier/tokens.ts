/** Lines as words and numbers, so that two versions of a sentence can be laid side by side. */
import type { KeptLine, KeptNumber } from './keptLine.ts';

export type Token = { readonly text: string; readonly number?: KeptNumber };

/** What stands for a number where its value does not matter. */
export const ANY = '#';

const WORD = /[\p{L}\p{M}\p{N}'’]+|[^\s]/gu;

/** Words in lower case, signs, and numbers; a number in a table follows the head of its column. */
export function tokensOf({ text, numbers }: KeptLine): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  for (const number of numbers) {
    tokens.push(...wordsIn(text.slice(at, number.start)));
    if (number.column !== undefined) tokens.push({ text: `head ${masked(number.column)}` });
    tokens.push({ text: ANY, number });
    at = number.end;
  }
  tokens.push(...wordsIn(text.slice(at)));
  return tokens;
}

/** A text in which every run of digits counts the same: the heading “Cut 7” is the heading “Cut 8”. */
export function masked(text: string): string {
  return text.toLowerCase().replace(/[\d½¼¾⅛⅜⅝⅞⅓⅔./]+/g, ANY);
}

function wordsIn(text: string): Token[] {
  return Array.from(text.toLowerCase().matchAll(WORD), ([word]) => ({ text: word }));
}
