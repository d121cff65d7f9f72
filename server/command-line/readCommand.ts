/** `measure-twice read`: every number of one manuscript with what it was read as, and why. */
import { proofread } from '../../core/proof/proofread.ts';
import { jsonListing, textListing } from '../../core/report/listing.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { terminalLayout } from './terminal.ts';

/** @throws CannotRun when the file cannot be read */
export async function readCommand(
  file: string,
  { format }: { readonly format: 'text' | 'json' },
): Promise<void> {
  const [manuscript, ...others] = await readManuscripts([file]);
  if (!manuscript || others.length > 0) throw new CannotRun(`Name one file; ${file} is a folder.`);
  const { path, source, use } = manuscript;
  const proof = proofread({ source, use });
  const text =
    format === 'json'
      ? `${JSON.stringify(jsonListing(path, proof), undefined, 2)}\n`
      : textListing(path, proof, terminalLayout());
  process.stdout.write(text);
}
