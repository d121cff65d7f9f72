import type { Drawing, Point } from '../../geometry/drawing.ts';

/** Taller than this in proportion to its width, a drawing lies on its side. */
const TALL = 1.25;

/** A quarter turn to the left where the drawing is tall and may be turned, as a long fabric lies on a table; never mirrored. */
export function asWide(drawing: Drawing): Drawing {
  const { width, height, boxes, lines, labels, mayTurn } = drawing;
  if (!mayTurn || height <= TALL * width) return drawing;
  const turn = ({ x, y }: Point): Point => ({ x: y, y: width - x });
  return {
    ...drawing,
    width: height,
    height: width,
    boxes: boxes.map((box) => ({
      ...box,
      // What was the upper right corner is the upper left one now.
      ...turn({ x: box.x + box.width, y: box.y }),
      width: box.height,
      height: box.width,
    })),
    lines: lines.map((line) => ({ ...line, from: turn(line.from), to: turn(line.to) })),
    labels: labels.map((label) => ({ ...label, ...turn(label) })),
  };
}
