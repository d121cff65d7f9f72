import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { type BorderPiece, type BorderSpec, borderStrips, borders } from '../../core/trade/borders.ts';
import { area as areaOfPart, clip } from '../geometry/clip.ts';
import { EIGHTH, mixed, size, written } from './units/mixed.ts';
import { offset, type Point, side } from './units/polygon.ts';

const Q = rational(1, 4);
const U = rational(40);
const eighths = (min: number, max: number) => fc.integer({ min, max }).map((n) => rational(n, 8));
const tops = fc.record({ width: eighths(80, 700).map(Real.of), length: eighths(80, 700).map(Real.of) });
const specs: fc.Arbitrary<BorderSpec> = fc.record({
  finished: eighths(4, 80),
  corners: fc.constantFrom('butted', 'mitred', 'corner squares'),
});

function areaOf({ count, finished }: BorderPiece): number {
  return count * finished.width.toNumber() * finished.length.toNumber();
}

/**
 * How much cloth of a strip that begins at x = start is lacking within the raw edges of the quilt, x ≥ −q and y ≥ −q,
 * when the seam allowance of the mitre lies as it was sewn or is pressed back over the seam, where x and y are
 * exchanged.
 */
function lackingInQuilt(wanted: readonly Point[], start: number, q: number): number {
  const lacking = clip(wanted, [1, 0, start]);
  const folded = lacking.map(([x, y]): Point => [y, x]);
  const inQuilt = (part: readonly Point[]) => areaOfPart(clip(part, [-1, 0, q], [0, -1, q]));
  return inQuilt(lacking) + inQuilt(folded);
}

describe('borders', () => {
  it('fill the ring between the top before and after them', () => {
    fc.assert(
      fc.property(tops, specs, (top, spec) => {
        const [step] = borders(top, [spec], Q);
        if (!step) throw new Error('one border gives one step');
        const ring =
          step.finished.width.toNumber() * step.finished.length.toNumber() -
          top.width.toNumber() * top.length.toNumber();
        // The finished piece of a mitred border loses a triangle at both ends.
        const mitres = spec.corners === 'mitred' ? 4 * spec.finished.valueOf() ** 2 : 0;
        const cloth = areaOf(step.sides) + areaOf(step.ends) + areaOf(step.cornerSquares) - mitres;
        expect(cloth).toBeCloseTo(ring, 6);
      }),
    );
  });

  it('are cut one seam allowance larger on every side, and so is the top after each', () => {
    fc.assert(
      fc.property(tops, fc.array(specs, { minLength: 1, maxLength: 4 }), (top, all) => {
        for (const step of borders(top, all, Q)) {
          for (const { finished, cut } of [step.sides, step.ends, step.cornerSquares])
            expect(cut.length.sub(finished.length).exact?.valueOf()).toBe(0.5);
          expect(step.unfinished.width.sub(step.finished.width).exact?.valueOf()).toBe(0.5);
        }
      }),
    );
  });

  it('grow the top by twice the sum of their widths', () => {
    fc.assert(
      fc.property(tops, fc.array(specs, { minLength: 1, maxLength: 4 }), (top, all) => {
        const last = borders(top, all, Q).at(-1);
        const widths = all.reduce((sum, { finished }) => sum + finished.valueOf(), 0);
        expect(last?.finished.width.toNumber()).toBeCloseTo(top.width.toNumber() + 2 * widths, 9);
      }),
    );
  });

  it('with mitres reach to the tip of the seam allowance when the reserve is added', () => {
    const [step] = borders(size('20 x 30'), [{ finished: mixed('4'), corners: 'mitred' }], Q);
    // The finished trapezoid of the long side: inner edge 30, outer edge 38, 4 wide.
    const trapezoid: Point[] = [
      [0, 0],
      [38, 0],
      [34, 4],
      [4, 4],
    ];
    expect(step?.sides.cut.length.toNumber()).toBe(38.5);
    expect(step?.sides.cut.length.add(step.mitreReserve).toNumber()).toBeCloseTo(
      side(offset(trapezoid, 0.25), 0),
      9,
    );
  });

  it('with mitres are just long enough without the reserve: only what lies beyond the raw edges is missing', () => {
    fc.assert(
      fc.property(eighths(4, 80), eighths(1, 6), (width, q) => {
        const [step] = borders(size('20 x 30'), [{ finished: width, corners: 'mitred' }], q);
        const [w, seam] = [width.valueOf(), q.valueOf()];
        const outer = 30 + 2 * w;
        // One side of the quilt, its outer corner at the origin; the mitre runs along x = y.
        const wanted = offset(
          [
            [0, 0],
            [outer, 0],
            [outer - w, w],
            [w, w],
          ],
          seam,
        );
        const length = step?.sides.cut.length.toNumber() ?? 0;
        expect(lackingInQuilt(wanted, (outer - length) / 2, seam)).toBeCloseTo(0, 9);
        expect(lackingInQuilt(wanted, (outer - length) / 2 + 1 / 16, seam)).toBeGreaterThan(0.001);
      }),
    );
  });

  it('are cut piece by piece from strips while they fit into the usable width', () => {
    const [step] = borders(size('18'), [{ finished: mixed('2'), corners: 'butted' }], Q);
    // Two pieces of 18 1/2 in fill one strip, two of 22 1/2 in take one each.
    expect(step && borderStrips(step, U, rational(5, 2), EIGHTH)).toMatchObject({ pieced: false, strips: 3 });
  });

  it('are pieced from strips joined end to end once one is longer than the usable width', () => {
    const [step] = borders(size('64 x 75'), [{ finished: mixed('2'), corners: 'butted' }], Q);
    const strips = step && borderStrips(step, U, rational(5, 2), EIGHTH);
    // 2 · 75 1/2 + 2 · 68 1/2 = 288; 7 strips give 280 less 6 joins, 8 give 320 − 7 · 2 1/2 = 302 1/2.
    expect(strips).toMatchObject({ pieced: true, strips: 8 });
    expect(strips && written(strips.length)).toBe('20');
  });

  it('need no fewer strips for a larger top', () => {
    fc.assert(
      fc.property(tops, specs, eighths(0, 80), (top, spec, more) => {
        const strips = (by: Real) => {
          const [step] = borders({ width: top.width.add(by), length: top.length.add(by) }, [spec], Q);
          return step ? borderStrips(step, U, rational(1, 2), EIGHTH) : undefined;
        };
        const [small, large] = [strips(Real.of(0)), strips(Real.of(more))];
        // Piecing joins the rests of strips, so a top that just needs piecing may take fewer than one that does not.
        if (small?.pieced === large?.pieced)
          expect(large?.strips).toBeGreaterThanOrEqual(small?.strips ?? Number.NaN);
      }),
    );
  });
});
