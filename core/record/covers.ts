/** What a signature still covers of a manuscript as it is now. */
import type { Found } from '../proof/earlier/align.ts';
import { type KeptLine, type SeenLine, seenLines } from '../proof/earlier/keptLine.ts';
import type { Proof } from '../proof/proof.ts';
import { compareNumbers } from './compare.ts';
import type { Signature } from './signature.ts';

export interface Covering {
  readonly signature: Signature;
  /** Whether the text is just the one that was signed. */
  readonly isSameText: boolean;
  /** Numbers that stand as they were signed. */
  readonly covered: readonly Found<SeenLine>[];
  /** Numbers that were changed since. */
  readonly changed: readonly Found<SeenLine>[];
  /** Numbers that stand as before, were verified then, and are not right any more. */
  readonly rightNoMore: readonly Found<SeenLine>[];
  readonly added: readonly Found<SeenLine>[];
  /** Numbers that were signed and are gone. */
  readonly removed: readonly Found<KeptLine>[];
}

/** @param digest of what `digestible` makes of the text as it is now */
export function covers(signature: Signature, proof: Proof, digest: string): Covering {
  const { same, changed, added, removed } = compareNumbers(
    signature.lines,
    seenLines(proof.manuscript, proof.accounts),
  );
  const isRight = ({ before, after }: (typeof same)[number]) =>
    before.number.account !== 'verified' || !NOT_RIGHT.has(after.number.account);
  return {
    signature,
    isSameText: signature.digest === digest,
    covered: same.filter(isRight).map(({ after }) => after),
    rightNoMore: same.filter((pair) => !isRight(pair)).map(({ after }) => after),
    changed: changed.map(({ after }) => after),
    added,
    removed,
  };
}

const NOT_RIGHT: ReadonlySet<string> = new Set(['wrong', 'stale', 'short']);
