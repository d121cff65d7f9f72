/** Number words: "twelve", "one hundred and twenty", "a dozen", "eight and a half", "three-quarters". */
import { BREAK, HYPHEN, matchAt } from './characters.ts';
import { LOOSE, ONES, PART_VALUES, TENS_VALUES } from './lexicon.ts';
import type { LetterCase, NumeralStyle } from './notation.ts';
import { type Rational, rational } from './rational.ts';

export interface WordNumeral {
  readonly end: number;
  readonly value: Rational;
  readonly style: NumeralStyle;
  readonly weak: boolean;
  /** "half", "three-quarters": less than one, so that "of an inch" may follow. */
  readonly fractional: boolean;
  /** "twenty five-inch squares": the end and value of the first word, where both may be counts of their own. */
  readonly first?: { readonly end: number; readonly value: Rational };
}

const WORD = /[A-Za-z]+(?![\p{L}\d_])/uy;
const LINK = new RegExp(`${HYPHEN}|${BREAK}`, 'y');
const AND = new RegExp(`(?:${HYPHEN}|${BREAK})and(?:${HYPHEN}|${BREAK})`, 'iy');
const OF = new RegExp(`${BREAK}of(?![\\p{L}])`, 'iuy');
const THE = new RegExp(`${BREAK}(?:of${BREAK})?(?:the|your|each)(?![\\p{L}])`, 'iuy');
const UNIT_BEHIND = new RegExp(
  `(?:${HYPHEN}|${BREAK}(?:of${BREAK})?(?:an?${BREAK})?)(?:inch(?:es)?|yards?|yds?|foot|feet|met(?:re|er)s?|centimet(?:re|er)s?|cm)(?![\\p{L}])`,
  'iuy',
);
/** Behind a part these make a name: half-square, quarter turn, half circle. */
const NAME_BEHIND = new RegExp(
  `(?:${HYPHEN}|${BREAK})(?:squares?|rectangles?|triangles?|turns?|circles?|hexagons?|blocks?|hitch|moons?|stars?|drop|log|ply)(?![\\p{L}])`,
  'iuy',
);
const HYPHEN_WORD = new RegExp(`${HYPHEN}\\p{L}`, 'uy');
const UNIT_WORD = new RegExp(
  `${HYPHEN}(?:inch(?:es)?|in|yards?|yds?|foot|feet|ft|met(?:re|er)s?|cms?|mms?)(?![\\p{L}])`,
  'iuy',
);
const PATCH = new RegExp(`${BREAK}patch(?:es)?(?![\\p{L}])`, 'iuy');

interface Cardinal {
  readonly end: number;
  readonly value: number;
  readonly hundredAnd: boolean;
  readonly dozen: boolean;
  readonly words: number;
  readonly first?: { readonly end: number; readonly value: Rational };
}

/** The number word that starts at `offset`, where a word starts; `undefined` when it is no number. */
export function readWords(text: string, offset: number): WordNumeral | undefined {
  const word = wordAt(text, offset);
  if (word === undefined) return undefined;
  if (word === 'a') return readAfterArticle(text, offset);
  const part = readPart(text, offset);
  if (part) return numeral(text, offset, part.end, part.value, { fractional: true, weak: part.weak });
  const loose = LOOSE.get(word);
  if (loose !== undefined) {
    if (word.startsWith('pair')) return undefined; // a pair of scissors; counted only behind a number or "a"
    return numeral(text, offset, offset + word.length, rational(loose), { weak: true });
  }
  const cardinal = readCardinal(text, offset);
  if (!cardinal) return undefined;
  return (
    readCountedPart(text, offset, cardinal) ??
    readMixedTail(text, offset, cardinal) ??
    cardinalNumeral(text, offset, cardinal)
  );
}

/** The fraction in words behind whole digits: ` and a half` in `2 and a half inches`, with its value and end. */
export function readFractionTail(text: string, offset: number): { end: number; value: Rational } | undefined {
  const and = matchAt(AND, text, offset);
  if (!and) return undefined;
  const start = offset + and[0].length;
  const word = wordAt(text, start);
  if (word === undefined) return undefined;
  if (word === 'a') {
    const link = matchAt(LINK, text, start + 1)?.[0].length;
    const part = link ? partAt(text, start + 1 + link) : undefined;
    return part && !part.many && !isName(text, part.end)
      ? { end: part.end, value: rational(1, part.denominator) }
      : undefined;
  }
  const bare = partAt(text, start);
  if (bare) {
    const unit = matchAt(UNIT_BEHIND, text, bare.end);
    return !bare.many && unit ? { end: bare.end, value: rational(1, bare.denominator) } : undefined;
  }
  const numerator = ONES.get(word);
  return numerator === undefined ? undefined : countedPart(text, start + word.length, numerator);
}

