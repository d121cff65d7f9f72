/** The shape of a finished edge, in the words of the trade. */
import { type Edge, whyImpossible } from '../../geometry/edges.ts';
import type { Rational } from '../../quantity/rational.ts';
import { readCount, readDimensions, readLength } from '../../quantity/read.ts';
import type { LengthUnit } from '../../quantity/units.ts';
import { listed, suggestion } from '../words.ts';
import { isProblem, type Problem, text } from './schema.ts';

export interface Shape {
  readonly edge: Edge;
  /** The unit that the author wrote it in. */
  readonly unit: LengthUnit;
}

const EXAMPLES = [
  '36" x 48"',
  'square 18"',
  'circle 24"',
  'oval 14" x 20"',
  'hexagon 10"',
  'octagon 10"',
  'rounded 50" x 60", corners 4"',
  'scalloped 60" x 80", 28 scallops 2" deep',
  'measured 217"',
];

type Reader = (rest: string) => Shape | Problem;

/** What follows each word. A polygon gives the length of one side. */
const READERS: Readonly<Record<string, Reader>> = {
  square: (rest) => ofLength(rest, (side) => ({ shape: 'rectangle', width: side, length: side })),
  circle: (rest) => ofLength(rest, (diameter) => ({ shape: 'circle', diameter })),
  hexagon: (rest) => ofLength(rest, (side) => ({ shape: 'regular polygon', sides: 6, side })),
  octagon: (rest) => ofLength(rest, (side) => ({ shape: 'regular polygon', sides: 8, side })),
  measured: (rest) => ofLength(rest, (around) => ({ shape: 'measured', around })),
  oval: (rest) => ofDimensions(rest, (width, length) => ({ shape: 'oval', width, length })),
  rounded: (rest) => {
    const [size, corners] = splitOnce(rest, /,\s*corners?\s+/i);
    if (corners === undefined)
      return { problem: 'A rounded shape gives its corners too: rounded 50" x 60", corners 4".' };
    const radius = readLength(corners);
    if (isProblem(radius)) return radius;
    return ofDimensions(size, (width, length) => ({
      shape: 'rounded rectangle',
      width,
      length,
      radius: radius.inches,
    }));
  },
  scalloped: (rest) => {
    const [size, scallops] = splitOnce(rest, /,\s*/);
    const [number, deep] = splitOnce(scallops ?? '', /\s+scallops?\s+/i);
    if (deep === undefined)
      return {
        problem: 'A scalloped shape gives its scallops too: scalloped 60" x 80", 28 scallops 2" deep.',
      };
    const count = readCount(number);
    const depth = readLength(deep.replace(/\s*deep$/i, ''));
    if (isProblem(count)) return count;
    if (isProblem(depth)) return depth;
    return ofDimensions(size, (width, length) => ({
      shape: 'scalloped rectangle',
      width,
      length,
      scallops: Number(count.value.valueOf()),
      depth: depth.inches,
    }));
  },
};

export const shape = text<Shape>({ title: 'a finished size or shape', examples: EXAMPLES }, (raw) => {
  const [word, rest] = splitOnce(raw, /\s+/);
  const name = word.toLowerCase();
  const read = Object.hasOwn(READERS, name) ? READERS[name] : undefined;
  const found = read ? read(rest ?? '') : rectangle(raw, name);
  if (isProblem(found)) return found;
  const problem = whyImpossible(found.edge);
  return problem === undefined
    ? found
    : { problem: `${problem.charAt(0).toUpperCase()}${problem.slice(1)}.` };
});

/** Longer words are not repeated. */
const LONGEST_WORD = 20;

function rectangle(raw: string, word: string): Shape | Problem {
  const found = ofDimensions(raw, (width, length) => ({ shape: 'rectangle', width, length }));
  if (!isProblem(found) || !/^\p{L}/u.test(word) || word.length > LONGEST_WORD) return found;
  const shapes = Object.keys(READERS);
  const hint =
    suggestion(word, shapes) || ` Those are ${listed(shapes, 'and')}, or a size such as ${EXAMPLES[0]}.`;
  return { problem: `“${word}” is no shape that is known here.${hint}` };
}

function ofLength(raw: string, edge: (inches: Rational) => Edge): Shape | Problem {
  const read = readLength(raw);
  return isProblem(read) ? read : { edge: edge(read.inches), unit: read.unit };
}

function ofDimensions(raw: string, edge: (width: Rational, length: Rational) => Edge): Shape | Problem {
  const read = readDimensions(raw);
  if (isProblem(read)) return read;
  return { edge: edge(read.width.inches, read.length.inches), unit: read.width.unit };
}

function splitOnce(text: string, separator: RegExp): [string, string | undefined] {
  const match = separator.exec(text);
  if (!match) return [text, undefined];
  return [text.slice(0, match.index), text.slice(match.index + match[0].length)];
}
