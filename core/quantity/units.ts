/**
 * The units that patterns use, each an exact number of inches.
 *
 * Source: 1 yd = 0.9144 m exactly, so 1 in = 2.54 cm exactly (United States and partners, effective 1 July 1959;
 * addendum to National Bureau of Standards Circular 572, 22 January 1960).
 */
import { type Rational, rational } from './rational.ts';

export type LengthUnit = 'in' | 'ft' | 'yd' | 'mm' | 'cm' | 'm';

const INCHES_PER_CENTIMETRE = rational(100, 254);

export const INCHES_PER: Readonly<Record<LengthUnit, Rational>> = {
  in: rational(1),
  ft: rational(12),
  yd: rational(36),
  mm: INCHES_PER_CENTIMETRE.div(10n),
  cm: INCHES_PER_CENTIMETRE,
  m: INCHES_PER_CENTIMETRE.mul(100n, 1n),
};

export function isMetric(unit: LengthUnit): boolean {
  return unit === 'mm' || unit === 'cm' || unit === 'm';
}

export function toInches(value: Rational, unit: LengthUnit): Rational {
  return value.mul(INCHES_PER[unit]);
}

export function fromInches(inches: Rational, unit: LengthUnit): Rational {
  return inches.div(INCHES_PER[unit]);
}
