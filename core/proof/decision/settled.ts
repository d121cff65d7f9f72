/** One candidate with the numbers of its phrase: which of them agree, and what words and numbers say together. */
import type { Pattern } from '../../block/pattern.ts';
import type { Figure } from '../../figures/figure.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import type { Side } from '../../reading/amount.ts';
import type { Candidate } from '../../reading/candidates.ts';
import type { ReadPhrase } from '../../reading/readPhrases.ts';
import { fitOf, isExactFit } from '../fit.ts';
import type { Tie } from '../proof.ts';
import { readSize } from '../readSize.ts';

/** What a number that differs in a way in which people err costs. */
const SLIP = 2.5;

/** Rules of the house, of which a sentence speaks only in its own clause. */
export const HOUSE = 'house';
export const USABLE_WIDTH = 'house.usable width';

export interface SettledTie {
  readonly number: ReadNumber;
  readonly tie: Tie;
  readonly agrees: boolean;
  /** Whether it is the very number, not only enough. */
  readonly isExact: boolean;
  /** How much its agreement says; nothing where it is not exact. */
  readonly told: number;
}

export interface Settled {
  readonly candidate: Candidate;
  /** What its words and numbers say for it. */
  readonly total: number;
  /** Whether its numbers are right, or wrong in a way in which people err. */
  readonly isPossible: boolean;
  readonly ties: readonly SettledTie[];
}

export function settle(candidate: Candidate, phrase: ReadPhrase, pattern: Pattern, ledger: Ledger): Settled {
  const sides = candidate.readings.flatMap(({ side, figure: id }) => {
    const figure = ledger.figure(id);
    return figure ? [{ id, ...settleSide(side, figure, phrase, pattern) }] : [];
  });
  const someAgree = sides.some(({ ties }) => isRight(ties));
  // That strips reach across the fabric is said in passing: where nothing else agrees, another length is meant.
  const isMeant = ({ id, ties }: { id: string; ties: readonly SettledTie[] }) =>
    id !== USABLE_WIDTH || candidate.thing.topic === HOUSE || isRight(ties) || someAgree;
  // Of the two sides of a whole quilt, one may be wrong in any way where the other is its very own.
  const isWholePair = WHOLE.test(candidate.thing.key) && sides.length === 2 && sides.some(isOwn);
  return {
    candidate,
    total: candidate.score + sides.reduce((sum, { worth }) => sum + worth, 0),
    isPossible: sides.every((side) => (side.isPossible || isWholePair) && isMeant(side)),
    ties: sides.flatMap(({ ties }) => ties.map((each) => ({ ...each, tie: withClues(each.tie, candidate) }))),
  };
}

/** Things of which a manuscript tells both sides, and of which there is one. */
const WHOLE = /^(?:quilt|backing|batting)(?: finished)?$/;
/** So much says one side that is not found in a quilt by chance. */
const TELLING = 3;

function isOwn({ ties }: { readonly ties: readonly SettledTie[] }): boolean {
  return ties.length > 0 && ties.every(({ told }) => told >= TELLING);
}

function isRight(ties: readonly SettledTie[]): boolean {
  return ties.length > 0 && ties.every(({ agrees }) => agrees);
}

function settleSide({ spots, twins }: Side, figure: Figure, { evidence }: ReadPhrase, pattern: Pattern) {
  const all = [...spots, ...twins];
  const ties: SettledTie[] = [];
  let [worth, right, strange] = [0, 0, 0];
  for (const { number, ...spot } of all) {
    const found = readSize(figure, spot, evidence, pattern);
    const fit = found ? fitOf(number, figure, found.value, pattern.house) : 'strange';
    const agrees = typeof fit === 'number';
    if (agrees) right++;
    if (fit === 'strange') strange++;
    worth += agrees ? fit : -SLIP;
    const isExact = isExactFit(fit);
    if (found)
      ties.push({ number, agrees, isExact, told: agrees && isExact ? fit : 0, tie: { figure, ...found } });
  }
  // One of a list, or of two units, may be wrong in any way where the others are right.
  const isPossible = strange === 0 || right >= all.length / 2;
  return { ties, isPossible, worth: worth / Math.max(1, all.length) };
}

/** The clues are put into words only when somebody asks. */
function withClues(tie: Tie, candidate: Candidate): Tie {
  return {
    ...tie,
    get evidence() {
      return [...candidate.clues, ...tie.evidence];
    },
  };
}

/** How the thing ties a number of its phrase. */
export function tieOf({ ties }: Settled, number: ReadNumber): SettledTie | undefined {
  return ties.find((each) => each.number === number);
}

/** How much the numbers of the phrase say for the thing. */
export function toldBy({ ties }: Settled): number {
  return ties.reduce((sum, { told }) => sum + told, 0);
}
