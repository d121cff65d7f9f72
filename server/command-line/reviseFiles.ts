/** Revises manuscripts on the command line: shows or writes what changes, and says what is left to the author. */
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { changedLines, revisionReport } from '../../core/report/revision.ts';
import type { Read, Refusal, Revision } from '../../core/revise/revision.ts';
import { CannotRun } from './cannotRun.ts';
import type { ManuscriptFile } from './manuscriptFiles.ts';
import { type NewText, writeTexts } from './writeTexts.ts';

export type Revise = (source: string, read: Read) => Revision | Refusal;

/**
 * All files or none are written. Where one of several files refuses, the others are revised all the same.
 *
 * @returns the exit status: 1 when something is left to write
 * @throws CannotRun before anything is written
 */
export async function reviseFiles(
  files: readonly ManuscriptFile[],
  revise: Revise,
  dryRun: boolean,
): Promise<0 | 1> {
  const texts: NewText[] = [];
  const said: string[] = [];
  let isComplete = true;
  for (const file of files) {
    const read = (source: string) => proofread({ source, use: file.use });
    const revision = revise(file.source, read);
    if ('refusal' in revision) {
      if (files.length === 1) throw new CannotRun(revision.refusal);
      said.push(`${file.path}: ${revision.refusal}\n`);
      continue;
    }
    const text = applyEdits(file.source, revision.edits);
    texts.push({ file, text });
    const report = revisionReport(file.path, file.source, revision, read(text), !dryRun);
    if (dryRun) said.push(changedLines(file.source, revision.edits));
    said.push(report.text);
    isComplete &&= report.isComplete;
  }
  if (!dryRun) await writeTexts(texts);
  process.stdout.write(said.join(''));
  return isComplete ? 0 : 1;
}
