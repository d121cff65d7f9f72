/** Which labels have room in their boxes, and which are replaced by a letter that the legend explains. */
import type { DrawnBox } from '../../geometry/drawing.ts';
import { groupBy } from '../groupBy.ts';

export interface Lettering {
  /** In the units of the drawing. */
  readonly size: number;
  widthOf(text: string): number;
  /** The size at which a text fits a box; `undefined` where it would be too small to read. */
  sizeIn(box: DrawnBox, text: string): number | undefined;
}

/** Letters in the longer side of a picture, so that they come out at about 9 points on paper. */
const LETTERS_WIDE = 58;
const LETTERS_NARROW = 29;
/** The width of a letter, and the height of a line, in proportion to the size of the type. */
const LETTER = 0.62;
const LINE = 1.05;
/** Letters may be so much smaller where a piece is narrow. */
const SMALLEST = 0.6;
/** The same words in more boxes than this are noise; letters are not. */
const MOST_REPEATED = 4;

export function letteringOf(longSide: number, isWide: boolean): Lettering {
  const size = longSide / (isWide ? LETTERS_WIDE : LETTERS_NARROW);
  return {
    size,
    widthOf: (text) => size * text.length * LETTER,
    sizeIn({ width, height }, text) {
      const fitting = Math.min(size, width / (text.length * LETTER), height / LINE);
      return fitting < size * SMALLEST ? undefined : fitting;
    },
  };
}

/** A letter for every label that lacks the room in some box, or stands in many: `a`, `b`, …, `z`, `aa`. */
export function keysOf(boxes: readonly DrawnBox[], lettering: Lettering): ReadonlyMap<string, string> {
  const labelled = boxes.filter(({ label }) => label !== undefined);
  const groups = groupBy(labelled, ({ label = '' }) => label);
  const keyed = [...groups].filter(
    ([label, alike]) =>
      alike.length > MOST_REPEATED || alike.some((box) => lettering.sizeIn(box, label) === undefined),
  );
  return new Map(keyed.map(([label], index) => [label, letter(index)]));
}

function letter(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : letter(Math.floor(index / 26) - 1) + last;
}