/** The words "dozen" behind digits, as in `2 dozen`: their end. */
export function readDozen(text: string, offset: number): number | undefined {
  const link = matchAt(LINK, text, offset)?.[0].length;
  if (!link || wordAt(text, offset + link) !== 'dozen') return undefined;
  return offset + link + 'dozen'.length;
}

/** "a dozen", "a pair", "a hundred", "a quarter of an inch". The article of "a half-inch seam" is not the number's. */
function readAfterArticle(text: string, offset: number): WordNumeral | undefined {
  const link = matchAt(LINK, text, offset + 1)?.[0];
  if (!link || /^[-\u2010\u2011]/.test(link)) return undefined;
  const start = offset + 1 + link.length;
  const word = wordAt(text, start);
  if (word === undefined) return undefined;
  const end = start + word.length;
  if (word === 'dozen') return numeral(text, offset, end, rational(12), { dozen: true });
  if (word === 'pair') return numeral(text, offset, end, rational(2), { weak: true });
  if (word === 'hundred') {
    const cardinal = hundreds(text, end, 1);
    return numeral(text, offset, cardinal.end, rational(cardinal.value), { hundredAnd: cardinal.hundredAnd });
  }
  const part = partAt(text, start);
  if (!part || part.many || !matchAt(OF, text, part.end)) return undefined;
  const weak = !matchAt(UNIT_BEHIND, text, part.end);
  return numeral(text, offset, part.end, rational(1, part.denominator), { fractional: true, weak });
}

/** "half an inch", "half of the strips", "quarter-inch", "half a dozen": a part without a number before it. */
function readPart(text: string, offset: number): { end: number; value: Rational; weak: boolean } | undefined {
  const part = partAt(text, offset);
  if (!part || part.many) return undefined;
  const value = rational(1, part.denominator);
  if (matchAt(UNIT_BEHIND, text, part.end)) return { end: part.end, value, weak: false };
  if (part.denominator !== 2) return undefined;
  const dozen = matchAt(HALF_DOZEN, text, part.end);
  if (dozen) return { end: part.end + dozen[0].length, value: rational(6), weak: false };
  return matchAt(THE, text, part.end) ? { end: part.end, value, weak: true } : undefined;
}
const HALF_DOZEN = new RegExp(`(?:${HYPHEN}|${BREAK})(?:a(?:${HYPHEN}|${BREAK}))?dozen(?![\\p{L}])`, 'iuy');

/** "three-quarters", "one half inch". */
function readCountedPart(text: string, offset: number, cardinal: Cardinal): WordNumeral | undefined {
  if (cardinal.words > 1) return undefined;
  const part = countedPart(text, cardinal.end, cardinal.value);
  return part && numeral(text, offset, part.end, part.value, { fractional: true });
}

/** "eight and a half". */
function readMixedTail(text: string, offset: number, cardinal: Cardinal): WordNumeral | undefined {
  const tail = readFractionTail(text, cardinal.end);
  if (!tail) return undefined;
  const value = tail.value.add(rational(cardinal.value));
  return numeral(text, offset, tail.end, value, { hundredAnd: cardinal.hundredAnd });
}

function cardinalNumeral(text: string, offset: number, cardinal: Cardinal): WordNumeral {
  const { end, value, words, dozen, hundredAnd } = cardinal;
  const inName = Boolean(matchAt(PATCH, text, end)) || isHyphenated(text, end);
  const weak = inName || (value === 1 && words === 1 && !matchAt(UNIT_BEHIND, text, end));
  const result = numeral(text, offset, end, rational(value), { weak, dozen, hundredAnd });
  return cardinal.first ? { ...result, first: cardinal.first } : result;
}

/** A numerator and its part: the singular only where a unit or "of" follows, or behind a hyphen. */
function countedPart(
  text: string,
  offset: number,
  numerator: number,
): { end: number; value: Rational } | undefined {
  const link = matchAt(LINK, text, offset)?.[0];
  if (!link) return undefined;
  const part = partAt(text, offset + link.length);
  if (!part || numerator < 1 || numerator >= part.denominator || isName(text, part.end)) return undefined;
  const value = rational(numerator, part.denominator);
  if (value.d !== BigInt(part.denominator)) return undefined; // "two quarters" are two pieces
  const unit = Boolean(matchAt(UNIT_BEHIND, text, part.end) ?? matchAt(OF, text, part.end));
  const hyphenated = link.length === 1 && link !== ' ' && link.trim() !== '';
  const sure = unit || hyphenated || (part.many && numerator > 1);
  return sure ? { end: part.end, value } : undefined;
}

