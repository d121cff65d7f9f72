/** `measure-twice draft`: a measure block from what a manuscript without one says. */
import { draftBlock } from '../../core/draft/draft.ts';
import { applyEdits } from '../../core/findings/finding.ts';
import { Lines } from '../../core/report/lines.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { writeTexts } from './writeTexts.ts';

/**
 * Prints the block, or writes it behind the title; what it leaves open is told on standard error.
 *
 * @returns the exit status: 1 when something is left open
 * @throws CannotRun when the manuscript has a block already, or says nothing that a block could hold
 */
export async function draftCommand(path: string, { write }: { readonly write: boolean }): Promise<0 | 1> {
  const [file, ...others] = await readManuscripts([path]);
  if (!file || others.length > 0) throw new CannotRun(`Name one file; ${path} is a folder.`);
  const draft = draftBlock(file.source);
  if (draft === 'has a block')
    throw new CannotRun(`${file.path} has a measure block already; it was left as it is.`);
  if (draft === 'says nothing')
    throw new CannotRun(`${file.path} says nothing that a measure block could hold.`);
  const { source } = file;
  const { block, edit, findings } = draft;
  const text = write ? applyEdits(source, [edit]) : source;
  if (write) await writeTexts([{ file, text }]);
  else process.stdout.write(block);
  const lines = new Lines(text);
  const shift = text.length - source.length;
  const lineAt = (offset: number) => lines.position(offset + (offset >= edit.start ? shift : 0)).line;
  for (const { start, message, related } of findings) {
    const also = related.map((other) => ` Line ${lineAt(other.start)}: ${other.message}`).join('');
    console.error(`${file.path}:${lineAt(start)}: ${message}${also}`);
  }
  return findings.length > 0 ? 1 : 0;
}
