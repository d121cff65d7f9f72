/** Writes values for messages, in the house style: `2½"`, `3 1/16"`, `1⅛ yd`, `57 cm`. */
import { glyphFor } from './characters.ts';
import { type Rational, rational } from './rational.ts';
import { Real, roundNearest } from './real.ts';

/** `glyph` writes ½ where a character exists and 1/16 where none does; `ascii` never uses one. */
export type ShowStyle = 'glyph' | 'ascii' | 'decimal';

/** A value of inches: `2¼"`. */
export function writeInches(value: Rational, style: ShowStyle = 'glyph'): string {
  return `${shown(value, style)}"`;
}

/** A value of yards: `1⅛ yd`. */
export function writeYards(value: Rational, style: ShowStyle = 'glyph'): string {
  return `${shown(value, style)} yd`;
}

/** A value in the metric unit: `57 cm`, `1.25 m`. */
export function writeMetric(value: Rational, unit: 'mm' | 'cm' | 'm' = 'cm'): string {
  return `${decimal(value)} ${unit}`;
}

function shown(value: Rational, style: ShowStyle): string {
  if (style === 'decimal' || !isRulerFraction(value.d)) return decimal(value);
  const sign = value.s < 0n ? '−' : '';
  const [whole, rest] = [value.n / value.d, value.n % value.d];
  if (rest === 0n) return sign + whole;
  const glyph = style === 'glyph' ? glyphFor(rest, value.d) : undefined;
  const part = glyph ?? `${rest}/${value.d}`;
  if (whole === 0n) return sign + part;
  return sign + whole + (glyph ? '' : ' ') + part;
}

/** Halves to sixty-fourths, and thirds of a yard: what a ruler shows and a shop cuts. */
function isRulerFraction(denominator: bigint): boolean {
  return denominator === 3n || 64n % denominator === 0n;
}

/** To the hundredth, without zeros at the end. */
function decimal(value: Rational): string {
  const rounded = roundNearest(Real.of(value), rational(1, 100));
  const cents = String((rounded.n * 100n) / rounded.d).padStart(3, '0');
  const places = cents.slice(-2).replace(/0+$/, '');
  const sign = rounded.s < 0n && rounded.n !== 0n ? '−' : '';
  return sign + cents.slice(0, -2) + (places === '' ? '' : `.${places}`);
}
