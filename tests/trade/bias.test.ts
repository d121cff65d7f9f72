import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { biasCuts } from '../../core/geometry/biasCuts.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { areaRule, biasSquare, biasStrips, fewestBiasStrips, judgeSquare } from '../../core/trade/bias.ts';
import { inches, real, show } from '../quantity/inches.ts';

const wish = {
  need: real('100'),
  strip: inches('2 1/4'),
  seam: inches('1/4'),
  step: inches('1'),
};

describe('bias binding from one square', () => {
  it('of 100 in takes a 17 in square, where the area rule says 15 and gives only 82.0', () => {
    const square = biasSquare(wish);
    expect(show(square.byYield.side)).toBe('17');
    expect(square.byYield.passes).toBe(5);
    expect(square.areaRoot.exact && show(square.areaRoot.exact)).toBe('15');
    expect(show(square.byArea.side)).toBe('15');
    expect(square.byArea.length.toNumber()).toBeCloseTo(82.024, 3);
    expect(square.areaShortfall.toNumber()).toBeCloseTo(17.976, 3);
  });

  it('is never smaller than the area rule has it', () => {
    const needs = fc.integer({ min: 1, max: 6000 }).map((n) => Real.of(rational(n, 8)));
    const strips = fc.integer({ min: 8, max: 28 }).map((n) => rational(n, 8));
    fc.assert(
      fc.property(needs, strips, (need, strip) => {
        const { byYield, byArea, areaShortfall } = biasSquare({ ...wish, need, strip });
        expect(byYield.side.compare(byArea.side)).not.toBe(-1);
        // Either the rule is enough after all, and then the squares are the same, or it falls short.
        expect(areaShortfall.sign() <= 0).toBe(byYield.side.equals(byArea.side));
      }),
    );
  });

  it('serves an irrational need: a circle of 24 in and 12 in to join', () => {
    const need = Real.PI.mul(real('24')).add(real('12'));
    // 87.40 in are needed; 15 in give 82.02, 16 in give 87.68.
    expect(show(biasSquare({ ...wish, need }).byYield.side)).toBe('16');
  });
});

describe('a stated square', () => {
  it('may be enough by the area rule only', () => {
    const verdict = judgeSquare(inches('15'), wish);
    expect(show(verdict.areaPromise)).toBe('100');
    expect([verdict.enough, verdict.enoughByAreaOnly]).toEqual([false, true]);
  });

  it('may be enough in truth, or by neither rule', () => {
    const large = judgeSquare(inches('17'), wish);
    expect([large.enough, large.enoughByAreaOnly]).toEqual([true, false]);
    const small = judgeSquare(inches('14'), wish);
    expect([small.enough, small.enoughByAreaOnly]).toEqual([false, false]);
  });

  it('promises its area over the width of the strip', () => {
    expect(show(areaRule(inches('18'), inches('2 1/4')))).toBe('144');
  });
});

describe('bias strips cut singly from the width of the fabric', () => {
  it('take the least length of fabric that reaches the need', () => {
    const plan = biasStrips({ ...wish, need: real('300'), step: inches('1/8') }, inches('40'));
    expect(show(plan.fabricLength)).toBe('17 5/8');
    expect(plan.cuts.length.compare(real('300'))).toBe(1);
    expect(plan.cuts.along.equals(plan.fabricLength)).toBe(true);
  });

  it('need less cloth than the square and more than the bare area', () => {
    for (const need of ['150', '262', '351', '500']) {
      const asked = { ...wish, need: real(need), step: inches('1/8') };
      const strips = biasStrips(asked, inches('40'));
      const { side } = biasSquare(asked).byYield;
      const cloth = strips.fabricLength.mul(40);
      expect(cloth.compare(side.mul(side))).toBe(-1);
      expect(cloth.compare(inches(need).mul(wish.strip))).toBe(1);
    }
  });

  it('are refused from fabric that is too narrow', () => {
    expect(() => biasStrips(wish, inches('1'))).toThrow('too narrow');
  });
});

describe('the fewest bias strips', () => {
  it('are never more than any cloth of that width gives where its strips are long enough', () => {
    const needs = fc.integer({ min: 20, max: 600 });
    const lengths = fc.integer({ min: 5, max: 80 });
    fc.assert(
      fc.property(needs, lengths, fc.integer({ min: 30, max: 44 }), (need, along, across) => {
        const cutting = { width: inches('2 1/4'), allowance: inches('1/4') };
        const cuts = biasCuts(rational(across), rational(along), cutting);
        const { pieces } = fewestBiasStrips(Real.of(need), rational(across), cutting.allowance);
        if (cuts.length.compare(Real.of(need)) >= 0) expect(pieces).toBeLessThanOrEqual(cuts.strips.length);
      }),
    );
  });

  it('of 274 in are five from fabric 40 in wide: 5 × 40 less 4 × ½ along the selvage, times √2', () => {
    const { pieces, joined } = fewestBiasStrips(real('274'), inches('40'), inches('1/4'));
    expect(pieces).toBe(5);
    expect(show(joined)).toBe('198');
  });
});
