import { describe, expect, it } from 'vitest';
import { sineOfHalfTurns, tangentOfHalfTurns } from '../../core/geometry/angle.ts';
import { regularPolygonBox } from '../../core/geometry/polygon.ts';
import { rational } from '../../core/quantity/rational.ts';
import { inches, show } from '../quantity/inches.ts';

/** Width and height of the corners of a polygon that lies on a side, set out by turtle. */
function setOut(sides: number, side: number): [number, number] {
  let [x, y] = [0, 0];
  const xs = [x];
  const ys = [y];
  for (let i = 1; i < sides; i++) {
    const heading = ((i - 1) * 2 * Math.PI) / sides;
    x += side * Math.cos(heading);
    y += side * Math.sin(heading);
    xs.push(x);
    ys.push(y);
  }
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}

describe('a regular polygon lying on a side', () => {
  it('is as wide and as high as its corners reach, for 3 to 40 sides', () => {
    for (let sides = 3; sides <= 40; sides++) {
      const box = regularPolygonBox(sides, inches('10'));
      const [width, height] = setOut(sides, 10);
      expect(box.width.toNumber(), `${sides} sides`).toBeCloseTo(width, 9);
      expect(box.length.toNumber(), `${sides} sides`).toBeCloseTo(height, 9);
    }
  });

  it('has exact sizes where they are rational: the triangle, the square, the hexagon across corners', () => {
    expect(sizes(3).width).toBe('10');
    expect(sizes(4)).toEqual({ width: '10', length: '10' });
    expect(sizes(6).width).toBe('20');
  });
});

describe('sine and tangent', () => {
  it('agree with floating point for angles up to a quarter turn', () => {
    for (let n = 1; n <= 49; n++) {
      const angle = rational(n, 100);
      expect(sineOfHalfTurns(angle).toNumber()).toBeCloseTo(Math.sin((n * Math.PI) / 100), 14);
      expect(tangentOfHalfTurns(angle).toNumber() / Math.tan((n * Math.PI) / 100)).toBeCloseTo(1, 13);
    }
  });

  it('have bounds that nest', () => {
    for (let n = 3; n <= 40; n++) {
      const sine = sineOfHalfTurns(rational(1, n));
      const [coarse, fine] = [sine.enclose(64), sine.enclose(192)];
      expect(coarse.lo << 128n <= fine.lo && coarse.hi << 128n >= fine.hi).toBe(true);
    }
  });

  it('satisfy sin² x + cos² x = 1', () => {
    for (let n = 3; n <= 40; n++) {
      const [x, y] = [rational(1, n), rational(n - 2, 2 * n)];
      const [sine, cosine] = [sineOfHalfTurns(x), sineOfHalfTurns(y)];
      const { lo, hi } = sine.mul(sine).add(cosine.mul(cosine)).enclose(128);
      expect(lo <= 1n << 128n && hi >= 1n << 128n && hi - lo < 32n).toBe(true);
    }
  });

  it('are asked for acute angles only', () => {
    expect(() => sineOfHalfTurns(rational(0))).toThrow('acute');
    expect(() => sineOfHalfTurns(rational(2, 3))).toThrow('acute');
  });
});

function sizes(sides: number): { width: string; length: string } {
  const { width, length } = regularPolygonBox(sides, inches('10'));
  const exact = (x: typeof width) => (x.exact ? show(x.exact) : 'irrational');
  return { width: exact(width), length: exact(length) };
}
