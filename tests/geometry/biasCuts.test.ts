import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { biasCuts, leastBiasCloth } from '../../core/geometry/biasCuts.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { inches, real } from '../quantity/inches.ts';
import { type Polygon, spanOnDiagonal } from './clip.ts';

const quarter = inches('1/4');

/**
 * The joined length of all strips of a cloth, by trial.
 *
 * Each cut is followed across the cloth. The strip between two cuts is the longest piece of the full width; its
 * ends run along a side of the cloth, so each end is tried upright and level, and slid inwards until both its
 * corners are cloth.
 */
function simulate(across: number, along: number, width: number, seam: number) {
  const cloth: Polygon = [
    [0, 0],
    [across, 0],
    [across, along],
    [0, along],
  ];
  const spacing = width * Math.SQRT2;
  const lost = 2 * seam * Math.SQRT2;
  const lengths: number[] = [];
  for (let k = -Math.ceil(along / spacing); k * spacing < across; k++) {
    const length = longestStrip(cloth, k * spacing, (k + 1) * spacing);
    if (length !== undefined && length > Math.max(width, lost)) lengths.push(length);
  }
  return { strips: lengths.length, length: sum(lengths) - Math.max(0, lengths.length - 1) * lost };
}

/** The length on the middle line of the longest strip between the cuts x − y = near and x − y = far. */
function longestStrip(cloth: Polygon, near: number, far: number): number | undefined {
  const cuts = [near, far].map((t) => ({ t: t / Math.SQRT2, span: spanOnDiagonal(cloth, t) }));
  const middle = (near + far) / 2 / Math.SQRT2;
  const starts: number[] = [];
  const ends: number[] = [];
  for (const slant of [1, -1]) {
    // A level or upright end meets the cut at distance t from the origin at p + slant·t along it.
    const least = Math.max(...cuts.map(({ t, span }) => (span ? span[0] - slant * t : Number.NaN)));
    const most = Math.min(...cuts.map(({ t, span }) => (span ? span[1] - slant * t : Number.NaN)));
    if (!(least <= most + 1e-9)) continue;
    starts.push(least + slant * middle);
    ends.push(most + slant * middle);
  }
  return starts.length === 0 ? undefined : Math.max(...ends) - Math.min(...starts);
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}

describe('strips cut singly at 45°', () => {
  it('are those that following every cut across the cloth finds', () => {
    for (const across of [9, 20, 22, 40, 42])
      for (const along of [4.5, 9, 18, 22, 27, 40, 45])
        for (const width of [1.25, 2, 2.25, 2.5, 3.5]) {
          const [u, f, w] = [across, along, width].map((x) => rational(x * 4, 4));
          if (!u || !f || !w) throw new Error('three lengths');
          const cuts = biasCuts(u, f, { width: w, allowance: quarter });
          const cloth = simulate(across, along, width, 0.25);
          const what = `${across} across, ${along} along, strip ${width}`;
          expect(cuts.strips.length, what).toBe(cloth.strips);
          expect(cuts.length.toNumber(), what).toBeCloseTo(cloth.length, 5);
        }
  });

  it('run the full height times √2 while they reach from edge to edge', () => {
    const cuts = biasCuts(inches('40'), inches('18'), { width: inches('2 1/4'), allowance: quarter });
    // 22 in are left beside the 18 in that the slant takes; a strip takes 3.18 in of them.
    expect(cuts.fullStrips).toBe(6);
    expect(cuts.fullLength.toNumber()).toBeCloseTo(18 * Math.SQRT2, 12);
    expect(cuts.strips.filter((strip) => strip.full).map((strip) => strip.length.toNumber())).toEqual(
      Array(6).fill(cuts.fullLength.toNumber()),
    );
  });

  it('lose two seam allowances times √2 at each join', () => {
    const cutting = { width: inches('2'), allowance: inches('1/2') };
    const cuts = biasCuts(inches('22'), inches('22'), cutting);
    const all = sum(cuts.strips.map((strip) => strip.length.toNumber()));
    expect(cuts.lostPerJoin.toNumber()).toBeCloseTo(Math.SQRT2, 12);
    expect(cuts.length.toNumber()).toBeCloseTo(all - (cuts.strips.length - 1) * Math.SQRT2, 9);
  });

  const cloths = fc.integer({ min: 8, max: 50 * 4 }).map((n) => rational(n, 4));
  const widths = fc.integer({ min: 4, max: 16 }).map((n) => rational(n, 4));

  it('are the same whichever way the cloth lies', () => {
    fc.assert(
      fc.property(cloths, cloths, widths, (across, along, width) => {
        const one = biasCuts(across, along, { width, allowance: quarter });
        const turned = biasCuts(along, across, { width, allowance: quarter });
        expect(one.length.toNumber()).toBeCloseTo(turned.length.toNumber(), 9);
      }),
    );
  });

  it('never give more than the area over the width, nor less from longer cloth', () => {
    fc.assert(
      fc.property(cloths, cloths, widths, fc.integer({ min: 1, max: 40 }), (across, along, width, more) => {
        const cutting = { width, allowance: quarter };
        const { length } = biasCuts(across, along, cutting);
        expect(length.compare(Real.of(across.mul(along).div(width)))).not.toBe(1);
        const longer = biasCuts(across, along.add(rational(more, 8)), cutting);
        expect(longer.length.compare(length)).not.toBe(-1);
      }),
      { numRuns: 60 },
    );
  });

  it('refuse cloth without size and strips without width', () => {
    const cutting = { width: inches('2'), allowance: quarter };
    expect(() => biasCuts(inches('0'), inches('9'), cutting)).toThrow('longer and wider than nothing');
    expect(() => biasCuts(inches('9'), inches('9'), { ...cutting, width: inches('0') })).toThrow('wider');
    expect(() => biasCuts(inches('9'), inches('9'), { ...cutting, allowance: inches('-1') })).toThrow('seam');
  });
});

describe('the least length of cloth for strips cut singly', () => {
  const cutting = { width: inches('2 1/4'), allowance: quarter };

  it('is enough, and one step less is not', () => {
    const needs = fc.integer({ min: 1, max: 700 }).map((n) => real(String(n)));
    const steps = fc.constantFrom('1', '1/4', '1/8').map(inches);
    fc.assert(
      fc.property(needs, fc.constantFrom('18', '40', '42'), steps, (need, across, step) => {
        const cuts = leastBiasCloth(need, inches(across), cutting, step);
        expect(cuts.along.div(step).d).toBe(1n);
        expect(cuts.length.compare(need)).not.toBe(-1);
        const less = cuts.along.sub(step);
        if (less.compare(0) > 0)
          expect(biasCuts(inches(across), less, cutting).length.compare(need)).toBe(-1);
      }),
      { numRuns: 40 },
    );
  });

  it('is one step for no need', () => {
    expect(leastBiasCloth(real('0'), inches('40'), cutting, inches('1/8')).along.equals(inches('1/8'))).toBe(
      true,
    );
  });

  it('does not exist when the cloth is too narrow for any strip', () => {
    expect(() => leastBiasCloth(real('50'), inches('1 1/2'), cutting, inches('1'))).toThrow('too narrow');
    expect(() => leastBiasCloth(real('50'), inches('40'), cutting, inches('0'))).toThrow('step');
  });
});
