import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { impliedWidth, longerThanFabric, stripsGive, subcuts } from '../../../core/trade/plan/checks.ts';
import {
  type CutPiece,
  FAT_EIGHTH,
  FAT_QUARTER,
  type Fabric,
  precutSquares,
  precutStrips,
  roll,
} from '../../../core/trade/plan/fabric.ts';
import { type RollPlan, rollPlan } from '../../../core/trade/plan/rollPlan.ts';
import { sheetPlan } from '../../../core/trade/plan/sheetPlan.ts';
import { yardage, yardageIsProved } from '../../../core/trade/plan/yardage.ts';
import { mixed, written } from '../units/mixed.ts';
import { FORTY } from './lists.ts';

const EIGHTH_YARD = rational(9, 2);

function piece(id: string, size: string, count: number, lengthwise?: boolean): CutPiece {
  const [width = size, length = width] = size.split(' x ');
  const base = { id, width: mixed(width), length: mixed(length), count };
  return lengthwise === undefined ? base : { ...base, lengthwise };
}

function sheetsOf(stock: Fabric['stock'], directional = false): Fabric {
  return { stock, directional, squaring: rational(0) };
}

function strips({ best }: RollPlan): string[] {
  return best.strips.map(({ count, width, cuts, left }) => {
    const inside = cuts.map((cut) => `${cut.count} ${cut.piece.id}`).join(', ');
    return `${count} x ${written(width)}: ${inside}, left ${written(left)}`;
  });
}

describe('the plain count', () => {
  it('cuts each piece from its own strips in the better way', () => {
    // 2 1/2 x 12 1/2: three from a 2 1/2 in strip, or sixteen from a 12 1/2 in strip.
    const { plain } = rollPlan(FORTY, [piece('sash', '2 1/2 x 12 1/2', 16)]);
    const [cut] = plain.cuts;
    expect(cut).toMatchObject({ run: 'lengthwise', perStrip: 16, strips: 1 });
    expect(cut && written(cut.length)).toBe('12 1/2');
    const [few] = rollPlan(FORTY, [piece('sash', '2 1/2 x 12 1/2', 3)]).plain.cuts;
    expect(few).toMatchObject({ run: 'crosswise', perStrip: 3, strips: 1 });
  });

  it('keeps the upright of directional fabric, and what a piece itself demands', () => {
    const directional = roll(rational(40), { directional: true });
    const runs = (p: CutPiece) => rollPlan(directional, [p]).plain.cuts.map(({ run }) => run);
    expect(runs(piece('sash', '2 1/2 x 12 1/2', 3))).toEqual(['lengthwise']);
    expect(runs(piece('sash', '2 1/2 x 12 1/2', 16, false))).toEqual(['crosswise']);
  });

  it('cuts what is longer than the usable width along the length', () => {
    const { plain, best } = rollPlan(FORTY, [piece('border', '6 1/2 x 80', 4)]);
    expect(plain.cuts[0]).toMatchObject({ run: 'lengthwise', perStrip: 6, strips: 1 });
    expect(written(best.length)).toBe('80');
  });
});

describe('the best plan', () => {
  it('cuts small pieces from the ends of wider strips', () => {
    const plan = rollPlan(FORTY, [piece('block', '6 1/2', 5), piece('corner', '2 1/2', 3)]);
    expect(strips(plan)).toEqual(['1 x 6 1/2: 5 block, 3 corner, left 0']);
    expect(written(plan.plain.length)).toBe('9');
    expect([plan.best.length, plan.bound].map(written)).toEqual(['6 1/2', '6 1/2']);
  });

  it('gives pieces of one size to the names that want them, in the order of the list', () => {
    const plan = rollPlan(FORTY, [piece('A', '10', 3), piece('B', '10', 3)]);
    expect(strips(plan)).toEqual(['1 x 10: 3 A, 1 B, left 0', '1 x 10: 2 B, left 20']);
  });

  it('loses the squaring once, and only when something is cut', () => {
    const squared = roll(rational(40), { squaring: rational(2) });
    expect(written(rollPlan(squared, [piece('A', '10', 3)]).best.length)).toBe('12');
    expect(written(rollPlan(squared, []).best.length)).toBe('0');
  });

  it('says which pieces cannot be cut and why, and plans the rest', () => {
    const plan = rollPlan(FORTY, [
      piece('wide', '41', 1),
      piece('long', '4 x 50', 2, false),
      piece('block', '10', 4),
    ]);
    expect(plan.misfits.map((misfit) => `${misfit.piece.id}: ${misfit.why}`)).toEqual([
      'wide: wider than the fabric',
      'long: longer than the fabric is wide',
    ]);
    expect(strips(plan)).toEqual(['1 x 10: 4 block, left 0']);
  });

  it('is proved at once where the area leaves no choice', () => {
    const plan = rollPlan(FORTY, [piece('A', '10', 8)]);
    expect([plan.best.length, plan.bound, plan.anyWayBound].map(written)).toEqual(['20', '20', '20']);
  });

  it('knows that a lengthwise border alone sets the length of any way of cutting', () => {
    const plan = rollPlan(FORTY, [piece('border', '6 1/2 x 80', 2)]);
    expect(written(plan.anyWayBound)).toBe('80');
  });
});

