/** Published yardage: pieces from a length of fabric, strips, and cutting plans. Contradictions are named. */
import { describe, expect, it } from 'vitest';
import { type Rational, rational } from '../../core/quantity/rational.ts';
import { impliedWidth, stripsGive, subcuts } from '../../core/trade/plan/checks.ts';
import { type CutPiece, FAT_QUARTER, type Fabric, precutStrips, roll } from '../../core/trade/plan/fabric.ts';
import { perStrip, piecesFrom, plainCut, stripsFor, usualCut } from '../../core/trade/plan/plain.ts';
import { rollPlan } from '../../core/trade/plan/rollPlan.ts';
import { sheetPlan } from '../../core/trade/plan/sheetPlan.ts';
import { yardage } from '../../core/trade/plan/yardage.ts';
import { mixed, written } from '../trade/units/mixed.ts';

const YARD = rational(36);
const EIGHTH = rational(9, 2);
const QUARTER = rational(9);

function piece(size: string, count = 1, run?: 'lengthwise' | 'crosswise'): CutPiece {
  const [width = size, length = width] = size.split(' x ');
  const base = { id: size, width: mixed(width), length: mixed(length), count };
  return run ? { ...base, lengthwise: run === 'lengthwise' } : base;
}

function squaresFrom(width: string, length: Rational, side: string): number {
  return piecesFrom(mixed(width), length, piece(side), roll(mixed(width)));
}

describe('squares from a length of fabric', () => {
  it.each([
    ['2', 99],
    ['2 1/2', 56],
    ['3', 42],
    ['3 1/2', 30],
    ['4', 20],
    ['4 1/2', 16],
    ['5', 12],
    ['5 1/2', 12],
    ['6', 9],
    ['6 1/2', 6],
  ])(
    'a fat quarter of 18 x 22 gives squares of %s: %i (piecefulliving.blogspot.com, quiltingboard.com t73923, individual)',
    (side, count) => {
      expect(squaresFrom('22', rational(18), side)).toBe(count);
    },
  );

  it('quiltersresources.com (individual) is wrong in two cells of the same chart: 55 of 2 1/2 and 15 of 5', () => {
    expect(squaresFrom('22', rational(18), '2 1/2')).toBe(56);
    expect(squaresFrom('22', rational(18), '5')).toBe(12);
  });

  it.each([
    // Headed "44 in, washed", but computed for 43 1/2 in of width and half an inch off the length.
    ['2 1/2', YARD, 238, 238],
    ['1 1/2', rational(18), 319, 219], // misprint
    ['2', YARD, 357, 351], // misprint
  ])(
    "Sylvia's Quilt Depot, cutting squares (trade, shop): squares of %s from %s in: %i, printed %i",
    (side, length, count, printed) => {
      expect(squaresFrom('43 1/2', length.sub(mixed('1/2')), side)).toBe(count);
      expect(printed === count).toBe(side === '2 1/2');
    },
  );

  it("Sylvia's Quilt Depot (trade, shop): 12 in squares from 1/2 yd are 3, not the printed 6", () => {
    expect(squaresFrom('44', rational(18), '12')).toBe(3);
  });

  it('docsbay.net, squares from yardage (individual): half a yard does not give half the squares of a yard', () => {
    // 56 from a yard is right; 14 from a quarter is 8, for rows are whole.
    expect(squaresFrom('44', YARD, '5')).toBe(56);
    expect(squaresFrom('44', QUARTER, '5')).toBe(8);
  });

  it.each([
    ['10', '36', 9],
    ['10', '45', 12],
    ['11', '36', 9],
    ['11', '45', 12],
    ['12', '36', 9],
    ['12', '45', 9], // printed 12
  ])(
    'stockingisthenewplanking.com (individual): squares of %s from a yard of %s in cloth: %i',
    (side, width, count) => {
      expect(squaresFrom(width, YARD, side)).toBe(count);
    },
  );

  it('pattern on Plowlady (individual): 3/4 yd gives 12 squares of 9 in, nine fabrics 108', () => {
    expect(9 * squaresFrom('40', rational(27), '9')).toBe(108);
  });
});

