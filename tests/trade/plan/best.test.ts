import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import {
  type CutPiece,
  FAT_EIGHTH,
  FAT_QUARTER,
  precutSquares,
  precutStrips,
  roll,
} from '../../../core/trade/plan/fabric.ts';
import { rollPlan } from '../../../core/trade/plan/rollPlan.ts';
import { sheetPlan } from '../../../core/trade/plan/sheetPlan.ts';
import { yardage, yardageIsProved } from '../../../core/trade/plan/yardage.ts';
import { fewestSheets, leastLength, type SmallPiece } from './bruteForce.ts';
import { eighths, FORTY, inEighths, piecesOf } from './lists.ts';

function single(pieces: readonly CutPiece[], directional: boolean): SmallPiece[] {
  return pieces.flatMap(({ width, length, count, lengthwise }) => {
    const either = lengthwise === undefined && !directional;
    const upright = lengthwise ?? directional;
    const piece = {
      width: inEighths(width),
      length: inEighths(length),
      crosswise: either || !upright,
      lengthwise: either || upright,
    };
    return Array.from({ length: count }, () => piece);
  });
}

describe('the best plan of fabric by the yard', () => {
  const small = fc
    .tuple(piecesOf({ kinds: 4, count: 3, side: 200 }), fc.boolean(), fc.integer({ min: 200, max: 340 }))
    .filter(([pieces]) => pieces.reduce((sum, { count }) => sum + count, 0) <= 7);

  it('is as short as the shortest of all plans, on 500 random lists that can be enumerated', () => {
    fc.assert(
      fc.property(small, ([pieces, directional, width]) => {
        const plan = rollPlan(roll(eighths(width), { directional }), pieces);
        const least = leastLength(single(pieces, directional), width);
        expect(plan.misfits).toEqual([]);
        expect(inEighths(plan.best.length)).toBe(least);
        expect(inEighths(plan.bound)).toBe(least);
      }),
      { numRuns: 500 },
    );
  });

  it('lies between the bound and the plain count on larger lists', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 14, count: 40, side: 160 }), (pieces) => {
        const plan = rollPlan(FORTY, pieces, 1_000_000);
        expect(plan.bound.compare(plan.best.length)).toBeLessThanOrEqual(0);
        expect(plan.best.length.compare(plan.plain.length)).toBeLessThanOrEqual(0);
        expect(plan.anyWayBound.compare(plan.best.length)).toBeLessThanOrEqual(0);
        expect(plan.gap.equals(plan.best.length.sub(plan.bound))).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same each time, and with more work allowed neither longer nor less well proved', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 10, count: 30, side: 120 }), (pieces) => {
        const [first, again, more] = [300_000, 300_000, 3_000_000].map((work) =>
          rollPlan(FORTY, pieces, work),
        );
        expect(again).toEqual(first);
        expect(more?.best.length.compare(first?.best.length ?? 0)).toBeLessThanOrEqual(0);
        expect(more?.bound.compare(first?.bound ?? 0)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 20 },
    );
  });

  it('with no work allowed at all is still a plan with an honest bound', () => {
    fc.assert(
      fc.property(small, ([pieces, directional, width]) => {
        const plan = rollPlan(roll(eighths(width), { directional }), pieces, 0);
        const least = leastLength(single(pieces, directional), width);
        expect(inEighths(plan.best.length)).toBeGreaterThanOrEqual(least);
        expect(inEighths(plan.bound)).toBeLessThanOrEqual(least);
      }),
      { numRuns: 100 },
    );
  });

  it('scales with all sizes', () => {
    const scales = fc.integer({ min: 1, max: 30 }).map((n) => rational(n, 7));
    fc.assert(
      fc.property(piecesOf({ kinds: 6, count: 12, side: 160 }), scales, (pieces, k) => {
        const scaled = pieces.map((piece) => ({
          ...piece,
          width: piece.width.mul(k),
          length: piece.length.mul(k),
        }));
        const [plan, large] = [rollPlan(FORTY, pieces), rollPlan(roll(rational(40).mul(k)), scaled)];
        expect(large.best.length.equals(plan.best.length.mul(k))).toBe(true);
        expect(large.bound.equals(plan.bound.mul(k))).toBe(true);
        expect(large.plain.length.equals(plan.plain.length.mul(k))).toBe(true);
      }),
      { numRuns: 40 },
    );
  });

  it('does not depend on the order of the list, nor on whether equal pieces are listed together', () => {
    const lists = piecesOf({ kinds: 9, count: 20, side: 140 });
    fc.assert(
      fc.property(lists, fc.array(fc.nat(), { minLength: 9, maxLength: 9 }), (pieces, order) => {
        const halves = pieces.flatMap((piece) => [
          { ...piece, id: `${piece.id} a`, count: piece.count >> 1 },
          { ...piece, id: `${piece.id} b`, count: piece.count - (piece.count >> 1) },
        ]);
        const shuffled = pieces
          .map((piece, i) => ({ piece, key: order[i] ?? 0 }))
          .sort((a, b) => a.key - b.key)
          .map(({ piece }) => piece);
        const [plan, ...others] = [pieces, shuffled, halves].map((list) => rollPlan(FORTY, list, 500_000));
        for (const other of others) {
          expect(other.best.length).toEqual(plan?.best.length);
          expect(other.bound).toEqual(plan?.bound);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('may stop short of the shortest where fabric is sold by a step, but never at another yardage', () => {
    const sellBy = rational(9, 2);
    fc.assert(
      fc.property(piecesOf({ kinds: 5, count: 12, side: 120 }), (pieces) => {
        const [exact, sold] = [rollPlan(FORTY, pieces), rollPlan({ ...FORTY, sellBy }, pieces)];
        fc.pre(exact.gap.n === 0n && yardageIsProved(sold.best.length, sold.bound, sellBy));
        expect(yardage(sold.best.length, sellBy)).toEqual(yardage(exact.best.length, sellBy));
        expect(sold.bound.compare(exact.best.length)).toBeLessThanOrEqual(0);
        expect(sold.best.length.compare(exact.best.length)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  it('plans centimetres as well as inches', () => {
    // 110 cm of usable width: 4 squares of 25 1/2 cm and one of 8 cm in each strip.
    const cm = (n: number) => rational(Math.round(n * 10), 10).mul(rational(50, 127));
    const pieces = [
      { id: 'large', width: cm(25.5), length: cm(25.5), count: 8 },
      { id: 'small', width: cm(8), length: cm(8), count: 2 },
    ];
    const plan = rollPlan(roll(cm(110)), pieces);
    expect(plan.best.length.equals(cm(51))).toBe(true);
    expect(plan.plain.length.equals(cm(59))).toBe(true);
    expect(plan.gap.n).toBe(0n);
  });
});

describe('the need for fabric', () => {
  it('never falls when more pieces are wanted', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 5, count: 10, side: 160 }), fc.nat(4), fc.nat(20), (pieces, at, more) => {
        const index = at % pieces.length;
        const larger = pieces.map((piece, i) =>
          i === index ? { ...piece, count: piece.count + more } : piece,
        );
        const [few, many] = [rollPlan(FORTY, pieces), rollPlan(FORTY, larger)];
        expect(many.plain.length.compare(few.plain.length)).toBeGreaterThanOrEqual(0);
        expect(many.anyWayBound.compare(few.anyWayBound)).toBeGreaterThanOrEqual(0);
        // What the best plan of more pieces takes is never below what is proved for fewer.
        expect(many.best.length.compare(few.bound)).toBeGreaterThanOrEqual(0);
        if (few.gap.n === 0n) expect(many.best.length.compare(few.best.length)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the best plan of sheets', () => {
  const stocks = fc.constantFrom(
    FAT_QUARTER,
    FAT_EIGHTH,
    precutStrips(rational(5, 2), rational(42)),
    precutSquares(rational(10)),
  );
  const lists = fc
    .tuple(piecesOf({ kinds: 4, count: 4, side: 80 }), stocks, fc.boolean())
    .filter(([pieces]) => pieces.reduce((sum, { count }) => sum + count, 0) <= 6);

  it('takes the fewest of all plans, and proves it, on 500 random lists that can be enumerated', () => {
    fc.assert(
      fc.property(lists, ([pieces, stock, directional]) => {
        if (stock.kind !== 'sheets') throw new Error('sheets only');
        const plan = sheetPlan({ stock, directional, squaring: rational(0) }, pieces);
        const fitting = pieces.filter((piece) => !plan.misfits.some((misfit) => misfit.piece === piece));
        const fewest =
          fitting.length === 0
            ? 0
            : fewestSheets(single(fitting, directional), inEighths(stock.width), inEighths(stock.length));
        expect(plan.best.count).toBe(fewest);
        expect(plan.bound).toBe(fewest);
        expect(plan.gap).toBe(0);
      }),
      { numRuns: 500 },
    );
  });

  it('lies between the bound and the plain count on larger lists', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 8, count: 12, side: 70 }), stocks, (pieces, stock) => {
        const plan = sheetPlan({ stock, directional: false, squaring: rational(0) }, pieces, 300_000);
        expect(plan.anyWayBound).toBeLessThanOrEqual(plan.bound);
        expect(plan.bound).toBeLessThanOrEqual(plan.best.count);
        expect(plan.best.count).toBeLessThanOrEqual(plan.plain);
        expect(plan.gap).toBe(plan.best.count - plan.bound);
      }),
      { numRuns: 60 },
    );
  });
});
