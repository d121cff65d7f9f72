/** Markdown -> manuscript. */
import type { Manuscript } from './manuscript.ts';
import { parseMarkdown } from './markdown.ts';
import { readNumbers } from './numbers.ts';
import { offRanges } from './off.ts';
import { readPassages } from './passages.ts';

const BYTE_ORDER_MARK = '\ufeff';

export function readManuscript(source: string): Manuscript {
  const sheet = { source, shift: source.startsWith(BYTE_ORDER_MARK) ? 1 : 0 };
  const { passages, fences, comments } = readPassages(parseMarkdown(source), sheet);
  const off = offRanges(comments, source.length);
  for (const passage of passages) passage.numbers.push(...readNumbers(passage, off));
  return { source, passages, fences, comments, off, numbers: passages.flatMap(({ numbers }) => numbers) };
}
