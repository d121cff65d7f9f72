/** The finished size and its edge, where the block states them. */
import type { Edge } from '../../geometry/edge.ts';
import { boundingBox, perimeter } from '../../geometry/edges.ts';
import { scallopChord } from '../../geometry/scallop.ts';
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Definition, Derived, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import type { Show } from '../show.ts';
import { wholeQuilt } from './quilt.ts';
import { shapeFigures, shapeOf } from './shapes.ts';
import { stated } from './stated.ts';
import { withSeams } from './withSeams.ts';

export const finishedRoom: Room = {
  define: ({ entries }) => {
    if (!entries.finished) return entries.layout ? [width, length, ...unfinished, edge] : [];
    const shapes = entries.finished.values.map(({ edge }) => edge.shape);
    return [
      ...(shapes.every((shape) => shape === 'measured') ? [] : [width, length, ...unfinished]),
      edge,
      ...shapeFigures(shapes),
    ];
  },
};

const exactLength = { kind: 'length', rule: 'exact' } as const;

const width: Definition = {
  id: 'finished.width',
  title: 'The finished width',
  ...exactLength,
  derive: (at) => side(at, 'width', 'wide'),
};

const length: Definition = {
  id: 'finished.length',
  title: 'The finished length',
  ...exactLength,
  derive: (at) => side(at, 'length', 'long'),
};

const edge: Definition = {
  id: 'finished.edge',
  title: 'The length of the finished edge',
  ...exactLength,
  derive: (at) => {
    const edge = shapeOf(at)?.edge ?? outline(at);
    if (!edge) return undefined;
    const need = edge.shape === 'rectangle' ? twice(edge) : perimeter(edge);
    const steps = around(edge, need, at.show);
    return { need, steps, because: lower(steps.at(-1) ?? '') };
  },
};

/** The size of the top before it is bound: with the seam allowance on every side. */
const unfinished: Definition[] = (['width', 'length'] as const).map((which) => ({
  id: `unfinished.${which}`,
  title: `The unfinished ${which}`,
  ...exactLength,
  derive: (at) => {
    const finished = at.figure(`finished.${which}`);
    return finished && withSeams(at, finished.need, []);
  },
}));

/** A quilt from blocks is a rectangle, which need not be rational: on point its sides hold √2. */
function outline(at: Derivation): Outline | undefined {
  const quilt = wholeQuilt(at);
  return quilt && { shape: 'rectangle', ...quilt.size };
}

function side(at: Derivation, which: 'width' | 'length', word: string): Derived | undefined {
  const shape = shapeOf(at);
  if (!shape) {
    const quilt = wholeQuilt(at);
    return quilt && { need: quilt.size[which], steps: quilt.steps, because: quilt.because };
  }
  const box = boundingBox(shape.edge);
  if (!box) return undefined;
  if (shape.edge.shape === 'rectangle') return stated(box[which]);
  const measure = `The finished piece is ${at.show.length(box[which])} ${word}`;
  return { need: box[which], steps: [`${measure}.`], because: lower(measure) };
}

interface Outline {
  readonly shape: 'rectangle';
  readonly width: Real;
  readonly length: Real;
}

function twice({ width, length }: Extract<Edge, { shape: 'rectangle' }> | Outline): Real {
  const real = (side: Rational | Real) => (side instanceof Real ? side : Real.of(side));
  return real(width).add(real(length)).mul(Real.of(2));
}

/** The way around the edge, step by step. */
function around(edge: Edge | Outline, total: Real, show: Show): string[] {
  const l = (value: Parameters<Show['length']>[0]) => show.length(value);
  switch (edge.shape) {
    case 'rectangle':
      return [`2 × (${l(edge.width)} + ${l(edge.length)}) = ${l(total)} around.`];
    case 'circle':
      return [`π × ${l(edge.diameter)} = ${l(total)} around.`];
    case 'oval':
      return [`An oval of ${l(edge.width)} by ${l(edge.length)} measures ${l(total)} around.`];
    case 'rounded rectangle':
      return [
        `With square corners it would be 2 × (${l(edge.width)} + ${l(edge.length)}) = ${l(edge.width.add(edge.length).mul(2n))}.`,
        `Each corner saves 2 × ${l(edge.radius)} and adds a quarter circle; together they make ${l(total)} around.`,
      ];
    case 'regular polygon':
      return [`${edge.sides} sides × ${l(edge.side)} = ${l(total)} around.`];
    case 'scalloped rectangle': {
      const chord = scallopChord(edge);
      return [
        `The inner points of ${edge.scallops} scallops stand ${l(chord)} apart.`,
        `The arc over ${l(chord)}, ${l(edge.depth)} deep, is ${l(total.div(Real.of(edge.scallops)))}.`,
        `${edge.scallops} arcs make ${l(total)} around.`,
      ];
    }
    case 'measured':
      return [`Taped around, the edge measures ${l(edge.around)}.`];
  }
}

/** A step of the working as a clause after a colon. */
function lower(sentence: string): string {
  const clause = sentence.replace(/\.$/, '');
  return clause.charAt(0).toLowerCase() + clause.slice(1);
}
