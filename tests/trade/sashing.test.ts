import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { type SashingSpec, type SashPiece, sashing } from '../../core/trade/sashing.ts';
import { size } from './units/mixed.ts';

const Q = rational(1, 4);
const eighths = (min: number, max: number) => fc.integer({ min, max }).map((n) => rational(n, 8));
const specs: fc.Arbitrary<SashingSpec> = fc.record({
  across: fc.integer({ min: 1, max: 9 }),
  down: fc.integer({ min: 1, max: 9 }),
  block: fc.record({ width: eighths(8, 160).map(Real.of), length: eighths(8, 160).map(Real.of) }),
  sash: eighths(4, 40),
  outer: fc.boolean(),
  cornerstones: fc.boolean(),
});

function areaOf({ count, finished }: SashPiece): number {
  return count * finished.width.toNumber() * finished.length.toNumber();
}

describe('sashing', () => {
  it('fills the top together with the blocks', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const { blocks, finished, upright, lying, cornerstones } = sashing(spec, Q);
        const cloth =
          blocks * spec.block.width.toNumber() * spec.block.length.toNumber() +
          areaOf(upright) +
          areaOf(lying) +
          areaOf(cornerstones);
        expect(cloth).toBeCloseTo(finished.width.toNumber() * finished.length.toNumber(), 6);
      }),
    );
  });

  it('is cut one seam allowance larger on every side', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const set = sashing(spec, Q);
        for (const { finished, cut } of [set.upright, set.lying, set.cornerstones]) {
          expect(cut.width.sub(finished.width).exact?.valueOf()).toBe(0.5);
          expect(cut.length.sub(finished.length).exact?.valueOf()).toBe(0.5);
        }
      }),
    );
  });

  it('finishes the same with and without cornerstones', () => {
    fc.assert(
      fc.property(specs, (spec) => {
        const [a, b] = [true, false].map((cornerstones) => sashing({ ...spec, cornerstones }, Q).finished);
        expect(a?.width.exact?.valueOf()).toBe(b?.width.exact?.valueOf());
        expect(a?.length.exact?.valueOf()).toBe(b?.length.exact?.valueOf());
      }),
    );
  });

  it('gives the pieces of a three by four set all around', () => {
    const set = sashing(
      { across: 3, down: 4, block: size('12'), sash: rational(2), outer: true, cornerstones: true },
      Q,
    );
    expect([set.upright, set.lying, set.cornerstones].map(({ count }) => count)).toEqual([16, 15, 20]);
    expect([set.finished.width, set.finished.length].map((x) => x.toNumber())).toEqual([44, 58]);
  });

  it('has none for a single block without sashing around it', () => {
    const set = sashing(
      { across: 1, down: 1, block: size('12'), sash: rational(2), outer: false, cornerstones: true },
      Q,
    );
    expect([set.upright, set.lying, set.cornerstones].map(({ count }) => count)).toEqual([0, 0, 0]);
    expect(set.finished.width.toNumber()).toBe(12);
  });
});
