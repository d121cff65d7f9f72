/** `measure-twice read`: every number of one manuscript with what is understood of it. */
import { readManuscript } from '../../core/manuscript/manuscript.ts';
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
  const { path, source } = manuscript;
  const read = readManuscript(source);
  const text =
    format === 'json'
      ? `${JSON.stringify(jsonListing(path, read), undefined, 2)}\n`
      : textListing(path, read, terminalLayout());
  process.stdout.write(text);
}
