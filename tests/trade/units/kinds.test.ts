import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { Real, roundUp } from '../../../core/quantity/real.ts';
import {
  methodNames,
  UNIT_KINDS,
  UNIT_NAMES,
  unitKind,
  unitMethod,
} from '../../../core/trade/units/kinds.ts';
import { USUAL_OVERSIZE } from '../../../core/trade/units/seams.ts';
import type { CuttingRules, UnitKind, UnitSpec } from '../../../core/trade/units/unit.ts';
import { EIGHTH, inches, size, USUAL, written } from './mixed.ts';

/** A unit of the kind, `scale` times as large as its example. */
function example(kind: UnitKind, scale = Real.of(1)): UnitSpec {
  const times = (text: string) => inches(text).mul(scale);
  const wide = { width: times('6'), length: times('3') };
  switch (kind.name) {
    case 'rectangles':
    case 'flying geese':
    case 'half-rectangle triangles':
    case 'appliqué shapes':
      return wide;
    case 'snowball corners':
      return { ...wide, corner: times('1 1/2') };
    case 'strip sets':
      return { width: times('2'), length: times('6'), strips: [times('2'), times('1'), times('3')] };
    case 'quarter-circle units':
      return { width: times('4'), length: times('4'), radius: times('3') };
    default:
      return { width: times('3'), length: times('3') };
  }
}

describe('the table of units', () => {
  it('has no name twice', () => {
    const folded = UNIT_NAMES.map((name) => name.toLowerCase());
    expect(folded.filter((name, i) => folded.indexOf(name) !== i)).toEqual([]);
  });

  it('finds a kind by each of its names, whatever the case and spacing', () => {
    for (const kind of UNIT_KINDS)
      for (const name of [kind.name, ...kind.otherNames])
        expect(unitKind(`  ${name.toUpperCase().replace(/ /g, '  ')} `)?.name).toBe(kind.name);
    expect(unitKind('half-round triangles')).toBeUndefined();
  });

  it('finds each method by its name, and trimmed ones only where quilters trim', () => {
    for (const kind of UNIT_KINDS)
      for (const name of methodNames(kind))
        expect(unitMethod(kind, name)?.method.name).toBe(name.split(',')[0]);
    const geese = unitKind('flying geese') as UnitKind;
    expect(unitMethod(geese, 'Four at a time, trimmed')?.trimmed).toBe(true);
    expect(unitMethod(geese, 'stitch and flip, trimmed')).toBeUndefined();
    expect(unitMethod(geese, 'nine at a time')).toBeUndefined();
  });

  it.each(UNIT_KINDS.map((kind) => [kind.name, kind] as const))('accepts a good example of %s', (_, kind) => {
    expect(kind.problem(example(kind), USUAL)).toBeUndefined();
  });

  it.each([
    [
      'squares',
      size('3 x 4'),
      'The sides of a square are equal: a piece with two different sides is a rectangle.',
    ],
    [
      'half-square triangles',
      size('3 x 4'),
      'Half-square triangles are square: both finished sides must be equal.',
    ],
    ['flying geese', size('3 x 4'), 'Flying geese finish twice as wide as they are high.'],
    ['hexagons', size('3 x 4'), 'All sides of a hexagon are equal: give its finished side only.'],
    ['60° triangles', size('3 x 4'), 'All sides of a 60° triangle are equal: give its finished height only.'],
    ['60° triangles', size('36'), 'The triangle is wider than the usable width of the fabric.'],
    [
      'snowball corners',
      { ...size('6 x 3'), corner: inches('2') },
      'The snowball corners are larger than the unit has room for.',
    ],
    [
      'snowball corners',
      { ...size('6'), corner: inches('2'), corners: 5 },
      'A unit has one to four snowball corners.',
    ],
    [
      'strip sets',
      { ...size('2 x 6'), strips: [inches('2'), inches('3')] },
      'The finished strips do not add up to the finished length of a segment.',
    ],
    [
      'strip sets',
      { ...size('40 x 4'), strips: [inches('2'), inches('2')] },
      'A segment is wider than the usable width of the fabric.',
    ],
    [
      'quarter-circle units',
      { ...size('4'), radius: inches('4') },
      'The radius of a quarter circle must be less than the side of its unit.',
    ],
    [
      'quarter-circle units',
      { ...size('4'), radius: inches('1/4') },
      'The radius of a quarter circle must be greater than the seam allowance.',
    ],
    [
      'quarter-circle units',
      { ...size('4 x 5'), radius: inches('1') },
      'Quarter-circle units are square: both finished sides must be equal.',
    ],
  ] as const)('says why %s cannot be sewn', (name, spec, sentence) => {
    expect(unitKind(name)?.problem(spec as UnitSpec, USUAL)).toBe(sentence);
  });

  it('names a missing measure instead of computing without it', () => {
    for (const kind of UNIT_KINDS.filter(({ needs }) => needs.length > 0))
      expect(() => kind.methods[0].cuts(size('3'), USUAL)).toThrow(RangeError);
  });

  it('knows the usual extra for trimming: 7/8 in becomes 1 in', () => {
    const trimmed = { ...USUAL, oversize: USUAL_OVERSIZE };
    const exact = cutsOf('half-square triangles', USUAL)[0] as { width: Real };
    const larger = cutsOf('half-square triangles', trimmed)[0] as { width: Real };
    expect([exact, larger].map(({ width }) => written(roundUp(width, EIGHTH)))).toEqual(['3 7/8', '4']);
  });
});

