/** Curved edges and piping against published examples and a reference value; the source stands beside each row. */
import ellipe from '@stdlib/math-base-special-ellipe';
import { describe, expect, it } from 'vitest';
import { type Edge, isCurved, perimeter } from '../../core/geometry/edges.ts';
import { ellipsePerimeter } from '../../core/geometry/ellipse.ts';
import { Real, roundUp } from '../../core/quantity/real.ts';
import { bindingNeed, grainSuits } from '../../core/trade/binding.ts';
import { pipingStrip } from '../../core/trade/piping.ts';
import { inches, real, show } from '../quantity/inches.ts';

const circle = (diameter: string): Edge => ({ shape: 'circle', diameter: inches(diameter) });

describe('published circles', () => {
  it.each([
    ["Oakville Quilters' Guild, Binding: 28 × 3.1416 = 87.96", '28', 87.96, 0.01],
    // Rounded by the source with π = 3.14.
    ['The AI Quilter, Quilting circles: 40 in around is 125.6', '40', 125.6, 0.07],
    ['Tutorial copy at ccngna.com: 12 in around is 37.68', '12', 37.68, 0.02],
    ['Quilting Board, thread 166378: a tree skirt of 50 in is 157 around', '50', 157, 0.1],
  ] as const)('%s', (_, diameter, published, tolerance) => {
    const around = perimeter(circle(diameter));
    expect(Math.abs(around.toNumber() - published)).toBeLessThan(tolerance);
    // Every one of these cuts π short, so the true edge is longer than published.
    expect(around.compare(Real.of(inches(String(published))))).toBe(1);
  });
});

describe('a published scalloped edge', () => {
  // Bessie Pearl Binding Co., How to measure bias binding for a scalloped quilt: 20 scallops of 12 in taped along
  // the curve, and 18 in more: 258 in, 7.17 yd.
  it('20 scallops of 12 in and 18 in to join are 258 in, 7.17 yd', () => {
    const edge: Edge = { shape: 'measured', around: inches('12').mul(20) };
    const { need } = bindingNeed(perimeter(edge), inches('18'));
    expect(need.exact && show(need.exact)).toBe('258');
    expect(need.toNumber() / 36).toBeCloseTo(7.17, 2);
    expect(show(roundUp(need, inches('36')).div(36))).toBe('8');
  });

  // The same page; American Patchwork & Quilting, Save fabric with this magic way to make bias binding; Hamel's,
  // Continuous bias binding: scallops and curves need bias, straight edges do not.
  it('needs bias, and a straight edge does not', () => {
    const scalloped: Edge = {
      shape: 'scalloped rectangle',
      width: inches('60'),
      length: inches('80'),
      scallops: 28,
      depth: inches('2'),
    };
    expect(isCurved(scalloped)).toBe(true);
    expect(grainSuits('straight', scalloped)).toBe(false);
    const square: Edge = { shape: 'rectangle', width: inches('60'), length: inches('60') };
    expect(grainSuits('straight', square)).toBe(true);
  });
});

describe('the ellipse', () => {
  // scipy.special.ellipe reference page: half axes 3.5 and 2.1, circumference 17.868899204378693.
  it('of half axes 3.5 and 2.1 is 17.868899204378693 around', () => {
    expect(ellipsePerimeter(inches('7'), inches('4.2')).toNumber()).toBeCloseTo(17.868899204378693, 13);
  });

  // No published oval of the trade was found. Reckoned outside this project with mpmath as 4a·E(m), and compared
  // here with @stdlib/math-base-special-ellipe as well.
  it.each([
    ['18', '12', 47.5963],
    ['36', '24', 95.1926],
    ['60', '36', 153.162],
    ['72', '18', 154.4116],
    ['90', '60', 237.9816],
    ['70', '52', 192.6815],
  ] as const)('of %s by %s in is %d in around', (long, short, expected) => {
    const around = ellipsePerimeter(inches(long), inches(short)).toNumber();
    expect(around).toBeCloseTo(expected, 4);
    expect(around).toBeCloseTo(2 * Number(long) * ellipe(1 - (Number(short) / Number(long)) ** 2), 10);
  });
});

describe('published piping strips', () => {
  // Upholstery Resource, Making cording: 5/32 in cord, half-inch seams, 1 1/2 in (exactly 1.49).
  it('a 5/32 in cord with half-inch seams takes 1 1/2 in', () => {
    const piping = pipingStrip(inches('5/32'), inches('1/2'), inches('1/8'));
    expect(piping.exact.toNumber()).toBeCloseTo(1.49, 2);
    expect(show(piping.strip)).toBe('1 1/2');
  });

  it.each([
    // The source leaves 5/8 in seams.
    ['Instructables, fabric-covered welt cord: 5/32 in cord, 1 3/4 in', '5/32', '5/8', '1 3/4'],
    // The strip is wider than its quarter-inch seam asks for.
    ['Fun Stitchery, April 2011: 1/4 in cord, 1 1/2 in', '1/4', '1/4', '1 1/2'],
  ] as const)('%s', (_, cord, seam, published) => {
    const { exact, strip } = pipingStrip(inches(cord), inches(seam), inches('1/8'));
    expect(exact.compare(real(published))).toBe(-1);
    expect(strip.compare(inches(published))).not.toBe(1);
  });
});
