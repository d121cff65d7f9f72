/** A row of the lexicon. */
import type { Concept } from '../concept.ts';

export interface LexiconRow {
  readonly says: Concept;
  /** The source of a regular expression, matched as whole words in any letter case. */
  readonly words: string;
  readonly example: string;
  readonly counterexample: string;
}
