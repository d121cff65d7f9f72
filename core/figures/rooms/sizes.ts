/** Figures for the size of a thing: one for what is square, two for what is not. */
import type { Sides } from '../../block/values/sides.ts';
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Size } from '../../trade/units/unit.ts';
import type { Definition, Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import type { FigureRule } from '../figure.ts';
import { sentence } from '../sentence.ts';
import { stated } from './stated.ts';
import { withSeams } from './withSeams.ts';

type SizeOf = (at: Derivation) => Size | undefined;

/**
 * `<base>.finished` and `<base>.unfinished` while the thing is square, and always its width and length:
 * `<base>.finished-width` … `<base>.unfinished-length`.
 *
 * @param name with its article, to be read in the middle of a sentence
 * @param given what the block says of the finished size, where `finished` may differ from it
 */
export function sizeFigures(
  base: string,
  name: string,
  given: (at: Derivation) => Sides | undefined,
  finished: SizeOf = (at) => sized(given(at)),
  unfinished: SizeOf = grownBySeams(finished),
): Definition[] {
  return [
    ...sizeOf(`${base}.finished`, 'finished', name, finished, (at, size, side) =>
      isSame(sized(given(at)), size)
        ? stated(size[side])
        : because(size[side], `${name} finishes ${sizeText(at, size)}`),
    ),
    ...sizeOf(`${base}.unfinished`, 'unfinished', name, unfinished, (at, size, side) => {
      const inside = finished(at);
      return inside && isSame(grownBySeams(() => inside)(at), size)
        ? withSeams(at, inside[side], [])
        : because(size[side], `with its seams ${name} measures ${sizeText(at, size)}`);
    }),
  ];
}

function sizeOf(
  id: string,
  word: 'finished' | 'unfinished',
  name: string,
  size: SizeOf,
  explain: (at: Derivation, size: Size, side: 'width' | 'length') => Derived,
): Definition[] {
  const derive =
    (side: 'width' | 'length', onlySquare: boolean) =>
    (at: Derivation): Derived | undefined => {
      const found = size(at);
      if (!found || (onlySquare && found.width.compare(found.length) !== 0)) return undefined;
      return explain(at, found, side);
    };
  const common = { kind: 'length', rule: 'exact' } as const;
  return [
    { id, title: `The ${word} size of ${name}`, ...common, derive: derive('width', true) },
    { id: `${id}-width`, title: `The ${word} width of ${name}`, ...common, derive: derive('width', false) },
    {
      id: `${id}-length`,
      title: `The ${word} length of ${name}`,
      ...common,
      derive: derive('length', false),
    },
  ];
}

function because(need: Real, clause: string): Derived {
  return { need, steps: [sentence(clause)], because: clause };
}

function sizeText({ show }: Derivation, size: Size): string {
  return size.width.compare(size.length) === 0 ? show.length(size.width) : show.size(size);
}

function sized(sides: Sides | undefined): Size | undefined {
  return sides && { width: Real.of(sides.width), length: Real.of(sides.length) };
}

/** Whether both are rational, and the same. */
function isSame(a: Size | undefined, b: Size): boolean {
  const alike = (one: Real | undefined, other: Real) =>
    one?.exact !== undefined && other.exact !== undefined && one.exact.equals(other.exact);
  return alike(a?.width, b.width) && alike(a?.length, b.length);
}

function grownBySeams(finished: SizeOf): SizeOf {
  return (at) => {
    const size = finished(at);
    if (!size) return undefined;
    const both: Rational = at.house.seam.mul(2n);
    return { width: size.width.add(Real.of(both)), length: size.length.add(Real.of(both)) };
  };
}

/** `<base>.cut` while the piece is square, and always `<base>.width` and `<base>.length`. */
export function bothSides(
  base: string,
  title: string,
  rule: FigureRule,
  side: (which: 'width' | 'length') => Definition['derive'],
  isSquare: (at: Derivation) => boolean | undefined,
): Definition[] {
  const common = { kind: 'length', rule } as const;
  return [
    { id: `${base}.cut`, title, ...common, derive: (at) => (isSquare(at) ? side('width')(at) : undefined) },
    { id: `${base}.width`, title: title.replace('size', 'width'), ...common, derive: side('width') },
    { id: `${base}.length`, title: title.replace('size', 'length'), ...common, derive: side('length') },
  ];
}
