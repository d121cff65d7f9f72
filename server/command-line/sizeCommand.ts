/** `measure-twice size`: revises the sizes of one manuscript, and says what is left to its author. */
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { changedLines, revisionReport } from '../../core/report/revision.ts';
import type { SizeRequest } from '../../core/revise/sizes/change.ts';
import { reviseSizes } from '../../core/revise/sizes/reviseSizes.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * @returns the exit status: 1 when something is left to write
 * @throws CannotRun before anything is written
 */
export async function sizeCommand(path: string, request: SizeRequest, dryRun: boolean): Promise<0 | 1> {
  const [file, ...others] = await readManuscripts([path]);
  if (!file || others.length > 0) throw new CannotRun(`Name one file; ${path} is a folder.`);
  const read = (source: string) => proofread({ source, use: file.use });
  const revision = reviseSizes(file.source, request, read);
  if ('refusal' in revision) throw new CannotRun(revision.refusal);
  const text = applyEdits(file.source, revision.edits);
  if (dryRun) process.stdout.write(changedLines(file.source, revision.edits));
  else await writeTexts([{ file, text }]);
  const report = revisionReport(file.path, file.source, revision, read(text), !dryRun);
  process.stdout.write(report.text);
  return report.isComplete ? 0 : 1;
}
