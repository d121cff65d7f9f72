/**
 * A manuscript as its reader sees it: runs of text with the place of every character in the source, the numbers in
 * them, the fenced measure blocks, and the comments that are meant for us.
 *
 * All offsets are UTF-16 code units, end exclusive. Offsets named "in the source" count from the start of the
 * document; all others count from the start of a passage's text or of a fence's value.
 */
import type { Range } from '../findings/finding.ts';
import type { NumberText } from '../quantity/notation.ts';
import type { Rational } from '../quantity/rational.ts';
import type { LengthUnit } from '../quantity/units.ts';
import type { Reason } from './recognisers.ts';
import type { Meaning, Problem, Skip, Tag } from './tags.ts';

export { readManuscript } from './read.ts';

export interface Manuscript {
  readonly source: string;
  /** In reading order; so are the other lists. */
  readonly passages: readonly Passage[];
  readonly fences: readonly Fence[];
  /** Every comment that speaks to us, inside passages or between them. */
  readonly comments: readonly Comment[];
  /** The numbers of all passages. */
  readonly numbers: readonly ReadNumber[];
  /** Stretches of the source between `<!-- measure off -->` and `<!-- measure on -->`. */
  readonly off: readonly Range[];
}

/** One run of reading text: a paragraph, a heading, a table cell, or the text inside raw HTML. */
export interface Passage {
  readonly kind: 'paragraph' | 'heading' | 'cell';
  /**
   * What the reader sees. Inline code, images, bare addresses and footnote marks are one U+FFFC each; soft and hard
   * line breaks are `\n`; emphasis, links and comments leave nothing behind.
   */
  readonly text: string;
  /** The place in the source of each UTF-16 unit of `text`, and of the end of the last one. */
  readonly offsets: Int32Array;
  /** Where each unit of `text` ends in the source: `½` from `&frac12;` is eight characters long. */
  readonly ends: Int32Array;
  readonly context: Context;
  /** The tags inside, and those on the line right behind. */
  readonly tags: readonly TagComment[];
  readonly numbers: readonly ReadNumber[];
  /** The pieces of the source that show `text.slice(start, end)`; several where markup splits it. */
  toSource(start: number, end: number): readonly [Range, ...Range[]];
}

/** What stands around a passage. */
export interface Context {
  /** The headings above it, the outermost first; a heading does not count itself. */
  readonly headings: readonly Heading[];
  /** The list items around it, the outermost first. */
  readonly list: readonly ListPlace[];
  readonly quoteDepth: number;
  /** The label of the footnote that it belongs to. */
  readonly footnote: string | undefined;
  readonly cell: CellPlace | undefined;
}

export interface Heading {
  readonly depth: number;
  readonly text: string;
}

export interface ListPlace {
  /** The number that the item shows; `undefined` in a bulleted list. */
  readonly number: number | undefined;
  /** Counted from zero. */
  readonly index: number;
}

export interface CellPlace {
  /** Counted from zero; row zero is the header. */
  readonly row: number;
  readonly column: number;
  /** The text at the head of the column, and of the first cell of the row. */
  readonly columnHeader: string;
  readonly rowHeader: string;
}

/** A fenced code block with the info string `measure`, in the source from fence to fence. */
export interface Fence extends Range {
  readonly value: string;
  /** The line that opens it, where no line closes it. */
  readonly unclosed: Range | undefined;
  /** The place in the source of an offset in `value`, its end included. */
  toSource(offset: number): number;
}

export interface Comment extends Range {
  /** Its place in the text of its passage; `undefined` for a comment between passages. */
  readonly at: number | undefined;
  readonly meaning: Meaning;
}

export interface TagComment extends Comment {
  readonly at: number;
  readonly meaning: Tag | Skip | Problem;
}

export type NumberKind = 'count' | 'length' | 'size' | 'yardage' | 'fraction-of' | 'other';

export interface ReadNumber {
  /** As the reader sees it: `passage.text.slice(written.start, written.end)`. */
  readonly text: string;
  readonly ranges: readonly [Range, ...Range[]];
  readonly kind: NumberKind;
  /** As written, in `unit`. */
  readonly value: Rational;
  /** Its own, or the one that it shares with a neighbour: both numbers of `10x16"` are inches. */
  readonly unit: LengthUnit | undefined;
  /** The number in the text of its passage. */
  readonly written: NumberText;
  readonly passage: Passage;
  /** The numbers that it forms a size or a range with, itself included, in order. */
  readonly group: NumberGroup | undefined;
  /** Why it measures nothing in the pattern. */
  readonly notMeasurement: Reason | undefined;
}

export interface NumberGroup {
  /**
   * `size`: 36" × 48". `grid`: 5 x 7, counts across and down unless more is known. `range`: 42-44", 44/45".
   */
  readonly kind: 'size' | 'grid' | 'range';
  readonly members: readonly NumberText[];
}
