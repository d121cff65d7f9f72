/** One line of a manuscript with a mark under a part of it, for terminals. */
import stringWidth from 'string-width';

export interface Excerpt {
  readonly line: string;
  /** Spaces and marks that stand exactly under the part. */
  readonly mark: string;
}

const TAB_STOP = 4;
const ELLIPSIS = '…';
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** What the terminal shows for one character of the author, and where. */
interface Cell {
  readonly text: string;
  readonly column: number;
  readonly width: number;
}

/**
 * @param text the line, without its line end
 * @param start offset of the first marked character in the line
 * @param end offset after the last one; at least one column is marked, even when the part is empty
 * @param width columns that the terminal has for the line; a longer line is cut around the mark
 */
export function excerpt(text: string, start: number, end: number, width: number): Excerpt {
  const cells: Cell[] = [];
  let column = 0;
  let markStart: number | undefined;
  let markEnd: number | undefined;
  for (const { segment, index } of graphemes.segment(text)) {
    if (index + segment.length > start) markStart ??= column;
    if (index >= end) markEnd ??= column;
    const shown = segment === '\t' ? ' '.repeat(TAB_STOP - (column % TAB_STOP)) : withoutControls(segment);
    const cellWidth = stringWidth(shown);
    cells.push({ text: shown, column, width: cellWidth });
    column += cellWidth;
  }
  const from = markStart ?? column;
  const to = Math.max(markEnd ?? column, from + 1);
  return cut(cells, from, to, column, width);
}

function cut(cells: readonly Cell[], from: number, to: number, total: number, width: number): Excerpt {
  const whole = total <= width;
  const room = Math.max(width - 2 * ELLIPSIS.length, 1);
  const centred = from - Math.max(Math.floor((room - (to - from)) / 2), 0);
  const left = whole ? 0 : Math.max(0, Math.min(centred, total - room));
  const right = whole ? total : left + room;
  const shown = cells.filter((cell) => cell.column >= left && cell.column + cell.width <= right);
  const before = left > 0 ? ELLIPSIS : '';
  const after = right < total ? ELLIPSIS : '';
  const shift = before.length - (shown[0]?.column ?? left);
  return {
    line: before + shown.map((cell) => cell.text).join('') + after,
    mark: ' '.repeat(from + shift) + '^'.repeat(Math.max(Math.min(to, right) - from, 1)),
  };
}

/** A control character in a manuscript must not steer the reader's terminal. */
function withoutControls(segment: string): string {
  return segment.replace(/\p{Cc}/gu, '\u{fffd}');
}
