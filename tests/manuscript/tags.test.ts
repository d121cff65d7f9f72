import { describe, expect, test } from 'vitest';
import type { Manuscript } from '../../core/manuscript/manuscript.ts';
import { readManuscript } from '../../core/manuscript/read.ts';

type Range = { start: number; end: number };
const slice = (source: string, { start, end }: Range) => source.slice(start, end);

/** The tags of all passages: the text before each, and what it says in the source's own characters. */
function tagsOf(source: string) {
  return readManuscript(source).passages.flatMap(({ text, tags }) =>
    tags.map(({ at, meaning }) => {
      const before = text.slice(0, at).trimEnd();
      if ('problem' in meaning) return { before, problem: meaning.problem };
      if ('skip' in meaning) return { before, skip: true };
      const { figures, size, idRanges, sizeRange } = meaning;
      expect(idRanges.map((range) => slice(source, range).replace(/\s*\n>\s*/g, ' '))).toEqual(figures);
      expect(sizeRange && slice(source, sizeRange)).toBe(size);
      return { before, figures, size };
    }),
  );
}

describe('A tag', () => {
  test.each([
    [
      'Cut 5" <!-- = binding.strip --> wide',
      { before: 'Cut 5"', figures: ['binding.strip'], size: undefined },
    ],
    ['Cut 5"<!--=binding.strip-->', { before: 'Cut 5"', figures: ['binding.strip'], size: undefined }],
    ['7 <!-- = a.b @ queen -->', { before: '7', figures: ['a.b'], size: 'queen' }],
    ['7 <!-- = a.b @ extra long twin -->', { before: '7', figures: ['a.b'], size: 'extra long twin' }],
    [
      '5" x 7" <!-- = a.width x a.length -->',
      { before: '5" x 7"', figures: ['a.width', 'a.length'], size: undefined },
    ],
    [
      '5" x 7" <!-- = a.width × a.length @ wall -->',
      { before: '5" x 7"', figures: ['a.width', 'a.length'], size: 'wall' },
    ],
    [
      '7 <!-- = fabric.Deep water.yardage -->',
      { before: '7', figures: ['fabric.Deep water.yardage'], size: undefined },
    ],
    [
      '> 7 <!-- = fabric.Deep\n> water.yardage -->',
      { before: '7', figures: ['fabric.Deep water.yardage'], size: undefined },
    ],
    ['- 7\n  <!-- = a.b -->', { before: '7', figures: ['a.b'], size: undefined }],
    ['# Top 7 <!-- = a.b -->', { before: 'Top 7', figures: ['a.b'], size: undefined }],
    ['| 7 <!-- = a.b --> |\n|---|', { before: '7', figures: ['a.b'], size: undefined }],
    ['\ufeffCut 🧵 &frac12;" <!-- = a.b -->', { before: 'Cut 🧵 ½"', figures: ['a.b'], size: undefined }],
    ['<div>7 <!-- = a.b --></div>', { before: '\n7', figures: ['a.b'], size: undefined }],
    ['7 <!-- measure skip --> strips', { before: '7', skip: true }],
    ['7 <!-- = -->', { before: '7', problem: 'This tag names no figure; write it as = binding.strips.' }],
    [
      '7 <!-- = a x  x b -->',
      { before: '7', problem: 'This tag names no figure; write it as = binding.strips.' },
    ],
    ['7 <!-- = a.b @ -->', { before: '7', problem: 'This tag names no size behind the @.' }],
    [
      '7 <!-- = a.b @ c @ d -->',
      { before: '7', problem: 'A tag names one size; write it once, behind one @.' },
    ],
    [
      '7 <!-- measure of -->',
      {
        before: '7',
        problem: '“measure of” means nothing here; write “measure off”, “measure on” or “measure skip”.',
      },
    ],
  ])('in %j', (source, expected) => {
    expect(tagsOf(source)).toEqual([expected]);
  });

  test('on the line right behind a passage belongs to that passage', () => {
    expect(tagsOf('Cut 7 strips\n<!-- = a.b -->\n')).toEqual([
      { before: 'Cut 7 strips', figures: ['a.b'], size: undefined },
    ]);
  });

  test('behind an empty line, or at the head, belongs to no passage', () => {
    const { passages, comments } = readManuscript('<!-- = a.b -->\n\nCut 7 strips\n\n<!-- = c.d -->\n');
    expect(passages.flatMap(({ tags }) => tags)).toEqual([]);
    expect(comments.map(({ at, meaning }) => [at, meaning])).toMatchObject([
      [undefined, { figures: ['a.b'] }],
      [undefined, { figures: ['c.d'] }],
    ]);
  });

  test.each([
    'Cut 7 <!-- check this --> strips',
    '7 <!-- measure the border again before cutting --> strips',
    '7 <!-- remeasure off -->',
    '7 <!---->',
    '`7 <!-- = a.b -->`',
    '```\n7 <!-- = a.b -->\n```',
  ])('is not seen in %j', (source) => {
    expect(readManuscript(source).comments).toEqual([]);
  });
});

describe('A stretch that is switched off', () => {
  const left = ({ numbers }: Manuscript) =>
    numbers.filter(({ notMeasurement }) => notMeasurement === 'left alone').map(({ text }) => text);

  test.each([
    ['1" <!-- measure off --> 2" <!-- measure on --> 3"', ['2"']],
    ['1"\n\n<!-- measure off -->\n\n2"\n\n| 4" |\n|--|\n\n<!-- measure on -->\n\n3"', ['2"', '4"']],
    ['1"\n\n<!-- Measure  OFF -->\n\n2"\n\n3"', ['2"', '3"']],
    ['1" <!-- measure on --> 2"', []],
    [
      '<!-- measure off --> 1" <!-- measure off --> 2" <!-- measure on --> 3" <!-- measure on --> 4"',
      ['1"', '2"'],
    ],
    ['> 1"\n> <!-- measure off -->\n> 2"\n\n3"\n\n<!-- measure on -->', ['2"', '3"']],
  ])('in %j', (source, expected) => {
    expect(left(readManuscript(source))).toEqual(expected);
  });

  test.each([
    ['1" <!-- measure skip --> 2"', ['1"']],
    ['1" 2" <!-- Measure  Skip --> 3"', ['2"']],
    ['36" x 48" <!-- measure skip --> 3"', ['48"']],
    ['1" <!-- measure skip --> <!-- measure skip --> 2"', ['1"']],
    ['- 7<!-- measure skip --> strips\n- 8 strips', ['7']],
    ['| 7 <!-- measure skip --> | 8 |\n|--|--|', ['7']],
    ['7 strips\n<!-- measure skip -->\n\n8 strips', ['7']],
    ['<!-- measure skip --> 7 strips', []],
  ])('is one number before a comment that says so, in %j', (source, expected) => {
    expect(left(readManuscript(source))).toEqual(expected);
  });

  test('lies between its comments in the source', () => {
    const source = 'a <!-- measure off -->5"<!-- measure on --> b <!-- measure off --> 6"';
    expect(readManuscript(source).off.map((range) => slice(source, range))).toEqual(['5"', ' 6"']);
  });
});
