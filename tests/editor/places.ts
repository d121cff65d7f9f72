/** Where the checks in real editors find the editors, the product and the sample pattern line. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

export const repository = resolve(import.meta.dirname, '../..');
export const fixtures = join(import.meta.dirname, 'fixtures');
/** Screenshots. Git-ignored; a run overwrites what an earlier run left. */
export const artefacts = join(import.meta.dirname, 'artefacts');

export const chromium = '/usr/bin/chromium';
export const nvim = '/usr/bin/nvim';

// The same folder as in `.ci/install-editors`.
const editors =
  process.env.MEASURE_TWICE_EDITORS ??
  join(process.env.XDG_CACHE_HOME ?? join(homedir(), '.cache'), 'measure-twice/editors');
const codeServerHome = join(editors, 'code-server-4.139.1-node-24', 'node_modules');

/** code-server wants a newer Node.js than this project does, so it has one of its own. */
export const codeServer = {
  node: join(codeServerHome, '.bin', 'node'),
  entry: join(codeServerHome, 'code-server', 'out', 'node', 'entry.js'),
};

/** Throws with what to run, if an editor is not installed. */
export function requireEditor(...programs: string[]): void {
  const missing = programs.filter((program) => !existsSync(program));
  if (missing.length > 0) {
    throw new Error(`Not installed: ${missing.join(', ')}. Run .ci/install-editors as root, then try again.`);
  }
}

/** The first of these paths (relative to the repository) that exists. Throws, saying what builds it, if none does. */
export function requireBuilt(builtBy: string, ...candidates: string[]): string {
  const found = candidates.map((path) => join(repository, path)).find((path) => existsSync(path));
  if (found === undefined) {
    throw new Error(`${candidates.join(' and ')} do not exist. Run \`${builtBy}\` first.`);
  }
  return found;
}
