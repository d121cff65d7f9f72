/** What customers must be told of a changed pattern: every number that is another one now, where, and for which size. */
import type { Found } from '../proof/earlier/align.ts';
import type { KeptLine } from '../proof/earlier/keptLine.ts';
import { compareNumbers, textOf } from './compare.ts';

/** A number and where it stands. */
export interface Mention {
  /** The headings above it, the outermost first. */
  readonly headings: readonly string[];
  /** `2`, or `2.1`; empty outside of numbered steps. */
  readonly step: string;
  /** Its line, and its place in it. */
  readonly line: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The size that it is for; `undefined` where it holds for all, or nothing tells. */
  readonly size: string | undefined;
  /** Whether it holds for all sizes. */
  readonly isForAll: boolean;
}

export interface Correction {
  /** As it was printed. */
  readonly printed: Mention;
  /** As it stands now. */
  readonly right: Mention;
}

export interface Corrections {
  /** Each changed number once, in the reading order of the new text. */
  readonly changed: readonly Correction[];
  /** Numbers that only the new text has, and those that only the printed one has. */
  readonly added: readonly Mention[];
  readonly removed: readonly Mention[];
}

/** @param sizeIn the size that the head of a column names */
export function correctionsBetween(
  before: readonly KeptLine[],
  after: readonly KeptLine[],
  sizeIn: (head: string) => string | undefined,
): Corrections {
  const { changed, added, removed } = compareNumbers(before, after);
  const mention = (found: Found<KeptLine>) => toMention(found, sizeIn);
  return {
    changed: changed.map((pair) => correction(mention(pair.before), mention(pair.after))),
    added: added.map(mention),
    removed: removed.map(mention),
  };
}

/** Where only one of the two tells the size, it is that of both. */
function correction(printed: Mention, right: Mention): Correction {
  const size = right.size ?? printed.size;
  const isForAll = size === undefined && (right.isForAll || printed.isForAll);
  return { printed: { ...printed, size, isForAll }, right: { ...right, size, isForAll } };
}

function toMention({ line, number }: Found<KeptLine>, sizeIn: (head: string) => string | undefined): Mention {
  const { headings, step, text } = line;
  const { start, end, column } = number;
  const size = number.size ?? (column === undefined ? undefined : sizeIn(column));
  const isForAll = number.figure !== undefined && size === undefined;
  return { headings, step, line: text, start, end, text: textOf({ line, number }), size, isForAll };
}
