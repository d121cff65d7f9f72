/**
 * Cut sizes as they are published, recomputed. Where a source rounds or contradicts geometry, its row says so.
 */
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real, roundUp } from '../../core/quantity/real.ts';
import { unitKind, unitMethod } from '../../core/trade/units/kinds.ts';
import { unitRequirement } from '../../core/trade/units/requirement.ts';
import { halfSquareSeams, ROOT_2, rightTriangleLegs, USUAL_OVERSIZE } from '../../core/trade/units/seams.ts';
import type { UnitSpec } from '../../core/trade/units/unit.ts';
import { EIGHTH, inches, mixed, size, USUAL, written } from '../trade/units/mixed.ts';

function cutting(unit: string, methodName: string, spec: UnitSpec, units = 1) {
  const kind = unitKind(unit);
  const found = kind && unitMethod(kind, methodName);
  if (!found) throw new Error(`${unit}, ${methodName}`);
  const rules = { ...USUAL, oversize: found.trimmed ? USUAL_OVERSIZE : rational(0) };
  return unitRequirement(found.method, spec, rules, units, EIGHTH);
}

/** The cut widths by the ruler, one for each role. */
function widths(unit: string, method: string, spec: UnitSpec): string[] {
  const byRole = new Map(cutting(unit, method, spec).cuts.map((cut) => [cut.role, written(cut.cutWidth)]));
  return [...byRole.values()];
}

const QUILTMAKER = 'Quilt blocks: easy math part 4, Quiltmaker (magazine)';
const CACHE = "Quilter's Cache, block pages (individual)";
const LLQG = 'Block of the month, LLQG guild (guild)';
const GEESE_CHART = "Fast flying geese, Beverly's Quilting Page (individual)";
const SCRAPISH = 'Half-square triangles 8 at a time, scrapish.com (individual)';
const SCISSORTAIL = 'Square in a square, Scissortail Quilting (trade, designer)';
const LESSON_5 = 'Lesson 5, Square in a square, class notes on slideblast.com (individual)';

