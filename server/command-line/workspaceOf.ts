/** What a manuscript may use on the command line: what stands in its workspace. */
import { access } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative } from 'node:path';
import { URI } from 'vscode-uri';
import type { Use } from '../../core/proof/uses.ts';
import { nodeFiles } from '../entry/nodeFiles.ts';
import { fetchChain } from '../workspace/chain.ts';
import { Reach } from '../workspace/reach.ts';

/**
 * The workspace of a manuscript is the nearest folder around it that holds `.git`. Without one it is the folder in
 * which the program runs; for a manuscript that stands elsewhere, its own folder.
 *
 * @param file absolute
 */
export async function workspaceOf(file: string): Promise<string> {
  const own = dirname(file);
  for (let [folder, below] = [own, '']; folder !== below; [folder, below] = [dirname(folder), folder])
    if (await isThere(join(folder, '.git'))) return folder;
  const here = process.cwd();
  const way = relative(here, file);
  return way.startsWith('..') || isAbsolute(way) ? own : here;
}

/** Fetches what a manuscript uses. */
export async function useOf(file: string, source: string): Promise<Use> {
  const reach = new Reach(
    nodeFiles,
    async () => [URI.file(await workspaceOf(file)).toString()],
    () => undefined,
  );
  return (await fetchChain(URI.file(file).toString(), source, reach)).use;
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}
