/** Published sizes for 60° triangles and hexagons. */
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real, roundUp } from '../../core/quantity/real.ts';
import { hexagons } from '../../core/trade/units/hexagons.ts';
import { ROOT_3 } from '../../core/trade/units/seams.ts';
import { sixtyDegreeTriangles } from '../../core/trade/units/sixtyDegreeTriangles.ts';
import { inches, mixed, size, USUAL, written } from '../trade/units/mixed.ts';

const BIBLE = "The Quilter's Bible, Linda Clements (book)";

function strip(kind: typeof hexagons, finished: { width: Real; length: Real }): Real {
  return kind.methods[0].cuts(finished, USUAL)[0]?.[kind === hexagons ? 'length' : 'width'] ?? Real.of(0);
}

describe('published 60° work', () => {
  it.each(['1', '2 1/2', '3', '6'])(`${BIBLE}: the strip for a triangle is its height %s + 3/4`, (height) => {
    expect(strip(sixtyDegreeTriangles, size(height)).exact?.equals(mixed(height).add(mixed('3/4')))).toBe(
      true,
    );
  });

  it(`${BIBLE}: the strip for a hexagon is its height from flat to flat + 1/2`, () => {
    const flatToFlat = hexagons.finished(size('3')).length;
    expect(strip(hexagons, size('3')).sub(flatToFlat).toNumber()).toBeCloseTo(0.5, 12);
  });

  it.each([
    // 1 3/4 is 0.05 in less than √3 · 3/4 + 1/2; the page bastes over paper, where the seam may be scant.
    ['1 3/4', -1, 'crabbytabby.blogspot.com (individual)'],
    ['1 7/8', 1, 'purlbuttonsblog.blogspot.com (individual)'],
    ['2', 1, 'beadlust.blogspot.com (individual)'],
  ])('strips of %s for a 3/4 in hexagon compare %i with the exact 1.799 (%s)', (published, comparison) => {
    const exact = strip(hexagons, size('3/4'));
    expect(exact.toNumber()).toBeCloseTo(1.799, 3);
    expect(inches(published).compare(exact)).toBe(comparison);
    expect(written(roundUp(exact, rational(1, 16)))).toBe('1 13/16');
  });

  it('splendidminta.blogspot.com (individual): about 600 hexagons 3 in from flat to flat cover 60 x 80', () => {
    const side = inches('3').div(ROOT_3);
    const count = (60 * 80) / hexagons.area({ width: side, length: side }).toNumber();
    // By area 616; the page rounds to 600.
    expect(count).toBeCloseTo(615.8, 1);
  });

  it('softsolder.com, Quilting polygon template (individual): a hexagon 2 3/4 from flat to flat has sides of 1.5877', () => {
    const side = inches('2 3/4').div(ROOT_3);
    expect(side.toNumber()).toBeCloseTo(1.5877, 4);
    expect(hexagons.finished({ width: side, length: side }).length.toNumber()).toBeCloseTo(2.75, 12);
  });
});