describe('strips', () => {
  it.each([
    // Printed one lower for the narrow strips. No single loss for squaring explains it: 13 strips of 2 1/2 for 14
    // take more than 1 in, and 7 of 5 leave no more than 1 in.
    ['1 1/2', 24, 23],
    ['2', 18, 17],
    ['2 1/2', 14, 13],
    ['3', 12, 11],
    ['3 1/2', 10, 10],
    ['5', 7, 7],
    ['8', 4, 4],
  ])('a yard holds strips of %s: %i, printed %i (docsbay.net, individual)', (width, count, printed) => {
    expect(Number(YARD.div(mixed(width)).floor(0).valueOf())).toBe(count);
    expect(count - printed).toBe(mixed(width).compare(3) <= 0 ? 1 : 0);
  });

  it('Bobbin In Quilts (trade, designer): 300 of 3 x 2 are 13 across in 24 rows, 48 in, 1 1/2 yd', () => {
    const asWritten = plainCut(piece('3 x 2', 300, 'lengthwise'), rational(40), roll(rational(40)));
    expect(asWritten).toMatchObject({ perStrip: 13, strips: 24 });
    expect(asWritten && written(asWritten.length)).toBe('48');
    expect(usualCut(piece('3 x 2', 300), rational(40), roll(rational(40)))).toMatchObject({
      perStrip: 13,
      strips: 24,
    });
    // The other way they fill 15 strips of 3 in to the edge: 45 in, which the page does not look for.
    expect(written(rollPlan(roll(rational(40)), [piece('3 x 2', 300)]).best.length)).toBe('45');
    expect(asWritten && written(yardage(asWritten.length, QUARTER))).toBe('54');
  });

  it('How to figure yardage, Feathered Star (trade, author): 80 of 2 1/2 take 5 strips, 12 1/2 in, 3/8 yd', () => {
    expect(perStrip(rational(40), mixed('2 1/2'))).toBe(16);
    expect(stripsFor(80, 16)).toBe(5);
    const need = rollPlan(roll(rational(40)), [piece('2 1/2', 80)]).best.length;
    expect(written(need)).toBe('12 1/2');
    // With her 6 % for shrinkage: 13 1/4, rounded up to an eighth of a yard.
    expect(written(yardage(need.mul(rational(106, 100)), EIGHTH))).toBe('13 1/2');
  });

  it('Chain of Faith, Moda Bake Shop (trade): 41 strips of 2 1/2 from 3 1/2 yd', () => {
    const need = rollPlan(roll(rational(40)), [piece('2 1/2 x 40', 41, 'crosswise')]).best.length;
    expect(written(need)).toBe('102 1/2');
    expect(yardage(need, EIGHTH).compare(rational(126))).toBeLessThanOrEqual(0);
  });

  it('Chain of Faith, Moda Bake Shop (trade): 144 of 8 1/2 from 29 strips need 42 1/2 in of width', () => {
    expect(written(impliedWidth(29, mixed('8 1/2'), 144))).toBe('42 1/2');
    expect(stripsGive(29, rational(40), mixed('8 1/2'), 144)).toBe(false);
    expect(subcuts(29, rational(42), mixed('8 1/2'))).toBe(116);
    expect(stripsFor(144, perStrip(rational(40), mixed('8 1/2')))).toBe(36);
  });
});

