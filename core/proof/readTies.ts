/** Ties by reading: what a sentence speaks of is decided by its words first, and by its numbers where they leave a choice. */
import type { Pattern } from '../block/pattern.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import type { Candidate } from '../reading/candidates.ts';
import { type ReadPhrase, readText } from '../reading/readPhrases.ts';
import { Decision } from './decision/decision.ts';
import type { Tie } from './proof.ts';
import { tieSums } from './sums.ts';

export interface Readings {
  readonly ties: ReadonlyMap<ReadNumber, Tie>;
  /** Numbers that are wrong whichever of a few figures they state. */
  readonly unclear: ReadonlyMap<ReadNumber, readonly Tie[]>;
}

export function tieReadings(manuscript: Manuscript, pattern: Pattern, ledger: Ledger): Readings {
  const phrases = readText(manuscript, pattern, ledger);
  const first = phrases.map((phrase) => new Decision(phrase, pattern, ledger));
  const ties = new Map<ReadNumber, Tie>();
  const unclear = new Map<ReadNumber, readonly Tie[]>();
  for (const [index, alone] of first.entries()) {
    const phrase = supported(phrases, first, index);
    const decision = phrase === phrases[index] ? alone : new Decision(phrase, pattern, ledger);
    for (const [number, tie] of decision.ties) ties.set(number, tie);
    for (const [number, rivals] of decision.unclear) unclear.set(number, rivals);
  }
  for (const [number, tie] of tieSums(manuscript, pattern, ledger, ties))
    if (!unclear.has(number)) ties.set(number, tie);
  return { ties, unclear };
}

/** What a strip and the pieces cut from it say for each other. */
const KIN = 3;
/** What the last thing that the same paragraph spoke of says for the next one: "Make 16. They measure 9½"." */
const CONTINUED = 1.5;
/** What the same thing in the same sentence says: "96 for the twin and 144 for the queen". */
const SAME = 2;
/** How near the words for cutting strips into pieces must be. */
const SUBCUT = 0.6;

/** The candidates of a phrase, with what the phrases beside it say for them. */
function supported(
  phrases: readonly ReadPhrase[],
  decisions: readonly Decision[],
  index: number,
): ReadPhrase {
  const phrase = phrases[index] as ReadPhrase;
  const [last, next] = [phrases[index - 1], phrases[index + 1]];
  const [before, behind] = [decisions[index - 1]?.anchor, decisions[index + 1]?.anchor];
  const isNear = last?.line === phrase.line;
  const isSameSentence = isNear && last?.phrase.sentence.start === phrase.phrase.sentence.start;
  const bonus = ({ thing: { key, topic } }: Candidate) => {
    if (before?.key === `${key} strips` && isSubcut(phrase)) return KIN;
    if (behind && key === `${behind.key} strips` && isSubcut(next)) return KIN;
    if (!isNear || !before) return 0;
    if (isSameSentence && before.key === key) return SAME;
    return isAkin(before.topic, topic) ? CONTINUED : 0;
  };
  if (!phrase.candidates.some((candidate) => bonus(candidate) > 0)) return phrase;
  const candidates = phrase.candidates
    .map((candidate) => withScore(candidate, candidate.score + bonus(candidate)))
    .sort((a, b) => b.score - a.score);
  return { ...phrase, candidates };
}

function isSubcut(phrase: ReadPhrase | undefined): boolean {
  return (phrase?.evidence.strength('act:subcut') ?? 0) >= SUBCUT;
}

function isAkin(a: string, b: string): boolean {
  return a === b || a.startsWith(`${b}.`) || b.startsWith(`${a}.`);
}

function withScore(candidate: Candidate, score: number): Candidate {
  return Object.create(candidate, { score: { value: score } });
}
