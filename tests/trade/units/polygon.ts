/**
 * The other way to every constant of the trade: draw the finished patch, move each side outwards by the seam
 * allowance, and measure. Plain floating-point geometry, written without the code under test.
 */
export type Point = readonly [number, number];

/** The convex polygon (corners counter-clockwise) with every side moved outwards by q; inwards for q < 0. */
export function offset(corners: readonly Point[], q: number): Point[] {
  const lines = corners.map((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    // The outward normal of a counter-clockwise polygon, and how far the line lies along it.
    const normal: Point = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
    return { normal, distance: normal[0] * a[0] + normal[1] * a[1] + q };
  });
  return lines.map((line, i) => {
    const before = lines[(i + lines.length - 1) % lines.length] as typeof line;
    const determinant = before.normal[0] * line.normal[1] - before.normal[1] * line.normal[0];
    return [
      (before.distance * line.normal[1] - line.distance * before.normal[1]) / determinant,
      (before.normal[0] * line.distance - line.normal[0] * before.distance) / determinant,
    ];
  });
}

/** The length of side i, from corner i to the next. */
export function side(corners: readonly Point[], i: number): number {
  const [a, b] = [corners[i] as Point, corners[(i + 1) % corners.length] as Point];
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

export function area(corners: readonly Point[]): number {
  let twice = 0;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    twice += a[0] * b[1] - b[0] * a[1];
  });
  return twice / 2;
}

/** Width and height of the upright rectangle round a polygon. */
export function extent(corners: readonly Point[]): { width: number; height: number } {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

/** Legs a (along x) and b (along y). Side 0 is a, side 1 the long side, side 2 is b. */
export function rightTriangle(a: number, b: number): Point[] {
  return [
    [0, 0],
    [a, 0],
    [0, b],
  ];
}

/** Lies on a side. */
export function regular(sides: number, length: number): Point[] {
  const radius = length / (2 * Math.sin(Math.PI / sides));
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides - Math.PI / 2 - Math.PI / sides;
    return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
  });
}
