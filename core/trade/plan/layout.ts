/** A cutting plan as plain geometry, for whoever draws it: rectangles with labels, in inches. */
import { type Rational, ZERO } from '../../quantity/rational.ts';
import type { CuttingPlan } from './cuttingPlan.ts';
import type { StripRun } from './problem.ts';
import type { PlannedStrip } from './strips.ts';

/** x runs across the fabric, y along the selvage, both from the corner where cutting begins. */
export interface LayoutRectangle {
  readonly kind: 'piece' | 'trim' | 'left over' | 'squaring';
  readonly x: Rational;
  readonly y: Rational;
  readonly width: Rational;
  readonly length: Rational;
  /** The id of a piece; empty for what is not used. */
  readonly label: string;
}

export interface Layout {
  /** Pieces of cloth that are cut like this: 1 for fabric by the yard. */
  readonly count: number;
  readonly width: Rational;
  readonly length: Rational;
  readonly rectangles: readonly LayoutRectangle[];
}

/** Every piece of the best plan in its place, and what is left around them; together they fill the cloth. */
export function cuttingLayouts(plan: CuttingPlan): Layout[] {
  if (plan.kind === 'roll') {
    const { length, strips } = plan.best;
    const used = strips.reduce((sum, { width, count }) => sum.add(width.mul(BigInt(count), 1n)), ZERO);
    const squaring = length.sub(used);
    const lost = box('squaring', ZERO, ZERO, plan.usableWidth, squaring);
    return [
      {
        count: 1,
        width: plan.usableWidth,
        length,
        rectangles: visible([lost, ...stripBoxes(strips, 'across', plan.usableWidth, squaring)]),
      },
    ];
  }
  const { width, length } = plan;
  return plan.best.sheets.map(({ count, strips, cut }) => {
    const [capacity, room] = strips === 'across' ? [width, length] : [length, width];
    const used = cut.reduce((sum, strip) => sum.add(strip.width.mul(BigInt(strip.count), 1n)), ZERO);
    const rest = turned(box('left over', ZERO, used, capacity, room.sub(used)), strips);
    return {
      count,
      width,
      length,
      rectangles: visible([...stripBoxes(cut, strips, capacity, ZERO), rest]),
    };
  });
}

/** The strips one after the other from `start`; a strip that runs along the selvage is turned. */
function stripBoxes(
  strips: readonly PlannedStrip[],
  run: StripRun,
  capacity: Rational,
  start: Rational,
): LayoutRectangle[] {
  const boxes: LayoutRectangle[] = [];
  let y = start;
  for (const { count, width, cuts } of strips)
    for (let i = 0; i < count; i++) {
      let x = ZERO;
      for (const cut of cuts)
        for (let n = 0; n < cut.count; n++) {
          boxes.push(box('piece', x, y, cut.span, cut.width, cut.piece.id));
          boxes.push(box('trim', x, y.add(cut.width), cut.span, width.sub(cut.width)));
          x = x.add(cut.span);
        }
      boxes.push(box('left over', x, y, capacity.sub(x), width));
      y = y.add(width);
    }
  return boxes.map((rectangle) => turned(rectangle, run));
}

function box(
  kind: LayoutRectangle['kind'],
  x: Rational,
  y: Rational,
  width: Rational,
  length: Rational,
  label = '',
): LayoutRectangle {
  return { kind, x, y, width, length, label };
}

function turned(rectangle: LayoutRectangle, run: StripRun): LayoutRectangle {
  if (run === 'across') return rectangle;
  const { x, y, width, length } = rectangle;
  return { ...rectangle, x: y, y: x, width: length, length: width };
}

function visible(rectangles: readonly LayoutRectangle[]): LayoutRectangle[] {
  return rectangles.filter(({ width, length }) => width.n > 0n && length.n > 0n);
}
