/** Figures for the size of a thing: one for what is square, two for what is not. */
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import type { Size } from '../../trade/units/unit.ts';
import type { Definition, Derived } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import type { FigureRule } from '../figure.ts';
import { sentence } from '../sentence.ts';

type SizeOf = (at: Derivation) => Size | undefined;

/**
 * `<base>.finished` and `<base>.unfinished` while the thing is square, and always its width and length:
 * `<base>.finished-width` … `<base>.unfinished-length`.
 *
 * @param name with its article, to be read in the middle of a sentence
 */
export function sizeFigures(
  base: string,
  name: string,
  finished: SizeOf,
  unfinished: SizeOf = withSeams(finished),
): Definition[] {
  return [
    ...sizeOf(`${base}.finished`, `finished`, name, finished),
    ...sizeOf(`${base}.unfinished`, `unfinished`, name, unfinished),
  ];
}

function sizeOf(id: string, word: 'finished' | 'unfinished', name: string, size: SizeOf): Definition[] {
  const derive =
    (side: 'width' | 'length', onlySquare: boolean) =>
    (at: Derivation): Derived | undefined => {
      const found = size(at);
      if (!found || (onlySquare && found.width.compare(found.length) !== 0)) return undefined;
      const because = explain(at, word, name, found);
      return { need: found[side], steps: [sentence(because)], because };
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

function explain(at: Derivation, word: 'finished' | 'unfinished', name: string, size: Size): string {
  const square = size.width.compare(size.length) === 0;
  const shown = square ? at.show.length(size.width) : at.show.size(size);
  return word === 'finished' ? `${name} finishes ${shown}` : `with its seams ${name} measures ${shown}`;
}

function withSeams(finished: SizeOf): SizeOf {
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
