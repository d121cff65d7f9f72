/**
 * Why a number is wrong: the slip that gives exactly the stated number. It explains a number that is known to be wrong
 * and never decides whether it is.
 */
import type { Pattern } from '../../block/pattern.ts';
import type { Ledger } from '../../figures/ledger.ts';
import { amountOf } from '../judge.ts';
import { type Miss, Mistake } from './mistake.ts';
import { Reopened } from './reopened.ts';
import type { Slip } from './slip.ts';
import { SLIPS } from './table.ts';

export interface FoundSlip {
  readonly name: Slip['name'];
  /** As a clause; `undefined` where the message says it already. */
  readonly clause: string | undefined;
}

/** Tells slips of one pattern, and opens each ledger in which something is otherwise only once. */
export class SlipFinder {
  readonly #pattern: Pattern;
  readonly #ledger: Ledger;
  readonly #reopened: Reopened;

  constructor(pattern: Pattern, ledger: Ledger) {
    this.#pattern = pattern;
    this.#ledger = ledger;
    this.#reopened = new Reopened(pattern);
  }

  /** `undefined` where no slip gives the stated number, or two that mean different things. */
  likeliest(miss: Miss): FoundSlip | undefined {
    const amount = amountOf(miss.stated, miss.figure.kind, this.#pattern.house);
    if (!amount) return undefined;
    const mistake = new Mistake(miss, amount, this.#pattern, this.#ledger, this.#reopened);
    const strong = theOne(
      SLIPS.filter(({ isWeak }) => !isWeak),
      mistake,
    );
    return strong === 'none'
      ? known(
          theOne(
            SLIPS.filter(({ isWeak }) => isWeak),
            mistake,
          ),
        )
      : known(strong);
  }
}

type Choice = FoundSlip | 'none' | 'several';

function theOne(slips: readonly Slip[], mistake: Mistake): Choice {
  const found = new Map<string, FoundSlip>();
  for (const slip of slips) {
    const explained = slip.explain(mistake);
    if (!explained) continue;
    const means = explained.means ?? slip.name;
    if (!found.has(means)) found.set(means, { name: slip.name, clause: explained.clause });
  }
  const [only] = found.values();
  if (!only) return 'none';
  return found.size === 1 ? only : 'several';
}

function known(choice: Choice): FoundSlip | undefined {
  return typeof choice === 'string' ? undefined : choice;
}
