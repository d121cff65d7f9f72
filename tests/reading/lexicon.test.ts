import { describe, expect, it } from 'vitest';
import { PARTIAL_WORDS } from '../../core/reading/lexicon/partialWords.ts';
import { LEXICON } from '../../core/reading/lexicon.ts';
import { UNIT_WORDS } from '../../core/reading/unitWords.ts';
import { wholeWords } from '../../core/reading/wholeWords.ts';
import { unitKind } from '../../core/trade/units/kinds.ts';

/** A sentence without its marks, and the place of what stands between them. */
function marked(sentence: string): { text: string; start: number; end: number } {
  const start = sentence.indexOf('«');
  return { text: sentence.replace(/[«»]/g, ''), start, end: sentence.indexOf('»') - 1 };
}

/** Whether the words are found at a place, or a part of it. */
function isFound(words: string, { text, start, end }: ReturnType<typeof marked>): boolean {
  return [...text.matchAll(wholeWords(words))].some(
    (match) => match.index < end && match.index + match[0].length > start,
  );
}

describe('The lexicon', () => {
  it.each(LEXICON.map((row) => [row.says, row.example, row] as const))(
    'hears %s in: %s',
    (_, example, row) => {
      expect(isFound(row.words, marked(example))).toBe(true);
    },
  );

  it.each(LEXICON.map((row) => [row.says, row.counterexample, row] as const))(
    'hears no %s in: %s',
    (_, counterexample, { words }) => {
      expect([...counterexample.matchAll(wholeWords(words))].map(([found]) => found)).toEqual([]);
    },
  );
});

describe('The words that make a number a part', () => {
  it.each(PARTIAL_WORDS)('say “$says” in: $example', ({ words, example }) => {
    expect(isFound(words, marked(example))).toBe(true);
  });

  it.each(PARTIAL_WORDS)('say no “$says” in: $counterexample', ({ words, counterexample }) => {
    expect([...counterexample.matchAll(wholeWords(words))].map(([found]) => found)).toEqual([]);
  });
});

describe('The words for units', () => {
  it.each(Object.entries(UNIT_WORDS))('find %s, which is a kind of unit', (name, { words, example }) => {
    expect(unitKind(name)?.name).toBe(name);
    expect(isFound(words, marked(example))).toBe(true);
  });
});
