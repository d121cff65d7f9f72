import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { complaints, patternOf } from '../support/pattern.ts';

const lines = (count: number, line: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => line(index)).join('\n');

const DEEP = ['[', '{ a: ', '- ', '? ', ': ', '- ? ', '[{ a: '].map((piece): [string, string] => [
  piece,
  piece.repeat(100_000),
]);

describe('a hostile block', () => {
  it.each(DEEP)('is refused whole when it is nested without end: %s', (_, text) => {
    const { pattern } = patternOf(`finished:\n  ${text}`);
    expect(pattern.findings.map(({ code, message }) => [code, message])).toEqual([
      ['block-syntax', 'The entries are nested too deeply to be a pattern.'],
    ]);
  });

  it('is refused whole when each line is indented more than the last', () => {
    const { pattern } = patternOf(lines(2000, (index) => `${' '.repeat(index)}a:`));
    expect(pattern.findings.map(({ message }) => message)).toEqual([
      'The entries are nested too deeply to be a pattern.',
    ]);
  });

  it('gets one finding for nesting that can still be followed', () => {
    const nested = `${'['.repeat(150)}${']'.repeat(150)}`;
    expect(
      complaints(`batting: { overhang: ${nested} }`).map(([, text, message]) => [text.length, message]),
    ).toEqual([[278, 'The entries are nested too deeply to be a pattern.']]);
  });

  it.each(['finished: constructor 5"', 'finished: __proto__ 5"', 'finished: toString 5"'])(
    'finds no shape in a name of the language: %s',
    (block) => {
      const [finding] = complaints(block);
      expect(finding?.[2]).toMatch(
        /is no shape that is known here\.|cannot be read as a width and a length;/,
      );
    },
  );

  it('takes such names for sizes, fabrics, pieces and figures like any other', () => {
    const { ledger, pattern } = patternOf(
      [
        'sizes: [constructor, __proto__]',
        'fabrics: { __proto__: { name: Red, usable width: 30" }, valueOf: Blue }',
        'finished: { constructor: 36" x 48", __proto__: 54" x 72" }',
        'binding: { from: __proto__, strip: 2" }',
        'pieces: { toString: { cut: 3", count: 3, from: valueOf } }',
        'figures: { hasOwnProperty: piece.toString.width * 2 }',
        'states: { hasOwnProperty: 6" }',
      ].join('\n'),
    );
    expect([...pattern.findings, ...ledger.findings]).toEqual([]);
    expect(ledger.figure('finished.width')?.values.get('__proto__')?.shown.valueOf()).toBe(54);
    expect(ledger.figure('binding.strips')?.values.get('constructor')?.shown.valueOf()).toBe(7);
    expect(ledger.figure('hasOwnProperty')?.values.get('constructor')?.shown.valueOf()).toBe(6);
  });

  it('is read to the end with a hundred thousand entries', () => {
    const { pattern } = patternOf(
      `states:\n${lines(100_000, (index) => `  s${index}: 3`)}\nbatting: {}\nstates2: 1`,
    );
    expect(Object.keys(pattern.entries.states ?? {})).toHaveLength(100_000);
    expect(pattern.findings.map(({ message }) => message)).toEqual([
      '“states2” is no entry of the measure block. Did you mean “states”?',
    ]);
  });

  it('is read to the end with very long lines', () => {
    const long = 'x'.repeat(1_000_000);
    const { pattern } = patternOf(`pattern: ${long}\nfinished: ${long}\n`);
    expect(pattern.entries.pattern).toHaveLength(1_000_000);
    expect(pattern.findings.map(({ message }) => message)).toEqual([
      `“${'x'.repeat(40)}…” cannot be read as a width and a length; write it as 36" x 48".`,
    ]);
  });

  it('is told of every name that stands twice, whatever their number', () => {
    const { pattern } = patternOf(lines(1000, (index) => `finished: ${index + 1}" x 4"`));
    expect(pattern.findings).toHaveLength(999);
    expect(new Set(pattern.findings.map(({ code }) => code))).toEqual(new Set(['duplicate-entry']));
  });
});

