/** Short ways to write measurements in tests. */
import { type Rational, rational } from '../../../core/quantity/rational.ts';
import { Real } from '../../../core/quantity/real.ts';
import type { CuttingRules } from '../../../core/trade/units/unit.ts';

/** `3 7/8`, `7/8`, `3` as an exact rational. */
export function mixed(text: string): Rational {
  const match = /^(?:(\d+) )?(\d+)(?:\/(\d+))?$/.exec(text);
  if (!match) throw new Error(`not a mixed number: ${text}`);
  const [, whole = '0', numerator = '', denominator = '1'] = match;
  return rational(BigInt(whole)).add(rational(BigInt(numerator), BigInt(denominator)));
}

export function inches(text: string): Real {
  return Real.of(mixed(text));
}

/** `3` or `3 x 6`. */
export function size(text: string): { width: Real; length: Real } {
  const [width = text, length = width] = text.split(' x ');
  return { width: inches(width), length: inches(length) };
}

/** `3 7/8` for a rational with a denominator that a ruler has; `n/d` for any other. */
export function written(x: Rational): string {
  const whole = x.floor(0);
  const rest = x.sub(whole);
  if (rest.n === 0n) return `${whole.n}`;
  return whole.n === 0n ? `${rest.n}/${rest.d}` : `${whole.n} ${rest.n}/${rest.d}`;
}

export const EIGHTH = rational(1, 8);

/** A quarter-inch seam, no trimming, 40 in of usable width. */
export const USUAL: CuttingRules = {
  seam: rational(1, 4),
  oversize: rational(0),
  usableWidth: rational(40),
};
