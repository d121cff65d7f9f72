/** Unit marks: the signs, abbreviations and words behind a number that say what it measures in. */
import { BREAK, bySignAt, HYPHEN, matchAt, SPACE } from './characters.ts';
import { TRADE_NOUNS } from './nouns.ts';
import type { LengthUnit } from './units.ts';

export interface UnitMark {
  readonly unit: LengthUnit;
  /** The form of this word for one and for many; a sign or abbreviation without such forms has none. */
  readonly one?: string;
  readonly many?: string;
}

/** Inch signs: straight and curly quotation marks either way round, the double prime, and two single signs. */
const INCH_SIGNS = ["''", '’’', '‘‘', '′′', '"', '″', '”', '“', '„', '‟', '＂'];

const WORDS: readonly (readonly [unit: LengthUnit, one: string, many?: string])[] = [
  ['in', 'inch', 'inches'],
  ['in', 'in', 'ins'],
  ['yd', 'yard', 'yards'],
  ['yd', 'yd', 'yds'],
  ['ft', 'foot', 'feet'],
  ['ft', 'ft'],
  ['cm', 'centimetre', 'centimetres'],
  ['cm', 'centimeter', 'centimeters'],
  ['cm', 'cm', 'cms'],
  ['mm', 'millimetre', 'millimetres'],
  ['mm', 'millimeter', 'millimeters'],
  ['mm', 'mm', 'mms'],
  ['m', 'metre', 'metres'],
  ['m', 'meter', 'meters'],
  ['m', 'mtr', 'mtrs'],
  ['m', 'm'],
];

const MARKS: ReadonlyMap<string, UnitMark> = new Map([
  ...INCH_SIGNS.map((sign): [string, UnitMark] => [sign, { unit: 'in' }]),
  ...WORDS.flatMap(([unit, one, many]): [string, UnitMark][] =>
    many === undefined
      ? [[one, { unit }]]
      : [
          [one, { unit, one, many }],
          [many, { unit, one, many }],
        ],
  ),
]);

/** What the table knows of a mark as written, `Yds.` or `″`. */
export function unitMark(mark: string): UnitMark | undefined {
  return MARKS.get(mark.toLowerCase().replace(/\.$/, ''));
}

export interface MarkText {
  readonly end: number;
  readonly unit: LengthUnit;
  readonly gap: string;
  readonly mark: string;
  /** Perhaps not a mark: `9½."` at the end of a quotation, `8 in teal`. */
  readonly doubt: boolean;
}

/** What the numeral before a mark is: it decides what may follow. */
export interface BeforeMark {
  readonly fractional: boolean;
  readonly words: boolean;
}

const SIGN = new RegExp(`(${SPACE}{0,3}|\\.)(${INCH_SIGNS.join('|')})`, 'uy');
const WORD_MARK = new RegExp(
  `(${BREAK}?${HYPHEN}?|${BREAK}?(?:of${BREAK})?an?${BREAK})` +
    `((?:${WORDS.flatMap(([, one, many]) => (many ? [many, one] : [one])).join('|')})(?![\\p{L}\\d_]))`,
  'iuy',
);

/** The unit mark behind a numeral that ends at `offset`, with the gap before it. */
export function readMark(text: string, offset: number, before: BeforeMark): MarkText | undefined {
  return before.words
    ? readWordMark(text, offset, before)
    : (readSign(text, offset) ?? readWordMark(text, offset, before));
}

function readSign(text: string, offset: number): MarkText | undefined {
  const match = matchAt(SIGN, text, offset);
  if (!match) return undefined;
  const [all, gap = '', mark = ''] = match;
  const end = offset + all.length;
  // `Make 9 "Star" blocks`: a spaced quotation mark that touches the next word opens a quotation.
  if (gap !== '' && gap !== '.' && /[\p{L}\d]/u.test(text[end] ?? '') && bySignAt(text, end) === 0)
    return undefined;
  return { end, unit: 'in', gap, mark, doubt: gap === '.' };
}

function readWordMark(text: string, offset: number, before: BeforeMark): MarkText | undefined {
  const match = matchAt(WORD_MARK, text, offset);
  if (!match) return undefined;
  const [, gap = '', word = ''] = match;
  const known = unitMark(word);
  if (!known || (known.unit === 'm' && word === 'M')) return undefined;
  if (/[a-z]/i.test(gap) && !before.fractional) return undefined;
  const wordEnd = offset + gap.length + word.length;
  const dotted = ['in', 'yd', 'ft'].includes(known.unit) && word.length <= 3 && text[wordEnd] === '.';
  const end = dotted ? wordEnd + 1 : wordEnd;
  const doubt = word.toLowerCase() === 'in' && !dotted ? prepositionDoubt(text, end, gap, before) : 'none';
  if (doubt === 'certain') return undefined;
  return {
    end,
    unit: known.unit,
    gap,
    mark: text.slice(wordEnd - word.length, end),
    doubt: doubt === 'some',
  };
}

/** Words after which "in" is the preposition: cut 5 in half, 20 in total, 4 in each row. */
const AFTER_PREPOSITION = new RegExp(
  `${BREAK}(?:all|total|each|every|half|halves|the|a|an|one|two|this|that|these|both|your|our|my|order|place|pairs?|groups?|sets?|` +
    `rows?|columns?|quarters?|stacks?|piles?|between|turn|which|our|fabrics?|colou?rs?)(?![\\p{L}\\d_])`,
  'iuy',
);
/** What shows that "in" was the unit. */
const AFTER_UNIT = new RegExp(
  `$|${BREAK}?[)\\],;:/(–—×.?!]|${BREAK}(?:wide|long|deep|high|square|larger|smaller|bigger|apart|away|finished|` +
    `unfinished|and|or|to|seams?|borders?|strips?|WOF|${[...TRADE_NOUNS.keys()].join('|')})(?![\\p{L}\\d_])`,
  'iuy',
);
const GAP = new RegExp(BREAK, 'y');

/** Whether "in" behind a number is the preposition rather than inches. */
function prepositionDoubt(
  text: string,
  end: number,
  gap: string,
  before: BeforeMark,
): 'none' | 'some' | 'certain' {
  if (gap === '') return 'none';
  if (gap.endsWith('-')) return text[end] === '-' ? 'certain' : 'none'; // five-in-one
  const next = matchAt(GAP, text, end)?.[0].length ?? 0;
  if (bySignAt(text, end + next) > 0) return 'none';
  if (before.words || matchAt(AFTER_PREPOSITION, text, end)) return 'certain';
  return matchAt(AFTER_UNIT, text, end) || before.fractional ? 'none' : 'some';
}
