/** Markdown -> manuscript. */
import type { Manuscript } from './manuscript.ts';
import { parseMarkdown } from './markdown.ts';
import { readNumbers } from './numbers.ts';
import { offRanges } from './off.ts';
import { readPassages, readPlainText, type Sections } from './passages.ts';

const BYTE_ORDER_MARK = '\ufeff';

/** @throws nothing: every text is a manuscript, if a strange one */
export function readManuscript(source: string): Manuscript {
  const { passages, fences, comments } = readSections(source);
  const off = offRanges(comments, source.length);
  for (const passage of passages) passage.numbers.push(...readNumbers(passage, off));
  return { source, passages, fences, comments, off, numbers: passages.flatMap(({ numbers }) => numbers) };
}

function readSections(source: string): Sections {
  const sheet = { source, shift: source.startsWith(BYTE_ORDER_MARK) ? 1 : 0 };
  try {
    return readPassages(parseMarkdown(source), sheet);
  } catch (error) {
    // Thousands of nested quotes or lists exhaust the stack; their numbers are read all the same.
    if (error instanceof RangeError) return readPlainText(sheet);
    throw error;
  }
}
