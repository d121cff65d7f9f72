import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../core/manuscript/read.ts';
import { type Recogniser, recognises, sightOf } from '../../core/manuscript/recognisers.ts';
import { RECOGNISERS } from '../../core/manuscript/recogniserTable.ts';

/** The number between « and », and the passage without these. */
function marked(sentence: string) {
  const at = sentence.indexOf('«');
  const shown = sentence.slice(at + 1, sentence.indexOf('»'));
  const { numbers } = readManuscript(sentence.replace(/[«»]/g, ''));
  const found = numbers.find(({ ranges }) => ranges[0].start === at);
  if (!found?.text.startsWith(shown)) throw new Error(`${shown} is not read as a number in: ${sentence}`);
  return { number: found.written, text: found.passage.text, reason: found.notMeasurement };
}

/** Why the number between « and » measures nothing. */
function reason(sentence: string): string | undefined {
  return marked(sentence).reason;
}

const ROWS: readonly Recogniser[] = RECOGNISERS;

describe('Numbers that measure nothing', () => {
  test.each(ROWS.map((row) => [row.reason, row.example]))('%s: %s', (expected, example) => {
    expect(reason(example)).toBe(expected);
  });
});

describe('Numbers that may measure something', () => {
  test.each(ROWS.map((row) => [row.reason, row.counterexample]))('no %s: %s', (_, counterexample) => {
    expect(reason(counterexample)).toBeUndefined();
  });
});

describe('The table', () => {
  test('gives each row an example and a counterexample of its own', () => {
    const sentences = ROWS.flatMap(({ example, counterexample }) => [example, counterexample]);
    expect(new Set(sentences).size).toBe(sentences.length);
  });

  test('needs every row: without it, its example is not recognised for the same reason', () => {
    const needless = ROWS.filter((row) => {
      const { number, text } = marked(row.example);
      const others = ROWS.filter((other) => other !== row);
      return others.find((other) => recognises(other, sightOf(number, text)))?.reason === row.reason;
    });
    expect(needless.map(({ example }) => example)).toEqual([]);
  });
});

describe('Sentences of patterns', () => {
  test.each([
    ['STEP «FOUR»: trim', 'step number'],
    ['Border «2» 3½" strips', 'label'],
    ['Rows «1»–4 are alike', 'label'],
    ['Fig. «6» shows it', 'figure reference'],
    ['see p. «12»', 'page reference'],
    ['see p.«12»', 'page reference'],
    ['© «2021» by the author', 'year'],
    ['a «quarter»-inch foot', 'size of a tool'],
    ['«Nine» Patch blocks', 'part of a name'],
    ['«two»-tone pieces', 'part of a name'],
    ['«Two» at a time, they are quick', 'part of a name'],
    ['a 2.5 mm stitch; «80»/12 needle', 'needle size'],
    ['one «another»', 'ordinary word'],
    ['press «both» strips', 'ordinary word'],
    ['on «one» side', 'ordinary word'],
    ['the «one» strip that is left', 'ordinary word'],
    ['tape B«2»', 'label'],
    ['on 2019-06-«14» we met', 'date'],
  ])('%s: %s', (sentence, expected) => {
    expect(reason(sentence)).toBe(expected);
  });

  test.each([
    'Cut («7») 2¼" × WOF strips',
    '(«7») 2¼" strips',
    '«7» strips',
    'Cut «one» 17" square',
    'Cut «one» from the plum',
    'Make «one».',
    'Cut «one» (1) strip',
    'For the border «4» strips',
    'In each row «8» blocks',
    'Makes «12»/20/30 blocks',
    'May you cut «14» strips',
    '«2½»" strips',
    '«44»/45" wide fabric',
    'a batting of «45»" x 60"',
    'Sew «three-quarters» of an inch from the edge',
    '«half» of the strips',
    'Set the seam to «¼»" and stitch',
    'Press the «24» units',
    'Cut «18» 3½" squares',
    'Size «36»" x 48"',
    'fabric «42»" wide',
    'Unit A: «24» squares',
    'Strips: «2½»"',
  ])('leaves in: %s', (sentence) => {
    expect(reason(sentence)).toBeUndefined();
  });
});
