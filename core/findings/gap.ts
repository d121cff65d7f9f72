/** The mark of what an author still has to write: `…` for a value of the block, `[queen: …]` in the text. */

/** As a value of the block. */
export const GAP = '…';

/** In the text, with the name of the size that it is about. */
export function gapFor(size: string): string {
  return `[${size}: ${GAP}]`;
}

/** Every gap of a text; the first group is the name of its size. */
export const GAP_MARKS = /\[([^[\]\n]{1,60}): …\]/g;
