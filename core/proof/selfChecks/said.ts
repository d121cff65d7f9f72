/**
 * What a manuscript says, phrase by phrase, as the checks of a manuscript against itself read it: counts and lengths
 * of which nobody can doubt what they are. A number told with reserve, or one of a list, is left out.
 */
import type { House } from '../../block/house.ts';
import type { Manuscript, ReadNumber } from '../../manuscript/manuscript.ts';
import type { Rational } from '../../quantity/rational.ts';
import { INCHES_PER } from '../../quantity/units.ts';
import type { Amount, Side } from '../../reading/amount.ts';
import { partialPattern } from '../../reading/lexicon/partialWords.ts';
import type { Line } from '../../reading/line.ts';
import type { Phrase } from '../../reading/phrase.ts';
import { isReserved } from '../reserve.ts';

/** A number that is told plainly. */
export interface Told {
  readonly number: ReadNumber;
  /** A count, or inches. */
  readonly value: Rational;
  /** As the author wrote it, with the mark that it may share with a neighbour. */
  readonly text: string;
}

/** One phrase with its plain numbers. */
export interface Said {
  readonly phrase: Phrase;
  readonly count: Told | undefined;
  /** One side, or width and length as written; empty when there is no size, or no plain one. */
  readonly size: readonly Told[];
  /** The words that belong to it alone, and those before and behind its numbers up to the next numbers. */
  readonly own: string;
  readonly before: string;
  readonly behind: string;
  readonly sentence: string;
  readonly line: SaidLine;
}

export interface SaidLine {
  readonly line: Line;
  readonly text: string;
  readonly phrases: readonly Said[];
  readonly amounts: readonly Amount[];
  /** The texts around that speak of it: lead-in, list, heading, the nearest first. */
  readonly around: string;
  /** Its own words and those around, for finding out what it is about. */
  readonly about: string;
}

export function saidLine(line: Line, amounts: readonly Amount[], phrases: readonly Phrase[]): SaidLine {
  const around = line.layers
    .filter(({ where, strength }) => where !== 'before' && strength > 0.1)
    .map(({ text }) => text)
    .join('\n');
  const said: Said[] = [];
  const whole: SaidLine = {
    line,
    text: line.text,
    phrases: said,
    amounts,
    around,
    about: `${line.text}\n${around}`,
  };
  for (const [index, phrase] of phrases.entries()) {
    const { count, size, core, sentence } = phrase;
    said.push({
      phrase,
      count: count && toldCount(count),
      size: size ? toldSize(size) : [],
      own: line.text.slice(phrase.start, phrase.end),
      before: line.text.slice(phrases[index - 1]?.core.end ?? 0, core.start),
      behind: line.text.slice(core.end, phrases[index + 1]?.core.start ?? line.text.length),
      sentence: line.text.slice(sentence.start, sentence.end),
      line: whole,
    });
  }
  return whole;
}

function toldCount({ sides }: Amount): Told | undefined {
  const number = plain(sides[0]);
  return number && number.unit === undefined && number.kind === 'count' && number.value.d === 1n
    ? { number, value: number.value, text: number.text }
    : undefined;
}

function toldSize({ sides }: Amount): Told[] {
  const told = sides.map((side) => {
    const number = plain(side);
    return number && tellLength(number);
  });
  return told.every((each) => each !== undefined) ? told : [];
}

/** In inches; a number without a unit is none. */
export function tellLength(number: ReadNumber): Told | undefined {
  const { unit, value, written, text } = number;
  if (!unit) return undefined;
  const shared = written.unit === undefined ? MARKS[unit] : '';
  return { number, value: value.mul(INCHES_PER[unit]), text: text + shared };
}

const MARKS = { in: '"', ft: ' ft', yd: ' yd', mm: ' mm', cm: ' cm', m: ' m' } as const;

function plain({ spots }: Side): ReadNumber | undefined {
  const [spot, ...more] = spots;
  if (!spot || more.length > 0) return undefined;
  return isPlain(spot.number) ? spot.number : undefined;
}

export function isPlain(number: ReadNumber): boolean {
  return number.notMeasurement === undefined && !number.written.ambiguous && !isReserved(number, false);
}

/** Texts with which an author tells that a number is meant to be larger, or to be cut down. */
const LENIENT = partialPattern(['ample', 'left over'], 'the rest');

export function isLenient(text: string): boolean {
  return LENIENT.test(text);
}

export interface Text {
  readonly manuscript: Manuscript;
  readonly house: House;
  readonly lines: readonly SaidLine[];
  readonly phrases: readonly Said[];
  /** The words of the whole manuscript. */
  readonly words: string;
}
