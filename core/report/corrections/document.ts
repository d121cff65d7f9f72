/** The list of corrections as a document, before it becomes Markdown or HTML. */
import type { PhrasingContent, Root, RootContent, Table } from 'mdast';
import type { Corrections, Mention } from '../../record/corrections.ts';
import { clip } from './clip.ts';

/** A pattern whose customers are told what changed. */
export interface Revised {
  /** The name of the pattern. */
  readonly title: string;
  readonly since: Since;
  readonly corrections: Corrections;
  /** Whether it comes in several sizes. */
  readonly hasSizes: boolean;
}

/** What the customers have: the pattern as someone signed it off, or a revision of it. */
export type Since =
  | { readonly by: string /** `2026-11-25` */; readonly on: string }
  | { readonly revision: string };

export function correctionsDocument(patterns: readonly Revised[]): Root {
  return { type: 'root', children: patterns.flatMap(patternPart) };
}

function patternPart({ title, since, corrections, hasSizes }: Revised): RootContent[] {
  const { changed, added, removed } = corrections;
  const parts: RootContent[] = [heading(1, `Corrections to ${title}`)];
  if (changed.length === 0)
    parts.push(paragraph(`No number of the pattern has changed since ${sinceWords(since)}.`));
  else {
    const one = changed.length === 1;
    const these = one ? 'One number has' : `${changed.length} numbers have`;
    parts.push(
      paragraph(
        `${these} changed since ${sinceWords(since)}. Please write ${one ? 'it' : 'them'} into your copy.`,
      ),
      table(
        ['Where', 'In the words', 'Printed', 'Should be', ...(hasSizes ? ['Size'] : [])],
        changed.map(({ printed, right }) => [
          [text(placeOf(right))],
          quoted(printed),
          [text(printed.text)],
          [{ type: 'strong', children: [text(right.text)] }],
          ...(hasSizes ? [[text(sizeOf(printed))]] : []),
        ]),
      ),
    );
  }
  parts.push(...mentions('New numbers', 'These stand in the new text only.', added, hasSizes));
  parts.push(...mentions('Numbers left out', 'These stood in the printed text only.', removed, hasSizes));
  return parts;
}

function mentions(
  title: string,
  sentence: string,
  all: readonly Mention[],
  hasSizes: boolean,
): RootContent[] {
  if (all.length === 0) return [];
  const rows = all.map((mention) => [
    [text(placeOf(mention))],
    quoted(mention),
    [text(mention.text)],
    ...(hasSizes ? [[text(sizeOf(mention))]] : []),
  ]);
  const head = ['Where', 'In the words', 'Number', ...(hasSizes ? ['Size'] : [])];
  return [heading(2, title), paragraph(sentence), table(head, rows)];
}

/** `Binding, step 2`; the title of the pattern goes without saying. */
function placeOf({ headings, step }: Mention): string {
  const under = headings.length > 1 ? headings.slice(1) : headings;
  const steps = step === '' ? [] : [`step ${step}`];
  return [under.join(' › '), ...steps].filter((part) => part !== '').join(', ') || 'At the beginning';
}

function sizeOf({ size, isForAll }: Mention): string {
  return size ?? (isForAll ? 'all' : '');
}

/** The words around the number, with the number marked. */
function quoted({ line, start, end }: Mention): PhrasingContent[] {
  const { before, behind } = clip(line, start, end);
  const number: PhrasingContent = { type: 'emphasis', children: [text(line.slice(start, end))] };
  return [text(before), number, text(behind)].filter((node) => node.type !== 'text' || node.value !== '');
}

function sinceWords(since: Since): string {
  if ('revision' in since) return `revision ${since.revision}`;
  return `${since.by} signed it off on ${dayWords(since.on)}`;
}

/** `25 November 2026`, which people on both sides of the ocean read alike. */
function dayWords(day: string): string {
  return new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(new Date(day));
}

function heading(depth: 1 | 2, value: string): RootContent {
  return { type: 'heading', depth, children: [text(value)] };
}

function paragraph(value: string): RootContent {
  return { type: 'paragraph', children: [text(value)] };
}

function table(head: readonly string[], rows: readonly PhrasingContent[][][]): Table {
  const cells = [head.map((value) => [text(value)]), ...rows];
  return {
    type: 'table',
    children: cells.map((row) => ({
      type: 'tableRow',
      children: row.map((children) => ({ type: 'tableCell', children })),
    })),
  };
}

function text(value: string): { type: 'text'; value: string } {
  return { type: 'text', value };
}
