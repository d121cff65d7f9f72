/** The trade's countable nouns, and the plural that follows a count when the count changes. */
import { BREAK, matchAt } from './characters.ts';
import type { NumberText } from './notation.ts';
import { ONE, type Rational } from './rational.ts';

/** Singular to plural of nouns that a count is put before. */
const NOUNS: readonly (readonly [one: string, many: string])[] = [
  ...regular(
    'strip square rectangle triangle piece unit block row column panel border segment set pair section seam ' +
      'cornerstone hexagon diamond kite wedge circle fabric print quarter eighth strip-set layer length ' +
      'width subcut template rosette binding quilt corner side star center centre stack bundle pack',
  ),
  ['sash', 'sashes'],
  ['patch', 'patches'],
  ['half', 'halves'],
  ['batch', 'batches'],
  ['half-square triangle', 'half-square triangles'],
  ['HST', 'HSTs'],
  ['QST', 'QSTs'],
  ['FQ', 'FQs'],
];

function regular(words: string): [string, string][] {
  return words.split(' ').map((word) => [word, `${word}s`]);
}

/** Every known noun in lower case, singular or plural, to its two forms. */
export const TRADE_NOUNS: ReadonlyMap<string, { readonly one: string; readonly many: string }> = new Map(
  NOUNS.flatMap(([one, many]) => [one, many].map((word) => [word.toLowerCase(), { one, many }])),
);

export interface TextEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const NEXT_WORD = new RegExp(`${BREAK}([\\p{L}][\\p{L}'’-]*)`, 'uy');
/** A size between count and noun: the `3½"` of `18 3½" squares`, brackets and by-signs included. */
const NEXT_SIZE = new RegExp(
  `(?:${BREAK}|-{1,2}|[–—])?[(]?\\d[\\d./⁄∕ \\u00a0½¼¾⅓⅔⅛⅜⅝⅞-]*(?:"|”|″|''|cm|mm|in\\b\\.?)?[)]?(?:${BREAK}?[x×X])?`,
  'uy',
);
/** Words that end the reach of a count: what comes behind them belongs to something else. */
const STOP = new Set(
  'of from for to and with into in on by at each or then cut sew make press per is are'.split(' '),
);
const REACH = 6;

/**
 * The edit that gives the noun behind a count its right number, when the count crosses one: `1 strip` becomes
 * `2 strips`. `undefined` when nothing must change or the noun is not known.
 */
export function nounEdit(text: string, count: NumberText, value: Rational): TextEdit | undefined {
  const [was, is] = [count.value.equals(ONE), value.equals(ONE)];
  if (was === is) return undefined;
  const noun = nounBehind(text, count.end);
  if (!noun) return undefined;
  const forms = TRADE_NOUNS.get(noun.word.toLowerCase());
  if (!forms || noun.word.toLowerCase() !== (was ? forms.one : forms.many).toLowerCase()) return undefined;
  const target = is ? forms.one : forms.many;
  return { start: noun.start, end: noun.start + noun.word.length, text: sameCase(noun.word, target) };
}

/** The last noun of the first run of known nouns within reach: `sets` in `2 strip sets`. */
function nounBehind(text: string, offset: number): { start: number; word: string } | undefined {
  let found: { start: number; word: string } | undefined;
  let at = text[offset] === ')' ? offset + 1 : offset;
  for (let step = 0; step < REACH; step++) {
    const match = matchAt(NEXT_WORD, text, at);
    const word = match?.[1];
    if (match && word) {
      if (STOP.has(word.toLowerCase())) break;
      const start = at + match[0].length - word.length;
      const known = TRADE_NOUNS.has(word.toLowerCase());
      if (found && !known) break;
      if (known) found = { start, word };
      at = start + word.length;
      continue;
    }
    const size = found ? undefined : matchAt(NEXT_SIZE, text, at);
    if (!size) break;
    at += size[0].length;
  }
  return found;
}

/** `word` in the case of `model`: Strip, STRIP. A word with capitals of its own, such as FQs, keeps them. */
export function sameCase(model: string, word: string): string {
  if (/[A-Z]/.test(word)) return word;
  if (model.length > 1 && model === model.toUpperCase()) return word.toUpperCase();
  const first = model[0] ?? '';
  return first === first.toUpperCase() ? (word[0] ?? '').toUpperCase() + word.slice(1) : word;
}
