import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { summary } from '../support/pattern.ts';

const BLOCK = [
  '```measure',
  'pattern: 🧵 Kettle 𝟗 Pond # 🪡',
  'sizes: [wall, throw]',
  'fabrics:',
  '  A: "Deep\\twater 🌊"',
  "  B: { name: 'Foam', usable width: 43\" }",
  'finished:',
  '  wall: 36" x 48"',
  '  throw: 54" x 72"',
  'binding: { from: B, strip: [2", 2 1/2"] }',
  'borders:',
  '  - { finished: 4", from: A }',
  'states: { binding.strip: { wall: 2", throw: 3" } }',
  '```',
];

/** Each line behind the marks of its container, the first one behind its own. */
const within = (first: string, rest: string) => (line: string, index: number) =>
  (index === 0 ? first : rest) + line;

const CONTAINERS: readonly [title: string, place: (line: string, index: number) => string][] = [
  ['at the margin', (line) => line],
  ['in a block quote', within('> ', '> ')],
  ['in a block quote without spaces', within('>', '>')],
  ['in a list', within('- ', '  ')],
  ['in a numbered list in a block quote', within('> 1. ', '>    ')],
  ['in a block quote in a list', within('- > ', '  > ')],
  ['in a list that is indented by a tab', within('- ', '\t')],
  ['in a list in a list', within('- - ', '    ')],
];

const LINE_ENDS: readonly [title: string, lineEnd: string][] = [
  ['line feeds', '\n'],
  ['carriage returns and line feeds', '\r\n'],
  ['carriage returns', '\r'],
];

/** The path of a value, its text, and the text of its name. */
const PLACES: readonly [path: (string | number)[], text: string, key: string][] = [
  [['pattern'], '🧵 Kettle 𝟗 Pond', 'pattern'],
  [['sizes', 1], 'throw', 'throw'],
  [['fabrics', 'A'], '"Deep\\twater 🌊"', 'A'],
  [['fabrics', 'B', 'name'], "'Foam'", 'name'],
  [['fabrics', 'B', 'usable width'], '43"', 'usable width'],
  [['finished', 'throw'], '54" x 72"', 'throw'],
  [['binding', 'strip', 1], '2 1/2"', '2 1/2"'],
  [['borders', 0, 'finished'], '4"', 'finished'],
  [['states', 'binding.strip', 'throw'], '3"', 'throw'],
];

describe.each(CONTAINERS)('a block %s', (_, place) => {
  describe.each(LINE_ENDS)('with %s', (_title, lineEnd) => {
    it.each([
      '',
      '\ufeff',
      '\ufeff# 🧶 Title\n\n',
      'Before.\n\n```measure\nhouse: { seam: 1/4" }\n```\n\nBetween.\n\n',
    ])('has its values at the very places where they stand, behind %j', (before) => {
      const source = before.replaceAll('\n', lineEnd) + BLOCK.map(place).join(lineEnd) + lineEnd;
      const { pattern, findings } = proofread({ source });
      const slice = (range: { start: number; end: number } | undefined) =>
        range && source.slice(range.start, range.end);
      for (const [path, text, key] of PLACES) {
        expect(slice(pattern.place(path)), path.join('.')).toBe(text);
        expect(slice(pattern.keyPlace(path)), path.join('.')).toBe(key);
        expect(pattern.pathAt((pattern.place(path)?.start ?? 0) + 1)).toEqual(path);
        expect(pattern.statedPath(path)).toEqual(path);
      }
      expect(findings.map((finding) => summary(finding, source).slice(0, 2))).toEqual([
        ['missing-entry', 'borders'],
        ['wrong-figure', '3"'],
      ]);
    });
  });
});

describe('a place that no one wrote', () => {
  const source =
    '```measure\nhouse: { seam: 1/4" }\nfinished: { wall: 36" x 48" }\n```\n\n```measure\nbatting: {}\n```\n';
  const { pattern } = proofread({ source });
  const slice = (path: (string | number)[]) => {
    const range = pattern.place(path);
    return range && source.slice(range.start, range.end);
  };

  it('is that of the entry around it', () => {
    expect(slice(['house', 'overhang'])).toBe('{ seam: 1/4" }');
    expect(slice(['batting', 'overhang'])).toBe('{}');
    expect(slice(['finished', 'throw'])).toBe('{ wall: 36" x 48" }');
  });

  it('does not exist where no block holds the entry', () => {
    expect(slice(['binding', 'strip'])).toBeUndefined();
    expect(pattern.statedPath(['house', 'overhang'])).toBeUndefined();
    expect(pattern.statedPath(['binding'])).toBeUndefined();
  });

  it('names no path outside the blocks', () => {
    expect(pattern.pathAt(source.indexOf('\n\n') + 1)).toBeUndefined();
    expect(pattern.pathAt(source.length)).toBeUndefined();
  });
});
