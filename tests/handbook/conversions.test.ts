/** The units against the constants that define them. */
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { fromInches, INCHES_PER, toInches } from '../../core/quantity/units.ts';
import { inches } from '../quantity/inches.ts';

describe('units against their definitions', () => {
  // Addendum to National Bureau of Standards Circular 572, 22 January 1960 (Google Books SeRcAAAAIAAJ).
  it('a yard is 0.9144 metre exactly', () => {
    expect(fromInches(toInches(rational(1), 'yd'), 'm').equals(inches('0.9144'))).toBe(true);
  });

  // The same addendum.
  it('an inch is 25.4 millimetres exactly', () => {
    expect(fromInches(rational(1), 'mm').equals(inches('25.4'))).toBe(true);
    expect(fromInches(rational(1), 'cm').equals(inches('2.54'))).toBe(true);
  });

  // The US yard before 1 July 1959, 3600/3937 m (same addendum; also probsee.com/p/Inch): 2 parts per million
  // longer. The tool must not use it.
  it('a yard is not the older 3600/3937 metre, which is two millionths longer', () => {
    const yard = fromInches(INCHES_PER.yd, 'm');
    const older = inches('3600/3937');
    const excess = older.div(yard).sub(1);
    expect(excess.compare(inches('0.0000019')) > 0 && excess.compare(inches('0.0000021')) < 0).toBe(true);
  });

  // Machinery's Handbook, 31st digital edition, p. 2834, prints "39/39.37 = 0.9144 yard". The quotient that gives
  // 0.9144 is 36/39.37, a yard in metres; 39/39.37 is 0.9906. A misprint: the row keeps the corrected line.
  it('36 over 39.37 is 0.9144, and 39 over 39.37 is not', () => {
    expect(inches('36').div(inches('39.37')).round(4).equals(inches('0.9144'))).toBe(true);
    expect(inches('39').div(inches('39.37')).round(4).equals(inches('0.9906'))).toBe(true);
    expect(INCHES_PER.m.round(2).equals(inches('39.37'))).toBe(true);
  });
});
