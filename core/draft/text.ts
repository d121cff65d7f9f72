/** The manuscript as the draft reads it: clauses with their numbers per size, and what the words around speak of. */
import type { Pattern } from '../block/pattern.ts';
import type { Range } from '../findings/finding.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import type { Rational } from '../quantity/rational.ts';
import { INCHES_PER, isMetric, type LengthUnit } from '../quantity/units.ts';
import { type Amount, readAmounts, type Side } from '../reading/amount.ts';
import { type Concept, classOf } from '../reading/concept.ts';
import { type Evidence, evidenceFor } from '../reading/evidence.ts';
import { type Line, readLines } from '../reading/line.ts';
import { type Phrase, readPhrases } from '../reading/phrase.ts';
import { sizeNames } from '../reading/sizeNames.ts';
import { vocabularyOf } from '../reading/vocabulary.ts';

/** One number, or one for each size of the pattern in its order. */
export interface Told extends Range {
  /** Counts, or inches. */
  readonly values: readonly [Rational, ...Rational[]];
  /** As the text writes it; `undefined` for a count. */
  readonly unit: LengthUnit | undefined;
}

export interface Clause {
  readonly count: Told | undefined;
  /** One side, or width and length as written; empty where no size is told, or not for every size. */
  readonly sides: readonly Told[];
  /** `5 x 7` without a unit. */
  readonly grid: readonly Told[];
  /** Its own words; those before its numbers and behind them, up to the next numbers; the sentence; the line. */
  readonly own: string;
  readonly before: string;
  readonly behind: string;
  readonly sentence: string;
  readonly line: Line;
  readonly phrase: Phrase;
  /** The clause that stands next in its line. */
  readonly next: Clause | undefined;
  /** How near a concept is said, from 0 to 1. */
  says(...concepts: readonly Concept[]): number;
  /** Whether one of these concepts is said, and no other of its class nearer. */
  speaksOf(...concepts: readonly Concept[]): boolean;
  /** The nearest concept of a class, without its class. */
  nearest(of: 'part' | 'border' | 'fabric' | 'form' | 'name', least?: number): string | undefined;
}

export interface Text {
  readonly manuscript: Manuscript;
  /** What is known so far: the names of sizes, fabrics, borders and blocks. */
  readonly pattern: Pattern;
  readonly lines: readonly Line[];
  readonly clauses: readonly Clause[];
  /** All words that are read. */
  readonly words: string;
}

/** Nearer than a heading two levels up, or what the rest of the sentence speaks of. */
const SAID = 0.5;

export function readText(manuscript: Manuscript, pattern: Pattern): Text {
  const lines = readLines(manuscript);
  const bare = bareUnit(manuscript);
  const clauses = lines.flatMap((line) => clausesOf(line, pattern, bare));
  return { manuscript, pattern, lines, clauses, words: lines.map(({ text }) => text).join('\n') };
}

/** What numbers without a unit are measured in: inches, where the text measures in nothing else. */
function bareUnit({ numbers }: Manuscript): LengthUnit | undefined {
  const units = new Set(numbers.flatMap(({ unit, notMeasurement }) => (notMeasurement ? [] : (unit ?? []))));
  return units.has('in') && ![...units].some(isMetric) ? 'in' : undefined;
}

function clausesOf(line: Line, pattern: Pattern, bare: LengthUnit | undefined): Clause[] {
  const phrases = readPhrases(line, readAmounts(line, pattern, sizeNames(pattern)));
  const vocabulary = vocabularyOf(pattern);
  const clauses: Clause[] = [];
  for (const [index, phrase] of [...phrases.entries()].reverse()) {
    const evidence = once(() => evidenceFor(line, phrase, vocabulary));
    const { core, count, size, sentence } = phrase;
    const isGrid = size?.isGrid === true && size.sides.length === 2;
    clauses.unshift({
      count: count && toldBy(count.sides[0], pattern, undefined),
      sides: size && !isGrid ? sidesOf(size, pattern, bare) : [],
      grid: size && isGrid ? sidesOf(size, pattern, undefined) : [],
      own: line.text.slice(phrase.start, phrase.end),
      before: line.text.slice(phrases[index - 1]?.core.end ?? 0, core.start),
      behind: line.text.slice(core.end, phrases[index + 1]?.core.start ?? line.text.length),
      sentence: line.text.slice(sentence.start, sentence.end),
      line,
      phrase,
      next: clauses[0],
      says: (...concepts) => evidence().strength(...concepts),
      speaksOf: (...concepts) => speaksOf(evidence(), concepts),
      nearest: (of, least = SAID) => {
        const clue = evidence().rival(of, []);
        return clue && clue.strength >= least ? clue.says.slice(of.length + 1) : undefined;
      },
    });
  }
  return clauses;
}

function speaksOf(evidence: Evidence, concepts: readonly Concept[]): boolean {
  const strength = evidence.strength(...concepts);
  const [concept] = concepts;
  if (strength < SAID || !concept) return false;
  return (evidence.rival(classOf(concept), concepts)?.strength ?? 0) < strength;
}

function sidesOf({ sides }: Amount, pattern: Pattern, bare: LengthUnit | undefined): readonly Told[] {
  const told = sides.map((side) => toldBy(side, pattern, bare));
  return told.every((each) => each !== undefined) ? told : [];
}

/** Nothing where the numbers are not one for all sizes, nor one for each. */
function toldBy({ spots }: Side, pattern: Pattern, bare: LengthUnit | undefined): Told | undefined {
  const [first] = spots;
  if (!first) return undefined;
  const ordered =
    spots.length === 1 && first.size === undefined
      ? spots
      : pattern.sizes.flatMap(({ name }) => spots.find(({ size }) => size === name) ?? []);
  if (ordered.length !== 1 && ordered.length !== pattern.sizes.length) return undefined;
  if (ordered.length === 1 && first.size !== undefined && pattern.sizes.length > 1) return undefined;
  const unit = spots.map(({ number }) => number.unit).find((each) => each !== undefined) ?? bare;
  const values = ordered.map(({ number: { value } }) => (unit ? value.mul(INCHES_PER[unit]) : value));
  const isSame = values.every((value) => value.equals(values[0] ?? 0));
  return {
    values: (isSame ? values.slice(0, 1) : values) as unknown as Told['values'],
    unit,
    start: rangeOf(first.number).start,
    end: rangeOf(ordered.at(-1)?.number ?? first.number).end,
  };
}

function rangeOf({ ranges }: ReadNumber): Range {
  return { start: ranges[0].start, end: ranges.at(-1)?.end ?? ranges[0].end };
}

/** Most phrases are never asked what their words speak of. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
