/** `measure-twice corrections`: the list for customers of what has changed in patterns already sold. */
import { resolve } from 'node:path';
import { seenLines } from '../../core/proof/earlier/keptLine.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { sizeNames } from '../../core/reading/sizeNames.ts';
import { correctionsBetween } from '../../core/record/corrections.ts';
import type { Revised } from '../../core/report/corrections/document.ts';
import { correctionsHtml, correctionsMarkdown } from '../../core/report/corrections/write.ts';
import { CannotRun } from './cannotRun.ts';
import { textAtRevision } from './git.ts';
import { type ManuscriptFile, readManuscripts } from './manuscriptFiles.ts';
import { readRecordFile, recordOf } from './records.ts';
import { safeWrite } from './safeWrite.ts';

export interface CorrectionsOptions {
  readonly format: 'markdown' | 'html';
  readonly since?: string;
  readonly out?: string;
}

/** @throws CannotRun when there is nothing to compare with */
export async function correctionsCommand(
  path: string,
  { format, since, out }: CorrectionsOptions,
): Promise<void> {
  const files = await readManuscripts([path]);
  const revised: Revised[] = [];
  for (const file of files) {
    const before = since === undefined ? await signedLines(file) : await linesAt(file, since);
    if (before) revised.push(toRevised(file, before));
  }
  if (revised.length === 0) throw new CannotRun(nothingBefore(path, since));
  const text = format === 'html' ? correctionsHtml(revised) : correctionsMarkdown(revised);
  if (out === undefined) process.stdout.write(text);
  else await safeWrite(resolve(out), text);
}

/** In a folder, manuscripts that are new since then are passed over; where all are, there is no list to write. */
function nothingBefore(path: string, since: string | undefined): string {
  return since === undefined
    ? `Nothing is there to compare ${path} with: it has not been signed off. Name a git revision with --since.`
    : `Nothing is there to compare ${path} with: revision ${since} does not have it.`;
}

type Before = Pick<Revised, 'since'> & { readonly lines: Parameters<typeof correctionsBetween>[0] };

async function signedLines({ file, path }: ManuscriptFile): Promise<Before | undefined> {
  const { signatures, complaints } = await readRecordFile(recordOf(file), recordOf(path));
  // An older signature must not stand in for one that cannot be read.
  if (complaints.length > 0) throw new CannotRun(...complaints);
  const last = signatures.at(-1);
  return last && { since: last, lines: last.lines };
}

async function linesAt({ file, path, use }: ManuscriptFile, revision: string): Promise<Before | undefined> {
  const source = await textAtRevision(file, revision, path);
  if (source === undefined) return undefined;
  const { manuscript, accounts } = proofread({ source, use });
  return { since: { revision }, lines: seenLines(manuscript, accounts) };
}

function toRevised({ path, source, use }: ManuscriptFile, { since, lines }: Before): Revised {
  const { manuscript, accounts, pattern } = proofread({ source, use });
  const sizes = sizeNames(pattern);
  return {
    title: pattern.entries.pattern ?? titleOf(manuscript.passages) ?? path,
    since,
    corrections: correctionsBetween(lines, seenLines(manuscript, accounts), (head) => sizes.in(head)),
    hasSizes: pattern.sizes.length > 1,
  };
}

function titleOf(passages: readonly { readonly kind: string; readonly text: string }[]): string | undefined {
  return passages.find(({ kind }) => kind === 'heading')?.text.trim();
}
