/** The bias square after its first seam: a parallelogram of cloth with the lines that are drawn on it. */

import type { BiasTube } from '../../geometry/biasTube.ts';
import type { Drawing, DrawnLine, Point } from '../../geometry/drawing.ts';
import { counted } from '../sentence.ts';
import type { Show } from '../show.ts';

/**
 * Cut along its diagonal and joined on a straight-grain leg, a square of side s becomes a parallelogram s wide whose
 * upright sides are a = s − 2q long; its upper and lower edges run at 45°. The lines run parallel to them, w·√2
 * apart along the upright sides, as many as there are passes. What lies below the last one is cut away.
 */
export function drawBiasSquare(tube: BiasTube, show: Show): Drawing {
  const [side, upright, spacing] = [tube.side.valueOf(), tube.across.valueOf(), tube.spacing.toNumber()];
  // The left side hangs down from the corner; the right side stands one width higher.
  const left = (down: number): Point => ({ x: 0, y: side + down });
  const right = (down: number): Point => ({ x: side, y: down });
  const line = (from: Point, to: Point, role: DrawnLine['role']): DrawnLine => ({ from, to, role });
  const lines = [
    line(left(0), right(0), 'edge'),
    line(right(0), right(upright), 'edge'),
    line(right(upright), left(upright), 'edge'),
    line(left(upright), left(0), 'edge'),
    line({ x: 0, y: side }, { x: Math.min(side, upright), y: side }, 'seam'),
    ...Array.from({ length: tube.passes }, (_, index) => {
      const down = (index + 1) * spacing;
      return line(left(down), right(down), 'mark');
    }),
  ];
  const passes = counted(tube.passes, 'strip');
  return {
    width: side,
    height: side + upright,
    boxes: [],
    lines,
    labels: [
      { x: side / 2, y: side / 2 + spacing / 2, text: show.length(tube.width) },
      { x: side / 2, y: side / 2 + tube.passes * spacing + spacing / 4, text: 'cut away' },
    ],
    title: `A ${show.length(tube.side)} square for bias strips ${show.length(tube.width)} wide`,
    description: `The square, cut once diagonally and joined along a straight edge, is a slanted piece of cloth with ${tube.passes} lines ${show.length(tube.width)} apart, parallel to its bias edges. The lines mark ${passes}; what lies below the last line is cut away. Sewn into a tube it gives ${show.length(tube.length)}.`,
  };
}
