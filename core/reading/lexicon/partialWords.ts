/**
 * Words by which a count or a size is told to be a part, one of several, of something else, or larger than needed. The
 * reading of the ledger and the checks of a manuscript against itself both take them from here.
 */
import { wholeWords } from '../wholeWords.ts';

/** What the words say of the number beside them. */
export type Partial =
  /** A part, of which the rest is told elsewhere. */
  | 'a part'
  /** So many each time, of which the whole is a multiple. */
  | 'each time'
  /** Counted by twos. */
  | 'paired'
  /** Made set by set, so that the number may be that of one set. */
  | 'set by set'
  /** One of several of its kind, of which others have numbers of their own. */
  | 'one of several'
  /** What is left, or lies beside what is needed. */
  | 'left over'
  /** Of another kind than what is counted without such a word. */
  | 'another kind'
  /** Of another thing than the quilt. */
  | 'another thing'
  /** Larger than needed on purpose, or as one likes. */
  | 'ample';

export interface PartialRow {
  readonly says: Partial;
  /** The source of a regular expression, matched as whole words in any letter case. */
  readonly words: string;
  readonly example: string;
  readonly counterexample: string;
}

export const PARTIAL_WORDS: readonly PartialRow[] = [
  {
    says: 'a part',
    words:
      'another|more(?! than)|the rest|the (?:first|last|other|remaining)|left(?! over| to| of| side| and|most)',
    example: 'Make 12 geese, then 12 «more».',
    counterexample: 'Make 12 geese, no fewer; more than 12 are too many, the left side first.',
  },
  {
    says: 'each time',
    words: 'at a time|at once|each day',
    example: 'Sew the 24 squares two «at a time».',
    counterexample: 'Sew the 24 squares in no time.',
  },
  {
    says: 'paired',
    words: 'pairs?',
    example: 'Sew 12 «pairs».',
    counterexample: 'Sew 12 repairs.',
  },
  {
    says: 'set by set',
    words: 'repeat\\w*|from each|each (?:pair|set|square|strip)|(?:a|per|one) (?:pair|set)',
    example: 'Make 4 HSTs «from each» square.',
    counterexample: 'Make 4 HSTs for each block.',
  },
  {
    says: 'one of several',
    words: 'others?|remaining|first|next|last|these|alternat\\w+',
    example: 'Make 6 of the «other» blocks.',
    counterexample: 'Make 6 of the blocks.',
  },
  {
    says: 'left over',
    words:
      'left ?-?overs?|remain\\w*|extra|excess|spare|scraps?|half of (?:the|these|them)|set aside|put aside',
    example: 'Two triangles are «left over».',
    counterexample: 'Two triangles lie left, over the line.',
  },
  {
    says: 'another kind',
    words: 'plain|setting|corner|border|filler|solid|half',
    example: 'Cut 12 «plain» blocks.',
    counterexample: 'Cut 12 pieced blocks with borders.',
  },
  {
    says: 'another thing',
    words: 'pillows?|cushions?|shams?|labels?|medallions?',
    example: 'Use the last two blocks for a «pillow».',
    counterexample: 'Use the last two blocks for the quilt.',
  },
  {
    says: 'ample',
    words:
      'trim\\w*|over-?siz\\w*|square[ds]? (?:it |them )?(?:up|down)|at least|more than|a (?:little|bit|touch)|generous\\w*|longer than|larger than|too long|if you (?:like|prefer|wish)|optional\\w*|for example|e\\.g\\.',
    example: 'Cut the squares «oversize».',
    counterexample: 'Cut the squares to size.',
  },
];

/** The words of some classes, to stand in a larger expression. */
export function partialWords(...says: readonly Partial[]): string {
  return PARTIAL_WORDS.filter((row) => says.includes(row.says))
    .map(({ words }) => words)
    .join('|');
}

/** @param more words that only one check minds */
export function partialPattern(says: readonly Partial[], ...more: readonly string[]): RegExp {
  return wholeWords([partialWords(...says), ...more].join('|'), 'iu');
}
