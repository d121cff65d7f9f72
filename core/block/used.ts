/** What `use` takes from another manuscript, or why it takes nothing. */
import type { Code } from '../findings/codes.ts';
import type { Range } from '../findings/finding.ts';
import type { Pattern } from './pattern.ts';
import type { BlockPath } from './place.ts';
import { placeWords } from './placeWords.ts';
import { listed } from './words.ts';

/** A file that is used, so that others can point into it. */
export interface UsedFile {
  /** Tells the file from every other one, whatever path leads to it. */
  readonly id: string;
  /** As messages call it. */
  readonly name: string;
  readonly source: string;
}

/** Where an entry stands that `use` took. */
export interface Origin extends Range {
  readonly file: UsedFile;
}

/** The entries that `use` takes. */
export const TAKEN = ['house', 'fabrics'] as const;

/** Why nothing can be read behind a path. */
export type Refusal = 'missing' | 'outside' | 'unreadable' | 'unreachable';

export type Used =
  | { readonly file: UsedFile; readonly pattern: Pattern }
  | { readonly refused: Refusal }
  /** The names of the files of the circle, the first of them again at the end. */
  | { readonly circle: readonly string[] };

/** Finds what stands behind a path, which begins at the folder of the manuscript. */
export type Take = (path: string) => Used;

export interface UseProblem {
  readonly code: Code;
  readonly message: string;
}

/** For whoever cannot reach other files. */
export const takeNothing: Take = () => ({ refused: 'unreachable' });

/** An address, a drive or the top folder: no path that begins at a manuscript. */
const ELSEWHERE = /^(?:[a-z][a-z\d+.-]*:|[/\\])/i;

/** Follows a path, unless its very form leads away. */
export function follow(path: string, take: Take): Used | UseProblem {
  if (ELSEWHERE.test(path)) return { refused: 'outside' };
  if (path.includes('\\'))
    return { code: 'bad-value', message: 'Write the path with forward slashes, as in ../house.md.' };
  return take(path);
}

const REFUSALS: Readonly<Record<Refusal, readonly [code: Code, message: (path: string) => string]>> = {
  missing: [
    'use-missing',
    (path) => `There is no file “${path}”; the path begins at the folder of this manuscript.`,
  ],
  outside: ['use-outside', (path) => `“${path}” leads out of the workspace, and nothing is read from there.`],
  unreadable: ['use-unreadable', (path) => `“${path}” cannot be read: it is no text file in UTF-8.`],
  unreachable: [
    'use-unreachable',
    (path) =>
      `“${path}” cannot be reached from here, so nothing that follows from its rules is checked; save this text in a folder first.`,
  ],
};

/**
 * What is wrong with what was found; `undefined` when all of it can be taken.
 *
 * @param isOwn whether the manuscript says a rule or a fabric itself, so that nothing is taken in its place
 */
export function problemOf(
  used: Used,
  path: string,
  isOwn: (place: BlockPath) => boolean,
): UseProblem | undefined {
  if ('refused' in used) {
    const [code, message] = REFUSALS[used.refused];
    return { code, message: message(path) };
  }
  if ('circle' in used)
    return {
      code: 'use-circle',
      message: `These manuscripts use each other in a circle: ${used.circle.join(' → ')}.`,
    };
  const { file, pattern } = used;
  return furtherOn(file, pattern) ?? unreadIn(file, pattern, isOwn) ?? emptyIn(file, pattern);
}

/** The used file's own `use` leads nowhere. */
function furtherOn({ name }: UsedFile, { findings }: Pattern): UseProblem | undefined {
  const further = findings.find(({ code }) => code.startsWith('use-'));
  if (!further) return undefined;
  const { code, message } = further;
  return { code, message: code === 'use-circle' ? message : `In ${name}: ${message}` };
}

function unreadIn(
  { name }: UsedFile,
  pattern: Pattern,
  isOwn: (place: BlockPath) => boolean,
): UseProblem | undefined {
  const { broken } = pattern;
  const isTaken = (place: BlockPath) => TAKEN.includes(place[0] as never) && !isOwn(place.slice(0, 2));
  const places = broken.places.filter(isTaken);
  const code = 'use-unreadable';
  if (places.length > 0) {
    const names = listed([...new Set(places.map((place) => placeWords(place, pattern)))], 'and');
    const message = `${names} of ${name} cannot be read, so nothing that follows from it is checked here.`;
    return { code, message };
  }
  if (!broken.hidesEntries) return undefined;
  const message = `The measure block of ${name} cannot be read in full, so nothing that may follow from the rest is checked here.`;
  return { code, message };
}

function emptyIn({ name }: UsedFile, { entries, stated }: Pattern): UseProblem | undefined {
  const code = 'use-empty';
  if (!stated) return { code, message: `${name} has no measure block, so there is nothing to take from it.` };
  if (entries.house || entries.fabrics) return undefined;
  const message = `The measure block of ${name} says nothing under “house” or “fabrics”, so there is nothing to take from it.`;
  return { code, message };
}
