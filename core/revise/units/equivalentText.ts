/** Lengths in the other system of units, as the author writes such lengths elsewhere, or else in the house style. */
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import { converted, otherUnit } from '../../proof/conversion.ts';
import { amountOf } from '../../proof/judge.ts';
import type { Account, Proof } from '../../proof/proof.ts';
import type { Rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { type LengthUnit, toInches } from '../../quantity/units.ts';
import { writeInches, writeLike, writeMetric, writeYards } from '../../quantity/write.ts';
import type { Sides } from './addition.ts';

const SIGN = /[x×X]|by/;

export class EquivalentText {
  readonly #proof: Proof;
  readonly #accounts: ReadonlyMap<ReadNumber, Account>;

  constructor(proof: Proof, accounts: ReadonlyMap<ReadNumber, Account>) {
    this.#proof = proof;
    this.#accounts = accounts;
  }

  /** `undefined` where it cannot be written. */
  of(sides: Sides): string | undefined {
    const [first, second] = sides;
    const one = this.#one(first);
    if (!second) return one;
    const other = this.#one(second);
    const between = first.passage.text.slice(first.written.end, second.written.start);
    return one && other && `${one} ${SIGN.exec(between)?.[0] ?? '×'} ${other}`;
  }

  #one(number: ReadNumber): string | undefined {
    const { value, unit, kind } = number;
    if (!unit) return undefined;
    const { house } = this.#proof.pattern;
    const tie = this.#accounts.get(number)?.tie;
    const isFabric = (tie?.figure.kind ?? kind) === 'yardage';
    const target = otherUnit(unit, isFabric || unit === 'yd' || unit === 'm', house);
    // What was rounded already is not rounded a second time, unless the author has chosen another value.
    const isFigure = tie && amountOf(number, tie.figure.kind, house)?.equals(tie.value.shown);
    const need = isFigure ? tie.value.need : Real.of(toInches(value, unit));
    const rule = tie?.figure.rule ?? (isFabric ? 'at least' : 'exact');
    return this.#written(converted({ need, rule, unit: target }, house), target);
  }

  #written(value: Rational, unit: LengthUnit): string | undefined {
    const { numbers } = this.#proof.manuscript;
    const like = numbers.find(
      ({ written, notMeasurement }) =>
        written.unit === unit &&
        notMeasurement === undefined &&
        !written.ambiguous &&
        written.notation.numeral.form !== 'words',
    );
    const habits = numbers.map(({ written }) => written).filter((written) => written.unit === unit);
    if (like) return writeLike(value, like.written, like.passage.text, habits);
    if (unit === 'in') return writeInches(value);
    if (unit === 'yd') return writeYards(value);
    return unit === 'ft' ? undefined : writeMetric(value, unit);
  }
}
