/** The ledger of a pattern in which one thing is otherwise, opened when a slip first asks for it. */
import type { House } from '../../block/house.ts';
import type { Entries, Pattern } from '../../block/pattern.ts';
import { type Ledger, supposeLedger } from '../../figures/ledger.ts';

/** A pattern in which one thing is otherwise; `undefined` where it has no such thing. Always the same function for the same change. */
export type Change = (pattern: Pattern) => Pattern | undefined;

type Supposed = Pick<Ledger, 'figure'>;

export class Reopened {
  readonly #pattern: Pattern;
  readonly #ledgers = new Map<Change, Supposed | undefined>();

  constructor(pattern: Pattern) {
    this.#pattern = pattern;
  }

  by(change: Change): Supposed | undefined {
    if (!this.#ledgers.has(change)) {
      const pattern = change(this.#pattern);
      this.#ledgers.set(change, pattern && supposeLedger(pattern));
    }
    return this.#ledgers.get(change);
  }
}

export function withHouse(pattern: Pattern, rules: Partial<House>): Pattern {
  return { ...pattern, house: { ...pattern.house, ...rules } };
}

export function withEntries(pattern: Pattern, entries: Partial<Entries>): Pattern {
  return { ...pattern, entries: { ...pattern.entries, ...entries } };
}
