/**
 * The words of the trade that say what a number is about. A row is a concept, the words for it, and two sentences: one
 * in which « » stand around the words, and the likest one in which they are not meant. Every row is tested.
 */
import { FORM_WORDS } from './lexicon/formWords.ts';
import { MEASURE_WORDS } from './lexicon/measureWords.ts';
import { PART_WORDS } from './lexicon/partWords.ts';
import type { LexiconRow } from './lexicon/row.ts';

export type { LexiconRow };

/** The classes are in the order in which a sentence names them: what, which shape, how measured. */
export const LEXICON: readonly LexiconRow[] = [...PART_WORDS, ...FORM_WORDS, ...MEASURE_WORDS];
