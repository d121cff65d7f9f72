/** A fabric as it is cut: by the yard, or one of several sheets that are cut alike. */
import type { Drawing, DrawnBox } from '../../geometry/drawing.ts';
import type { Layout, LayoutRectangle } from '../../trade/plan/layout.ts';
import { counted } from '../sentence.ts';
import type { Show } from '../show.ts';

/**
 * @param fabric how the fabric is called: `fabric A`
 * @param sheet what it is sold as: `fat quarter`; left out for fabric by the yard
 */
export function drawLayout(layout: Layout, fabric: string, sheet: string | undefined, show: Show): Drawing {
  const { width, length, rectangles, count } = layout;
  const pieces = new Map<string, { rectangle: LayoutRectangle; count: number }>();
  for (const rectangle of rectangles.filter(({ kind }) => kind === 'piece')) {
    const known = pieces.get(rectangle.label)?.count ?? 0;
    pieces.set(rectangle.label, { rectangle, count: known + 1 });
  }
  const list = [...pieces].map(
    ([label, { rectangle, count: cut }]) => `${cut} for ${label}, ${show.size(rectangle)}`,
  );
  const what = sheet === undefined ? fabric : `${counted(count, sheet)} of ${fabric}`;
  const each = sheet === undefined || count === 1 ? '' : ' each';
  return {
    width: width.valueOf(),
    height: length.valueOf(),
    boxes: rectangles.map(boxOf),
    lines: [],
    labels: [],
    mayTurn: true,
    title: `A cutting layout of ${what}`,
    description: `${show.length(width)} across and ${show.length(length)} along the selvage${each}: ${list.join('; ')}. Everything else is left over.`,
  };
}

function boxOf({ kind, x, y, width, length, label }: LayoutRectangle): DrawnBox {
  const place = { x: x.valueOf(), y: y.valueOf(), width: width.valueOf(), height: length.valueOf() };
  if (kind === 'piece') return { ...place, role: 'piece', label };
  return { ...place, role: 'leftover', ...(kind === 'squaring' && { label: 'straightened' }) };
}
