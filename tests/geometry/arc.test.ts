import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcLength, arcRadius } from '../../core/geometry/arc.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { inches, show } from '../quantity/inches.ts';

const chords = fc.integer({ min: 1, max: 30 * 16 }).map((n) => rational(n, 16));

/** A circle with the two ends of the chord on it, walked in small straight steps on the side that bulges. */
function byWalking(chord: number, depth: number, steps = 200_000): number {
  const radius = (chord * chord) / 8 / depth + depth / 2;
  const centre = depth - radius; // above or below the chord, which lies on y = 0
  const from = Math.atan2(-centre, chord / 2);
  const to = Math.PI - from;
  const step = (to - from) / steps;
  let length = 0;
  let [x, y] = [radius * Math.cos(from), radius * Math.sin(from)];
  for (let i = 1; i <= steps; i++) {
    const [u, v] = [radius * Math.cos(from + i * step), radius * Math.sin(from + i * step)];
    length += Math.hypot(u - x, v - y);
    [x, y] = [u, v];
  }
  return length;
}

describe('an arc over a chord', () => {
  it.each([
    ['9 3/7', '2'],
    ['8', '1/2'],
    ['8', '4'],
    ['6', '3 1/2'],
    ['6', '11'],
    ['1/4', '30'],
  ])('of chord %s and depth %s is as long as walking along it', (chord, depth) => {
    const walked = byWalking(inches(chord).valueOf(), inches(depth).valueOf());
    expect(arcLength(inches(chord), inches(depth)).toNumber()).toBeCloseTo(walked, 6);
  });

  it('up to the half circle is twice the radius times the arc sine of chord over diameter', () => {
    fc.assert(
      fc.property(chords, fc.integer({ min: 1, max: 100 }), (chord, percent) => {
        const depth = chord.mul(percent).div(200n);
        const [c, r] = [chord.valueOf(), arcRadius(chord, depth).valueOf()];
        // Near the half circle the arc sine is blunt, so the float reference is good to its root only.
        const reference = 2 * r * Math.asin(Math.min(1, c / 2 / r));
        expect(Math.abs(arcLength(chord, depth).toNumber() / reference - 1)).toBeLessThan(1e-7);
      }),
    );
  });

  it('and the arc on the other side of the chord make the whole circle', () => {
    fc.assert(
      fc.property(chords, chords, (chord, depth) => {
        const radius = arcRadius(chord, depth);
        const other = radius.mul(2n).sub(depth);
        if (other.compare(0) <= 0) return;
        const around = arcLength(chord, depth).add(arcLength(chord, other));
        expect(around.toNumber()).toBeCloseTo(2 * Math.PI * radius.valueOf(), 9);
      }),
    );
  });

  it('is longer than its chord and grows with its depth', () => {
    fc.assert(
      fc.property(chords, chords, fc.integer({ min: 1, max: 64 }), (chord, depth, more) => {
        const arc = arcLength(chord, depth);
        expect(arc.compare(Real.of(chord))).toBe(1);
        expect(arcLength(chord, depth.add(rational(more, 16))).compare(arc)).toBe(1);
      }),
    );
  });

  it('of half a circle is π times the radius', () => {
    expect(show(arcRadius(inches('8'), inches('4')))).toBe('4');
    expect(arcLength(inches('8'), inches('4')).enclose(128)).toEqual(Real.PI.mul(Real.of(4)).enclose(128));
  });

  it('needs a chord and a depth', () => {
    expect(() => arcLength(inches('0'), inches('1'))).toThrow('chord');
    expect(() => arcLength(inches('1'), inches('0'))).toThrow('depth');
  });
});
