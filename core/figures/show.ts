/** How a pattern writes its values in working and messages: inches and yards, or centimetres and metres. */
import type { House } from '../block/house.ts';
import { type Rational, rational } from '../quantity/rational.ts';
import { Real, roundNearest } from '../quantity/real.ts';
import { fromInches, toInches } from '../quantity/units.ts';
import { writeInches, writeMetric, writeYards } from '../quantity/write.ts';
import type { Dimensioned } from './expression.ts';
import type { FigureKind, FigureValue } from './figure.ts';

/** A value that no ruler measures is written with two decimal places: `87.96"`. */
const HUNDREDTH = rational(1, 100);
/** The finest division that rulers and yardsticks have. */
const RULER = 16n;

/** How a need became what is shown. */
interface Rounding {
  readonly need: Real;
  readonly shown: Rational;
  readonly step: Rational | undefined;
  readonly round: 'up' | 'down';
  readonly kind: FigureKind;
}

export class Show {
  readonly #system: House['system'];

  constructor(system: House['system']) {
    this.#system = system;
  }

  /** Inches as `2¼"`, or `57 cm`. */
  length(inches: Rational | Real): string {
    const real = inches instanceof Real ? inches : Real.of(inches);
    if (this.#system === 'metric') return writeMetric(rounded(inUnit(real, 'cm')), 'cm');
    const exact = onRuler(real);
    return exact ? writeInches(exact) : writeInches(rounded(real), 'decimal');
  }

  /** `12" × 14"`. */
  size({ width, length }: { readonly width: Rational | Real; readonly length: Rational | Real }): string {
    return `${this.length(width)} × ${this.length(length)}`;
  }

  /** Inches as `1⅛ yd`, or `1.2 m`. */
  yardage(inches: Rational | Real): string {
    const real = inches instanceof Real ? inches : Real.of(inches);
    if (this.#system === 'metric') return writeMetric(rounded(inUnit(real, 'm')), 'm');
    const yards = inUnit(real, 'yd');
    return writeYards(onRuler(yards) ?? rounded(yards));
  }

  count(value: Rational | Real): string {
    const real = value instanceof Real ? value : Real.of(value);
    const exact = onRuler(real) ?? rounded(real);
    return exact.d === 1n ? String(exact.s * exact.n) : decimal(exact);
  }

  /** A value in the manner of its figure. */
  value(value: Rational | Real, kind: FigureKind): string {
    return this[kind](value);
  }

  /** What a figure states. */
  figure({ shown }: FigureValue, kind: FigureKind): string {
    return this.value(shown, kind);
  }

  dimensioned({ value, dimension }: Dimensioned): string {
    return dimension === 1 ? this.length(value) : this.count(value);
  }

  /** The last line of a working: `16⅞", rounded up to the next ⅛ yd, is ½ yd.`, or `18" is ½ yd.` */
  ending({ need, shown, step, round, kind }: Rounding): string[] {
    const exact = kind === 'count' ? this.count(need) : this.length(need);
    const result = this.value(shown, kind);
    if (step && !need.exact?.equals(shown))
      return [
        `${exact}, rounded ${round} to the ${round === 'up' ? 'next' : 'last'} ${this.value(step, kind)}, is ${result}.`,
      ];
    return kind === 'yardage' ? [`${exact} is ${result}.`] : [];
  }
}

function inUnit(inches: Real, unit: 'cm' | 'm' | 'yd'): Real {
  if (inches.exact) return Real.of(fromInches(inches.exact, unit));
  return inches.div(Real.of(toInches(rational(1), unit)));
}

function onRuler(value: Real): Rational | undefined {
  return value.exact && RULER % value.exact.d === 0n ? value.exact : undefined;
}

function rounded(value: Real): Rational {
  return roundNearest(value, HUNDREDTH);
}

function decimal(value: Rational): string {
  return String(value.valueOf());
}
