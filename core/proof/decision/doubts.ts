/**
 * Sentences in which a number that differs may well count or measure a part, or another thing that no figure fixes:
 * it is left alone. `tests/proof/untagged.test.ts` holds a sentence for each.
 */
import type { Pattern } from '../../block/pattern.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import type { Concept } from '../../reading/concept.ts';
import { BESIDE } from '../../reading/evidence.ts';
import type { ReadPhrase } from '../../reading/readPhrases.ts';
import { HOUSE, type Settled, tieOf, USABLE_WIDTH } from './settled.ts';

/** What a doubt looks at. */
interface Standing {
  readonly number: ReadNumber;
  readonly settled: Settled;
  readonly phrase: ReadPhrase;
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  /** The id of the figure that it would contradict. */
  readonly figure: string;
  readonly isCount: boolean;
  /** Whether no other number of the phrase is the thing's very own. */
  readonly isAlone: boolean;
  /** How surely any of the concepts is said of it. */
  readonly strength: (...concepts: Concept[]) => number;
}

type Doubt = (standing: Standing) => boolean;

/** In the clause itself, or in the line above a list. */
const NEAR = 0.6;
/** So few may be a part of what is counted, in a step or a row. */
const FEW = 4;
const MOST_LOOSE = 5;
/** Words that leave no doubt what is counted, where each block is spoken of in the clause, and near it. */
const CLEAR = 6;
const CLEARER = 8;
/** So far apart, in characters, stand the counts of rows and of what is in a row. */
const ROWS_APART = 30;
/** What is told in so few words even of small numbers. */
const SURE_COUNTS = /(?:strips|panels|squares|triangles)$|^(?:binding|backing|setting|layout|own)/;
/** "2 rows of 2", "1, 3, 5, 5, 3, 1": members of a longer row of numbers. */
const SERIES = /\d,\s*\d+,\s*\d/;
/** Rows right behind their number. */
const ROWS = /^[\s)\]]*(?:\p{L}+\s){0,2}(?:rows?|down)(?!\p{L})/iu;
/** How many come of one strip or one set. */
const PER = /\.per-(?:strip|set)$/;

