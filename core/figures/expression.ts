/**
 * The author's own figures: `finished.edge + 18"`, `max(a, b) round up to 1/8 yd`.
 *
 *     sum     = product { (+ | -) product }
 *     product = factor { (* | /) factor }
 *     factor  = - factor | number [unit] | figure id | function ( sum {, sum} ) | ( sum )
 *     all     = sum [ round up to sum ]
 *
 * A minus sign stands between spaces: `12-1/2"` is one length, as everywhere in the trade.
 */

import { applyEdits, type Range } from '../findings/finding.ts';
import { ONE } from '../quantity/rational.ts';
import { readNumberAt } from '../quantity/read.ts';
import { Real, roundDown, roundUp } from '../quantity/real.ts';
import { toInches } from '../quantity/units.ts';

/** A value with its dimension: 0 for a count, 1 for a length in inches, 2 for an area. */
export interface Dimensioned {
  readonly value: Real;
  readonly dimension: number;
}

/** What an expression may refer to. */
export interface Names {
  /** The longest figure id that begins at `offset` of `text`, if any does. */
  idAt(text: string, offset: number): string | undefined;
  /** `undefined` when the figure has no value; the expression has none either then. */
  value(id: string): Dimensioned | undefined;
  show(value: Dimensioned): string;
  /** One inch, or one centimetre in a metric pattern: what `ceil` and `floor` round a length to. */
  readonly whole: Real;
}

export class ExpressionError extends Error {
  readonly range: Range;

  constructor(message: string, range: Range) {
    super(message);
    this.range = range;
  }
}

/** Thrown and caught here: a figure that the expression needs has no value. */
const UNAVAILABLE = new Error('a figure has no value');

/** The value, and the sum as one would type it into a calculator: the figures replaced by their values. */
export interface Evaluated extends Dimensioned {
  readonly worked: string;
}

/** `undefined` when a figure it needs has no value. @throws ExpressionError at the place of a mistake. */
export function evaluate(text: string, names: Names): Evaluated | undefined {
  try {
    const evaluation = new Evaluation(text, names);
    const result = evaluation.all();
    return { ...result, worked: evaluation.worked() };
  } catch (error) {
    if (error === UNAVAILABLE) return undefined;
    throw error;
  }
}

/** Nesting beyond this is refused, so that a hostile expression cannot exhaust the stack. */
const DEEPEST = 50;
/** A longer sum is no figure of a pattern. */
const LONGEST = 500;
/** Numerators and denominators beyond this measure nothing: squares of squares would fill the memory. */
const LARGEST = 10n ** 30n;
/** How many operations on values that are not rational may stand one upon the other, over all figures. */
const MOST_UPON_EACH_OTHER = 200;
const operations = new WeakMap<Real, number>();

class Evaluation {
  readonly #text: string;
  readonly #names: Names;
  readonly #replaced: { start: number; end: number; text: string }[] = [];
  #at = 0;
  #depth = 0;

  constructor(text: string, names: Names) {
    this.#text = text;
    this.#names = names;
  }