describe('published cut sizes', () => {
  it.each([
    ['half-square triangles', 'two at a time', '3', ['3 7/8'], QUILTMAKER],
    ['squares', 'cut squares', '6', ['6 1/2'], QUILTMAKER],
    ['half-square triangles', 'two at a time', '4', ['4 7/8'], `Kite's Tail, ${CACHE}`],
    ['quarter-square triangles', 'cut triangles', '4', ['5 1/4'], `Kite's Tail, ${CACHE}`],
    [
      'half-square triangles',
      'two at a time',
      '6',
      ['6 7/8'],
      'Do the math, ourthankfulday.com (individual)',
    ],
    ['hourglasses', 'two at a time', '6', ['7 1/4'], 'Do the math, ourthankfulday.com: + 1 1/4 (individual)'],
    ['half-square triangles', 'cut triangles', '6', ['6 7/8'], LLQG],
    ['half-square triangles', 'cut triangles', '3', ['3 7/8'], LLQG],
    ['half-square triangles', 'cut triangles', '1 1/2', ['2 3/8'], LLQG],
    ['squares', 'cut squares', '1 1/2', ['2'], LLQG],
    ['flying geese', 'four at a time', '8 x 4', ['9 1/4', '4 7/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '7 x 3 1/2', ['8 1/4', '4 3/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '6 x 3', ['7 1/4', '3 7/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '5 x 2 1/2', ['6 1/4', '3 3/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '4 x 2', ['5 1/4', '2 7/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '3 x 1 1/2', ['4 1/4', '2 3/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '2 x 1', ['3 1/4', '1 7/8'], GEESE_CHART],
    ['flying geese', 'four at a time', '4 x 2', ['5 1/4', '2 7/8'], "Sylvia's Quilt Depot (trade, shop)"],
    ['half-square triangles', 'eight at a time', '2', ['5 3/4'], SCRAPISH],
    [
      'half-square triangles',
      'eight at a time',
      '3',
      ['7 3/4'],
      `Craftsy, (3 + 7/8) × 2 (trade); ${SCRAPISH}`,
    ],
    ['half-square triangles', 'eight at a time', '4', ['9 3/4'], SCRAPISH],
    ['half-square triangles', 'eight at a time', '5', ['11 3/4'], SCRAPISH],
    ['half-square triangles', 'eight at a time', '6', ['13 3/4'], SCRAPISH],
    ['half-square triangles', 'eight at a time', '7', ['15 3/4'], SCRAPISH],
    ['half-square triangles', 'eight at a time', '8', ['17 3/4'], SCRAPISH],
    // Deliberately larger and trimmed down: 6 for 5 3/4.
    [
      'half-square triangles',
      'eight at a time, trimmed',
      '2',
      ['6'],
      'quilted-diary.com, magic eight (individual)',
    ],
  ])('%s, %s, finished %s: %j (%s %s)', (unit, method, finished, published) => {
    expect(widths(unit, method, size(finished))).toEqual(published);
  });

  it.each([
    ['1', '3 1/4', '1 7/8'],
    ['1 1/4', '3 3/4', '2 1/8'],
    ['1 1/2', '4 1/4', '2 3/8'],
    ['1 3/4', '4 3/4', '2 5/8'],
    ['2', '5 1/4', '2 7/8'],
    ['2 1/4', '5 3/4', '3 1/8'],
    ['2 1/2', '6 1/4', '3 3/8'],
    ['2 3/4', '6 3/4', '3 5/8'],
    ['3', '7 1/4', '3 7/8'],
  ])(
    'Fast easy flying geese, alinequilts (individual): geese %s high take squares of %s and %s',
    (high, ...cut) => {
      const spec = { width: inches(high).mul(Real.of(2)), length: inches(high) };
      expect(widths('flying geese', 'four at a time', spec)).toEqual(cut);
    },
  );

  it.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])(
    `${SCISSORTAIL}: a square in a square of %i in is flipped from squares half an inch larger than it and its half`,
    (side) => {
      // Every row of the chart is F + 1/2 and F/2 + 1/2: 2 1/2 and 1 1/2 for 2 in, 12 1/2 and 6 1/2 for 12 in.
      const corner = side % 2 === 0 ? `${side / 2} 1/2` : String((side + 1) / 2);
      expect(widths('square in a square', 'stitch and flip', size(String(side)))).toEqual([
        `${side} 1/2`,
        corner,
      ]);
    },
  );

  it('American Patchwork & Quilting, Bright New Day block 3: geese trimmed down take a small square of 3 in for 2 7/8', () => {
    // The magazine cuts only the small square larger; its large square stays at 5 1/4 in.
    const [, small] = widths('flying geese', 'four at a time, trimmed', size('4 x 2'));
    expect(small).toBe('3');
    expect(widths('flying geese', 'four at a time', size('4 x 2'))[0]).toBe('5 1/4');
  });

  it(`${LESSON_5}: the centre of a 12 in square in a square is 6 × 1.414 + 1/2, cut 9`, () => {
    expect(widths('square in a square', 'cut triangles', size('12'))[0]).toBe('9');
    const exact = cutting('square in a square', 'cut triangles', size('12')).cuts[0]?.width;
    // The class notes compute 8.984 with 1.414; the full root gives 8.985.
    expect(exact?.toNumber()).toBeCloseTo(8.985, 3);
  });

  it(`${LESSON_5}: round a 3 1/2 in centre the corner squares are cut 3 3/8`, () => {
    const outside = inches('3 1/2').mul(ROOT_2);
    const spec = { width: outside, length: outside };
    expect(widths('square in a square', 'cut triangles', spec)).toEqual(['4', '3 3/8']);
    // They round 2.475 to 2 1/2 first and add 7/8: 3 3/8 as well; exact is 3.328.
    const exact = cutting('square in a square', 'cut triangles', spec).cuts[1]?.width;
    expect(exact?.toNumber()).toBeCloseTo(2.4749 + 0.8536, 3);
  });

  it('Catbird Quilts, economy block (individual): a 7 in block has a 3 1/2 in centre, cut 4', () => {
    // Two rounds turn the square twice: each divides the side by √2.
    const centre = inches('7').div(ROOT_2).div(ROOT_2);
    expect(written(roundUp(centre.add(Real.of(rational(1, 2))), EIGHTH))).toBe('4');
  });

  it('Catbird Quilts (individual): turning a 15 in block once and twice gives 21.21 and 30 in', () => {
    const once = inches('15').mul(ROOT_2);
    expect(once.toNumber()).toBeCloseTo(21.21, 2);
    expect(once.mul(ROOT_2).toNumber()).toBeCloseTo(30, 12);
  });

  it('class forum, old.quiltube.com (individual): corner squares round a 6 in block are 5 1/8', () => {
    const exact = inches('6').div(ROOT_2).add(halfSquareSeams(USUAL.seam));
    expect(written(roundUp(exact, EIGHTH))).toBe('5 1/8');
  });

  it.each([
    ['3 7/8', '19 3/8', 5, 10, `Star of Hope, ${CACHE}`],
    ['3 7/8', '7 3/4', 2, 4, `Cups and Saucers, ${CACHE}`],
    ['2 7/8', '23', 8, 16, `The Best Friend, ${CACHE}`],
  ])(
    'a %s x %s strip of squares gives %i squares and %i half-square triangles (%s)',
    (strip, long, squares, units) => {
      expect(Number(mixed(long).div(mixed(strip)).floor(0).valueOf())).toBe(squares);
      const finished = mixed(strip).sub(mixed('7/8'));
      const spec = { width: Real.of(finished), length: Real.of(finished) };
      const { cuts } = cutting('half-square triangles', 'two at a time', spec, units);
      expect(cuts.map(({ count }) => count)).toEqual([squares, squares]);
      expect(cuts.map(({ cutWidth }) => written(cutWidth))).toEqual([strip, strip]);
    },
  );

  it("McCall's Quilting, Jan/Feb 2020, p. 76 (magazine): 168 units of 5 in squares take 336 corners of 2 1/2", () => {
    const spec = { ...size('4 1/2'), corner: inches('2'), corners: 2 };
    const { cuts } = cutting('snowball corners', 'stitch and flip', spec, 168);
    expect(cuts.map((cut) => `${cut.count} of ${written(cut.cutWidth)}`)).toEqual([
      '168 of 5',
      '336 of 2 1/2',
    ]);
  });

  it("The Quilter's Bible, Linda Clements (book): a rectangle takes + 1/2 and + 1/2, not the printed + 5/8 and + 1 1/4", () => {
    const [cut] = cutting('rectangles', 'cut rectangles', size('3 x 6')).cuts;
    expect(cut && [written(cut.cutWidth), written(cut.cutLength)]).toEqual(['3 1/2', '6 1/2']);
    // The printed pair is near a half-rectangle triangle of 1 : 2, which takes 0.6545 and 1.3090.
    const legs = rightTriangleLegs(inches('3'), inches('6'), USUAL.seam);
    expect(legs.a.toNumber() - 3).toBeCloseTo(0.6545, 4);
    expect(legs.b.toNumber() - 6).toBeCloseTo(1.309, 4);
  });
});
