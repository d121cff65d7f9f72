/** What a revision changes and what it leaves to the author, for people who read it in a terminal. */
import { applyEdits, type Edit } from '../findings/finding.ts';
import type { Proof } from '../proof/proof.ts';
import type { Revision } from '../revise/revision.ts';
import { Lines } from './lines.ts';

export interface RevisionReport {
  /** Ends with a line end. */
  readonly text: string;
  /** Whether nothing is left to write or to look at. */
  readonly isComplete: boolean;
}

/**
 * @param revised the proof of the text after the edits
 * @param isWritten whether the text was written, or only shown
 */
export function revisionReport(
  path: string,
  source: string,
  { edits, open }: Revision,
  revised: Proof,
  isWritten: boolean,
): RevisionReport {
  const [old, now] = [new Lines(source), new Lines(revised.manuscript.source)];
  const moved = (offset: number) => offset + shiftBefore(offset, edits);
  const left = [
    ...revised.findings
      .filter(({ code }) => code === 'gap')
      .map(({ start, message }) => ({ line: now.position(start).line, message })),
    ...open.map(({ start, message }) => ({ line: now.position(moved(start)).line, message })),
  ].sort((a, b) => a.line - b.line);
  const lines = new Set(edits.map(({ start }) => old.position(start).line)).size;
  const places = lines === 1 ? '1 line' : `${lines} lines`;
  const done = isWritten ? 'revised' : 'would be revised';
  const summary = edits.length === 0 ? `${path} stays as it is.` : `${places} of ${path} ${done}.`;
  const sentences = left.map(({ line, message }) => `${path}:${line}: ${message}`);
  return { text: [...sentences, summary, ''].join('\n'), isComplete: left.length === 0 };
}

function shiftBefore(offset: number, edits: readonly Edit[]): number {
  return edits
    .filter(({ end }) => end <= offset)
    .reduce((sum, { start, end, text }) => sum + text.length - (end - start), 0);
}

/** The lines that edits change, as they are and as they will be; ends with a line end, or is empty. */
export function changedLines(source: string, edits: readonly Edit[]): string {
  const lines = new Lines(source);
  const blocks: { first: number; last: number; edits: Edit[] }[] = [];
  for (const edit of [...edits].sort((a, b) => a.start - b.start)) {
    const [first, last] = [lines.position(edit.start).line, lines.position(edit.end).line];
    const open = blocks.at(-1);
    if (open && first <= open.last) {
      open.last = Math.max(open.last, last);
      open.edits.push(edit);
    } else blocks.push({ first, last, edits: [edit] });
  }
  return blocks.map((block) => changed(source, lines, block)).join('\n');
}

function changed(
  source: string,
  lines: Lines,
  { first, last, edits }: { first: number; last: number; edits: readonly Edit[] },
): string {
  const texts = Array.from({ length: last - first + 1 }, (_, index) => lines.text(first + index));
  const start = edits[0] ? edits[0].start - (lines.position(edits[0].start).column - 1) : 0;
  const end = (edits.at(-1)?.end ?? start) + restOfLine(source, edits.at(-1)?.end ?? start);
  const inside = edits.map((edit) => ({ ...edit, start: edit.start - start, end: edit.end - start }));
  const now = applyEdits(source.slice(start, end), inside).split(/\r\n|\n|\r/);
  const number = String(first).padStart(4);
  const blank = ' '.repeat(number.length);
  return [
    ...texts.map((text, index) => `${index === 0 ? number : blank} - ${text}\n`),
    ...now.map((text) => `${blank} + ${text}\n`),
  ].join('');
}

function restOfLine(source: string, offset: number): number {
  return /^[^\r\n]*/.exec(source.slice(offset))?.[0].length ?? 0;
}
