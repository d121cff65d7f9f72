/** The sentences of all figures of many patterns: a count and its noun agree, and sentences begin and end as such. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TRADE_NOUNS } from '../../core/quantity/nouns.ts';
import { EXAMPLE_PATTERNS } from '../../core/report/reference/examplePatterns.ts';
import { UNIT_KINDS } from '../../core/trade/units/kinds.ts';
import { patternOf } from '../support/pattern.ts';
import { blockOf, randomPattern } from '../support/randomPattern.ts';

const NOUNS = new Map(TRADE_NOUNS);
for (const word of ['pass/passes', 'scallop', 'segment', 'crossing', 'arc', 'sash/sashes', 'patch/patches']) {
  const [one = '', many = `${one}s`] = word.split('/');
  for (const form of [one, many]) NOUNS.set(form, { one, many });
}

/** Words that end the reach of a count: what comes behind them is another thing. */
const STOP = /^(?:of|from|for|to|and|with|in|on|by|at|each|are|is|more|that|a|one|joined|between)$/;

/** `1 blocks` and `2 block`, also with a word or two between: `2 vertical seam`. */
function disagreements(sentence: string): string[] {
  // A count behind a sign is part of a sum: `1 + 1 squares`.
  const counts = sentence.matchAll(/(?<![+×÷−\d.⅛¼⅜½⅝¾⅞] ?)\b(\d+) ((?:[\p{L}-]+ ?){1,3})/gu);
  return [...counts].flatMap(([text, number, behind = '']) => {
    const words = behind.trim().toLowerCase().split(' ');
    if (/^(?:cm|m|yd)$/.test(words[0] ?? '')) return [];
    const stop = words.findIndex((word) => STOP.test(word));
    const noun = (stop < 0 ? words : words.slice(0, stop)).findLast((word) => NOUNS.has(word));
    const forms = noun === undefined ? undefined : NOUNS.get(noun);
    if (!forms || noun === undefined) return [];
    return noun === (number === '1' ? forms.one : forms.many).toLowerCase() ? [] : [text];
  });
}

/** `the squares for the squares`, `one of the square in a square`, `border 1`. */
function isClumsy(title: string): boolean {
  return /\b(\w+)s? (?:of|for) (?:the )?\1s?\b(?!-)|\bone of the\b|\b(?:sets?|number) of (?:\w+ )*square in a square\b|\bborder \d/i.test(
    title,
  );
}

/** What is wrong with the sentences of a block's figures, each with the figure's name. */
function faults(block: string): string[] {
  const { ledger } = patternOf(block);
  return ledger.ids.flatMap((id) => {
    const figure = ledger.figure(id);
    if (!figure) return [];
    const found: string[] = [];
    const said = (text: string, problem: string) => found.push(`${id}: ${problem}: ${text}`);
    if (!/^[A-Z].*[^.]$/u.test(figure.title)) said(figure.title, 'no title');
    if (isClumsy(figure.title)) said(figure.title, 'clumsy');
    for (const { working, because } of figure.values.values()) {
      for (const text of [figure.title, because, ...working])
        for (const wrong of disagreements(text)) said(text, `“${wrong}” does not agree`);
      for (const text of working)
        if (!/^(?:[^\p{Ll}]|π|[a-z]+\.).*[^.]\.$/su.test(text)) said(text, 'no sentence');
      if (
        (/^(?:\p{Lu}\p{Ll}+ )(?!\p{Lu})/u.test(because) && !/^[^ ]+ block/.test(because)) ||
        /\.$/.test(because)
      )
        said(because, 'no clause');
      if (/undefined|NaN|\[object/.test(`${because}${working.join()}`)) said(because, 'no words');
    }
    return found;
  });
}

describe('the sentences of the figures', () => {
  it('are told apart by this test', () => {
    for (const wrong of [
      '1 blocks',
      '2 vertical seam',
      '1 Heron blocks',
      '1 large squares each',
      '0 strip',
      '2 corner triangle',
    ])
      expect(disagreements(`It has ${wrong}.`)).not.toEqual([]);
    for (const right of [
      '1 block',
      '21 strips',
      '1 + 1 squares',
      '3 × 1 = 3 blocks',
      '8½ strips',
      '1 in each block',
      '4 from a set',
      '4 corner triangles',
    ])
      expect(disagreements(`It has ${right}.`)).toEqual([]);
    for (const clumsy of [
      'The cut size of the squares for the squares of Flag',
      'The size of one of the geese',
    ])
      expect(isClumsy(clumsy)).toBe(true);
    expect(isClumsy('The number of strips for the inner border')).toBe(false);
  });

  it('agree in number and read as sentences in random patterns', () => {
    fc.assert(
      fc.property(randomPattern, (pattern) => {
        const block = blockOf(pattern);
        expect(faults(block), block).toEqual([]);
      }),
      { seed: 20_261_126, numRuns: 100 },
    );
  });

  it.each(EXAMPLE_PATTERNS.map((text) => [text.replace(/^```measure\n|\n```$/g, '')]))(
    'agree in number and read as sentences in an example: %s',
    (block) => {
      expect(faults(block)).toEqual([]);
    },
  );

  const ONES = UNIT_KINDS.flatMap(({ name, methods, needs }) =>
    methods.flatMap((method) => [1, 2, 9].map((count) => [name, method.name, count, needs] as const)),
  );
  it.each(ONES)('agree in number for %s, %s, %i in all', (name, method, count, needs) => {
    const more = {
      corner: 'corner: 1"',
      strips: 'strips: [1", 2"]',
      radius: 'radius: 2"',
    };
    const finished = name === 'flying geese' ? '6" x 3"' : '3"';
    const part = [`unit: ${name}`, `finished: ${finished}`, `count: ${count}`, `method: ${method}`]
      .concat(needs.map((need) => more[need]))
      .join(', ');
    expect(faults(`blocks: { Heron: { finished: 12", make: 1, of: [{ ${part} }] } }`)).toEqual([]);
    expect(faults(`blocks: { Heron: { finished: 12", make: 2, of: [{ ${part} }] } }`)).toEqual([]);
  });

  it.each([
    'layout: { set: on point, grid: 1 x 1 }\nblocks: { Heron: { finished: 4", make: 1 } }',
    'layout: { grid: 1 x 2, sashing: { finished: 1", cornerstones: A, around: yes } }\nblocks: { Heron: { finished: 4" } }\nfabrics: { A: Sky }',
    'layout: { centre: 10" }\nborders: [{ finished: 1" }, { finished: 9", corners: mitred }, { finished: 30" }]',
    'pieces: { tab: { cut: 3" x 39", count: 1 }, loop: { cut: 2" x 3", count: 1 } }',
    'finished: 10"\nbinding: { strip: 2" }\nbacking: {}',
    'finished: 10"\nbinding: { strip: 2", grain: bias }\nhouse: { joining allowance: 0" }',
    'finished: 10"\nbinding: { strip: 2", grain: bias, cut as: strips }',
    'finished: 30" x 90"\nbacking: { seams: horizontal }',
    'finished: 60" x 30"\nbacking: { seams: vertical }',
    'finished: rounded 50" x 60", corners 4"\nbinding: { strip: 2" }',
  ])('agree in number where there is one of everything: %s', (block) => {
    expect(faults(block)).toEqual([]);
  });
});