const DOUBTS: Readonly<Record<string, Doubt>> = {
  'a list of which no number fits': ({ number, settled }) => {
    const list = settled.candidate.readings
      .map(({ side }) => side.spots)
      .find((spots) => spots.some((spot) => spot.number === number));
    return (list?.length ?? 0) > 1 && list?.some((spot) => tieOf(settled, spot.number)?.agrees) === false;
  },

  'a small number in words without a noun: all three must be the same': ({ number, phrase, strength }) => {
    if (number.unit || !isWord(number) || number.value.compare(MOST_LOOSE) > 0) return false;
    if (strength('axis:per row') >= BESIDE) return false;
    return (['form', 'name', 'part'] as const).every(
      (each) => (phrase.evidence.rival(each, [])?.strength ?? 0) < BESIDE,
    );
  },

  'a sum that the author works out: 2 + 2 − ½ = 3½': ({ number: { passage, written } }) =>
    /[\d½¼¾⅛⅜⅝⅞]["”″]?\s*[+−=]\s*$/u.test(passage.text.slice(0, written.start)) ||
    /^["”″]?\s*[+−=]\s*[\d½¼¾⅛⅜⅝⅞]/u.test(passage.text.slice(written.end)),

  'an article: it ended up as one big piece': ({ number, strength }) =>
    number.value.equals(1) && isWord(number) && strength('state:cut', 'act:make') < BESIDE,

  'a yield of which nobody speaks': ({ figure, strength }) =>
    PER.test(figure) && strength('scope:container') < BESIDE,

  'a part of the count: another 12': ({ isCount, strength }) => isCount && strength('scope:part') >= BESIDE,

  'so many of each: from each fat quarter, cut': ({ isCount, figure, strength }) =>
    isCount && !PER.test(figure) && strength('scope:container') >= NEAR && strength('scope:total') < BESIDE,

  'a few of many, in a step': ({ number, settled: { candidate }, isCount, isAlone, figure, strength }) => {
    if (!isCount || !isAlone || number.value.compare(FEW) > 0) return false;
    if (SURE_COUNTS.test(candidate.thing.key)) return false;
    const each = strength('scope:each');
    const isOfEach = each >= NEAR && candidate.said >= (each >= BESIDE ? CLEAR : CLEARER);
    return !(figure.endsWith('.each') && isOfEach);
  },

  'a row of numbers: 1, 3, 5, 3, 1': ({ isCount, isAlone, phrase: { line, phrase } }) =>
    isCount &&
    isAlone &&
    SERIES.test(line.text.slice(Math.max(0, phrase.core.start - 8), phrase.core.end + 8)),

  'rows of a block: lay them out in three rows': ({ number, settled, pattern, strength }) => {
    if (settled.candidate.thing.topic !== 'layout' || number.value.compare(FEW) > 0) return false;
    const blocks = Object.keys(pattern.entries.blocks ?? {});
    return strength('part:block', ...blocks.map((name): Concept => `name:block.${name}`)) < BESIDE;
  },

  'all blocks in another order: 3 columns of 10': ({ number, settled, ledger }) => {
    if (settled.candidate.thing.topic !== 'layout') return false;
    const { value, written, passage } = number;
    const all = [...(ledger.figure('layout.blocks')?.values.values() ?? [])];
    return passage.numbers.some(
      (other) =>
        Math.abs(other.written.start - written.start) < ROWS_APART &&
        all.some(({ shown }) => shown.equals(value.mul(other.value))),
    );
  },

  'what stands in a row, or rows of sashing: block rows: 4 blocks': ({ figure, phrase, strength }) =>
    figure === 'layout.rows' &&
    (!ROWS.test(phrase.line.text.slice(phrase.phrase.core.end)) || strength('part:sashing') > 0.4),

  'borders that are counted: 2 top and bottom borders': ({ figure, strength }) =>
    figure.endsWith('.strips') && strength('form:strip') < BESIDE,

  'what is cut, told as it finishes: the sashing will finish 1½" wide': ({ figure, strength }) =>
    figure.endsWith('.strip') && strength('state:finished') >= BESIDE,

  'a width in which fabric is sold, or told in passing': ({ number, settled, figure }) =>
    figure === USABLE_WIDTH &&
    settled.candidate.thing.topic !== HOUSE &&
    (isFabricWidth(number) || settled.ties.some((each) => each.number !== number && !each.isExact)),

  'a rule of the house that the clause does not name': ({ settled, strength }) =>
    settled.candidate.thing.topic === HOUSE &&
    strength('part:seam', 'part:selvage', 'part:overhang', 'part:joining') < BESIDE,
};

const ALL = Object.values(DOUBTS);

export function isDoubtful(
  number: ReadNumber,
  settled: Settled,
  phrase: ReadPhrase,
  pattern: Pattern,
  ledger: Ledger,
): boolean {
  const standing: Standing = {
    number,
    settled,
    phrase,
    pattern,
    ledger,
    figure: tieOf(settled, number)?.tie.figure.id ?? '',
    isCount: number.unit === undefined && number.kind === 'count',
    isAlone: !settled.ties.some((each) => each.number !== number && each.isExact),
    strength: (...concepts) => phrase.evidence.strength(...concepts),
  };
  return ALL.some((holds) => holds(standing));
}

function isWord({ written }: ReadNumber): boolean {
  return written.notation.numeral.form === 'words';
}

/** Whole inches or centimetres in which fabric is sold, whatever the pattern counts on. Common practice. */
function isFabricWidth({ value, unit }: ReadNumber): boolean {
  if (value.d !== 1n) return false;
  const [least, most] = unit === 'cm' ? [90, 115] : [36, 45];
  return value.compare(least) >= 0 && value.compare(most) <= 0;
}
