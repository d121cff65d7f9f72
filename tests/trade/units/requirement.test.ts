import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { UNIT_KINDS, unitKind, unitMethod } from '../../../core/trade/units/kinds.ts';
import { unitRequirement } from '../../../core/trade/units/requirement.ts';
import type { UnitKind, UnitSpec } from '../../../core/trade/units/unit.ts';
import { EIGHTH, inches, size, USUAL, written } from './mixed.ts';

function requirement(kindName: string, methodName: string, spec: UnitSpec, units: number, rules = USUAL) {
  const kind = unitKind(kindName) as UnitKind;
  const found = unitMethod(kind, methodName);
  if (!found) throw new Error(methodName);
  return unitRequirement(found.method, spec, rules, units, EIGHTH);
}

function listed({ cuts }: ReturnType<typeof requirement>): string[] {
  return cuts.map((cut) => `${cut.count} ${cut.role} ${written(cut.cutWidth)} x ${written(cut.cutLength)}`);
}

describe('pieces to cut for a number of units', () => {
  it('cuts whole sets for methods that sew whole sets', () => {
    const geese = requirement('flying geese', 'four at a time', size('6 x 3'), 5);
    expect(listed(geese)).toEqual(['2 large square 7 1/4 x 7 1/4', '8 small square 3 7/8 x 3 7/8']);
    expect(geese).toMatchObject({ sets: 2, unitsPerSet: 4, made: 8 });
    expect(geese.cuts.map(({ spare }) => spare)).toEqual([3, 6]);
  });

  it('counts each patch by itself for cut triangles', () => {
    const geese = requirement('flying geese', 'cut triangles', size('6 x 3'), 5);
    expect(listed(geese)).toEqual(['2 large square 7 1/4 x 7 1/4', '5 small square 3 7/8 x 3 7/8']);
    expect(geese.made).toBe(5);
    expect(geese.cuts.map(({ spare }) => spare)).toEqual([3, 0]);
  });

  it('cuts strips from selvage to selvage, whatever the usable width', () => {
    const rules = { ...USUAL, usableWidth: rational(4015, 100) };
    const sets = requirement(
      'strip sets',
      'strip sets',
      { ...size('2 x 4'), strips: [inches('2'), inches('2')] },
      33,
      rules,
    );
    expect(sets).toMatchObject({ unitsPerSet: 16, sets: 3, made: 48 });
    expect(sets.cuts.map(({ cutLength }) => cutLength.toFraction())).toEqual(['803/20', '803/20']);
  });

  it('refuses a set that gives no unit', () => {
    const wide = { ...size('40 x 4'), strips: [inches('2'), inches('2')] };
    expect(() => requirement('strip sets', 'strip sets', wide, 1)).toThrow(RangeError);
  });

  it('makes at least what is asked for, and never a whole set more', () => {
    const units = fc.integer({ min: 0, max: 300 });
    const methods = UNIT_KINDS.filter(({ needs }) => needs.length === 0).flatMap((kind) =>
      kind.methods.map((method) => [kind, method] as const),
    );
    fc.assert(
      fc.property(fc.constantFrom(...methods), units, ([kind, method], n) => {
        const spec = kind.name === 'flying geese' ? size('4 x 2') : size('4');
        const needed = unitRequirement(method, spec, USUAL, n, EIGHTH);
        expect(needed.made).toBeGreaterThanOrEqual(n);
        expect(needed.made).toBeLessThan(n + needed.unitsPerSet);
        for (const cut of needed.cuts) {
          expect(cut.spare).toBeGreaterThanOrEqual(0);
          expect(cut.cutWidth.sub(EIGHTH).valueOf()).toBeLessThan(cut.width.toNumber());
        }
      }),
    );
  });

  it('never needs fewer pieces for more units', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 50 }), (n, more) => {
        const counts = (units: number) =>
          requirement('flying geese', 'cut triangles', size('4 x 2'), units).cuts.map(({ count }) => count);
        const [few, many] = [counts(n), counts(n + more)];
        few.forEach((count, i) => {
          expect(many[i]).toBeGreaterThanOrEqual(count);
        });
      }),
    );
  });
});
