/** What is said about a phrase, and how near to it. */
import { type Concept, type ConceptClass, classOf } from './concept.ts';
import type { Line } from './line.ts';
import type { Phrase } from './phrase.ts';
import type { Mention, Vocabulary } from './vocabulary.ts';

export interface Clue {
  /** From 0, not said at all, to 1, said in the same words. */
  readonly strength: number;
  readonly says: Concept;
  /** For the author: `“strips” beside it`, `the heading “Binding”`. */
  words(): string;
}

export interface Evidence {
  /** Whether another number of the sentence is a length with its unit. */
  readonly hasUnits: boolean;
  /** The strongest clue for any of the concepts. */
  clue(concepts: readonly Concept[]): Clue | undefined;
  /** How surely any of the concepts is said: the strength of that clue, 0 where there is none. */
  strength(...concepts: readonly Concept[]): number;
  /** The strongest clue for something else of a class. */
  rival(of: ConceptClass, concepts: readonly Concept[]): Clue | undefined;
  /** How surely all the words are said, each in any form. */
  words(stems: readonly string[]): Clue | undefined;
}

/** So strong is a clue that stands in the clause of the number itself. */
export const BESIDE = 0.85;

const PLACES = {
  core: 1,
  behind: 0.95,
  head: 0.9,
  sentenceBefore: 0.65,
  sentenceBehind: 0.45,
  runIn: 0.75,
  earlier: 0.6,
  next: 0.3,
  later: 0.1,
} as const;

export function evidenceFor(line: Line, phrase: Phrase, vocabulary: Vocabulary): Evidence {
  const column = (phrase.count ?? phrase.size)?.sides[0].spots[0]?.column;
  const layers = [
    ...(column && line.isRow ? [{ where: 'column' as const, text: column, strength: 0.85 }] : []),
    ...line.layers,
  ];
  const clues = new Map<Concept, Clue>();
  const add = (mention: Mention, strength: number, words: () => string) => {
    const known = clues.get(mention.says);
    if (!known || known.strength < strength) clues.set(mention.says, { says: mention.says, strength, words });
  };
  for (const mention of vocabulary.mentions(line.text)) {
    if (isOwnNumber(mention, line) || (mention.says === 'part:seam' && !mayBeSeam(phrase))) continue;
    const strength = nearness(mention, phrase, line);
    add(
      mention,
      strength,
      () => `“${mention.text}” ${strength >= PLACES.head - FARTHEST ? 'beside it' : 'near it'}`,
    );
  }
  const implied = impliedForm(phrase);
  if (implied) add({ says: implied, start: 0, end: 0, text: '' }, IMPLIED, () => 'its two sides');
  for (const { where, text, strength } of layers)
    for (const mention of vocabulary.mentions(text))
      add(mention, strength, () => saidIn(where, text, mention.text));
  return new PhraseEvidence(
    clues,
    [
      { text: line.text.slice(phrase.start, phrase.end), strength: 1 },
      { text: line.text.slice(phrase.sentence.start, phrase.sentence.end), strength: 0.7 },
      ...layers,
    ],
    vocabulary,
    hasUnits(line, phrase),
  );
}

/** So sure is the form that two sides tell. */
const IMPLIED = 0.5;

/** What is as wide as it is long is a square, said or not. */
function impliedForm({ size }: Phrase): Concept | undefined {
  const [a, b] = size?.sides ?? [];
  if (!a || !b || size?.isGrid) return undefined;
  const isAlike = a.spots.every(({ number }, index) => b.spots[index]?.number.value.equals(number.value));
  return isAlike ? 'form:square' : 'form:rectangle';
}

/** Strips are joined with diagonal seams: of nothing larger is a seam the measure. */
function mayBeSeam({ count, size }: Phrase): boolean {
  const sides = size?.sides ?? [];
  const isSmall = sides.every(({ spots }) =>
    spots.every(
      ({ number: { value, unit } }) => value.compare(unit === 'mm' ? 40 : unit === 'cm' ? 4 : 2) < 0,
    ),
  );
  return count === undefined && sides.length === 1 && isSmall;
}

/** The 1 of "1 yard" is no mention of the fabric 1. */
function isOwnNumber({ start, end }: Mention, { spots }: Line): boolean {
  return spots.some(
    (spot) => spot.number.notMeasurement === undefined && spot.start <= start && spot.end >= end,
  );
}

function hasUnits({ spots }: Line, { sentence, core }: Phrase): boolean {
  return spots.some(
    ({ number, start }) =>
      (number.unit === 'in' || number.unit === 'cm') &&
      start >= sentence.start &&
      start < sentence.end &&
      (start < core.start || start >= core.end),
  );
}

class PhraseEvidence implements Evidence {
  readonly hasUnits: boolean;
  readonly #clues: ReadonlyMap<Concept, Clue>;
  readonly #byClass = new Map<ConceptClass, Clue[]>();
  readonly #texts: readonly { readonly text: string; readonly strength: number }[];
  readonly #vocabulary: Vocabulary;

