import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { backing } from '../../core/trade/backing.ts';
import { layerSize } from '../../core/trade/batting.ts';
import { inches, real, show } from '../quantity/inches.ts';

const top = (width: string, length: string) => ({ width: real(width), length: real(length) });
const house = { overhang: inches('4'), usableWidth: inches('40'), panelSeam: inches('1/2') };
const exact = (x: Real) => x.exact && show(x.exact);

describe('backing', () => {
  it('of a 60 by 68 in top lies better with horizontal seams', () => {
    const plan = backing({ ...house, top: top('60', '68') });
    expect([exact(plan.size.width), exact(plan.size.length)]).toEqual(['68', '76']);
    expect([plan.vertical.pieces, exact(plan.vertical.fabricLength)]).toEqual([2, '152']);
    expect([plan.horizontal.pieces, exact(plan.horizontal.fabricLength)]).toEqual([2, '136']);
    expect(plan.best.seams).toBe('horizontal');
    expect(show(plan.best.joined)).toBe('79');
  });

  it('takes a third panel when the seams eat the last half inch', () => {
    expect(backing({ ...house, top: top('71', '90') }).vertical.pieces).toBe(2);
    expect(backing({ ...house, top: top('71 1/8', '90') }).vertical.pieces).toBe(3);
    expect(backing({ ...house, panelSeam: inches('1/4'), top: top('71 1/8', '90') }).vertical.pieces).toBe(2);
  });

  it('from wide fabric is one piece without a seam, laid the shorter way', () => {
    const plan = backing({ ...house, usableWidth: inches('108'), top: top('90', '98') });
    expect([plan.vertical.pieces, plan.horizontal.pieces]).toEqual([1, 1]);
    expect([plan.best.seams, exact(plan.best.fabricLength)]).toEqual(['horizontal', '98']);
  });

  it('of a square top keeps vertical seams, exact or not', () => {
    expect(backing({ ...house, top: top('50', '50') }).best.seams).toBe('vertical');
    const side = Real.of(2).sqrt().mul(real('36'));
    expect(backing({ ...house, top: { width: side, length: side } }).best.seams).toBe('vertical');
  });

  it('covers what it must, and with one panel fewer would not', () => {
    const sides = fc.integer({ min: 80, max: 120 * 8 }).map((n) => Real.of(rational(n, 8)));
    fc.assert(
      fc.property(sides, sides, (width, length) => {
        const plan = backing({ ...house, top: { width, length } });
        for (const [panels, reach, down] of [
          [plan.vertical, plan.size.width, plan.size.length],
          [plan.horizontal, plan.size.length, plan.size.width],
        ] as const) {
          expect(Real.of(panels.joined).compare(reach)).not.toBe(-1);
          expect(Real.of(panels.joinedOneFewer).compare(reach)).toBe(-1);
          expect(panels.panelLength.compare(down)).toBe(0);
          expect(plan.best.fabricLength.compare(panels.fabricLength)).not.toBe(1);
        }
      }),
    );
  });

  it('is refused when a seam takes the whole panel', () => {
    expect(() => backing({ ...house, usableWidth: inches('1'), top: top('60', '60') })).toThrow(RangeError);
  });
});

describe('batting', () => {
  it('is the top and the overhang on every side', () => {
    const size = layerSize(top('48 1/2', '60'), inches('3'));
    expect([exact(size.width), exact(size.length)]).toEqual(['54 1/2', '66']);
  });
});
