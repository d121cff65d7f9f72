/** Vulgar fractions: one character, digits around a slash, or small digits around a fraction slash. */
import {
  isDigit,
  LOWERED_DIGITS,
  matchAt,
  NUMERATOR_ONE,
  RAISED_DIGITS,
  SLASH,
  SPACE,
  VULGAR_FRACTIONS,
} from './characters.ts';
import type { FractionStyle } from './notation.ts';

export interface FractionText {
  readonly end: number;
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly style: FractionStyle;
  /** A stray space or hyphen at the slash, as in `5-3-/4` or `41⁄ 4`. */
  readonly damaged: boolean;
}

/**
 * Denominators that are written with an ordinary slash. `44/45"` and `80/12` are two labels, not a fraction;
 * the fraction slash (U+2044) always makes one.
 */
export const SLASH_DENOMINATORS: ReadonlySet<bigint> = new Set(
  [2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 32, 64].map(BigInt),
);

const SLASHED = new RegExp(`(\\d{1,12})(?:(-?)([/])|(-?)([\u2044\u2215])${SPACE}?)(\\d{1,12})(?!\\d)`, 'y');
const RAISED = new RegExp(`([${RAISED_DIGITS}]{1,4})(${SLASH})([${LOWERED_DIGITS}]{1,4})`, 'y');
const OVER_DIGITS = /\d{1,4}(?!\d)/y;
const CHAIN = new RegExp(`${SLASH}\\d`, 'y');

/** The fraction that starts at `offset`, proper or not; `undefined` for a zero denominator and for `6/14/19`. */
export function readFraction(text: string, offset: number): FractionText | undefined {
  const character = text[offset] ?? '';
  const glyph = VULGAR_FRACTIONS.get(character);
  if (glyph) return fraction(offset + 1, glyph[0], glyph[1], 'glyph', '/');
  if (character === NUMERATOR_ONE) {
    const below = matchAt(OVER_DIGITS, text, offset + 1);
    return below && fraction(offset + 1 + below[0].length, 1, below[0], 'raised', '\u2044');
  }
  const raised = matchAt(RAISED, text, offset);
  if (raised) {
    const [all, above = '', slash = '', below = ''] = raised;
    const values = [plain(above, RAISED_DIGITS), plain(below, LOWERED_DIGITS)] as const;
    return fraction(offset + all.length, ...values, 'raised', slash);
  }
  const slashed = matchAt(SLASHED, text, offset);
  if (!slashed || isDigit(text[offset - 1])) return undefined;
  const [all, above = '', plainHyphen, plainSlash, hyphen, fractionSlash, below = ''] = slashed;
  const end = offset + all.length;
  if (matchAt(CHAIN, text, end) || isChained(text, offset)) return undefined;
  const slash = plainSlash ?? fractionSlash ?? '/';
  const damaged = Boolean(plainHyphen || hyphen) || all.length > above.length + slash.length + below.length;
  return fraction(end, above, below, 'slash', slash, damaged);
}

/** Below one, and with a denominator that is really written so. */
export function isProper({ numerator, denominator, style }: FractionText): boolean {
  if (numerator >= denominator) return false;
  if (style.kind !== 'slash' || style.slash !== '/') return true;
  return numerator > 0n && SLASH_DENOMINATORS.has(denominator) && !isUnreducedPair(numerator, denominator);
}

/**
 * The mixed number whose space got lost: `31/2` for 3 1/2. The last digit before the slash is the numerator, or
 * the last two for sixteenths and finer.
 */
export function splitLostSpace(
  written: FractionText,
): { whole: bigint; numerator: bigint; denominator: bigint } | undefined {
  const { numerator, denominator } = written;
  if (![2n, 3n, 4n, 8n, 16n].includes(denominator)) return undefined;
  for (const base of [10n, 100n]) {
    const [whole, rest] = [numerator / base, numerator % base];
    const proper = rest > 0n && rest < denominator && rest * 10n >= base;
    if (whole > 0n && proper && (rest % 2n !== 0n || denominator === 3n)) {
      return { whole, numerator: rest, denominator };
    }
  }
  return undefined;
}

/** Whether a number and a slash stand right before `offset`: the middle of `12/20/30`. */
function isChained(text: string, offset: number): boolean {
  return /[/\u2044\u2215]/.test(text[offset - 1] ?? '') && isDigit(text[offset - 2]);
}

/** `12/32` and `30/64` are rather two labels than a fraction that nobody reduced. */
function isUnreducedPair(numerator: bigint, denominator: bigint): boolean {
  return (
    denominator >= 12n && (numerator % 2n === 0n || numerator % 3n === 0n) && gcd(numerator, denominator) > 1n
  );
}

function gcd(a: bigint, b: bigint): bigint {
  return b === 0n ? a : gcd(b, a % b);
}

function plain(digits: string, alphabet: string): string {
  return [...digits].map((digit) => alphabet.indexOf(digit)).join('');
}

function fraction(
  end: number,
  numerator: number | string,
  denominator: number | string,
  kind: FractionStyle['kind'],
  slash: string,
  damaged = false,
): FractionText | undefined {
  if (BigInt(denominator) === 0n) return undefined;
  return {
    end,
    numerator: BigInt(numerator),
    denominator: BigInt(denominator),
    style: { kind, slash },
    damaged,
  };
}
