import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { joinedLength, joinPieces, lostPerJoin } from '../../core/trade/joining.ts';
import { inches, real, show } from '../quantity/inches.ts';

describe('joining pieces', () => {
  it('takes the fewest pieces that reach the need', () => {
    const needs = fc.integer({ min: 1, max: 800 * 8 }).map((n) => rational(n, 8));
    const lost = fc.integer({ min: 0, max: 10 * 8 }).map((n) => rational(n, 8));
    fc.assert(
      fc.property(needs, lost, (need, lostPerJoin) => {
        const each = inches('40');
        const plan = joinPieces(Real.of(need), each, lostPerJoin);
        // Lay piece after piece until the need is reached.
        let pieces = 1;
        let reached = each;
        while (reached.compare(need) < 0) {
          pieces += 1;
          reached = reached.add(each).sub(lostPerJoin);
        }
        expect(plan.pieces).toBe(pieces);
        expect(plan.joined.equals(reached)).toBe(true);
        expect(plan.joinedOneFewer.compare(need)).toBe(-1);
        expect(plan.spare.exact?.equals(reached.sub(need))).toBe(true);
      }),
    );
  });

  it('takes one piece when nothing or next to nothing is needed', () => {
    for (const need of ['0', '1/8', '40']) {
      const plan = joinPieces(real(need), inches('40'), inches('2 1/4'));
      expect([plan.pieces, show(plan.joined), show(plan.joinedOneFewer)]).toEqual([1, '40', '0']);
    }
  });

  it('takes another piece for the least irrational excess', () => {
    // √1600.0001 is above 40 by 1.25e-6.
    const need = real('16000001/10000').sqrt();
    expect(joinPieces(need, inches('40'), inches('0')).pieces).toBe(2);
    expect(joinPieces(real('1600').sqrt(), inches('40'), inches('0')).pieces).toBe(1);
  });

  it('is refused when a join takes as much as a piece gives', () => {
    expect(() => joinPieces(real('90'), inches('9'), inches('9'))).toThrow('as much as a piece gives');
  });

  it('gives no length from no pieces', () => {
    expect(show(joinedLength(0, inches('40'), inches('2')))).toBe('0');
  });
});

describe('a join of two strips', () => {
  it('takes one strip width when diagonal and two seam allowances when straight', () => {
    expect(show(lostPerJoin('diagonal', inches('2 1/4'), inches('1/4')))).toBe('2 1/4');
    expect(show(lostPerJoin('straight', inches('2 1/4'), inches('1/4')))).toBe('1/2');
  });
});
