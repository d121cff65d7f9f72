/** What one phrase speaks of, decided from its candidates: the words choose, and the numbers where words leave a choice. */
import type { Pattern } from '../../block/pattern.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import { ZERO } from '../../quantity/rational.ts';
import type { ReadPhrase } from '../../reading/readPhrases.ts';
import type { Thing } from '../../reading/things/index.ts';
import { amountOf } from '../judge.ts';
import type { Tie } from '../proof.ts';
import { hasAlibi, isOvershadowed, isSameValue, isSpare, isSum } from './alibis.ts';
import { isDoubtful } from './doubts.ts';
import { type Settled, settle, tieOf, toldBy } from './settled.ts';

/** Below this the words do not say enough, whatever the numbers. */
const ENOUGH = 2.8;
/** Words and numbers together must say so much to verify a number, and so much to call it wrong. */
const VERIFIED = 5.5;
const WRONG = 1.3;
/** A reading whose words fit so much worse is none, whatever its numbers. */
const MARGIN = 2;
/** One that fits a little worse may still explain the numbers. */
const NEAR = 2.5;
/** So much must the numbers of a phrase say for a thing of which something that the trade would say is missing. */
const REDEEMED = 3;
/** And so much for one of which hardly anything is said. */
const TELLING = 5;
/** Words that fit worse than this are not looked at further. */
const FAINT = -1;
/** What a number cannot be decided between needs words as strong as this for each reading, and few readings. */
const STRONG = 3;
const MOST_READINGS = 3;

export class Decision {
  readonly ties: (readonly [ReadNumber, Tie])[] = [];
  /** Numbers that are wrong whichever of a few figures they state, the likeliest first. */
  readonly unclear: (readonly [ReadNumber, readonly Tie[]])[] = [];
  /** The thing that the phrase speaks of beyond doubt. */
  readonly anchor: Thing | undefined;
  readonly #phrase: ReadPhrase;
  readonly #pattern: Pattern;
  readonly #ledger: Ledger;

  constructor(phrase: ReadPhrase, pattern: Pattern, ledger: Ledger) {
    this.#phrase = phrase;
    this.#pattern = pattern;
    this.#ledger = ledger;
    const possible = phrase.candidates
      .filter(({ score, isUnsaid }) => score >= FAINT && !isUnsaid)
      .map((candidate) => settle(candidate, phrase, pattern, ledger))
      .filter(({ ties, isPossible }) => ties.length > 0 && isPossible);
    const best = possible.find(({ candidate }) => !candidate.isWeak)?.candidate.score ?? 0;
    const settled = possible
      .filter((each) => each.candidate.score >= best - NEAR || isTelling(each))
      .sort((a, b) => b.total - a.total);
    this.anchor = settled[0] && isBeyondDoubt(settled[0]) ? settled[0].candidate.thing : undefined;
    const open = new Set(settled.flatMap(({ ties }) => ties.map(({ number }) => number)));
    for (const each of settled) {
      if (!isHeard(each, best) && !isTelling(each)) continue;
      for (const { number, tie, agrees, isExact } of each.ties) {
        if (!open.has(number)) continue;
        // That it is enough for a thing says little: what the words rather speak of may need more.
        if (!agrees || isExact || each.total >= VERIFIED) open.delete(number);
        if (agrees ? each.total >= VERIFIED : this.#isWrong(number, each, possible))
          this.ties.push([number, tie]);
        else if (!agrees) this.#unclear(number, each, settled);
      }
    }
  }

  #isWrong(number: ReadNumber, each: Settled, possible: readonly Settled[]): boolean {
    return (
      each.total >= WRONG &&
      !isOvershadowed(number, each, this.#phrase) &&
      !isDoubtful(number, each, this.#phrase, this.#pattern, this.#ledger) &&
      !isSpare(number, each, this.#pattern) &&
      !isSum(number, each, possible, this.#pattern) &&
      !hasAlibi(number, each, possible)
    );
  }

  /** Numbers whose every likely reading is strong, and which no reading explains, nor all of them together. */
  #unclear(number: ReadNumber, best: Settled, settled: readonly Settled[]): void {
    const readings = settled.flatMap((each) => {
      const found = tieOf(each, number);
      return found ? [{ ...found, total: each.total, isWeak: each.candidate.isWeak }] : [];
    });
    const likely = readings.filter(({ total }) => best.total - total < NEAR);
    if (readings.some(({ agrees }) => agrees)) return;
    if (likely.some(({ total, isWeak }) => isWeak || total < STRONG)) return;
    const values = likely.filter(
      ({ tie }, index) => likely.findIndex((one) => isSameValue(one.tie, tie)) === index,
    );
    if (values.length < 2 || values.length > MOST_READINGS) return;
    const sum = values.reduce((total, { tie }) => total.add(tie.value.shown), ZERO);
    if (amountOf(number, values[0]?.tie.figure.kind ?? 'count', this.#pattern.house)?.equals(sum)) return;
    this.unclear.push([number, values.map(({ tie }) => tie)]);
  }
}

/** Whether its words say enough, beside the best; what the trade would say besides, a number may say instead. */
function isHeard(each: Settled, best: number): boolean {
  const { score, isWeak } = each.candidate;
  return score >= Math.max(ENOUGH, best - MARGIN) && (!isWeak || toldBy(each) >= REDEEMED);
}

/** Whether its numbers say so much that few words are enough. */
function isTelling(each: Settled): boolean {
  return each.ties.every(({ isExact }) => isExact) && toldBy(each) >= TELLING;
}

function isBeyondDoubt({ candidate, total, ties }: Settled): boolean {
  return !candidate.isWeak && total >= VERIFIED && ties.every(({ agrees }) => agrees);
}
