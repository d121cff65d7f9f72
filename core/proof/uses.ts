/** The files that a manuscript uses, as the host finds them, become patterns to take rules from. */
import { readPattern } from '../block/read.ts';
import type { Refusal, Take, UsedFile } from '../block/used.ts';
import { readManuscript } from '../manuscript/manuscript.ts';

/**
 * The host's answer to a path under `use`, which begins at the folder of the manuscript. The host sees to it that
 * nothing outside of the workspace is read.
 */
export type Use = (path: string) => FoundFile | { readonly refused: Refusal };

export interface FoundFile extends UsedFile {
  /** The same for paths that begin at the folder of this file. */
  readonly use: Use;
}

/** @param way the files that led here, the first one first: a file that stands among them closes a circle */
export function takeFrom(use: Use, way: readonly FoundFile[] = []): Take {
  return (path) => {
    const found = use(path);
    if ('refused' in found) return found;
    const before = way.findIndex(({ id }) => id === found.id);
    if (before >= 0) return { circle: [...way.slice(before), found].map(({ name }) => name) };
    const { fences } = readManuscript(found.source);
    return { file: found, pattern: readPattern(fences, takeFrom(found.use, [...way, found])) };
  };
}

/**
 * What a manuscript names under `use`, so that a host can fetch it beforehand; `undefined` when it uses nothing.
 * Only looks at what reads like such an entry at first sight: the reading of the block decides.
 */
export function pathUsed(source: string): string | undefined {
  if (!/\buse\b/.test(source)) return undefined;
  return readPattern(readManuscript(source).fences).entries.use;
}

/** All that a manuscript says in its measure blocks: while it stays the same, whoever uses it stays as he is. */
export function blocksOf(source: string): string {
  return readManuscript(source)
    .fences.map(({ value }) => value)
    .join('\n---\n');
}
