/** Where a comment behind a number can stand, so that Markdown takes it for a comment and it speaks of this number. */
import { applyEdits } from '../findings/finding.ts';
import type { Manuscript, ReadNumber } from './manuscript.ts';
import { readManuscript } from './read.ts';

/** Marks that end emphasis or a link, behind which a comment may have to stand: `**7**`, `[7](#binding)`. */
export const CLOSING = /^(?:[*_~]+|\]\([^()\s]*\)|\]\[[^[\]]*\])+/;

/** Says nothing about figures, so that it can be tried at a place whatever will be said there. */
const TRIED = '<!-- measure skip -->';

export interface PlaceBehind {
  /** In the source. */
  readonly at: number;
  /** What stands between the number and the comment. */
  readonly space: string;
}

/**
 * Where a comment behind a number belongs; `undefined` where no place is right. Each place is tried: the comment must
 * be understood and speak of this number, and every number stay what it was.
 */
export function placeBehind(manuscript: Manuscript, number: ReadNumber): PlaceBehind | undefined {
  const end = Math.max(...number.ranges.map((range) => range.end));
  const closing = CLOSING.exec(manuscript.source.slice(end))?.[0].length ?? 0;
  const places = (closing > 0 ? [end + closing, end] : [end]).flatMap((at) => [
    { at, space: ' ' },
    { at, space: '' },
  ]);
  return places.find((place) => holds(manuscript, number, place));
}

function holds(before: Manuscript, number: ReadNumber, { at, space }: PlaceBehind): boolean {
  const after = readManuscript(applyEdits(before.source, [{ start: at, end: at, text: space + TRIED }]));
  const passage = after.passages[before.passages.indexOf(number.passage)];
  const tag = passage?.tags.find(({ start }) => start === at + space.length);
  const last = passage?.numbers.findLast(({ written }) => written.end <= (tag?.at ?? 0));
  return (
    tag !== undefined &&
    'skip' in tag.meaning &&
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
