/** The files that the command line is asked to proofread, all read before anything is done with the first. */
import { stat } from 'node:fs/promises';
import { relative, resolve, sep } from 'node:path';
import type { Use } from '../../core/proof/uses.ts';
import { findManuscripts, readText } from '../entry/nodeFiles.ts';
import { CannotRun, reasonOf } from './cannotRun.ts';
import { useOf } from './workspaceOf.ts';

export interface ManuscriptFile {
  /** Absolute. */
  readonly file: string;
  /** As the reports name it: relative to the current folder, with forward slashes. */
  readonly path: string;
  readonly source: string;
  /** Finds what it uses. */
  readonly use: Use;
}

/**
 * All files, and the Markdown files of all folders, each once, in the order of the request.
 *
 * @throws CannotRun naming every path that is missing or unreadable: a report that left one out would look clean
 */
export async function readManuscripts(paths: readonly string[]): Promise<ManuscriptFile[]> {
  const troubles: string[] = [];
  const files = new Set<string>();
  for (const path of paths) {
    try {
      const file = resolve(path);
      const isFolder = (await stat(file)).isDirectory();
      for (const one of isFolder ? await findManuscripts(file) : [file]) files.add(resolve(one));
    } catch (error) {
      troubles.push(`Cannot read ${path}: ${reasonOf(error)}.`);
    }
  }
  const manuscripts: ManuscriptFile[] = [];
  for (const file of files) {
    const path = relative(process.cwd(), file).split(sep).join('/');
    try {
      const source = await readText(file);
      manuscripts.push({ file, path, source, use: await useOf(file, source) });
    } catch (error) {
      troubles.push(`Cannot read ${path}: ${reasonOf(error)}.`);
    }
  }
  if (troubles.length > 0) throw new CannotRun(...troubles);
  return manuscripts;
}
