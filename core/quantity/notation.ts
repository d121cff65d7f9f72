/**
 * What a number in a text is: its place, its value, its unit, and the way its author wrote it.
 *
 * The notation keeps everything that a correction has to imitate, so that a fix reads as if the author had
 * written it.
 */
import { type Rational, rational } from './rational.ts';
import type { LengthUnit } from './units.ts';

export interface NumberText {
  /** The number with its unit mark, as offsets in the text: `text.slice(start, end)` is `2-1/4"`. */
  readonly start: number;
  readonly end: number;
  /** The end of the numeral, before the space and the mark: `text.slice(start, numeralEnd)` is `2-1/4`. */
  readonly numeralEnd: number;
  /** As written, in `unit`. */
  readonly value: Rational;
  /** From the number's own mark only; a mark that it shares with a neighbour is not counted. */
  readonly unit: LengthUnit | undefined;
  readonly notation: Notation;
  /**
   * Perhaps not a number at all, but an ordinary word ("one", "another", "both") or part of a name ("nine-patch",
   * "B2"). What stands around it decides.
   */
  readonly weak: boolean;
  /** The text can be read in another way; `alternative` is that way. */
  readonly ambiguous: boolean;
  /**
   * The other reading: numbers that replace this one and all that they overlap. `6--3/4"` reads as 6 and 3/4 in;
   * the alternative of the 6 is one number, 6 3/4 in.
   */
  readonly alternative: readonly NumberText[] | undefined;
}

/** How a number is written: its numeral, and the mark behind it. */
export interface Notation {
  readonly numeral: NumeralStyle;
  /** What stands between numeral and mark: nothing, spaces, a hyphen, `an` in "half an inch". */
  readonly gap: string;
  /** The mark as written, `"`, `in.` or `yards`; empty without a unit. */
  readonly mark: string;
  /** `th` in `1/8th`, `st` in `1st`; empty for a number that is no ordinal. */
  readonly ordinal: string;
}

export type NumeralStyle =
  /** `48`, `1,200` (grouped), `2 dozen` */
  | { readonly form: 'integer'; readonly grouped: boolean; readonly dozen: boolean }
  /** `2.50` has two places; `.5` has no leading zero */
  | {
      readonly form: 'decimal';
      readonly point: '.' | ',';
      readonly places: number;
      readonly leadingZero: boolean;
      /** `1.10`: the author pads with zeros */
      readonly padded: boolean;
      readonly grouped: boolean;
    }
  /** `¾`, `3/4`, `³⁄₄` */
  | { readonly form: 'fraction'; readonly fraction: FractionStyle }
  /** `2-1/4`: the joiner is what stands between the whole number and the fraction */
  | {
      readonly form: 'mixed';
      readonly joiner: string;
      readonly fraction: FractionStyle;
      readonly grouped: boolean;
    }
  /** `twelve`, `one hundred and twenty`, `eight and a half`, `a dozen` */
  | {
      readonly form: 'words';
      readonly letterCase: LetterCase;
      /** `one hundred and twenty` against `one hundred twenty` */
      readonly hundredAnd: boolean;
      readonly dozen: boolean;
    };

export type LetterCase = 'lower' | 'capital' | 'upper';

/**
 * `glyph` is one character (¾), `slash` is digits on a line (3/4), `raised` is small digits (³⁄₄), `words` is
 * a fraction in words behind digits (2 and a half).
 */
export interface FractionStyle {
  readonly kind: 'glyph' | 'slash' | 'raised' | 'words';
  /** The slash between the digits: `/`, U+2044 or U+2215; `/` for glyphs and words. */
  readonly slash: string;
}

/** The smallest difference that the notation of a number can show: 1/8 for `2 3/8`, 1/100 for `2.37`, 1 for `2`. */
export function granularity({ value, notation: { numeral } }: NumberText): Rational {
  return numeral.form === 'decimal' ? rational(1, 10n ** BigInt(numeral.places)) : rational(1, value.d);
}