function readCardinal(text: string, offset: number): Cardinal | undefined {
  const small = readSmall(text, offset);
  if (!small) return undefined;
  const link = matchAt(LINK, text, small.end)?.[0].length;
  const next = link ? wordAt(text, small.end + link) : undefined;
  if (link && next === 'hundred' && small.value > 0 && small.value < 100) {
    const cardinal = hundreds(text, small.end + link + next.length, small.value);
    return { ...cardinal, dozen: false, words: 2 };
  }
  if (link && next === 'dozen' && small.value > 0) {
    const end = small.end + link + next.length;
    return { end, value: small.value * 12, hundredAnd: true, dozen: true, words: 2 };
  }
  return { ...small, hundredAnd: true, dozen: false };
}

/** What follows the word "hundred": "two hundred", "one hundred and twenty". */
function hundreds(
  text: string,
  end: number,
  count: number,
): { end: number; value: number; hundredAnd: boolean } {
  const and = matchAt(AND, text, end)?.[0].length;
  const link = and ?? matchAt(LINK, text, end)?.[0].length;
  const rest = link ? readSmall(text, end + link) : undefined;
  // "one hundred and one half-inch strips" keeps its fraction.
  if (!rest || rest.value === 0 || readFractionTail(text, end))
    return { end, value: count * 100, hundredAnd: true };
  return { end: rest.end, value: count * 100 + rest.value, hundredAnd: and !== undefined };
}

type Small = Pick<Cardinal, 'end' | 'value' | 'words' | 'first'>;

/** Zero to ninety-nine. */
function readSmall(text: string, offset: number): Small | undefined {
  const word = wordAt(text, offset);
  if (word === undefined) return undefined;
  const end = offset + word.length;
  const ones = ONES.get(word);
  if (ones !== undefined) return { end, value: ones, words: 1 };
  const tens = TENS_VALUES.get(word);
  if (tens === undefined) return undefined;
  const link = matchAt(LINK, text, end)?.[0];
  const next = link ? wordAt(text, end + link.length) : undefined;
  const unit = next === undefined ? undefined : ONES.get(next);
  if (!link || next === undefined || !unit || unit > 9) return { end, value: tens, words: 1 };
  const joinedEnd = end + link.length + next.length;
  const spaced = link.trim() === '';
  if (spaced && matchAt(UNIT_WORD, text, joinedEnd)) {
    // "twenty five-inch squares": the hyphen ties five to the inch.
    return { end, value: tens, words: 1, first: { end: joinedEnd, value: rational(tens + unit) } };
  }
  return { end: joinedEnd, value: tens + unit, words: 2 };
}

function wordAt(text: string, offset: number): string | undefined {
  return matchAt(WORD, text, offset)?.[0].toLowerCase();
}

function partAt(
  text: string,
  offset: number,
): { end: number; denominator: number; many: boolean } | undefined {
  const word = wordAt(text, offset);
  const part = word === undefined ? undefined : PART_VALUES.get(word);
  return part && word !== undefined ? { ...part, end: offset + word.length } : undefined;
}

function isName(text: string, end: number): boolean {
  return matchAt(NAME_BEHIND, text, end) !== undefined;
}

/** Tied to the next word by a hyphen, and that word is no unit: nine-patch, four-sided. */
function isHyphenated(text: string, end: number): boolean {
  return matchAt(HYPHEN_WORD, text, end) !== undefined && matchAt(UNIT_WORD, text, end) === undefined;
}

function numeral(
  text: string,
  start: number,
  end: number,
  value: Rational,
  more: { weak?: boolean; fractional?: boolean; dozen?: boolean; hundredAnd?: boolean },
): WordNumeral {
  const { weak = false, fractional = false, dozen = false, hundredAnd = true } = more;
  const style = { form: 'words', letterCase: letterCase(text.slice(start, end)), hundredAnd, dozen } as const;
  return { end, value, style, weak, fractional };
}

function letterCase(words: string): LetterCase {
  if (words.length > 1 && words === words.toUpperCase()) return 'upper';
  return words[0] === words[0]?.toUpperCase() ? 'capital' : 'lower';
}