describe('sheets', () => {
  it('cuts a fat quarter in strips that run the better way', () => {
    // Strips across the 21 in side hold one piece each, and five of them fit; along the 18 in side six fill 21 in.
    const plan = sheetPlan(sheetsOf(FAT_QUARTER), [piece('strip', '3 1/2 x 18', 6)]);
    expect(plan.best).toMatchObject({ count: 1 });
    expect(plan).toMatchObject({ bound: 1, gap: 0, plain: 1 });
    expect(plan.best.sheets.map(({ count, cut }) => [count, cut.length])).toEqual([[1, 1]]);
  });

  it('mixes pieces on one sheet where the plain count takes one for each', () => {
    const list = [piece('large', '9 1/2', 2), piece('small', '3 1/2', 6)];
    const plan = sheetPlan(sheetsOf(FAT_QUARTER), list);
    expect(plan).toMatchObject({ plain: 2, bound: 1, gap: 0 });
    expect(plan.best.count).toBe(1);
  });

  it('keeps the upright of directional fat eighths', () => {
    const list = [piece('tall', '3 x 9', 7)];
    expect(sheetPlan(sheetsOf(FAT_EIGHTH, true), list).best.count).toBe(1);
    const lying = [piece('lying', '9 x 3', 7)];
    expect(sheetPlan(sheetsOf(FAT_EIGHTH, true), lying).best.count).toBe(2);
    expect(sheetPlan(sheetsOf(FAT_EIGHTH), lying).best.count).toBe(1);
  });

  it('counts precut strips and squares', () => {
    const strips42 = sheetsOf(precutStrips(mixed('2 1/2'), rational(42)));
    expect(sheetPlan(strips42, [piece('A', '2 1/2 x 6 1/2', 13), piece('B', '2 1/2', 2)]).best.count).toBe(3);
    const tens = sheetsOf(precutSquares(rational(10)));
    expect(sheetPlan(tens, [piece('A', '5', 9)]).best.count).toBe(3);
    expect(sheetPlan(tens, [piece('A', '10 1/2', 1)]).misfits.map(({ why }) => why)).toEqual([
      'wider than the fabric',
    ]);
  });

  it('needs none for no pieces', () => {
    expect(sheetPlan(sheetsOf(FAT_QUARTER), [])).toMatchObject({ plain: 0, bound: 0, gap: 0 });
  });

  it('refuses the other form of fabric', () => {
    expect(() => sheetPlan(FORTY, [])).toThrow(RangeError);
    expect(() => rollPlan(sheetsOf(FAT_QUARTER), [])).toThrow(RangeError);
  });
});

describe('questions about what a pattern says', () => {
  it('counts what strips give, whole pieces only', () => {
    expect(subcuts(3, rational(40), mixed('12 1/2'))).toBe(9);
    expect(stripsGive(3, rational(40), mixed('12 1/2'), 9)).toBe(true);
    expect(stripsGive(3, rational(40), mixed('12 1/2'), 10)).toBe(false);
  });

  it('knows the width that strips and pieces imply', () => {
    expect(written(impliedWidth(3, mixed('12 1/2'), 10))).toBe('50');
    expect(() => impliedWidth(0, mixed('12 1/2'), 10)).toThrow(RangeError);
  });

  it('knows a lengthwise piece that is longer than the fabric asked for', () => {
    expect(longerThanFabric(rational(90), rational(81))).toBe(true);
    expect(longerThanFabric(rational(81), rational(81))).toBe(false);
  });

  it('rounds yardage up', () => {
    expect(written(yardage(mixed('20'), EIGHTH_YARD))).toBe('22 1/2');
    expect(written(yardage(mixed('22 1/2'), EIGHTH_YARD))).toBe('22 1/2');
  });

  it('knows when the yardage is proved although the plan is not', () => {
    expect(yardageIsProved(mixed('20'), mixed('19'), EIGHTH_YARD)).toBe(true);
    expect(yardageIsProved(mixed('20'), mixed('18'), EIGHTH_YARD)).toBe(false);
  });
});
