/** Plane polygons in floating point, for simulating cloth in tests; nothing here is used by core. */

export type Point = readonly [number, number];
export type Polygon = readonly Point[];

/** The half plane a·x + b·y ≤ c. */
export type HalfPlane = readonly [a: number, b: number, c: number];

/** The part of a convex polygon in all half planes (Sutherland and Hodgman's method). */
export function clip(polygon: Polygon, ...halfPlanes: readonly HalfPlane[]): Polygon {
  return halfPlanes.reduce<Polygon>((current, [a, b, c]) => {
    const beyond = ([x, y]: Point) => a * x + b * y - c;
    return current.flatMap((point, i) => {
      const next = current[(i + 1) % current.length] ?? point;
      const [here, there] = [beyond(point), beyond(next)];
      const kept: Point[] = here <= 0 ? [point] : [];
      if (here < 0 !== there < 0 && here !== there) {
        const t = here / (here - there);
        kept.push([point[0] + t * (next[0] - point[0]), point[1] + t * (next[1] - point[1])]);
      }
      return kept;
    });
  }, polygon);
}

/** The area, by the shoelace formula. */
export function area(polygon: Polygon): number {
  let twice = 0;
  polygon.forEach(([x, y], i) => {
    const [u, v] = polygon[(i + 1) % polygon.length] ?? [x, y];
    twice += x * v - u * y;
  });
  return Math.abs(twice) / 2;
}

export function translate(polygon: Polygon, dx: number, dy: number): Polygon {
  return polygon.map(([x, y]) => [x + dx, y + dy]);
}

/** Where the line y = x − offset enters and leaves a convex polygon, measured along it from x + y = 0. */
export function spanOnDiagonal(polygon: Polygon, offset: number): readonly [number, number] | undefined {
  const along: number[] = [];
  polygon.forEach(([x, y], i) => {
    const [u, v] = polygon[(i + 1) % polygon.length] ?? [x, y];
    const [here, there] = [x - y - offset, u - v - offset];
    if (here === there || here < 0 === there < 0) return;
    const t = here / (here - there);
    along.push((x + t * (u - x) + y + t * (v - y)) / Math.SQRT2);
  });
  return along.length === 0 ? undefined : [Math.min(...along), Math.max(...along)];
}
