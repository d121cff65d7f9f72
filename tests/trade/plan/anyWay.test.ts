import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { leastLength, leastSheets, waysOf } from '../../../core/trade/plan/anyWay.ts';
import { type CutPiece, FAT_QUARTER, type Fabric } from '../../../core/trade/plan/fabric.ts';
import { areaBound } from '../../../core/trade/plan/plain.ts';
import { rollPlan } from '../../../core/trade/plan/rollPlan.ts';
import { sheetPlan } from '../../../core/trade/plan/sheetPlan.ts';
import { FORTY, piecesOf } from './lists.ts';

const FORTY_INCHES = rational(40);
const square = (side: number, count: number): CutPiece => ({
  id: 'square',
  width: rational(side),
  length: rational(side),
  count,
});
const least = (...pieces: CutPiece[]) =>
  leastLength(
    FORTY_INCHES,
    pieces.map((piece) => waysOf(piece, FORTY)),
    rational(1000),
  ).toFraction();

describe('the least length of fabric, however it is cut', () => {
  it('is the whole sum of the lengths when no two pieces lie side by side', () => {
    expect(least(square(21, 9))).toBe('189'); // by area it would be 99 3/8
  });

  it('takes a third of their lengths when three lie side by side', () => {
    expect(least(square(12, 9))).toBe('36'); // three rows of three
    expect(least(square(13, 9))).toBe('39');
  });

  it('knows that rows are whole', () => {
    expect(least(square(6, 7))).toBe('12'); // six in a row, by area 6.3
    expect(least(square(5, 1))).toBe('5');
  });

  it('is the area where pieces fill the fabric to the edge', () => {
    expect(least(square(10, 8))).toBe('20');
  });

  it('takes the way of lying that asks for less', () => {
    expect(least({ id: 'strip', width: rational(5), length: rational(40), count: 3 })).toBe('15');
    expect(least({ id: 'strip', width: rational(5), length: rational(50), count: 8, lengthwise: true })).toBe(
      '50',
    );
  });

  it('is nothing for nothing', () => {
    expect(least()).toBe('0');
  });

  it('is never above a plan, and never below the area', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 4, count: 12, side: 300 }), (pieces) => {
        const plan = rollPlan(FORTY, pieces, 200_000);
        fc.pre(plan.misfits.length === 0);
        const found = leastLength(
          FORTY_INCHES,
          pieces.map((piece) => waysOf(piece, FORTY)),
          rational(100_000),
        );
        expect(found.compare(plan.best.length)).toBeLessThanOrEqual(0);
        expect(found.compare(areaBound(pieces, FORTY_INCHES))).toBeGreaterThanOrEqual(0);
      }),
      { seed: 20_261_125, numRuns: 300 },
    );
  });
});

describe('the least number of sheets, however they are cut', () => {
  const fabric: Fabric = { stock: FAT_QUARTER, directional: false, squaring: rational(0) };
  const sheets = (...pieces: CutPiece[]) =>
    leastSheets(
      rational(21),
      rational(18),
      pieces.map((piece) => waysOf(piece, fabric)),
    );

  it('is one for each piece that leaves no room for a second', () => {
    expect(sheets(square(11, 5))).toBe(5); // by area it would be two
  });

  it('is the area where pieces fill the sheets', () => {
    expect(sheets(square(3, 84))).toBe(2);
  });

  it('is never above a plan', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 3, count: 8, side: 140 }), (pieces) => {
        const plan = sheetPlan(fabric, pieces, 200_000);
        fc.pre(plan.misfits.length === 0);
        expect(sheets(...pieces)).toBeLessThanOrEqual(plan.best.count);
      }),
      { seed: 20_261_125, numRuns: 200 },
    );
  });
});
