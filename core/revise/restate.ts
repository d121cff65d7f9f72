/** All numbers of a manuscript as its block now says, each with whether its author should look at it first. */
import type { Code } from '../findings/codes.ts';
import type { Edit, Finding } from '../findings/finding.ts';
import type { Proof } from '../proof/proof.ts';
import { TAGGED } from '../proof/tagTies.ts';

/** One number that is written anew. */
export interface Restated {
  /** The number, and the noun behind it where a count asks for another form. */
  readonly edits: readonly Edit[];
  /** `needs a look`: it was wrong rather than out of date, or a sentence alone says what it states. */
  readonly trust: 'beyond doubt' | 'needs a look';
  /** Why it changes, in a sentence. */
  readonly message: string;
}

const NUMBERS: ReadonlySet<Code> = new Set(['wrong-figure', 'short-figure', 'stale-figure']);

/** Numbers with one sure correction, in the order of their places; their edits never overlap. */
export function restate(proof: Proof): Restated[] {
  const restated: Restated[] = [];
  let end = 0;
  for (const finding of proof.findings) {
    const [fix, ...others] = finding.fixes.filter(({ preferred }) => preferred);
    if (!NUMBERS.has(finding.code) || !fix || others.length > 0) continue;
    if (fix.edits.some((edit) => edit.start < end)) continue;
    end = Math.max(...fix.edits.map((edit) => edit.end));
    const trust = isBeyondDoubt(finding, proof) ? 'beyond doubt' : 'needs a look';
    restated.push({ edits: fix.edits, trust, message: finding.message });
  }
  return restated;
}

function isBeyondDoubt({ code, start }: Finding, { accounts }: Proof): boolean {
  if (code !== 'stale-figure') return false;
  const account = accounts.find(({ number }) => number.ranges[0].start === start);
  // What stands in the block itself has no account, and names its figure.
  return !account || account.tie?.evidence.includes(TAGGED) === true;
}
