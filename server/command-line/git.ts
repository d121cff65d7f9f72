/** Earlier revisions of a file, from git. */
import { execFile } from 'node:child_process';
import { basename, dirname } from 'node:path';
import { promisify } from 'node:util';
import { CannotRun } from './cannotRun.ts';

/** A manuscript is smaller. */
const MOST = 64 * 1024 * 1024;

/**
 * The text of a file in a revision; `undefined` where the revision does not have the file.
 *
 * @param name of the file, as complaints call it
 * @throws CannotRun without git, outside of a repository, and for a revision that git does not know
 */
export async function textAtRevision(
  file: string,
  revision: string,
  name: string,
): Promise<string | undefined> {
  // A revision that begins with a dash would be an option.
  if (revision.startsWith('-') || revision === '') throw new CannotRun(`“${revision}” is no revision.`);
  try {
    const { stdout } = await promisify(execFile)(
      'git',
      ['show', '--no-textconv', `${revision}:./${basename(file)}`],
      { cwd: dirname(file), encoding: 'buffer', maxBuffer: MOST, env: { ...process.env, LC_ALL: 'C' } },
    );
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(stdout);
  } catch (error) {
    if (NOT_THERE.test(saidBy(error))) return undefined;
    throw new CannotRun(`Cannot read ${name} in revision ${revision}: ${whyNot(error)}.`);
  }
}

function whyNot(error: unknown): string {
  if (error instanceof TypeError) return 'it is not a text file in UTF-8';
  if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return 'git is not installed';
  const said = saidBy(error);
  if (/not a git repository/i.test(said)) return 'its folder is in no git repository';
  if (/unknown revision|invalid object name|bad revision|ambiguous argument/i.test(said))
    return 'git knows no such revision';
  return `git says “${said.trim().split('\n')[0]}”`;
}

const NOT_THERE = /exists on disk, but not in|does not exist in/i;

function saidBy(error: unknown): string {
  return error instanceof Error && 'stderr' in error ? String(error.stderr) : '';
}
