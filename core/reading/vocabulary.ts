/** The words that a manuscript may use: the trade's, and the names of this pattern. */
import type { Pattern } from '../block/pattern.ts';
import { type Concept, classOf } from './concept.ts';
import { LEXICON } from './lexicon.ts';
import { namesOf } from './names.ts';
import { stemsOf } from './stems.ts';
import { wholeWords } from './wholeWords.ts';

/** A concept where a text speaks of it. */
export interface Mention {
  readonly says: Concept;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

export interface Vocabulary {
  mentions(text: string): readonly Mention[];
  stems(text: string): ReadonlySet<string>;
}

interface Word {
  readonly says: Concept;
  readonly pattern: RegExp;
}

const TRADE: readonly Word[] = LEXICON.map(({ says, words }) => ({ says, pattern: wholeWords(words) }));

/** Vocabularies of the last patterns: while a manuscript is written, its names and most of its texts stay the same. */
const kept = new Map<string, Vocabulary>();
const MOST_KEPT = 8;
/** Texts that a vocabulary remembers before it begins anew. */
const MOST_TEXTS = 5000;

export function vocabularyOf(pattern: Pattern): Vocabulary {
  const names = namesOf(pattern);
  const key = names.map(({ says, pattern: { source, flags } }) => `${says} ${source} ${flags}`).join('\n');
  const known = kept.get(key);
  const vocabulary = known ?? openVocabulary([...TRADE, ...names]);
  kept.delete(key);
  kept.set(key, vocabulary);
  for (const oldest of kept.keys()) if (kept.size > MOST_KEPT) kept.delete(oldest);
  return vocabulary;
}

/** What the trade's words in a text speak of, and the telling words that are none of them. */
export const tradeWordsIn = remembered((text) => {
  const mentions = mentionsIn(text, TRADE);
  const rest = mentions.reduceRight(
    (left, { start, end }) => `${left.slice(0, start)} ${left.slice(end)}`,
    text,
  );
  return { concepts: [...new Set(mentions.map(({ says }) => says))], others: stemsOf(rest) };
});

function openVocabulary(words: readonly Word[]): Vocabulary {
  return {
    mentions: remembered((text) => mentionsIn(text, words)),
    stems: remembered((text) => new Set(stemsOf(text))),
  };
}

/** Headings and lead-ins are asked for again with every phrase below them. */
function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const found = known.get(text) ?? read(text);
    if (known.size >= MOST_TEXTS) known.clear();
    known.set(text, found);
    return found;
  };
}

function mentionsIn(text: string, words: readonly Word[]): Mention[] {
  const flat = text.replace(/[\n\t\u00a0\u202f]/g, ' ');
  const found = words.flatMap(({ says, pattern }) =>
    [...flat.matchAll(pattern)].map((match) => ({
      says,
      start: match.index,
      end: match.index + match[0].length,
      text: match[0].trim(),
    })),
  );
  return found.filter((mention) => !isPartOf(mention, found)).sort((a, b) => a.start - b.start);
}

/** `border` in `border strips` stays; `corner` in `corner squares` is of the same class and shorter, and goes. */
function isPartOf(mention: Mention, all: readonly Mention[]): boolean {
  return all.some(
    (other) =>
      other.says !== mention.says &&
      classOf(other.says) === classOf(mention.says) &&
      other.start <= mention.start &&
      other.end >= mention.end &&
      other.end - other.start > mention.end - mention.start,
  );
}
