/** What one phrase speaks of, decided from its candidates: the words choose, and the numbers where words leave a choice. */
import type { Pattern } from '../block/pattern.ts';
import type { Figure } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { ZERO } from '../quantity/rational.ts';
import type { Side } from '../reading/amount.ts';
import type { Candidate } from '../reading/candidates.ts';
import type { Concept } from '../reading/concept.ts';
import { BESIDE, type Evidence } from '../reading/evidence.ts';
import type { ReadPhrase } from '../reading/readPhrases.ts';
import type { Thing } from '../reading/things/index.ts';
import { fitOf, isExactFit } from './fit.ts';
import { amountOf, judge } from './judge.ts';
import type { Tie } from './proof.ts';
import { readSize } from './readSize.ts';

/** Below this the words do not say enough, whatever the numbers. */
const ENOUGH = 2.8;
/** Words and numbers together must say so much to verify a number, and so much to call it wrong. */
const VERIFIED = 5.5;
const WRONG = 1.3;
/** What a number that differs in a way in which people err costs. */
const SLIP = 2.5;
/** A reading whose words fit so much worse is none, whatever its numbers. */
const MARGIN = 2;
/** Whatever explains the numbers as they stand speaks for them, if its words fit half as well. */
const ALIBI = 1.5;
const ALIBI_MARGIN = 2.5;
/** Words that leave no doubt what is measured. */
const CLEAR = 6;
/** A reading that explains them must be heard so well beside the best. */
const ALIBI_SHARE = 0.5;
/** Of a thing that the words speak of so much less than of another, no number is called wrong. */
const RIVAL = 1.5;
/** So much says another number of the phrase that is the thing's very own. */
const BESIDE_IT = 2;
/** So much must the numbers of a phrase say for a thing of which something that the trade would say is missing. */
const REDEEMED = 3;
/** Words that fit worse than this are not looked at further. */
const FAINT = -1;
/** And so much for one of which hardly anything is said. */
const TELLING = 5;
/** A wrong number that another reading comes so near to is not told which of the two it is. */
const CLOSE = 0.75;
/** What is said of such a number needs words as strong as this for each reading, and few readings. */
const STRONG = 3;
const MOST_READINGS = 3;

const USABLE_WIDTH = 'house.usable width';

interface DecidedTie {
  readonly number: ReadNumber;
  readonly tie: Tie;
  readonly agrees: boolean;
  /** Whether it is the very number, not only enough. */
  readonly isExact: boolean;
  /** How much its agreement says; nothing where it is not exact. */
  readonly told: number;
}

