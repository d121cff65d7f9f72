/** The sentence around a number, as its reader sees it, for reports on paper. */
import type { Range } from '../findings/finding.ts';
import type { Manuscript, Passage } from '../manuscript/manuscript.ts';
import { Lines } from './lines.ts';

export interface Sentence {
  /** The line of the manuscript on which the first mark begins. */
  readonly line: number;
  /** In a table: the heads of the row and of the column. */
  readonly lead: string | undefined;
  readonly text: string;
  /** Where the numbers stand in `text`, in order. */
  readonly marks: readonly Range[];
}

/** @param places in the source, in order; neighbours in one sentence are shown in it together */
export function sentencesAround(manuscript: Manuscript, places: readonly Range[]): Sentence[] {
  const lines = new Lines(manuscript.source);
  const found: (Sentence & { readonly key: string })[] = [];
  for (const place of places) {
    const { line } = lines.position(place.start);
    const next = inPassage(manuscript, place) ?? inLine(lines, line, place);
    const last = found.at(-1);
    if (last?.key === next.key) found.splice(-1, 1, { ...last, marks: [...last.marks, next.mark] });
    else found.push({ ...next, line, marks: [next.mark] });
  }
  return found;
}

interface Found {
  /** The same for all places of one sentence. */
  readonly key: string;
  readonly lead: string | undefined;
  readonly text: string;
  readonly mark: Range;
}

const sentences = new Intl.Segmenter('en', { granularity: 'sentence' });
/** What a passage shows in place of a picture, code or an address. */
const OBJECT = /\ufffc/g;

function inPassage({ passages }: Manuscript, place: Range): Found | undefined {
  const index = passages.findIndex((passage) => holds(passage, place));
  const passage = passages[index];
  if (!passage) return undefined;
  const { offsets, ends, context } = passage;
  // One unit for one unit, so that the marks stay where they are; and a line end would end a sentence.
  const text = passage.text.replace(/\s/g, ' ').replace(OBJECT, '…');
  const start = ends.findIndex((end) => end > place.start);
  const after = offsets.findIndex((offset) => offset >= place.end);
  const end = after < 0 ? text.length : Math.min(after, text.length);
  const around = spanOf(text, start, end);
  return {
    key: `${index}:${around.start}`,
    lead: leadOf(context.cell),
    text: text.slice(around.start, around.end),
    mark: { start: start - around.start, end: end - around.start },
  };
}

function holds({ offsets, ends, text }: Passage, { start, end }: Range): boolean {
  return (offsets[0] ?? 0) <= start && end <= (ends[text.length - 1] ?? -1) && start < end;
}

/** From the sentence in which a number begins to the one in which it ends: a full stop behind "yd" is no end. */
function spanOf(text: string, start: number, end: number): Range {
  const parts = [...sentences.segment(text)].filter(
    ({ index, segment }) => index < end && index + segment.length > start,
  );
  const last = parts.at(-1);
  return {
    start: parts[0]?.index ?? 0,
    end: last ? last.index + last.segment.trimEnd().length : text.length,
  };
}

function leadOf(cell: Passage['context']['cell']): string | undefined {
  if (!cell) return undefined;
  const heads = [cell.column > 0 ? cell.rowHeader : '', cell.row > 0 ? cell.columnHeader : ''];
  const lead = heads
    .map((head) => head.replace(/\s+/g, ' ').trim())
    .filter(Boolean)
    .join(', ');
  return lead === '' ? undefined : lead;
}

/** A place in a block, or between passages. */
function inLine(lines: Lines, line: number, { start, end }: Range): Found {
  const text = lines.text(line);
  const own = text.length - text.trimStart().length;
  const column = lines.position(start).column - 1;
  const from = Math.max(column - own, 0);
  return {
    key: `line ${line}`,
    lead: undefined,
    text: text.trim(),
    mark: { start: from, end: Math.min(from + end - start, text.trim().length) },
  };
}
