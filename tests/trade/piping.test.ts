import { describe, expect, it } from 'vitest';
import { pipingStrip } from '../../core/trade/piping.ts';
import { inches, show } from '../quantity/inches.ts';

describe('a piping strip', () => {
  it('goes once around the cord and leaves a seam allowance on both sides, rounded up', () => {
    const piping = pipingStrip(inches('1/4'), inches('1/4'), inches('1/8'));
    expect(piping.exact.toNumber()).toBeCloseTo(0.5 + Math.PI / 4, 12);
    expect(show(piping.strip)).toBe('1 3/8');
  });

  it('is never narrower than it must be, nor wider by a step', () => {
    for (const cord of ['1/16', '5/32', '3/16', '3/8', '1/2', '1'])
      for (const step of ['1/16', '1/8', '1/4', '1/2']) {
        const { exact, strip } = pipingStrip(inches(cord), inches('1/4'), inches(step));
        const excess = strip.valueOf() - exact.toNumber();
        expect(excess >= 0 && excess < inches(step).valueOf()).toBe(true);
      }
  });

  it('needs a cord, a step and no negative seam', () => {
    const some = inches('1/4');
    expect(() => pipingStrip(inches('0'), some, some)).toThrow('more than nothing');
    expect(() => pipingStrip(some, some, inches('0'))).toThrow('more than nothing');
    expect(() => pipingStrip(some, inches('-1/4'), some)).toThrow('seam allowance');
  });
});