interface Settled {
  readonly candidate: Candidate;
  readonly total: number;
  /** Whether its numbers are right, or wrong in a way in which people err. */
  readonly isPossible: boolean;
  readonly ties: readonly DecidedTie[];
}

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
      .map((candidate) => this.#settle(candidate))
      .filter(({ ties, isPossible }) => ties.length > 0 && isPossible);
    const best = possible.find(({ candidate }) => !candidate.isWeak)?.candidate.score ?? 0;
    const settled = possible
      .filter((each) => each.candidate.score >= best - ALIBI_MARGIN || isTelling(each))
      .sort((a, b) => b.total - a.total);
    this.anchor = settled[0] && isBeyondDoubt(settled[0]) ? settled[0].candidate.thing : undefined;
    const open = new Set(settled.flatMap(({ ties }) => ties.map(({ number }) => number)));
    for (const each of settled) {
      if (!isHeard(each, best) && !isTelling(each)) continue;
      for (const { number, tie, agrees, isExact } of each.ties) {
        if (!open.has(number)) continue;
        // That it is enough for a thing says little: what the words rather speak of may need more.
        if (!agrees || isExact || each.total >= VERIFIED) open.delete(number);
        const isWrong =
          each.total >= WRONG &&
          this.#isSpokenOf(number, each) &&
          !this.#isDoubtful(number, each) &&
          !this.#isSpare(number, each) &&
          !this.#isSum(number, each, possible) &&
          !hasAlibi(number, each, possible);
        if (agrees ? each.total >= VERIFIED : isWrong) this.ties.push([number, tie]);
        else if (!agrees) this.#unclear(number, each, settled);
      }
    }
  }

  /** Whether the words speak of nothing else so much more, whatever its number, or a number beside it tells. */
  #isSpokenOf(number: ReadNumber, { candidate, ties }: Settled): boolean {
    const isTold = ties.some((each) => each.number !== number && each.told >= BESIDE_IT);
    const most = isTold ? 2 * RIVAL : RIVAL;
    const all = this.#phrase.candidates.filter(
      ({ isWeak, readings }) =>
        !isWeak &&
        readings.some(({ side }) => [...side.spots, ...side.twins].some((spot) => spot.number === number)),
    );
    return all.every(({ said }) => candidate.said >= said - most);
  }

  /** So much more than needed is likelier another thing's number, or cut in another way, where nothing beside it agrees. */
  #isSpare(number: ReadNumber, { ties, candidate }: Settled): boolean {
    const own = ties.find((each) => each.number === number);
    if (!own || ties.some((each) => each !== own && each.agrees)) return false;
    if (candidate.said >= CLEAR && isNotFarAbove(number, own.tie, this.#pattern)) return false;
    return judge(number, own.tie.figure, own.tie.value, this.#pattern.house) === 'generous';
  }

  /** Numbers whose every likely reading is strong, and which no reading explains, nor all of them together. */
  #unclear(number: ReadNumber, best: Settled, settled: readonly Settled[]): void {
    const readings = settled.flatMap(({ ties, total, candidate }) => {
      const found = ties.find((tie) => tie.number === number);
      return found ? [{ ...found, total, isWeak: candidate.isWeak }] : [];
    });
    const likely = readings.filter(({ total }) => best.total - total < ALIBI_MARGIN);
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

  /** Whether a number that differs may well count or measure a part, or another thing that no figure fixes. */
  #isDoubtful(number: ReadNumber, { candidate, ties }: Settled): boolean {
    const { evidence, line, phrase } = this.#phrase;
    const strength = (...concepts: Concept[]) => evidence.clue(concepts)?.strength ?? 0;
    const isCount = number.unit === undefined && number.kind === 'count';
    const isOfEach =
      candidate.said >= (strength('scope:each') >= BESIDE ? CLEAR : CLEAR + 2) &&
      strength('scope:each') >= FROM_EACH;
    const isAlone = !ties.some((each) => each.number !== number && each.isExact);
    const figure = ties.find((each) => each.number === number)?.tie.figure.id;
    // A list of which no number fits lists something else.
    const list = candidate.readings.find(({ side }) => side.spots.some((spot) => spot.number === number))
      ?.side.spots;
    if (
      list &&
      list.length > 1 &&
      !list.some((spot) => ties.some((tie) => tie.number === spot.number && tie.agrees))
    )
      return true;
    if (isLooseWord(number, evidence) || isReckoned(number)) return true;
    // "It ended up as one big piece": the word is an article as well, where nothing is cut or made.
    if (number.value.equals(1) && isWord(number) && strength('state:cut', 'act:make') < BESIDE) return true;
    if (PER.test(figure ?? '') && strength('scope:container') < BESIDE) return true;
    if (isCount && strength('scope:part') >= BESIDE) return true;
    // "From each fat quarter, cut:" so many of each one, which few figures count.
    if (
      isCount &&
      strength('scope:container') >= FROM_EACH &&
      strength('scope:total') < BESIDE &&
      !PER.test(figure ?? '')
    )
      return true;
    if (isCount && isAlone && number.value.compare(FEW) <= 0 && !SURE_COUNTS.test(candidate.thing.key))
      return !(figure?.endsWith('.each') && isOfEach);
    if (
      isCount &&
      SERIES.test(line.text.slice(Math.max(0, phrase.core.start - 8), phrase.core.end + 8)) &&
      isAlone
    )
      return true;
    // "Lay them out in three rows": a block has rows as well.
    if (candidate.thing.topic === 'layout' && number.value.compare(FEW) <= 0 && !this.#isOfBlocks())
      return true;
    if (candidate.thing.topic === 'layout' && this.#makesAllBlocks(number)) return true;
    // "Block rows: 4 blocks": rows are what is called so right behind the number, and there are rows of sashing as well.
    if (
      figure === 'layout.rows' &&
      (!ROWS.test(line.text.slice(phrase.core.end)) || strength('part:sashing') > 0.4)
    )
      return true;
    // "2 top and bottom borders" are no strips.
    if (figure?.endsWith('.strips') && strength('form:strip') < BESIDE) return true;
    if (figure === USABLE_WIDTH && candidate.thing.topic !== HOUSE)
      return isFabricWidth(number) || !ties.every((each) => each.number === number || each.isExact);
    return (
      candidate.thing.topic === HOUSE &&
      strength('part:seam', 'part:selvage', 'part:overhang', 'part:joining') < BESIDE
    );
  }

  /** Whether it counts several things together that are alike in all else: squares of one size for two units. */
  #isSum(number: ReadNumber, best: Settled, all: readonly Settled[]): boolean {
    if (!best.ties.some(({ isExact }) => isExact)) return false;
    const like = all.flatMap(({ ties }) => {
      const own = ties.find((tie) => tie.number === number);
      const isLike = best.ties.every(
        (each) => !each.isExact || ties.some((tie) => tie.number === each.number && tie.isExact),
      );
      return own && isLike ? [own.tie] : [];
    });
    const distinct = like.filter(
      ({ figure }, index) => like.findIndex((one) => one.figure === figure) === index,
    );
    const amount = amountOf(number, 'count', this.#pattern.house);
    const values = distinct
      .filter(({ figure }) => figure.id.endsWith('.count'))
      .map(({ value }) => value.shown);
    return values.some((a, i) => values.slice(i + 1).some((b) => amount?.equals(a.add(b))));
  }

  /** "3 columns of 10" are thirty blocks as well, sewn together in another order. */
  #makesAllBlocks({ value, written, passage }: ReadNumber): boolean {
    const all = [...(this.#ledger.figure('layout.blocks')?.values.values() ?? [])];
    return passage.numbers.some(
      (other) =>
        Math.abs(other.written.start - written.start) < NEARBY &&
        all.some(({ shown }) => shown.equals(value.mul(other.value))),
    );
  }

  #isOfBlocks(): boolean {
    const { evidence } = this.#phrase;
    const blocks = Object.keys(this.#pattern.entries.blocks ?? {});
    const clue = evidence.clue(['part:block', ...blocks.map((name): Concept => `name:block.${name}`)]);
    return (clue?.strength ?? 0) >= BESIDE;
  }

  #settle(candidate: Candidate): Settled {
    const sides = candidate.readings.flatMap(({ side, figure: id }) => {
      const figure = this.#ledger.figure(id);
      return figure ? [{ id, ...this.#settleSide(side, figure) }] : [];
    });
    const isRight = (ties: readonly DecidedTie[]) => ties.length > 0 && ties.every(({ agrees }) => agrees);
    const someAgree = sides.some(({ ties }) => isRight(ties));
    // That strips reach across the fabric is said in passing: where nothing else agrees, another length is meant.
    const isMeant = ({ id, ties }: { id: string; ties: readonly DecidedTie[] }) =>
      id !== USABLE_WIDTH || candidate.thing.topic === HOUSE || isRight(ties) || someAgree;
    return {
      candidate,
      total: candidate.score + sides.reduce((sum, { worth }) => sum + worth, 0),
      isPossible: sides.every((side) => side.isPossible && isMeant(side)),
      ties: sides.flatMap(({ ties }) =>
        ties.map((each) => ({ ...each, tie: withClues(each.tie, candidate) })),
      ),
    };
  }

  #settleSide({ spots, twins }: Side, figure: Figure) {
    const all = [...spots, ...twins];
    const ties: DecidedTie[] = [];
    let [worth, right, strange] = [0, 0, 0];
    for (const { number, ...spot } of all) {
      const found = readSize(figure, spot, this.#phrase.evidence, this.#pattern);
      const fit = found ? fitOf(number, figure, found.value, this.#pattern.house) : 'strange';
      if (typeof fit === 'number') right++;
      if (fit === 'strange') strange++;
      worth += typeof fit === 'number' ? fit : -SLIP;
      if (found)
        ties.push({
          number,
          agrees: typeof fit === 'number',
          isExact: isExactFit(fit),
          told: typeof fit === 'number' && isExactFit(fit) ? fit : 0,
          tie: { figure, ...found },
        });
    }
    // One of a list, or of two units, may be wrong in any way where the others are right.
    const isPossible = strange === 0 || right >= all.length / 2;
    return { ties, isPossible, worth: worth / Math.max(1, all.length) };
  }
}

/** Half as much again may be a mistake; twice as much is another thing's number. */
function isNotFarAbove(number: ReadNumber, { figure, value }: Tie, { house }: Pattern): boolean {
  const amount = amountOf(number, figure.kind, house);
  return amount !== undefined && amount.compare(value.shown.mul(3n, 2n)) <= 0;
}

/** The finished size of a unit. */
const PIECED = /^unit\..* finished$/;

function isPassing({ figure }: Tie, { candidate }: Settled): boolean {
  return figure.id === USABLE_WIDTH && candidate.thing.topic !== HOUSE;
}

/** Whole inches or centimetres in which fabric is sold, whatever the pattern counts on. Common practice. */
function isFabricWidth({ value, unit }: ReadNumber): boolean {
  if (value.d !== 1n) return false;
  const [least, most] = unit === 'cm' ? [90, 115] : [36, 45];
  return value.compare(least) >= 0 && value.compare(most) <= 0;
}

/** "2 rows of 2", "1, 3, 5, 5, 3, 1": members of a longer row of numbers. */
const SERIES = /\d,\s*\d+,\s*\d/;
/** Rules of the house, of which a sentence speaks only in its own clause. */
const HOUSE = 'house';

/** "All three must be the same": a small number in words is a count of the pattern's only beside a noun of the trade. */
function isWord({ written }: ReadNumber): boolean {
  return written.notation.numeral.form === 'words';
}

function isLooseWord({ value, unit, written }: ReadNumber, evidence: Evidence): boolean {
  if (unit || written.notation.numeral.form !== 'words' || value.compare(MOST_LOOSE) > 0) return false;
  if ((evidence.clue(['axis:per row'])?.strength ?? 0) >= BESIDE) return false;
  return (['form', 'name', 'part'] as const).every(
    (each) => (evidence.rival(each, [])?.strength ?? 0) < BESIDE,
  );
}

/** "2 + 2 − ½ = 3½": a number of a sum measures what the author adds up. */
function isReckoned({ passage: { text }, written }: ReadNumber): boolean {
  return (
    /[\d½¼¾⅛⅜⅝⅞]["”″]?\s*[+−=]\s*$/u.test(text.slice(0, written.start)) ||
    /^["”″]?\s*[+−=]\s*[\d½¼¾⅛⅜⅝⅞]/u.test(text.slice(written.end))
  );
}

const MOST_LOOSE = 5;
/** Rows right behind their number. */
const ROWS = /^[\s)\]]*(?:\p{L}+\s){0,2}(?:rows?|down)(?!\p{L})/iu;
/** How many come of one strip or one set. */
const PER = /\.per-(?:strip|set)$/;
/** So far apart, in characters, stand the counts of rows and of what is in a row. */
const NEARBY = 30;
/** In the clause itself, or in the line above a list. */
const FROM_EACH = 0.6;
/** So few may be a part of what is counted, in a step or a row. */
const FEW = 4;
/** What is told in so few words even of small numbers. */
const SURE_COUNTS = /(?:strips|panels|squares|triangles)$|^(?:binding|backing|setting|layout|own)/;

function toldBy({ ties }: Settled): number {
  return ties.reduce((sum, { told }) => sum + told, 0);
}

/** Whether its words say enough, beside the best; what the trade would say besides, a number may say instead. */
function isHeard(each: Settled, best: number): boolean {
  const { score, isWeak } = each.candidate;
  return score >= Math.max(ENOUGH, best - MARGIN) && (!isWeak || toldBy(each) >= REDEEMED);
}

/** Whether its numbers say so much that few words are enough. */
function isTelling(each: Settled): boolean {
  const { candidate, ties } = each;
  return candidate.score >= FAINT && ties.every(({ isExact }) => isExact) && toldBy(each) >= TELLING;
}

function isBeyondDoubt({ candidate, total, ties }: Settled): boolean {
  return !candidate.isWeak && total >= VERIFIED && ties.every(({ agrees }) => agrees);
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

/** Whether another reading explains the numbers of the phrase as they stand, or one that differs comes as near. */
function hasAlibi(number: ReadNumber, best: Settled, all: readonly Settled[]): boolean {
  const tied = best.ties.find((tie) => tie.number === number)?.tie;
  return all.some((other) => {
    const own = other.ties.find((tie) => tie.number === number);
    if (!own || !tied || isSameValue(own.tie, tied)) return false;
    if (!own.agrees)
      return (
        !own.tie.value.shown.equals(tied.value.shown) &&
        !other.candidate.isWeak &&
        best.total - other.total < CLOSE
      );
    if (other.candidate.said < Math.max(ALIBI, best.candidate.said * ALIBI_SHARE)) return false;
    // What is sewn together is measured as it lies there, if nothing else is said.
    if (other.candidate.isWeak && PIECED.test(other.candidate.thing.key)) return false;
    // That strips reach across the fabric is said in passing, and explains no other length.
    if (isPassing(own.tie, other) && !other.ties.some((each) => each !== own && each.isExact)) return false;
    return best.ties.every((each) => other.ties.some((tie) => tie.number === each.number && tie.isExact));
  });
}

function isSameValue(a: Tie, b: Tie): boolean {
  return a.figure === b.figure || (a.value.shown.equals(b.value.shown) && a.figure.rule === b.figure.rule);
}
