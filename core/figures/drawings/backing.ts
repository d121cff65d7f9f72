/** The panels of a backing, with the quilt lying on them. */
import type { Drawing, DrawnBox } from '../../geometry/drawing.ts';
import type { Backing, PanelPlan } from '../../trade/backing.ts';
import { counted } from '../sentence.ts';
import type { Show } from '../show.ts';

/** Panels stand side by side for vertical seams, and lie above each other for horizontal ones, as joined. */
export function drawBacking({ size }: Backing, plan: PanelPlan, overhang: number, show: Show): Drawing {
  const vertical = plan.seams === 'vertical';
  const [reach, panel] = [plan.joined.valueOf(), plan.panelLength.toNumber()];
  const [width, height] = vertical ? [reach, panel] : [panel, reach];
  const each = reach / plan.pieces;
  const panels = Array.from({ length: plan.pieces }, (_, index): DrawnBox => {
    const at = vertical ? { x: index * each, y: 0 } : { x: 0, y: index * each };
    const box = vertical ? { width: each, height: panel } : { width: panel, height: each };
    return { ...at, ...box, role: 'cloth', label: show.length(plan.panelLength) };
  });
  const [backWidth, backHeight] = [size.width.toNumber(), size.length.toNumber()];
  const [left, top] = [(width - backWidth) / 2, (height - backHeight) / 2];
  const quilt: DrawnBox = {
    x: left + overhang,
    y: top + overhang,
    width: backWidth - 2 * overhang,
    height: backHeight - 2 * overhang,
    role: 'outline',
    label: 'quilt',
  };
  const seams = plan.pieces - 1;
  return {
    width,
    height,
    boxes: [...panels, quilt],
    lines: Array.from({ length: seams }, (_, index) => {
      const at = (index + 1) * each;
      return vertical
        ? { from: { x: at, y: 0 }, to: { x: at, y: height }, role: 'seam' as const }
        : { from: { x: 0, y: at }, to: { x: width, y: at }, role: 'seam' as const };
    }),
    labels: [],
    title: `Backing of ${counted(plan.pieces, 'panel')}`,
    description: `${counted(plan.pieces, 'panel')} of ${show.length(plan.panelLength)}${seams > 0 ? `, joined by ${counted(seams, `${plan.seams} seam`)}` : ' in one piece'}, reach ${show.size({ width: size.width, length: size.length })} and more; the quilt lies in the middle.`,
  };
}
