/** How tests write lengths: `inches('2 1/4')`. Independent of the reader in core, which has tests of its own. */
import { Fraction } from 'fraction.js';
import type { Rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';

export function inches(text: string): Rational {
  return new Fraction(text);
}

export function real(text: string): Real {
  return Real.of(inches(text));
}

/** `2 1/4` for 9/4: how a test shows a length. */
export function show(value: Rational): string {
  return value.toFraction(true);
}
