import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { fromInches, INCHES_PER, isMetric, type LengthUnit, toInches } from '../../core/quantity/units.ts';
import { inches, show } from './inches.ts';

const units: readonly LengthUnit[] = ['in', 'ft', 'yd', 'mm', 'cm', 'm'];

describe('units of length', () => {
  it('come back unchanged from inches', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.integer(),
        fc.integer({ min: 1, max: 1000 }),
        (unit, n, d) => {
          const value = rational(n, d);
          expect(fromInches(toInches(value, unit), unit).equals(value)).toBe(true);
        },
      ),
    );
  });

  it.each([
    ['in', '1'],
    ['ft', '12'],
    ['yd', '36'],
    ['mm', '5/127'],
    ['cm', '50/127'],
    ['m', '39 47/127'],
  ] as const)('one %s is exactly %s inches', (unit, expected) => {
    expect(INCHES_PER[unit].equals(inches(expected))).toBe(true);
  });

  it('tell metric from customary', () => {
    expect(units.filter(isMetric)).toEqual(['mm', 'cm', 'm']);
  });

  it('turn 57 cm into a little less than 22 1/2 in', () => {
    expect(show(toInches(rational(57), 'cm'))).toBe('22 56/127');
  });
});
