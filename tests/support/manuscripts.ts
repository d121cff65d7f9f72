/** The manuscripts of the repository, as they stand. */
import { readdirSync, readFileSync } from 'node:fs';

const ROOT = new URL('../../', import.meta.url);

export const SAMPLES = 'shared/samples/';
export const CORPUS = 'tests/manuscripts/corpus/';
export const OPEN = 'tests/manuscripts/open/';
export const ASIDE = 'tests/manuscripts/aside/';

export interface ManuscriptFile {
  readonly name: string;
  readonly source: string;
}

/** The text of a sample pattern: `tideline-wall-hanging.md`, `before-proofreading/long-ferry-throw.md`. */
export function sample(path: string): string {
  return readFileSync(new URL(SAMPLES + path, ROOT), 'utf8');
}

/** Those of a folder, which is named from the root of the repository; not those of the folders in it. */
export function manuscriptsIn(folder: string): ManuscriptFile[] {
  const place = new URL(folder, ROOT);
  return readdirSync(place)
    .filter((name) => name.endsWith('.md'))
    .map((name) => ({ name, source: readFileSync(new URL(name, place), 'utf8') }));
}

/** Without the tags of its numbers. */
export function withoutTags(source: string): string {
  return source.replace(/\s?<!-- = [^>]*-->/g, '');
}
