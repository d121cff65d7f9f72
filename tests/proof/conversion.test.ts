/** One length in both systems of units, against the definition of the inch and published pairs. */
import { describe, expect, it } from 'vitest';
import { completeHouse } from '../../core/block/house.ts';
import { applyEdits } from '../../core/findings/finding.ts';
import { converted } from '../../core/proof/conversion.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { fromInches, type LengthUnit, toInches } from '../../core/quantity/units.ts';
import { fixAll } from '../../core/report/preferred.ts';

const pattern = (house: string, ...text: string[]) =>
  ['```measure', house, 'finished: 36" x 48"', 'binding: { strip: 2 1/4" }', '```', '', ...text, ''].join(
    '\n',
  );
const HELD = 'house: { convert to: 0.5 cm }';

function findings(source: string) {
  return proofread({ source }).findings.map(({ code, start, end, message }) => ({
    code,
    at: source.slice(start, end),
    message,
  }));
}

function fixed(source: string): string {
  return applyEdits(source, fixAll(proofread({ source }).findings).edits);
}

describe('A length in the other system of units', () => {
  // 1 yd = 0.9144 m and 1 in = 25.4 mm exactly: addendum to National Bureau of Standards Circular 572 (22 January 1960).
  it.each([
    [1, 'in', 'mm', 254, 10],
    [1, 'yd', 'm', 9144, 10000],
    [1, 'in', 'cm', 254, 100],
  ] as const)('is exact before it is rounded: %s %s in %s', (value, from, to, n, d) => {
    expect(fromInches(toInches(rational(value), from), to)).toEqual(rational(n, d));
  });

  it.each([
    ['5/2', 'in', 'cm', '0.5 cm', '13/2'],
    ['9/4', 'in', 'cm', '0.5 cm', '11/2'],
    ['9/4', 'in', 'mm', '1 mm', '57'],
    ['1/4', 'in', 'cm', '0.5 cm', '3/5'],
    ['46', 'in', 'cm', '1 cm', '117'],
  ] as const)(
    'is rounded to the step of the house: %s %s in %s, to %s',
    (value, from, to, step, expected) => {
      const [amount = '', unit] = step.split(' ');
      const stated = { inches: toInches(rational(Number(amount) * 10, 10), unit as LengthUnit), unit: to };
      const house = completeHouse({ 'convert to': stated });
      const need = Real.of(toInches(rational(...fraction(value)), from));
      expect(converted({ need, rule: 'exact', unit: to }, house).toFraction()).toBe(expected);
    },
  );

  it('is rounded up where it must suffice', () => {
    const need = Real.of(rational(36 * 9, 8));
    expect(converted({ need, rule: 'at least', unit: 'm' }, completeHouse({})).toFraction()).toBe('21/20');
  });

  // "55 cm or 3/4 yd" is printed in Quilt along post 2, Fat Quarterly (fatquarterly.blogspot.com/2010/09), and is no
  // conversion: 3/4 yd are 68.6 cm, and 55 cm are 21.7 in.
  it('is enough for what it stands for, where a published pattern prints too little', () => {
    const house = completeHouse({});
    const inches = { yards: Real.of(rational(27)), metres: Real.of(toInches(rational(55), 'cm')) };
    expect(converted({ need: inches.yards, rule: 'at least', unit: 'm' }, house).toFraction()).toBe('7/10');
    expect(converted({ need: inches.metres, rule: 'at least', unit: 'yd' }, house).toFraction()).toBe('5/8');
  });
});

function fraction(text: string): [number, number] {
  const [n, d = '1'] = text.split('/');
  return [Number(n), Number(d)];
}

describe('The partner of a number', () => {
  it('is checked by the figure of the number', () => {
    const source = pattern(HELD, 'Cut strips 2¼" <!-- = binding.strip --> (6.5 cm) wide.');
    expect(findings(source)).toEqual([
      {
        code: 'wrong-figure',
        at: '6.5 cm',
        message: 'The width of the binding strip is 5.5 cm, not 6.5 cm: the measure block says so.',
      },
    ]);
    expect(fixed(source)).toContain('2¼" <!-- = binding.strip --> (5.5 cm) wide.');
  });

  it('is found, and the number itself left alone, whichever of the two the tag stands behind', () => {
    const source = pattern(HELD, 'Cut strips 2½" (5.5 cm) <!-- = binding.strip --> wide.');
    expect(findings(source).map(({ code, at }) => [code, at])).toEqual([['wrong-figure', '2½"']]);
  });

  it('is restated with it when the block changes', () => {
    const source = pattern(HELD, 'Cut strips 2¼" <!-- = binding.strip --> (5.5 cm) wide.').replace(
      'strip: 2 1/4"',
      'strip: 2 1/2"',
    );
    expect(findings(source).map(({ at }) => at)).toEqual(['2¼"', '5.5 cm']);
    expect(fixed(source)).toContain('2½" <!-- = binding.strip --> (6.5 cm) wide.');
  });

  it('is found where no figure fixes the number, and follows it, in a house that says how it converts', () => {
    const source = pattern(HELD, 'Fold the cuff over by 2⅜" (6.5 cm).');
    expect(findings(source)).toEqual([
      {
        code: 'units-disagree',
        at: '6.5 cm',
        message: '2⅜" is about 6 cm, not 6.5 cm; both stand for one length.',
      },
    ]);
    expect(fixed(source)).toContain('2⅜" (6 cm).');
  });

  it.each([
    ['to the millimetre', 'Fold the cuff over by 2⅜" (6.03 cm, or so) and 4" (10.2 cm).'],
    ['as the shop sells', 'Cut 2½ yd (2.3 m) for the cuffs.'],
    ['of a width that fabric is sold in', 'The stripe is 44" (112 cm) wide.'],
    ['of a precut', 'A fat quarter is 18" (50 cm) long.'],
  ])('is right when it is rounded %s', (_, text) => {
    expect(findings(pattern(HELD, text))).toEqual([]);
  });

  it('may be rounded otherwise in a house that does not say how it converts', () => {
    expect(findings(pattern('', 'Fold the cuff over by 2⅜" (6.5 cm).'))).toEqual([]);
  });
});
