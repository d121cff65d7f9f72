/**
 * What a manuscript says, phrase by phrase, as the checks of a manuscript against itself read it: counts and lengths
 * of which nobody can doubt what they are. A number told with reserve, or one of a list, is left out.
 */
import type { House } from '../../block/house.ts';
import type { Manuscript, ReadNumber } from '../../manuscript/manuscript.ts';
import type { Rational } from '../../quantity/rational.ts';
import { writeInches, writeMetric, writeYards } from '../../quantity/show.ts';
import { fromInches, INCHES_PER } from '../../quantity/units.ts';
import type { Amount, Side, SizedSpot } from '../../reading/amount.ts';
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
  /** Whether it is told for one size of the quilt, so that others have numbers of their own. */
  readonly isSized?: boolean;
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

/** One size of the quilt, of several. */
export interface OneSize {
  readonly name: string;
  /** The one size that a text names. */
  in(text: string): string | undefined;
}

/** @param size the one that is to be read, where numbers are told for several */
export function saidLine(
  line: Line,
  amounts: readonly Amount[],
  phrases: readonly Phrase[],
  size?: OneSize,
): SaidLine {
  const read = new PlainNumbers(line, size);
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
    const { count, size: lengths, core, sentence } = phrase;
    said.push({
      phrase,
      count: count && read.count(count),
      size: lengths ? read.size(lengths) : [],
      own: line.text.slice(phrase.start, phrase.end),
      before: line.text.slice(phrases[index - 1]?.core.end ?? 0, core.start),
      behind: line.text.slice(core.end, phrases[index + 1]?.core.start ?? line.text.length),
      sentence: line.text.slice(sentence.start, sentence.end),
      line: whole,
    });
  }
  return whole;
}

class PlainNumbers {
  readonly #size: string | undefined;
  /** The size of which the whole line tells, by its own words or its heading. */
  readonly #ofLine: string | undefined;

  constructor({ text, layers }: Line, size: OneSize | undefined) {
    this.#size = size?.name;
    const headings = layers.filter(({ where }) => where === 'heading' || where === 'lead-in');
    this.#ofLine =
      size && [text, ...headings.map((layer) => layer.text)].flatMap((each) => size.in(each) ?? [])[0];
  }

  count({ sides }: Amount): Told | undefined {
    const spot = this.#plain(sides[0]);
    if (!spot) return undefined;
    const { number } = spot;
    return number.unit === undefined && number.kind === 'count' && number.value.d === 1n
      ? { number, value: number.value, text: number.text, isSized: this.#isSized(spot) }
      : undefined;
  }

  size({ sides }: Amount): Told[] {
    const told = sides.map((side) => {
      const spot = this.#plain(side);
      const length = spot && tellLength(spot.number);
      return length && { ...length, isSized: this.#isSized(spot) };
    });
    return told.every((each) => each !== undefined) ? told : [];
  }

  #isSized({ size }: SizedSpot): boolean {
    return this.#size !== undefined && (size ?? this.#ofLine) === this.#size;
  }

  /** The one number of a side that holds for the size. */
  #plain({ spots }: Side): SizedSpot | undefined {
    const holding = spots.filter((spot) => {
      const told = spot.size ?? this.#ofLine;
      return this.#size === undefined || told === undefined || told === this.#size;
    });
    const [spot, ...more] = holding;
    return spot && more.length === 0 && isPlain(spot.number) ? spot : undefined;
  }
}

/** In inches; a number without a unit is none. */
export function tellLength(number: ReadNumber): Told | undefined {
  const { unit, value, written, text } = number;
  if (!unit) return undefined;
  const shared = written.unit === undefined ? MARKS[unit] : '';
  return { number, value: value.mul(INCHES_PER[unit]), text: text + shared };
}

const MARKS = { in: '"', ft: ' ft', yd: ' yd', mm: ' mm', cm: ' cm', m: ' m' } as const;

/** Inches, in the unit in which another length is written. */
export function writeAs(inches: Rational, { number: { unit } }: Told): string {
  if (unit === 'yd') return writeYards(fromInches(inches, unit));
  if (unit === 'mm' || unit === 'cm' || unit === 'm') return writeMetric(fromInches(inches, unit), unit);
  return writeInches(inches);
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