describe('cutting plans', () => {
  it('Noteworthy Labyrinth, Moda Bake Shop (trade): 45 of 16 1/2 and 50 of 8 from 28 strips of 1 1/2', () => {
    const pieces = [piece('1 1/2 x 16 1/2', 45, 'crosswise'), piece('1 1/2 x 8', 50, 'crosswise')];
    const plan = rollPlan(roll(rational(42)), pieces);
    const strips = plan.best.strips.reduce((sum, { count }) => sum + count, 0);
    expect(strips).toBe(28);
    expect(plan.gap.n).toBe(0n);
    // The plan in the pattern uses 41 in of a strip; with 40 in more strips are needed.
    expect(rollPlan(roll(rational(41)), pieces).best.length.equals(plan.best.length)).toBe(true);
    expect(rollPlan(roll(rational(40)), pieces).bound.compare(plan.best.length)).toBe(1);
  });

  it('Noteworthy Labyrinth (trade): 66 strips of 1 1/2 and 8 of 1 3/4 from 3 1/2 yd', () => {
    const pieces = [piece('1 1/2 x 42', 66, 'crosswise'), piece('1 3/4 x 42', 8, 'crosswise')];
    const need = rollPlan(roll(rational(42)), pieces).best.length;
    expect(written(need)).toBe('113');
    expect(yardage(need, EIGHTH).compare(rational(126))).toBeLessThanOrEqual(0);
  });

  it('Garden Girl, Moda Bake Shop (trade): a fat quarter gives three squares of 7 1/2 and twelve of 2 x 3 1/2', () => {
    const fabric: Fabric = { stock: FAT_QUARTER, directional: false, squaring: rational(0) };
    expect(sheetPlan(fabric, [piece('7 1/2', 3), piece('2 x 3 1/2', 12)])).toMatchObject({
      bound: 1,
      gap: 0,
    });
    expect(sheetPlan(fabric, [piece('7 1/2', 72)]).best.count).toBeLessThanOrEqual(24);
  });

  it('jansquiltfinishestutorials (individual): mixed cuts of 12 1/2 in from 1 3/4 yd', () => {
    const sizes: [string, number][] = [
      ['24 1/2', 1],
      ['18 1/2', 2],
      ['12 1/2', 4],
      ['6 1/2', 6],
    ];
    const pieces = sizes.map(([length, count]) => piece(`12 1/2 x ${length}`, count));
    const plan = rollPlan(roll(rational(40)), [...pieces, piece('6 1/2 x 18 1/2', 1)]);
    // Four strips of 12 1/2 and one of 6 1/2 are 56 1/2 in; 1 3/4 yd is 63 in.
    expect(plan.best.length.compare(mixed('56 1/2'))).toBeLessThanOrEqual(0);
    expect(plan.gap.n).toBe(0n);
  });

  it('Fat Quarterly, Quilt along post 2 (magazine): 40 precut strips for 80 blocks', () => {
    const fabric: Fabric = {
      stock: precutStrips(mixed('2 1/2'), rational(42)),
      directional: false,
      squaring: rational(0),
    };
    // Two of 2 1/2 and two of 6 1/2 are 18 in for a block: two blocks from each strip, 40 strips.
    const perBlock = [piece('2 1/2', 2), piece('2 1/2 x 6 1/2', 2)];
    const twice = perBlock.map((one) => ({ ...one, count: 2 * one.count }));
    expect(sheetPlan(fabric, twice).best.count).toBe(1);
    // Cut without keeping the fabrics of a block together they come from fewer: 36 in of 42 are used above.
    const all = perBlock.map((one) => ({ ...one, count: 80 * one.count }));
    expect(sheetPlan(fabric, all).best.count).toBeLessThanOrEqual(40);
    expect(sheetPlan(fabric, all)).toMatchObject({ bound: 35, gap: 0 });
  });

  it('quiltingboard.com, post 511807 (individual): lengthwise borders of 80 + 10 in take 2 1/2 yd, four of 12 in twice that', () => {
    const wide = roll(rational(42));
    const length = (pieces: CutPiece[]) => written(rollPlan(wide, pieces).best.length);
    expect(length([piece('10 x 90', 4, 'lengthwise')])).toBe('90');
    expect(written(yardage(rational(90), EIGHTH))).toBe('90');
    // 4 × 12 = 48 in is wider than 42.
    expect(length([piece('12 x 90', 4, 'lengthwise')])).toBe('180');
  });
});
