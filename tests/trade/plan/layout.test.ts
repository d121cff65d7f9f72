import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../../core/quantity/rational.ts';
import { type CuttingPlan, cuttingPlan } from '../../../core/trade/plan/cuttingPlan.ts';
import {
  type CutPiece,
  FAT_QUARTER,
  type Fabric,
  precutStrips,
  roll,
} from '../../../core/trade/plan/fabric.ts';
import { cuttingLayouts, type Layout, type LayoutRectangle } from '../../../core/trade/plan/layout.ts';
import { eighths, inEighths, piecesOf } from './lists.ts';

const fabrics: fc.Arbitrary<Fabric> = fc.record({
  stock: fc.constantFrom(
    roll(rational(42)).stock,
    roll(rational(108)).stock,
    FAT_QUARTER,
    precutStrips(rational(5, 2), rational(42)),
  ),
  directional: fc.boolean(),
  squaring: fc.constantFrom(rational(0), rational(2)),
});

function overlap(a: LayoutRectangle, b: LayoutRectangle): boolean {
  const apart = (p: LayoutRectangle, q: LayoutRectangle) =>
    p.x.add(p.width).compare(q.x) <= 0 || p.y.add(p.length).compare(q.y) <= 0;
  return !apart(a, b) && !apart(b, a);
}

function area(layout: { width: LayoutRectangle['width']; length: LayoutRectangle['length'] }): number {
  return inEighths(layout.width) * inEighths(layout.length);
}

function piecesIn(layouts: readonly Layout[], id: string): LayoutRectangle[] {
  return layouts.flatMap(({ count, rectangles }) => {
    const found = rectangles.filter(({ label }) => label === id);
    return Array.from({ length: count }, () => found).flat();
  });
}

function fits(piece: CutPiece, rectangle: LayoutRectangle, directional: boolean): boolean {
  const upright = rectangle.width.equals(piece.width) && rectangle.length.equals(piece.length);
  const lying = rectangle.width.equals(piece.length) && rectangle.length.equals(piece.width);
  if (piece.lengthwise !== undefined) return piece.lengthwise ? upright : lying;
  return directional ? upright : upright || lying;
}

describe('the layout of a cutting plan', () => {
  it('holds every piece once, in a way it may lie, and fills the cloth without overlaps', () => {
    fc.assert(
      fc.property(piecesOf({ kinds: 4, count: 6, side: 150 }), fabrics, (pieces, fabric) => {
        const plan = cuttingPlan(fabric, pieces, 200_000);
        const layouts = cuttingLayouts(plan);
        for (const piece of pieces) {
          const placed = piecesIn(layouts, piece.id);
          const misfit = plan.misfits.some((one) => one.piece === piece);
          expect(placed).toHaveLength(misfit ? 0 : piece.count);
          for (const rectangle of placed) expect(fits(piece, rectangle, fabric.directional)).toBe(true);
        }
        for (const layout of layouts) {
          const { rectangles } = layout;
          expect(rectangles.reduce((sum, rectangle) => sum + area(rectangle), 0)).toBe(area(layout));
          rectangles.forEach((a, i) => {
            for (const b of rectangles.slice(i + 1)) expect(overlap(a, b)).toBe(false);
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  it('draws strips, trim, rests and the squared end where they are', () => {
    const pieces = [
      { id: 'block', width: eighths(52), length: eighths(52), count: 5 },
      { id: 'corner', width: eighths(20), length: eighths(20), count: 3 },
    ];
    const plan = cuttingPlan(roll(rational(40), { squaring: rational(1) }), pieces);
    const [layout] = cuttingLayouts(plan);
    expect(layout?.rectangles.map(described)).toEqual([
      'squaring  at 0, 0: 40 x 1',
      'piece block at 0, 1: 6.5 x 6.5',
      'piece block at 6.5, 1: 6.5 x 6.5',
      'piece block at 13, 1: 6.5 x 6.5',
      'piece block at 19.5, 1: 6.5 x 6.5',
      'piece block at 26, 1: 6.5 x 6.5',
      'piece corner at 32.5, 1: 2.5 x 2.5',
      'trim  at 32.5, 3.5: 2.5 x 4',
      'piece corner at 35, 1: 2.5 x 2.5',
      'trim  at 35, 3.5: 2.5 x 4',
      'piece corner at 37.5, 1: 2.5 x 2.5',
      'trim  at 37.5, 3.5: 2.5 x 4',
    ]);
    expect(saidLength(plan)).toBe(7.5);
  });
});

function described({ kind, label, x, y, width, length }: LayoutRectangle): string {
  const [left, top, wide, long] = [x, y, width, length].map((value) => value.valueOf());
  return `${kind} ${label} at ${left}, ${top}: ${wide} x ${long}`;
}

function saidLength(plan: CuttingPlan): number | undefined {
  return plan.kind === 'roll' ? plan.best.length.valueOf() : undefined;
}
