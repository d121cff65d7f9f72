/** What comes of revising a manuscript: edits that touch nothing else, and what they leave to the author. */
import type { Edit, Range } from '../findings/finding.ts';
import type { Proof } from '../proof/proof.ts';

/** Proofreads a text that stands where the manuscript stands, with what it uses of others. */
export type Read = (source: string) => Proof;

export interface Revision {
  /** In the order of their places; they never overlap. */
  readonly edits: readonly Edit[];
  /** Places of the source as it was that only the author can revise, each with a sentence that says why. */
  readonly open: readonly (Range & { readonly message: string })[];
}

/** Why something cannot be done, in a sentence for its author. */
export interface Refusal {
  readonly refusal: string;
}

/** The edits that no other edit takes in, in the order of their places. */
export function withoutOverlaps(edits: readonly Edit[]): Edit[] {
  const kept: Edit[] = [];
  const ordered = [...edits].sort((a, b) => a.start - b.start || b.end - a.end);
  for (const edit of ordered) {
    const last = kept.at(-1);
    if (last && edit.start < last.end) continue;
    kept.push(edit);
  }
  return kept;
}