  constructor(
    clues: ReadonlyMap<Concept, Clue>,
    texts: readonly { readonly text: string; readonly strength: number }[],
    vocabulary: Vocabulary,
    hasUnits: boolean,
  ) {
    this.hasUnits = hasUnits;
    this.#clues = clues;
    this.#texts = texts;
    this.#vocabulary = vocabulary;
    for (const clue of clues.values()) {
      const list = this.#byClass.get(classOf(clue.says)) ?? [];
      list.push(clue);
      this.#byClass.set(classOf(clue.says), list);
    }
  }

  clue(concepts: readonly Concept[]): Clue | undefined {
    let best: Clue | undefined;
    for (const concept of concepts) {
      const clue = this.#clues.get(concept);
      if (clue && clue.strength > (best?.strength ?? 0)) best = clue;
    }
    return best;
  }

  strength(...concepts: readonly Concept[]): number {
    return this.clue(concepts)?.strength ?? 0;
  }

  rival(of: ConceptClass, concepts: readonly Concept[]): Clue | undefined {
    let best: Clue | undefined;
    for (const clue of this.#byClass.get(of) ?? [])
      if (clue.strength > (best?.strength ?? 0) && !concepts.includes(clue.says)) best = clue;
    return best;
  }

  words(stems: readonly string[]): Clue | undefined {
    let strength = 1;
    for (const stem of stems) {
      const found = this.#texts.find(({ text }) => this.#vocabulary.stems(text).has(stem));
      if (!found) return undefined;
      strength = Math.min(strength, found.strength);
    }
    return {
      says: 'name:',
      strength,
      words: () => `the ${stems.length === 1 ? 'word' : 'words'} “${stems.join('”, “')}”`,
    };
  }
}

const WHERE = {
  row: 'the head of the row above',
  column: 'the head of its column',
  list: 'the list item above it',
  'lead-in': 'the line above',
  heading: 'the heading',
  before: 'the paragraph before',
} as const;

/** A longer text around the word tells no more than where to look for it. */
const LONGEST_QUOTE = 40;

/** `the heading “Binding”`, `“binding” in the heading “Cut the binding”`, `“binding” in the paragraph before`. */
function saidIn(where: keyof typeof WHERE, text: string, said: string): string {
  const flat = text.replace(/\s+/g, ' ').trim();
  const place = flat.length > LONGEST_QUOTE ? WHERE[where] : `${WHERE[where]} “${flat}”`;
  return flat.toLowerCase() === said.toLowerCase() ? place : `“${said}” in ${place}`;
}

const QUOTE = /^“([^”]*)” (?:beside|near) it$/;

/** Clues in words, without what is part of another: `“size” beside it` where `“finished size” beside it` is said. */
export function withoutRepeats(clues: readonly string[]): string[] {
  const quotes = clues.map((clue) => QUOTE.exec(clue)?.[1]);
  return clues.filter((clue, index) => {
    const own = quotes[index];
    const isPart = quotes.some((quote) => own !== undefined && quote !== own && quote?.includes(own));
    return !isPart && clues.indexOf(clue) === index;
  });
}

function nearness({ start, end }: Mention, phrase: Phrase, line: Line): number {
  if (line.isRow) {
    if (start >= phrase.start && end <= phrase.end) return PLACES.core;
    return start < phrase.core.start ? PLACES.head : PLACES.sentenceBehind;
  }
  if (start < phrase.core.end && end > phrase.core.start) return PLACES.core;
  if (start >= phrase.core.end && end <= phrase.end) return PLACES.behind - far(start - phrase.core.end);
  if (end <= phrase.core.start && start >= phrase.start) return PLACES.head - far(phrase.core.start - end);
  // "rows of (6)": what stands right before a number belongs to it, whatever stands before that.
  if (end <= phrase.core.start && /^[\s([]*$/.test(line.text.slice(end, phrase.core.start)))
    return PLACES.head;
  if (start >= phrase.core.end && start < phrase.end && end > phrase.end)
    // "(7) rows of (6)": what leads to the next number belongs to that.
    return leadsToNumber(end, line) ? PLACES.later : PLACES.behind - far(start - phrase.core.end);
  const inSentence = start >= phrase.sentence.start && end <= phrase.sentence.end;
  if (inSentence) return start < phrase.core.start ? PLACES.sentenceBefore : PLACES.sentenceBehind;
  if (start > phrase.core.start)
    return /[.!?]\s/.test(line.text.slice(phrase.sentence.end, start)) ? PLACES.later : PLACES.next;
  if (end <= runInEnd(line.text)) return PLACES.runIn;
  const between = line.text.slice(end, phrase.sentence.start).split(/[.!?]\s/).length - 1;
  return Math.max(0.2, PLACES.earlier - 0.1 * Math.max(0, between - 1));
}

function leadsToNumber(end: number, { text, spots }: Line): boolean {
  return spots.some((spot) => spot.start >= end && /^[\s([]*$/.test(text.slice(end, spot.start)));
}

/** A few words at the start of a paragraph that act as its heading: "*Inner border:* …", "2. Blocks. …". */
function runInEnd(text: string): number {
  return /^(?:\d+[.)]\s+)?[^.:!?\n]{0,40}[.:]/.exec(text)?.[0].length ?? 0;
}

const FARTHEST = 0.15;

/** What stands farther off in the same clause is a little less sure. */
function far(distance: number): number {
  return Math.min(FARTHEST, distance / 400);
}
