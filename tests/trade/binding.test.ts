import { describe, expect, it } from 'vitest';
import type { Edge } from '../../core/geometry/edges.ts';
import { bindingNeed, doubleFold, grainSuits, straightBinding } from '../../core/trade/binding.ts';
import { inches, real, show } from '../quantity/inches.ts';

const cutting = {
  usableWidth: inches('40'),
  strip: inches('2 1/4'),
  join: 'diagonal',
  seam: inches('1/4'),
} as const;

describe('straight-grain binding', () => {
  it('for 262 in around and 12 in to join takes 8 strips, where 7 give only 266 1/2 in', () => {
    const { need } = bindingNeed(real('262'), inches('12'));
    const plan = straightBinding(need, cutting);
    expect(need.exact && show(need.exact)).toBe('274');
    expect(plan.pieces).toBe(8);
    expect(show(plan.joined)).toBe('304 1/4');
    expect(show(plan.joinedOneFewer)).toBe('266 1/2');
    expect(plan.spare.exact && show(plan.spare.exact)).toBe('30 1/4');
    expect(show(plan.fabricLength)).toBe('18');
    expect(show(plan.lostPerJoin)).toBe('2 1/4');
  });

  it('takes fewer strips with straight joins', () => {
    expect(straightBinding(real('274'), { ...cutting, join: 'straight' }).pieces).toBe(7);
  });

  it('is refused when the strip is as wide as the fabric', () => {
    expect(() => straightBinding(real('90'), { ...cutting, strip: inches('40') })).toThrow(RangeError);
  });
});

describe('the grain of a binding', () => {
  const square: Edge = { shape: 'rectangle', width: inches('18'), length: inches('18') };
  const circle: Edge = { shape: 'circle', diameter: inches('24') };
  const taped: Edge = { shape: 'measured', around: inches('217') };

  it('may be bias on any edge, straight on any but a curved one', () => {
    expect([square, circle, taped].map((edge) => grainSuits('bias', edge))).toEqual([true, true, true]);
    expect([square, circle, taped].map((edge) => grainSuits('straight', edge))).toEqual([true, false, true]);
  });
});

describe('double-fold binding', () => {
  it('of 2 1/4 in shows 1/4 in on the front and covers its seam on the back', () => {
    const fold = doubleFold(inches('2 1/4'), inches('1/4'), inches('1/8'));
    expect([show(fold.folded), show(fold.front), show(fold.back)]).toEqual(['1 1/8', '1/4', '1/2']);
    expect(fold.coversSeam).toBe(true);
  });

  it('that is too narrow does not reach its seam on the back', () => {
    expect(doubleFold(inches('1 1/2'), inches('1/4'), inches('1/16')).coversSeam).toBe(false);
    expect(doubleFold(inches('1 1/2'), inches('1/4'), inches('0')).coversSeam).toBe(true);
  });

  it('uses up the folded strip on seam, front, edge and back', () => {
    const [strip, seam, thickness] = [inches('2 1/2'), inches('3/8'), inches('3/16')];
    const { folded, front, back } = doubleFold(strip, seam, thickness);
    expect(seam.add(front).add(thickness).add(back).equals(folded)).toBe(true);
  });
});
