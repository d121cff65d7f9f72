/** Manuscripts without their blocks, drafted anew: how many of their numbers the draft verifies as well. */
import { draftBlock } from '../../core/draft/draft.ts';
import { applyEdits, type Finding } from '../../core/findings/finding.ts';
import type { Proof } from '../../core/proof/proof.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { CORPUS, type ManuscriptFile, OPEN, SAMPLES } from '../support/manuscripts.ts';
import { plainManuscriptsIn } from './annotated.ts';
import { isAlarm } from './quality.ts';

export interface Anew {
  readonly name: string;
  /** Numbers that the author's own block verifies, and how many of these the draft verifies. */
  readonly before: number;
  readonly again: number;
  /** What is called wrong although all is right, beyond what the text alone would be called wrong for. */
  readonly alarms: readonly string[];
  /** Mistakes in the drafted block. */
  readonly errors: readonly string[];
  readonly findings: readonly Finding[];
  readonly block: string;
}

const BLOCK = /^```measure\n[\s\S]*?^```\n/gm;
/** A tag names a figure of the block that is gone. */
const TAG = /[^\S\n]?<!-- = [\s\S]*?-->/g;

/** Where all numbers of all manuscripts are right. */
export const FOLDERS = [SAMPLES, CORPUS, OPEN];

/** Those manuscripts of a folder that stand alone. */
export function standingAlone(folder: string): ManuscriptFile[] {
  return plainManuscriptsIn(folder).filter(
    ({ source }) => !/^use:/m.test(source) && /^#/m.test(source.replace(BLOCK, '')) && !isHouse(source),
  );
}

/** House rules without a pattern. */
function isHouse(source: string): boolean {
  return !/^(?:pattern|finished|blocks):/m.test(source);
}

export function draftAnew({ name, source }: ManuscriptFile): Anew {
  const bare = source.replace(BLOCK, '').replace(TAG, '');
  const blocks = [...source.matchAll(BLOCK)].map(([block]) => block);
  // Behind the text, so that each number keeps its place.
  const before = verified(proofread({ source: `${bare}\n${blocks.join('\n')}` }), 0);
  const draft = draftBlock(bare);
  if (typeof draft === 'string')
    return { name, before: before.size, again: 0, alarms: [], errors: [draft], findings: [], block: '' };
  const proof = proofread({ source: applyEdits(bare, [draft.edit]) });
  const shift = draft.edit.text.length;
  const alone = proofread({ source: bare });
  const isOfDraft = (text: string) =>
    !alone.accounts.some((each) => isAlarm(each) && each.number.text === text);
  const aloneSays = new Set(alone.findings.map(({ message }) => message));
  const now = verified(proof, shift, draft.edit.start);
  return {
    name,
    before: before.size,
    again: [...before].filter((start) => now.has(start)).length,
    alarms: proof.accounts
      .filter((account) => isAlarm(account) && isOfDraft(account.number.text))
      .map(({ number, tie, expected }) => `${number.text} by ${tie?.figure.id}, should be ${expected}`),
    errors: proof.findings
      .filter(({ severity, message }) => severity === 'error' && !aloneSays.has(message))
      .map(({ message }) => message),
    findings: draft.findings,
    block: draft.block,
  };
}

/** Where the verified numbers start, without what was put in at `from`. */
function verified({ accounts }: Proof, shift: number, from = 0): Set<number> {
  return new Set(
    accounts
      .filter(({ kind }) => kind === 'verified')
      .map(({ number }) => number.ranges[0].start)
      .map((start) => (start >= from ? start - shift : start)),
  );
}
