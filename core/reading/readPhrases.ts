/** A manuscript, read: its phrases, each with everything in the pattern that it may speak of. */
import type { Pattern } from '../block/pattern.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { Manuscript } from '../manuscript/manuscript.ts';
import { readAmounts } from './amount.ts';
import { type Candidate, candidatesFor } from './candidates.ts';
import { type Evidence, evidenceFor } from './evidence.ts';
import { type Line, readLines } from './line.ts';
import { type Phrase, readPhrases } from './phrase.ts';
import { sizeNames } from './sizeNames.ts';
import { thingsOf } from './things/index.ts';
import { vocabularyOf } from './vocabulary.ts';

export interface ReadPhrase {
  readonly line: Line;
  readonly phrase: Phrase;
  readonly evidence: Evidence;
  /** The likeliest first. */
  readonly candidates: readonly Candidate[];
}

export function readText(manuscript: Manuscript, pattern: Pattern, ledger: Ledger): ReadPhrase[] {
  const vocabulary = vocabularyOf(pattern);
  const things = thingsOf(pattern, ledger);
  const sizes = sizeNames(pattern);
  return readLines(manuscript).flatMap((line) =>
    readPhrases(line, readAmounts(line, pattern, sizes)).map((phrase) => {
      const evidence = evidenceFor(line, phrase, vocabulary);
      const candidates = candidatesFor(phrase, evidence, things).sort((a, b) => b.score - a.score);
      return { line, phrase, evidence, candidates };
    }),
  );
}
