/**
 * Manuscripts whose numbers are annotated with what a proof must say of them.
 *
 * An annotation stands right behind its number and the number's unit mark:
 *
 * - `7⟦binding.strips⟧`, `7⟦binding.strips @ throw⟧`: verified by this figure; `⟦a | b⟧` by either of two;
 * - `2½"⟦?⟧`: measures something, and nothing in the block fixes it;
 * - `3⟦-⟧`: measures nothing.
 *
 * A number without an annotation, such as the nine of a nine-patch, measures nothing either.
 */
import type { Range } from '../../core/findings/finding.ts';
import { readNumberAt } from '../../core/quantity/read.ts';
import { type ManuscriptFile, manuscriptsIn } from '../support/manuscripts.ts';

export interface AnnotatedManuscript {
  /** Without the annotations, as the author wrote it. */
  readonly source: string;
  /** In reading order; the offsets count in `source`. */
  readonly expected: readonly Expected[];
}

export interface Expected extends Range {
  /** The number with its unit mark. */
  readonly text: string;
  readonly account: 'verified' | 'unaccounted' | 'not-measurement';
  /** Any of these verifies it; empty unless `account` is `verified`. */
  readonly figures: readonly ExpectedFigure[];
}

export interface ExpectedFigure {
  readonly id: string;
  /** `undefined` where the figure is the same in all sizes. */
  readonly size: string | undefined;
}

/** The annotated manuscripts of a folder, which is named from the root of the repository. */
export function annotatedIn(folder: string): ({ readonly name: string } & AnnotatedManuscript)[] {
  return manuscriptsIn(folder).map(({ name, source }) => ({ name, ...readAnnotated(source) }));
}

/** The manuscripts of a folder, annotated or not, as their authors wrote them. */
export function plainManuscriptsIn(folder: string): ManuscriptFile[] {
  return annotatedIn(folder).map(({ name, source }) => ({ name, source }));
}

const ANNOTATION = /⟦([^⟦⟧]*)⟧/g;

/** @throws Error that names the line, when an annotation is empty or stands behind no number. */
export function readAnnotated(text: string): AnnotatedManuscript {
  const expected: Expected[] = [];
  let source = '';
  let from = 0;
  for (const { 0: annotation, 1: note = '', index } of text.matchAll(ANNOTATION)) {
    source += text.slice(from, index);
    from = index + annotation.length;
    const start = numberBefore(source, expected.at(-1)?.end ?? 0);
    const meaning = meaningOf(note.replace(/\s+/g, ' ').trim());
    if (start === undefined || !meaning)
      throw new Error(`line ${text.slice(0, index).split('\n').length}: ${annotation} cannot be read`);
    expected.push({ start, end: source.length, text: source.slice(start), ...meaning });
  }
  source += text.slice(from);
  const stray = source.search(/[⟦⟧]/);
  if (stray >= 0)
    throw new Error(`line ${source.slice(0, stray).split('\n').length}: a bracket has no partner`);
  return { source, expected };
}

/** Longer than any number with its mark. */
const LONGEST = 60;

/** Where the number that ends the text starts: the leftmost place, so that `3-1/2"` is one number. */
function numberBefore(text: string, from: number): number | undefined {
  const first = Math.max(from, text.length - LONGEST);
  const tail = text.slice(first);
  for (let at = 0; at < tail.length; at++) {
    if (at > 0 && /[\p{L}\p{N}.]/u.test(tail.charAt(at - 1)) && /[\p{L}\p{N}]/u.test(tail.charAt(at)))
      continue;
    const number = readNumberAt(tail, at);
    if ([number, ...(number?.alternative ?? [])].some((each) => each?.end === tail.length)) return first + at;
  }
  return undefined;
}

function meaningOf(note: string): Pick<Expected, 'account' | 'figures'> | undefined {
  if (note === '-') return { account: 'not-measurement', figures: [] };
  if (note === '?') return { account: 'unaccounted', figures: [] };
  const figures = note.split('|').map((name): ExpectedFigure => {
    const [id = '', size] = name.split(' @ ').map((part) => part.trim());
    return { id, size };
  });
  return figures.every(({ id }) => id !== '') ? { account: 'verified', figures } : undefined;
}
