/** Published borders and sashings, recomputed. */
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { type Border, type BorderSpec, borderStrips, borders } from '../../core/trade/borders.ts';
import { sashing } from '../../core/trade/sashing.ts';
import type { Size } from '../../core/trade/units/unit.ts';
import { EIGHTH, mixed, size, written } from '../trade/units/mixed.ts';

const Q = rational(1, 4);
const U = rational(40);

function text({ width, length }: Size): string {
  return [width, length].map((x) => (x.exact ? written(x.exact) : 'irrational')).join(' x ');
}

function steps(top: string, specs: readonly (readonly [string, BorderSpec['corners']])[]): Border[] {
  const all = specs.map(([finished, corners]) => ({ finished: mixed(finished), corners }));
  return borders(size(top), all, Q);
}

describe('published borders', () => {
  it('three butted borders from 1 1/2 in strips (quilting magazine page on issuhub.com, id 8929, p. 50)', () => {
    // The magazine sews the strips along the long side first; it is our length here.
    const all = steps('19 x 29', [
      ['1', 'butted'],
      ['1', 'butted'],
      ['1', 'butted'],
    ]);
    expect(all.map(({ unfinished }) => text(unfinished))).toEqual([
      '21 1/2 x 31 1/2',
      '23 1/2 x 33 1/2',
      '25 1/2 x 35 1/2',
    ]);
    expect(all.map(({ sides, ends }) => [text(sides.cut), text(ends.cut)])).toEqual([
      ['1 1/2 x 29 1/2', '1 1/2 x 21 1/2'],
      ['1 1/2 x 31 1/2', '1 1/2 x 23 1/2'],
      ['1 1/2 x 33 1/2', '1 1/2 x 25 1/2'],
    ]);
  });

  it('FreeSpirit Fabrics, In the Garden (trade): round 70 1/2 x 88, sides 88, top and bottom 74 1/2, cut 2 1/2 wide', () => {
    const [step] = steps('70 x 87 1/2', [['2', 'butted']]);
    expect(step && [text(step.sides.cut), text(step.ends.cut)]).toEqual(['2 1/2 x 88', '2 1/2 x 74 1/2']);
  });

  it('QuiltingHub, Mitered borders (trade): side + 2 × width + 6 is enough for 17 1/2 x 22 1/2 and a 3 1/2 in set', () => {
    // Strips 1 1/2 and 2 1/2 make a set that is 3 1/2 in wide with its seams, 3 in finished.
    const [step] = steps('17 x 22', [['3', 'mitred']]);
    const published = [mixed('35 1/2'), mixed('30 1/2')];
    [step?.sides, step?.ends].forEach((piece, i) => {
      const needed = piece?.cut.length.add(step?.mitreReserve ?? piece.cut.length);
      expect(needed?.toNumber()).toBeLessThan(published[i]?.valueOf() ?? 0);
    });
  });

  it('quiltingboard.com, t168402 (individual): mitred borders 1 + 2 1/2 + 3 1/2 round 50 x 60, + 15', () => {
    const [step] = steps('50 x 60', [['7', 'mitred']]);
    // 65 and 75 published; 64 1/2 and 74 1/2 reach from raw edge to raw edge, which is enough, so the page's + 1 leaves
    // half an inch to spare. A whole seam allowance to the tip of the mitre would take 65.2 and 75.2, but what that
    // adds lies beyond the raw edges of the quilt and is trimmed away; a test of the borders shows it by polygons.
    expect(step && [text(step.ends.cut), text(step.sides.cut)]).toEqual(['7 1/2 x 64 1/2', '7 1/2 x 74 1/2']);
    expect(step?.ends.cut.length.add(step.mitreReserve).toNumber()).toBeCloseTo(65.207, 3);
  });

  it("McCall's Quilting, Jan/Feb 2020, p. 76 (magazine): 42 blocks of 9 in, 2 in sashing, borders of 2 and 3 in", () => {
    const sashed = sashing(
      { across: 6, down: 7, block: size('9'), sash: rational(2), outer: false, cornerstones: false },
      Q,
    );
    expect(sashed.upright.count).toBe(35);
    expect(text(sashed.upright.cut)).toBe('2 1/2 x 9 1/2');
    expect(sashed.lying.count).toBe(6);
    expect(text(sashed.finished)).toBe('64 x 75');
    const [first, second] = steps('64 x 75', [
      ['2', 'butted'],
      ['3', 'butted'],
    ]);
    expect(first && text(first.finished)).toBe('68 x 79');
    expect(second && text(second.finished)).toBe('74 x 85');
    // The second border: 9 strips of 3 1/2 in printed. 8 hold the 306 in only without joins; with straight joins 8 do.
    const strips = (lost: string) => second && borderStrips(second, U, mixed(lost), EIGHTH).strips;
    expect([strips('1/2'), strips('3 1/2')]).toEqual([8, 9]);
  });

  it("McCall's Quilting, Jan/Feb 2020, p. 62 (magazine): pieced borders of 2 in and 1 in units round an 18 in centre", () => {
    const [first] = steps('18', [['1', 'butted']]);
    // Units of 2 in: 9 along each side, 10 along each end.
    expect(first?.sides.finished.length.toNumber()).toBe(9 * 2);
    expect(first?.ends.finished.length.toNumber()).toBe(10 * 2);
    const [second] = steps('20', [['2', 'corner squares']]);
    // Units of 1 in: 20 along each of four sides, with a square in every corner.
    expect(second && [second.sides, second.ends].map(({ finished }) => finished.length.toNumber())).toEqual([
      20, 20,
    ]);
    expect(second?.cornerSquares.count).toBe(4);
    expect(second && text(second.finished)).toBe('24 x 24');
  });

  it('Missouri Star blog, Borders (trade): 40 x 50 with 5 in borders is cut from 6 strips of 5 1/2, not from 3 1/4 yd', () => {
    const [step] = steps('40 x 50', [['5', 'butted']]);
    const strips = step && borderStrips(step, U, mixed('1/2'), EIGHTH);
    expect(strips).toMatchObject({ pieced: true, strips: 6 });
    // 33 in. The page adds one side and one end, 112 in = 3 1/4 yd: more than enough, for lengthwise borders.
    expect(strips && written(strips.length)).toBe('33');
  });

  it('Sherri Quilts A Lot, Mathing the yardage II (individual): 20 blocks of 9 in, sashing 3 5/8 all round', () => {
    const sashed = sashing(
      { across: 4, down: 5, block: size('9'), sash: mixed('3 5/8'), outer: true, cornerstones: true },
      Q,
    );
    // Published 55 3/8 x 66 3/4: the length is right, the width is 54 1/8.
    expect(text(sashed.finished)).toBe('54 1/8 x 66 3/4');
  });
});
