/** What stands right before and behind a number: the few words that decide what it means. */
import { TRADE_NOUNS } from '../quantity/nouns.ts';

/** Far enough for "rows 1, 2, 3, 4 and", and short enough to look at for every number. */
const WINDOW = 48;

export function textBefore(text: string, offset: number): string {
  return text.slice(Math.max(0, offset - WINDOW), offset);
}

export function textBehind(text: string, offset: number): string {
  return text.slice(offset, offset + WINDOW);
}

const WORDS = /^[\s-]*([\p{L}][\p{L}'’-]*)/u;
/** A noun behind one of these belongs to something else: 42" of fabric for strips. */
export const STOPS = new Set(
  'of from for to and or with into in on by at each per then cut sew make is are'.split(' '),
);

/** The first of the trade's nouns within three words. */
export function nounBehind(text: string, offset: number): string | undefined {
  let rest = textBehind(text, offset).replace(/^[)"”″]/, '');
  for (let count = 0; count < 3; count++) {
    const match = WORDS.exec(rest);
    const word = match?.[1]?.toLowerCase();
    if (!match || word === undefined || STOPS.has(word)) return undefined;
    if (TRADE_NOUNS.has(word)) return word;
    rest = rest.slice(match[0].length);
  }
  return undefined;
}

export function isPluralNoun(noun: string | undefined): boolean {
  return noun !== undefined && TRADE_NOUNS.get(noun)?.many.toLowerCase() === noun;
}
