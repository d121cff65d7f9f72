import { randomUUID } from 'node:crypto';
import { chmod, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { CannotRun, reasonOf } from './cannotRun.ts';

/**
 * Writes a file whole or not at all: the text goes into a new file beside it, which then takes its place. Whoever is
 * interrupted in between leaves the old text. Permissions stay, and a link stays a link.
 *
 * @throws CannotRun when the file cannot be written; it is then as it was
 */
export async function safeWrite(file: string, text: string): Promise<void> {
  const target = await realpath(file).catch(() => file);
  const beside = join(dirname(target), `.${basename(target)}.${randomUUID()}`);
  try {
    await writeToDisk(beside, text);
    const before = await stat(target).catch(() => undefined);
    if (before) await chmod(beside, before.mode);
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true });
    throw new CannotRun(`Cannot write ${file}: ${reasonOf(error)}.`);
  }
}

/** The text is on the disk before the name is given: a machine that loses its power must not leave an empty file. */
async function writeToDisk(file: string, text: string): Promise<void> {
  const handle = await open(file, 'wx');
  try {
    await handle.writeFile(text);
    await handle.sync();
  } finally {
    await handle.close();
  }
}
