import { applyEdits } from '../../../core/findings/finding.ts';
import { proofread } from '../../../core/proof/proofread.ts';
import type { SizeRequest } from '../../../core/revise/sizes/change.ts';
import { reviseSizes } from '../../../core/revise/sizes/reviseSizes.ts';

/** The text after a request, and the places that are left to its author. */
export function revised(source: string, request: SizeRequest) {
  const revision = reviseSizes(source, request);
  if ('refusal' in revision) throw new Error(revision.refusal);
  return {
    text: applyEdits(source, revision.edits),
    edits: revision.edits,
    open: revision.open.map(({ start, end }) => source.slice(start, end).trim()),
  };
}

export function refusal(source: string, request: SizeRequest): string | undefined {
  const revision = reviseSizes(source, request);
  return 'refusal' in revision ? revision.refusal : undefined;
}

/** Each finding as its code and the text that it underlines. */
export function findings(source: string): string[] {
  return proofread({ source }).findings.map(({ code, start, end }) => `${code}: ${source.slice(start, end)}`);
}

/** The lines in which two texts differ, as they are in the second. */
export function newLines(before: string, after: string): string[] {
  const old = new Set(before.split(/\r\n|\n|\r/));
  return after.split(/\r\n|\n|\r/).filter((line) => !old.has(line));
}
