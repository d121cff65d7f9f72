/** Adds to every length of a manuscript the same length in the other system of units, or takes these away again. */
import { applyEdits, type Edit } from '../../findings/finding.ts';
import type { Proof } from '../../proof/proof.ts';
import { proofread } from '../../proof/proofread.ts';
import type { Read, Refusal, Revision } from '../revision.ts';
import { type Addition, rangeOf } from './addition.ts';
import { additionsFor } from './additionsFor.ts';
import { findTroubles } from './checkAdditions.ts';
import { partnersToRemove } from './remove.ts';
import { type System, systemOf } from './system.ts';

export type UnitsRequest = { readonly kind: 'add'; readonly system: System } | { readonly kind: 'remove' };

/** @returns why the request cannot be met, in a sentence, or the edits that meet it */
export function reviseUnits(
  source: string,
  request: UnitsRequest,
  read: Read = (text) => proofread({ source: text }),
): Revision | Refusal {
  const proof = read(source);
  const own = systemOf(proof);
  if (request.kind === 'remove') return partnersToRemove(proof, own);
  if (request.system === own) return { refusal: ALREADY[own] };
  const { additions, open } = additionsFor(proof, own);
  const { kept, dropped } = thatHold(proof, additions, read);
  const unread = dropped.map((addition) => ({ ...rangeOf(addition), message: UNREAD }));
  return {
    edits: kept.map(({ at, text }): Edit => ({ start: at, end: at, text })),
    open: [...open, ...unread].sort((a, b) => a.start - b.start),
  };
}

const ALREADY: Readonly<Record<System, string>> = {
  inch: 'This manuscript is written in inches; add the metric equivalents instead.',
  metric: 'This manuscript is written in metric units; add the equivalents in inches instead.',
};

const UNREAD =
  'Here an equivalent would be taken for something else, or would change how the numbers around it are read; write it yourself.';

/** Each round leaves out what would not be right, until all that is left is. */
function thatHold(
  proof: Proof,
  additions: readonly Addition[],
  read: Read,
): { readonly kept: readonly Addition[]; readonly dropped: readonly Addition[] } {
  let kept = additions;
  while (kept.length > 0) {
    const text = applyEdits(
      proof.manuscript.source,
      kept.map(({ at, text }) => ({ start: at, end: at, text })),
    );
    const troubled = findTroubles(proof, kept, read(text));
    if (troubled.size === 0) break;
    kept = kept.filter((addition) => !troubled.has(addition));
  }
  return { kept, dropped: additions.filter((addition) => !kept.includes(addition)) };
}