describe('own figures without measure', () => {
  it('are refused where squares of squares would fill the memory', () => {
    expect(
      complaints(
        `figures:\n  f0: 99999999999\n${lines(60, (index) => `  f${index + 1}: f${index} * f${index}`)}`,
      ),
    ).toEqual([['bad-expression', '* f1', 'This value is too large, or too fine, to be meant.']]);
  });

  it('are refused where each waits for the next without end', () => {
    const found = complaints(
      `figures:\n${lines(1000, (index) => `  f${index}: f${index + 1} + 1"`)}\n  f1000: 1"`,
    );
    expect(new Set(found.map(([, , message]) => message))).toEqual(
      new Set(['Too many figures are computed one from the other here.']),
    );
  });

  it('are refused where roots pile up without end', () => {
    const found = complaints(
      `figures:\n  f0: sqrt(2)\n${lines(1000, (index) => `  f${index + 1}: f${index} + 1`)}`,
    );
    expect(found).toEqual([
      ['bad-expression', '+ 1', 'Too many figures are computed one from the other here.'],
    ]);
  });

  it('are computed a thousand steps far where each is a plain number', () => {
    const { ledger } = patternOf(
      `figures:\n  f0: 1"\n${lines(1000, (index) => `  f${index + 1}: f${index} + 1"`)}`,
    );
    expect(ledger.findings).toEqual([]);
    expect(ledger.figure('f1000')?.values.get('')?.shown.valueOf()).toBe(1001);
  });

  it('are refused when they are too long, or nested too deeply', () => {
    expect(complaints(`figures: { f: 1"${' + 1"'.repeat(1000)} }`).map(([, , message]) => message)).toEqual([
      'This is too long; divide it into several figures.',
    ]);
    expect(
      complaints(`figures: { f: ${'('.repeat(60)}1"${')'.repeat(60)} }`).map(([, , message]) => message),
    ).toEqual(['The figure is nested too deeply.']);
  });
});

/** Pieces of blocks, good and bad, that random text is made of. */
const PIECES = [
  'finished: ',
  'binding: { strip: 2 1/4" }',
  'sizes: [wall, throw]',
  'house:',
  'figures:',
  'states:',
  'blocks:',
  'layout:',
  'borders:',
  '36" x 48"',
  'circle 24"',
  'grid: 3 x 4',
  'strip: ',
  'grain: bias',
  'cut as: strips',
  'seam: 1/4"',
  'wall',
  'A',
  '{',
  '}',
  '[',
  ']',
  ':',
  ': ',
  ',',
  ', ',
  '- ',
  '? ',
  '#',
  ' #',
  '&a ',
  '*a',
  '!!str ',
  '!x ',
  '|',
  '>',
  '"',
  "'",
  '---',
  '...',
  '%',
  '@',
  '`',
  '\\',
  '~',
  '<<: ',
  '\t',
  '\n',
  '\n  ',
  '\n    ',
  '\r\n',
  '\r',
  ' ',
  '\u0000',
  '\u0007',
  '\ufeff',
  '\u2028',
  '🧵',
  '0',
  '-1',
  '1e9',
  '999999999999"',
  '1/0"',
  '½"',
  '.5 yd',
  'sqrt(',
  'ceil(',
  'max(1", ',
  ')',
  ' / 0',
  ' * ',
  ' round up to ',
  'finished.edge',
];

const RUNS = { seed: 20_261_127, numRuns: 300 } as const;

describe('random text in a measure block', () => {
  it('never stops the proof, and is complained of only at places inside the manuscript', () => {
    const text = fc.array(fc.oneof(fc.constantFrom(...PIECES), fc.string({ unit: 'binary', maxLength: 4 })), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(text, fc.constantFrom('', '> ', '- ', '1. > '), (pieces, prefix) => {
        const indent = prefix.replace(/[^>]/g, ' ');
        const block = `\`\`\`measure\n${pieces.join('')}\n\`\`\`\n\nIt is 5" <!-- = finished.edge -->.\n`;
        const source = block
          .split('\n')
          .map((line, index) => (index === 0 ? prefix : indent) + line)
          .join('\n');
        const { findings, pattern } = proofread({ source });
        for (const { start, end, message, fixes, related } of findings) {
          expect(start).toBeGreaterThanOrEqual(0);
          expect(end).toBeGreaterThanOrEqual(start);
          expect(end).toBeLessThanOrEqual(source.length);
          expect(message).toMatch(/^[^!]*[.?”]$/s);
          expect(
            [...related, ...fixes.flatMap(({ edits }) => edits)].every((range) => range.start <= range.end),
          ).toBe(true);
        }
        for (let offset = 0; offset <= source.length; offset += 7) pattern.pathAt(offset);
      }),
      RUNS,
    );
  });
});