  all(): Dimensioned {
    if (this.#text.length > LONGEST)
      throw this.#error('This is too long; divide it into several figures.', 0, this.#text.length);
    let value = this.#sum();
    const start = this.#at;
    if (this.#take(/round\s+up\s+to\b/y)) value = this.#roundUp(value, this.#sum(), start);
    this.#skip();
    if (this.#at < this.#text.length)
      throw this.#error('The figure should end here.', this.#at, this.#text.length);
    return value;
  }

  worked(): string {
    return applyEdits(this.#text, this.#replaced)
      .replace(/\s*\*\s*/g, ' × ')
      .replace(/\s*÷\s*|\s+\/\s+/g, ' ÷ ');
  }

  #sum(): Dimensioned {
    let left = this.#product();
    for (;;) {
      const start = this.#at;
      const sign = this.#take(/[+\-−]/y);
      if (!sign) return left;
      const right = this.#product();
      if (left.dimension !== right.dimension)
        throw this.#error(
          `${words(left)} and ${words(right).toLowerCase()} cannot be ${sign === '+' ? 'added' : 'subtracted'}.`,
          start,
          this.#at,
        );
      const value = sign === '+' ? left.value.add(right.value) : left.value.sub(right.value);
      left = { value: this.#kept(value, start, left, right), dimension: left.dimension };
    }
  }

  #product(): Dimensioned {
    let left = this.#factor();
    for (;;) {
      const start = this.#at;
      const sign = this.#take(/[*×/÷]/y);
      if (!sign) return left;
      const right = this.#factor();
      if (sign === '*' || sign === '×') {
        const value = this.#kept(left.value.mul(right.value), start, left, right);
        left = { value, dimension: left.dimension + right.dimension };
      } else {
        if (right.value.sign() === 0) throw this.#error('Nothing can be divided by zero.', start, this.#at);
        const value = this.#kept(left.value.div(right.value), start, left, right);
        left = { value, dimension: left.dimension - right.dimension };
      }
    }
  }

  #factor(): Dimensioned {
    this.#skip();
    const start = this.#at;
    if (++this.#depth > DEEPEST)
      throw this.#error('The figure is nested too deeply.', start, this.#text.length);
    try {
      if (this.#take(/[-−]/y)) {
        const factor = this.#factor();
        return { ...factor, value: this.#kept(factor.value.neg(), start, factor) };
      }
      if (this.#take(/\(/y)) return this.#closed(this.#sum());
      return this.#number() ?? this.#call() ?? this.#figure();
    } finally {
      this.#depth--;
    }
  }

  #number(): Dimensioned | undefined {
    if (!/[\d½¼¾⅓⅔⅛⅜⅝⅞.]/.test(this.#text[this.#at] ?? '')) return undefined;
    const number = readNumberAt(this.#text, this.#at);
    if (!number) throw this.#error('This number cannot be read.', this.#at, this.#at + 1);
    this.#at = number.end;
    const { value, unit } = number;
    return unit
      ? { value: Real.of(toInches(value, unit)), dimension: 1 }
      : { value: Real.of(value), dimension: 0 };
  }

  #call(): Dimensioned | undefined {
    const start = this.#at;
    const name = this.#take(/(?:round\s+up\s+to|ceil|floor|sqrt|min|max)(?=\s*\()/y);
    if (!name) return undefined;
    this.#take(/\(/y);
    const values = [this.#sum()];
    while (this.#take(/,/y)) values.push(this.#sum());
    this.#closed(ONE);
    return this.#apply(name.replace(/\s+/g, ' '), values, start);
  }

  #apply(name: string, values: readonly Dimensioned[], start: number): Dimensioned {
    const [first, second] = values;
    const wanted = name === 'round up to' ? 2 : name === 'min' || name === 'max' ? values.length : 1;
    if (!first || values.length !== wanted)
      throw this.#error(
        `“${name}” takes ${wanted === 1 ? 'one value' : `${wanted} values`}.`,
        start,
        this.#at,
      );
    const whole = first.dimension === 1 ? this.#names.whole : Real.of(1);
    switch (name) {
      case 'ceil':
        return { ...first, value: Real.of(roundUp(first.value.div(whole), ONE)).mul(whole) };
      case 'floor':
        return { ...first, value: Real.of(roundDown(first.value.div(whole), ONE)).mul(whole) };
      case 'sqrt':
        if (first.value.sign() < 0)
          throw this.#error('A negative value has no square root.', start, this.#at);
        return { value: this.#kept(first.value.sqrt(), start, first), dimension: first.dimension / 2 };
      case 'round up to':
        return this.#roundUp(first, second ?? first, start);
      default:
        return values.reduce((a, b) => {
          if (a.dimension !== b.dimension)
            throw this.#error(
              `${words(a)} and ${words(b).toLowerCase()} cannot be compared.`,
              start,
              this.#at,
            );
          return a.value.compare(b.value) <= 0 === (name === 'min') ? a : b;
        });
    }
  }

  #roundUp(value: Dimensioned, step: Dimensioned, start: number): Dimensioned {
    if (value.dimension !== step.dimension)
      throw this.#error(
        `${words(value)} cannot be rounded up to ${words(step).toLowerCase()}.`,
        start,
        this.#at,
      );
    if (step.value.sign() <= 0 || !step.value.exact)
      throw this.#error(
        'The step to round to must be more than nothing, and a plain number.',
        start,
        this.#at,
      );
    return { value: Real.of(roundUp(value.value, step.value.exact)), dimension: value.dimension };
  }

  #figure(): Dimensioned {
    const id = this.#names.idAt(this.#text, this.#at);
    if (id === undefined) {
      const word = /[\p{L}\p{N}_.-]+/uy;
      word.lastIndex = this.#at;
      const found = word.exec(this.#text)?.[0];
      if (!found)
        throw this.#error(
          'A length, a count or the name of a figure is missing here.',
          this.#at,
          this.#at + 1,
        );
      throw new UnknownName(found, { start: this.#at, end: this.#at + found.length });
    }
    const value = this.#names.value(id);
    if (!value) throw UNAVAILABLE;
    this.#replaced.push({ start: this.#at, end: this.#at + id.length, text: this.#names.show(value) });
    this.#at += id.length;
    return value;
  }

  /** Refuses what no pattern computes with, so that neither digits nor operations pile up from figure to figure. */
  #kept(result: Real, start: number, ...from: readonly Dimensioned[]): Real {
    const { exact } = result;
    const count = exact ? 0 : 1 + Math.max(...from.map(({ value }) => operations.get(value) ?? 0));
    if (exact && (exact.n > LARGEST || exact.d > LARGEST))
      throw this.#error('This value is too large, or too fine, to be meant.', start, this.#at);
    if (count > MOST_UPON_EACH_OTHER)
      throw this.#error('Too many figures are computed one from the other here.', start, this.#at);
    operations.set(result, count);
    return result;
  }

  #closed<T>(value: T): T {
    if (!this.#take(/\)/y)) throw this.#error('A closing bracket is missing here.', this.#at, this.#at + 1);
    return value;
  }

  #skip(): void {
    while (/\s/.test(this.#text[this.#at] ?? '')) this.#at++;
  }

  #take(pattern: RegExp): string | undefined {
    this.#skip();
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.#text)?.[0];
    if (found !== undefined) this.#at += found.length;
    return found;
  }

  #error(message: string, start: number, end: number): ExpressionError {
    const last = this.#text.length;
    while (start < end && /\s/.test(this.#text[start] ?? '')) start++;
    return new ExpressionError(message, {
      start: Math.min(start, Math.max(0, last - 1)),
      end: Math.min(end, last),
    });
  }
}

/** A word that is no figure. */
export class UnknownName extends ExpressionError {
  readonly found: string;

  constructor(found: string, range: Range) {
    super(`There is no figure “${found}”.`, range);
    this.found = found;
  }
}

function words({ dimension }: Dimensioned): string {
  return { 0: 'A count', 1: 'A length', 2: 'An area' }[dimension] ?? 'This value';
}
