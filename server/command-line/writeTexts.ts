/** Writes new texts of manuscripts: all of them or none. */
import { access, constants } from 'node:fs/promises';
import { dirname } from 'node:path';
import { CannotRun, reasonOf } from './cannotRun.ts';
import type { ManuscriptFile } from './manuscriptFiles.ts';
import { safeWrite } from './safeWrite.ts';

export interface NewText {
  readonly file: ManuscriptFile;
  readonly text: string;
}

/**
 * Writes the files whose text has changed. One file that cannot be written keeps the others as they are.
 *
 * @throws CannotRun naming the file that cannot be written
 */
export async function writeTexts(texts: readonly NewText[]): Promise<void> {
  const changed = texts.filter(({ file, text }) => text !== file.source);
  for (const { file } of changed) {
    await checkWritable(file.file, file.path);
    await checkWritable(dirname(file.file), file.path);
  }
  for (const { file, text } of changed) await safeWrite(file.file, text);
}

/** @throws CannotRun when a file, or a folder, cannot be written */
export async function checkWritable(target: string, name: string): Promise<void> {
  try {
    await access(target, constants.W_OK);
  } catch (error) {
    throw new CannotRun(`Cannot write ${name}: ${reasonOf(error)}.`);
  }
}
