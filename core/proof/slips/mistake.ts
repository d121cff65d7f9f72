/** A wrong number, with what slips look at to explain it. */
import type { Pattern } from '../../block/pattern.ts';
import type { Figure, FigureKind, FigureValue } from '../../figures/figure.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { Rational } from '../../quantity/rational.ts';
import { fromInches } from '../../quantity/units.ts';
import { valuesBehind } from '../inputs.ts';
import { judge, type Stated, unitOf } from '../judge.ts';
import type { Change, Reopened } from './reopened.ts';

/** A number that is not what its figure says. */
export interface Miss {
  readonly stated: Stated & { readonly text: string };
  readonly figure: Figure;
  readonly value: FigureValue;
  /** `null` where the sizes do not differ. */
  readonly size: string | null;
  /** The right number as the author would write it; `undefined` where it cannot be written so. */
  readonly right: string | undefined;
}

export class Mistake {
  readonly stated: Miss['stated'];
  readonly figure: Figure;
  readonly value: FigureValue;
  readonly size: string | null;
  readonly right: string | undefined;
  /** The stated number as a count or in inches. */
  readonly amount: Rational;
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  readonly #reopened: Reopened;
  #behind: ReadonlySet<string> | undefined;

  constructor(miss: Miss, amount: Rational, pattern: Pattern, ledger: Ledger, reopened: Reopened) {
    this.stated = miss.stated;
    this.figure = miss.figure;
    this.value = miss.value;
    this.size = miss.size;
    this.right = miss.right;
    this.amount = amount;
    this.pattern = pattern;
    this.ledger = ledger;
    this.#reopened = reopened;
  }

  get id(): string {
    return this.figure.id;
  }

  get kind(): FigureKind {
    return this.figure.kind;
  }

  /** The number as the author wrote it. */
  get text(): string {
    return this.stated.text;
  }

  /** Whether a value is exactly the stated number. */
  is(value: FigureValue | undefined): boolean {
    return value !== undefined && isExactly(this.stated, this.figure, value, this.pattern);
  }

  /** The same for a count or a length in inches. */
  measures(amount: Rational | undefined): boolean {
    return amount?.equals(this.amount) === true;
  }

  /** Another figure, and its value for the size of this one. */
  other(id: string): { readonly figure: Figure; readonly value: FigureValue } | undefined {
    const figure = this.ledger.figure(id);
    const value = figure?.values.get(this.#sizeName);
    return figure && value && { figure, value };
  }

  /**
   * Whether the stated number is right by a pattern in which something is changed.
   *
   * @param where the entry of the block, or the rule of the house, that the change is made in: what does not rest on it
   *   stays as it is, and no ledger is opened
   */
  isRightBy(change: Change, where: string): boolean {
    // What a rule of the house says is no slip in working with it.
    if (this.id.startsWith('house.') || !this.#restsOn.has(where)) return false;
    return this.is(this.#reopened.by(change)?.figure(this.id)?.values.get(this.#sizeName));
  }

  /** Entries of the block, and rules of the house, that the figure was computed from. */
  get #restsOn(): ReadonlySet<string> {
    this.#behind ??= new Set(
      valuesBehind(this.id, this.#sizeName, this.ledger).flatMap(({ inputs, assumes }) => [
        ...assumes,
        ...inputs.flatMap((path) => path.map(String)),
      ]),
    );
    return this.#behind;
  }

  /** Whether the number would be right if it were written in another unit. */
  isRightIn(unit: NonNullable<Stated['unit']>): boolean {
    return isExactly({ ...this.stated, unit }, this.figure, this.value, this.pattern);
  }

  /** Whether another value in the unit of the number would be right. */
  isRightAs(value: Rational): boolean {
    return isExactly({ ...this.stated, value }, this.figure, this.value, this.pattern);
  }

  /** The right value in the unit of the number. */
  get rightWritten(): Rational {
    const { kind } = this;
    const { shown } = this.value;
    return kind === 'count' ? shown : fromInches(shown, unitOf(this.stated, kind, this.pattern.house));
  }

  get #sizeName(): string {
    return this.size ?? this.pattern.sizes.find(({ name }) => this.figure.values.has(name))?.name ?? '';
  }
}

/** Not only enough. */
function isExactly(stated: Stated, { kind, isCut }: Figure, value: FigureValue, { house }: Pattern): boolean {
  const figure = { kind, rule: 'exact', ...(isCut === undefined ? {} : { isCut }) } as const;
  return judge(stated, figure, value, house) === 'verified';
}