function cutsOf(name: string, rules: CuttingRules) {
  const kind = unitKind(name) as UnitKind;
  return kind.methods[0].cuts(example(kind), rules);
}

describe('every kind of unit', () => {
  const scales = fc.integer({ min: 1, max: 40 }).map((n) => rational(n, 4));

  it.each(UNIT_KINDS.map((kind) => [kind.name, kind] as const))(
    '%s: all lengths scale when every length given is scaled',
    (_, kind) => {
      fc.assert(
        fc.property(scales, (k) => {
          const scale = Real.of(k);
          const scaledRules = {
            seam: USUAL.seam.mul(k),
            oversize: USUAL.oversize.mul(k),
            usableWidth: USUAL.usableWidth.mul(k),
          };
          const scaled = example(kind, scale);
          for (const method of kind.methods) {
            expect(method.unitsPerSet(scaled, scaledRules)).toBe(method.unitsPerSet(example(kind), USUAL));
            const small = method.cuts(example(kind), USUAL);
            method.cuts(scaled, scaledRules).forEach((cut, i) => {
              expect(cut.width.toNumber()).toBeCloseTo((small[i]?.width.toNumber() ?? 0) * k.valueOf(), 9);
              expect(cut.length.toNumber()).toBeCloseTo((small[i]?.length.toNumber() ?? 0) * k.valueOf(), 9);
            });
          }
          const areas = kind.area(scaled).toNumber() / k.valueOf() ** 2;
          expect(areas).toBeCloseTo(kind.area(example(kind)).toNumber(), 9);
        }),
        { numRuns: 20 },
      );
    },
  );

  it.each(UNIT_KINDS.map((kind) => [kind.name, kind] as const))(
    '%s: cut pieces, without seam allowances, hold at least the finished area',
    (_, kind) => {
      const none = { ...USUAL, seam: rational(0) };
      for (const method of kind.methods) {
        const cloth = method
          .cuts(example(kind), none)
          .reduce((sum, cut) => sum + cut.perSet * cut.width.toNumber() * cut.length.toNumber(), 0);
        const units = method.unitsPerSet(example(kind), none) * kind.area(example(kind)).toNumber();
        expect(cloth).toBeGreaterThanOrEqual(units - 1e-9);
      }
    },
  );

  it.each(UNIT_KINDS.map((kind) => [kind.name, kind] as const))(
    '%s: the finished unit and the fabrics of its cuts are those that the kind declares',
    (_, kind) => {
      const spec = example(kind);
      const fabrics = kind.fabrics(spec);
      for (const method of kind.methods) {
        const used = new Set(method.cuts(spec, USUAL).map(({ from }) => from));
        expect([...used].sort()).toEqual(Array.from({ length: fabrics }, (_, i) => i));
      }
      const [finished, unfinished] = [kind.finished(spec), kind.unfinished(spec, USUAL.seam)];
      expect(unfinished.width.compare(finished.width)).toBeGreaterThanOrEqual(0);
      expect(unfinished.length.compare(finished.length)).toBeGreaterThanOrEqual(0);
    },
  );
});
