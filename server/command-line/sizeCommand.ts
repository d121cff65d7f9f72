/** `measure-twice size`: revises the sizes of one manuscript, and says what is left to its author. */
import type { SizeRequest } from '../../core/revise/sizes/change.ts';
import { reviseSizes } from '../../core/revise/sizes/reviseSizes.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { reviseFiles } from './reviseFiles.ts';

/**
 * @returns the exit status: 1 when something is left to write
 * @throws CannotRun before anything is written
 */
export async function sizeCommand(path: string, request: SizeRequest, dryRun: boolean): Promise<0 | 1> {
  const files = await readManuscripts([path]);
  if (files.length !== 1) throw new CannotRun(`Name one file; ${path} is a folder.`);
  return reviseFiles(files, (source, read) => reviseSizes(source, request, read), dryRun);
}
