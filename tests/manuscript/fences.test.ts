import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../core/manuscript/read.ts';

const LINES = [
  'binding: { strip: 2 1/4" }',
  '  grid: 3 x 3',
  '\tstrip: 2"',
  '',
  '# note',
  '  - 🧵: ½',
  '>x',
  'a: |',
];
/** How a container begins its first line and the others. */
const CONTAINERS: readonly (readonly [first: string, rest: string])[] = [
  ['', ''],
  ['> ', '> '],
  ['>', '>'],
  ['- ', '  '],
  ['10. ', '    '],
  ['> - ', '>   '],
  ['- > ', '  > '],
  ['  ', '  '],
];

describe('A measure block', () => {
  test('gives its text without the marks of quotes and lists, and the place of every character', () => {
    const lines = fc.array(fc.constantFrom(...LINES), { maxLength: 6 });
    const ends = fc.constantFrom('\n', '\r\n', '\r');
    fc.assert(
      fc.property(
        lines,
        fc.constantFrom(...CONTAINERS),
        ends,
        fc.boolean(),
        (content, [first, rest], end, mark) => {
          const block = [`${first}~~~measure`, ...content.map((line) => rest + line), `${rest}~~~`].join(end);
          const source = `${mark ? '\ufeff' : ''}Text 5".${end}${end}${block}${end}`;
          const [fence, ...more] = readManuscript(source).fences;
          if (!fence) throw new Error('no fence');
          expect(more).toEqual([]);
          expect(fence.value.split(/\r\n|\r|\n/).map((line) => line.trimStart())).toEqual(
            (content.length > 0 ? content : ['']).map((line) => line.trimStart()),
          );
          const wrong = [...fence.value.split('').keys()].filter((offset) => {
            const [shown, written] = [fence.value[offset], source[fence.toSource(offset)]];
            const tab = shown === ' ' && written === '\t';
            const lineEnd = shown === '\n' && written === '\r';
            return shown !== written && !tab && !lineEnd;
          });
          expect(wrong).toEqual([]);
          expect(source.slice(fence.start, fence.start + 10)).toBe('~~~measure');
          expect(source.slice(fence.end - 3, fence.end)).toBe('~~~');
        },
      ),
      { numRuns: 500 },
    );
  });

  test('tells the place behind its last character, also when it is empty', () => {
    const source = '```measure\na: 1\n```\n\n```measure\n```';
    const [full, empty] = readManuscript(source).fences;
    expect(full?.toSource(full.value.length)).toBe(source.indexOf('\n```\n'));
    expect(empty?.value).toBe('');
    expect(empty?.toSource(0)).toBe(source.length - 3);
  });

  test('runs to the end of the manuscript when nothing closes it', () => {
    expect(readManuscript('```measure\na: 1\nb: 2').fences[0]?.value).toBe('a: 1\nb: 2');
  });

  test.each(['```yaml\na: 1\n```', '    measure\n    a: 1', '`measure`', '```measured\na: 1\n```'])(
    'is not %j',
    (source) => {
      expect(readManuscript(source).fences).toEqual([]);
    },
  );

  test('holds no number of the reading text', () => {
    expect(readManuscript('```measure\nstrip: 2"\n```\n').numbers).toEqual([]);
  });
});
