/** The table of all kinds of units: a new kind is one file and one line here. */
import { appliqueShapes } from './appliqueShapes.ts';
import { flyingGeese } from './flyingGeese.ts';
import { halfRectangleTriangles } from './halfRectangleTriangles.ts';
import { halfSquareTriangles } from './halfSquareTriangles.ts';
import { hexagons } from './hexagons.ts';
import { hourglasses, splitQuarterSquareTriangles } from './hourglasses.ts';
import { quarterCircles } from './quarterCircles.ts';
import { rectangles } from './rectangles.ts';
import { sixtyDegreeTriangles } from './sixtyDegreeTriangles.ts';
import { snowballCorners } from './snowballCorners.ts';
import { squareInASquare } from './squareInASquare.ts';
import { squares } from './squares.ts';
import { stripSets } from './stripSets.ts';
import { halfSquareTrianglePatches, quarterSquareTriangles } from './trianglePatches.ts';
import type { Method, UnitKind } from './unit.ts';

export const UNIT_KINDS: readonly UnitKind[] = [
  squares,
  rectangles,
  halfSquareTriangles,
  halfSquareTrianglePatches,
  quarterSquareTriangles,
  hourglasses,
  splitQuarterSquareTriangles,
  flyingGeese,
  squareInASquare,
  snowballCorners,
  stripSets,
  sixtyDegreeTriangles,
  hexagons,
  halfRectangleTriangles,
  quarterCircles,
  appliqueShapes,
];

const BY_NAME = new Map(
  UNIT_KINDS.flatMap((kind) => [kind.name, ...kind.otherNames].map((name) => [folded(name), kind] as const)),
);

/** The kind with a name or one of its other names; upper and lower case are the same. */
export function unitKind(name: string): UnitKind | undefined {
  return BY_NAME.get(folded(name));
}

/** Every name under which a kind is found, for messages about an unknown one. */
export const UNIT_NAMES: readonly string[] = UNIT_KINDS.flatMap((kind) => [kind.name, ...kind.otherNames]);

const TRIMMED = ', trimmed';

/**
 * A method by its name, with `, trimmed` behind it when the pieces are cut larger and the unit is trimmed down.
 * `undefined` when the kind has no such method, or when it is not one that is trimmed.
 */
export function unitMethod(kind: UnitKind, name: string): { method: Method; trimmed: boolean } | undefined {
  const wanted = folded(name);
  const trimmed = wanted.endsWith(TRIMMED);
  const bare = trimmed ? wanted.slice(0, -TRIMMED.length) : wanted;
  const method = kind.methods.find((candidate) => candidate.name === bare);
  return method && (method.trimmable || !trimmed) ? { method, trimmed } : undefined;
}

/** Every name that `unitMethod` knows for a kind. */
export function methodNames(kind: UnitKind): readonly string[] {
  return kind.methods.flatMap(({ name, trimmable }) => (trimmable ? [name, name + TRIMMED] : [name]));
}

function folded(name: string): string {
  return name.trim().replace(/\s+/g, ' ').toLowerCase();
}
