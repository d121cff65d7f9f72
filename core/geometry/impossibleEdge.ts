/** Which outlines cannot exist, and why. */
import { type Rational, rational } from '../quantity/rational.ts';
import type { Edge, Scalloped } from './edge.ts';
import { scallopChord } from './scallop.ts';

/** Beyond this a length is a slip of the pen (own choice): a hundred yards around, a hundred feet across. */
const LONGEST_AROUND = rational(3600);
const LONGEST_ACROSS = rational(1200);
const MOST_SIDES = 1000;

/** Why no such outline exists, in plain words without a full stop; `undefined` when it does. */
export function whyImpossible(edge: Edge): string | undefined {
  return absurdLength(edge) ?? impossibleShape(edge);
}

function absurdLength(edge: Edge): string | undefined {
  for (const [name, length] of lengthsOf(edge)) {
    if (length.compare(0) <= 0) return `the ${name} must be longer than nothing`;
    if (name === 'length around') {
      if (length.compare(LONGEST_AROUND) > 0) return `the ${name} is more than a hundred yards`;
    } else if (length.compare(LONGEST_ACROSS) > 0) return `the ${name} is more than a hundred feet`;
  }
  return undefined;
}

function impossibleShape(edge: Edge): string | undefined {
  switch (edge.shape) {
    case 'rounded rectangle': {
      const twice = edge.radius.mul(2n);
      if (edge.radius.compare(0) < 0) return 'the corner radius cannot be less than nothing';
      return twice.compare(edge.width) > 0 || twice.compare(edge.length) > 0
        ? 'the corner radius is more than half of the shorter side'
        : undefined;
    }
    case 'regular polygon':
      return wrongCount(edge.sides, 3, 'sides');
    case 'scalloped rectangle':
      return wrongCount(edge.scallops, 4, 'scallops') ?? wrongScallops(edge);
    default:
      return undefined;
  }
}

function wrongScallops(edge: Scalloped): string | undefined {
  const both = edge.depth.mul(2n);
  if (both.compare(edge.width) >= 0 || both.compare(edge.length) >= 0) {
    return 'the scallops are so deep that nothing is left between them';
  }
  return both.compare(scallopChord(edge)) > 0
    ? 'the scallops are deeper than half of their width, so neighbours would run into each other'
    : undefined;
}

function wrongCount(count: number, least: number, what: string): string | undefined {
  if (!Number.isInteger(count)) return `the number of ${what} must be whole`;
  if (count < least) return `there must be at least ${least} ${what}`;
  return count > MOST_SIDES ? `there are more than ${MOST_SIDES} ${what}` : undefined;
}

function lengthsOf(edge: Edge): ReadonlyArray<readonly [string, Rational]> {
  switch (edge.shape) {
    case 'rectangle':
    case 'oval':
    case 'rounded rectangle':
      return [
        ['width', edge.width],
        ['length', edge.length],
      ];
    case 'circle':
      return [['diameter', edge.diameter]];
    case 'regular polygon':
      return [['side', edge.side]];
    case 'scalloped rectangle':
      return [
        ['width', edge.width],
        ['length', edge.length],
        ['depth', edge.depth],
      ];
    case 'measured':
      return [['length around', edge.around]];
  }
}
