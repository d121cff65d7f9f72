/**
 * The characters that numbers are made of.
 *
 * Vulgar fractions are read as they stand. Compatibility normalisation must never come before: NFKC turns
 * `2½` into `21⁄2`, which is 10½.
 */

/**
 * Numerator and denominator of every vulgar fraction character.
 *
 * Source: Unicode Character Database, DerivedNumericValues.txt (U+00BC..U+00BE, U+2150..U+215E, U+2189).
 */
export const VULGAR_FRACTIONS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['¼', [1, 4]],
  ['½', [1, 2]],
  ['¾', [3, 4]],
  ['⅐', [1, 7]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
  ['↉', [0, 3]],
]);

/** U+215F, a one with its slash: `⅟16` is 1/16. */
export const NUMERATOR_ONE = '⅟';

/** The character for a fraction in lowest terms, where Unicode has one. */
export function glyphFor(numerator: bigint, denominator: bigint): string | undefined {
  for (const [glyph, [n, d]] of VULGAR_FRACTIONS) {
    if (BigInt(n) === numerator && BigInt(d) === denominator) return glyph;
  }
  return undefined;
}

export const RAISED_DIGITS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
export const LOWERED_DIGITS = '₀₁₂₃₄₅₆₇₈₉';

/** Spaces inside a line: the keyboard's, non-breaking, thin, hair, and the invisible plus of mixed numbers. */
const SPACES = ' \t\u00a0\u2000-\u200b\u202f\u205f\u2064\u3000';
export const SPACE = `[${SPACES}]`;
/** Spaces with at most one line break, as in a soft-wrapped paragraph. */
export const BREAK = `(?:[${SPACES}]*\\n[${SPACES}]*|[${SPACES}]+)`;
/** The hyphens of the keyboard and of typesetters. */
export const HYPHEN = '[-\u2010\u2011]';
/** Dashes that separate: en, em, horizontal bar, minus, or two or more of anything. */
export const LONG_DASH = '(?:[\u2012-\u2015\u2212]|[-\u2010-\u2015\u2212]{2,3})';
export const SLASH = '[/\u2044\u2215]';

const LETTER = /\p{L}|\p{M}|_/u;

export function isLetter(character: string | undefined): boolean {
  return character !== undefined && LETTER.test(character);
}

export function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= '0' && character <= '9';
}

/** What a sticky expression matches at `offset`. */
export function matchAt(expression: RegExp, text: string, offset: number): RegExpExecArray | undefined {
  expression.lastIndex = offset;
  return expression.exec(text) ?? undefined;
}

/** The length of a sign that means "by" and stands at `offset`: `x`, `X`, `×`, `*`, or the word. */
export function bySignAt(text: string, offset: number): number {
  return matchAt(BY_SIGN, text, offset)?.[0].length ?? 0;
}
const BY_SIGN = /[×*]|[xX](?![\p{L}_])|[xX](?=WOF|wof|LOF|lof)|by(?![\p{L}\d_])/uy;

/** Whether the character at `offset` is a by-sign that touches a number: the x of `10x16"` or of ` x16"`. */
export function isBySignBefore(text: string, offset: number): boolean {
  const sign = text[offset];
  return (sign === 'x' || sign === 'X') && !isLetter(text[offset - 1]);
}
