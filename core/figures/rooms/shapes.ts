/** What only some shapes have: a diameter, scallops, rounded corners, equal sides. */
import type { Shape } from '../../block/values/shape.ts';
import type { Edge } from '../../geometry/edge.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Definition } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { sentence } from '../sentence.ts';
import { stated } from './stated.ts';

type Name = Edge['shape'];
type Found = {
  readonly value: Rational /** Left out where the shape itself says it. */;
  readonly because?: string;
};

/** The figures of the shapes that a pattern has in any of its sizes. */
export function shapeFigures(shapes: readonly Name[]): Definition[] {
  return FIGURES.filter(({ shape }) => shapes.includes(shape)).map(({ definition }) => definition);
}

export function shapeOf(at: Derivation): Shape | undefined {
  return at.entries.finished as Shape | undefined;
}

const FIGURES: readonly { readonly shape: Name; readonly definition: Definition }[] = [
  figure('circle', 'diameter', 'The finished diameter', ({ diameter }) => ({ value: diameter })),
  figure('circle', 'radius', 'The finished radius', ({ diameter }, l) => ({
    value: diameter.div(2n),
    because: `half of ${l(diameter)} is ${l(diameter.div(2n))}`,
  })),
  figure('regular polygon', 'side', 'The finished length of one side', ({ side }) => ({ value: side })),
  figure('rounded rectangle', 'corner', 'The radius of the rounded corners', ({ radius }) => ({
    value: radius,
  })),
  figure(
    'scalloped rectangle',
    'scallops',
    'The number of scallops',
    ({ scallops }) => ({ value: rational(scallops) }),
    'count',
  ),
  figure('scalloped rectangle', 'scallop-depth', 'The depth of a scallop', ({ depth }) => ({
    value: depth,
  })),
  ...(['width', 'length'] as const).flatMap((side) => [part(side, 'half', 2n), part(side, 'quarter', 4n)]),
];

/** Scallops are laid out from the middle of a side and from its quarters (common practice). */
function part(side: 'width' | 'length', name: 'half' | 'quarter', of: bigint) {
  const title = name === 'half' ? `Half of the finished ${side}` : `A quarter of the finished ${side}`;
  return figure('scalloped rectangle', `${name}-${side}`, title, (edge, l) => {
    const value = edge[side].div(of);
    return { value, because: `${l(edge[side])} ÷ ${of} is ${l(value)}` };
  });
}

function figure<N extends Name>(
  shape: N,
  id: string,
  title: string,
  find: (edge: Extract<Edge, { shape: N }>, length: (inches: Rational) => string) => Found,
  kind: 'length' | 'count' = 'length',
): { shape: Name; definition: Definition } {
  const isShape = (edge: Edge): edge is Extract<Edge, { shape: N }> => edge.shape === shape;
  return {
    shape,
    definition: {
      id: `finished.${id}`,
      title,
      kind,
      rule: 'exact',
      derive: (at) => {
        const edge = shapeOf(at)?.edge;
        if (!edge || !isShape(edge)) return undefined;
        const { value, because } = find(edge, (inches) => at.show.length(inches));
        if (because === undefined) return stated(value);
        return { need: Real.of(value), steps: [sentence(because)], because };
      },
    },
  };
}
