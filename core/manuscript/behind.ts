/** Where a comment behind a number can stand, so that Markdown takes it for a comment and it speaks of this number. */
import { applyEdits, type Edit } from '../findings/finding.ts';
import type { Manuscript, ReadNumber } from './manuscript.ts';
import { readManuscript } from './read.ts';
import type { Meaning } from './tags.ts';

/** Marks that end emphasis or a link, behind which a comment may have to stand: `**7**`, `[7](#binding)`. */
const CLOSING = /^(?:[*_~]+|\]\([^()\s]*\)|\]\[[^[\]]*\])+/;

/**
 * The edit that puts a comment behind a number; `undefined` where no place is right, such as in the text of a link
 * whose address the comment would cut off. Whatever the edit changes is read again: the comment must be understood,
 * and every number stay what it was.
 *
 * @param comment with its marks: `<!-- measure skip -->`
 * @param isMeant whether the comment was understood
 */
export function commentBehind(
  manuscript: Manuscript,
  number: ReadNumber,
  comment: string,
  isMeant: (meaning: Meaning) => boolean,
): Edit | undefined {
  const { source } = manuscript;
  const end = Math.max(...number.ranges.map((range) => range.end));
  const closing = CLOSING.exec(source.slice(end))?.[0].length ?? 0;
  for (const place of closing > 0 ? [end + closing, end] : [end])
    for (const space of [' ', '']) {
      const edit = { start: place, end: place, text: space + comment };
      if (holds(manuscript, number, edit, isMeant)) return edit;
    }
  return undefined;
}

function holds(
  before: Manuscript,
  number: ReadNumber,
  edit: Edit,
  isMeant: (meaning: Meaning) => boolean,
): boolean {
  const after = readManuscript(applyEdits(before.source, [edit]));
  const passage = after.passages[before.passages.indexOf(number.passage)];
  const tag = passage?.tags.find(({ start }) => start >= edit.start && start <= edit.start + 1);
  const last = passage?.numbers.findLast(({ written }) => written.end <= (tag?.at ?? 0));
  return (
    tag !== undefined &&
    isMeant(tag.meaning) &&
    last?.written.start === number.written.start &&
    after.comments.length === before.comments.length + 1 &&
    after.passages.length === before.passages.length &&
    after.numbers.length === before.numbers.length &&
    after.numbers.every((one, index) => isAlike(one, before.numbers[index]))
  );
}

function isAlike(a: ReadNumber, b: ReadNumber | undefined): boolean {
  return b !== undefined && a.text === b.text && a.unit === b.unit && a.value.equals(b.value);
}
