/** The comments that speak to us: `<!-- = binding.square @ queen -->`, `<!-- measure off -->`, `<!-- measure skip -->`. */
import type { Range } from '../findings/finding.ts';

/** Says which figures the numbers before it state. */
export interface Tag {
  /** One for a number, several for the numbers of a size: `= finished.width x finished.length`. */
  readonly figures: readonly string[];
  readonly size: string | undefined;
  /** In the source, one for each figure. */
  readonly idRanges: readonly Range[];
  readonly sizeRange: Range | undefined;
}

/** Why a comment cannot be taken, in a sentence for its author. */
export interface Problem {
  readonly problem: string;
}

/** The number before it is left alone. */
export interface Skip {
  readonly skip: true;
}

export type Meaning = Tag | Skip | Problem | { readonly turn: 'off' | 'on' };

/** A piece of the comment, with its place in the comment. */
interface Piece {
  readonly text: string;
  readonly start: number;
}

const TURN = /^\s*measure\s+(\S+)\s*$/i;
const MARK = /^\s*=/;
const BETWEEN_FIGURES = /\s[x×]\s/g;

/**
 * @param comment what stands between `<!--` and `-->`
 * @param place the range in the source of a stretch of the comment
 * @returns `undefined` for a comment that is the author's own
 */
export function readComment(
  comment: string,
  place: (start: number, end: number) => Range,
): Meaning | undefined {
  const mark = MARK.exec(comment)?.[0];
  if (mark !== undefined) return readTag({ text: comment.slice(mark.length), start: mark.length }, place);
  const word = TURN.exec(comment)?.[1]?.toLowerCase();
  if (word === undefined) return undefined;
  if (word === 'off' || word === 'on') return { turn: word };
  if (word === 'skip') return { skip: true };
  return {
    problem: `“measure ${word}” means nothing here; write “measure off”, “measure on” or “measure skip”.`,
  };
}

function readTag(body: Piece, place: (start: number, end: number) => Range): Tag | Problem {
  const [names = body, sizeName, ...more] = split(body, /@/g);
  if (more.length > 0) return { problem: 'A tag names one size; write it once, behind one @.' };
  const figures = split(names, BETWEEN_FIGURES);
  const range = ({ text, start }: Piece) => place(start, start + text.length);
  if (figures.some(({ text }) => text === '')) {
    return { problem: 'This tag names no figure; write it as = binding.strips.' };
  }
  if (sizeName?.text === '') return { problem: 'This tag names no size behind the @.' };
  return {
    figures: figures.map(({ text }) => text.replace(/\s+/g, ' ')),
    size: sizeName?.text.replace(/\s+/g, ' '),
    idRanges: figures.map(range),
    sizeRange: sizeName && range(sizeName),
  };
}

/** The pieces between separators, without the spaces around them. */
function split({ text, start }: Piece, separator: RegExp): Piece[] {
  const pieces: Piece[] = [];
  let from = 0;
  for (const { index, 0: found } of text.matchAll(separator)) {
    pieces.push(trimmed(text.slice(from, index), start + from));
    from = index + found.length;
  }
  return [...pieces, trimmed(text.slice(from), start + from)];
}

function trimmed(text: string, start: number): Piece {
  const kept = text.trimStart();
  return { text: kept.trimEnd(), start: start + text.length - kept.length };
}
