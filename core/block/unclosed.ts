/** A block whose fence is not closed goes on over the text behind it: where it may still be read. */
import { ENTRIES } from './entries/index.ts';

/** The first word of a line that stands at the margin; items of a list and closing brackets go on with an entry. */
const MARGIN = /^(?:([\p{L}][\p{L} ]*):(?:\s|$)|- |[\]}])/u;

/**
 * Where the text begins that is no part of the block: at the first line of the margin that begins no entry, or behind
 * the last line.
 */
export function endOfEntries(text: string): number {
  let at = 0;
  let isBehindGap = false;
  for (const line of text.split('\n')) {
    const isInner = line.trim() === '' || /^\s/.test(line) || (line.startsWith('#') && !isBehindGap);
    const [goesOn, entry] = MARGIN.exec(line) ?? [];
    const isEntry =
      entry === undefined ? goesOn !== undefined && !isBehindGap : Object.hasOwn(ENTRIES, entry);
    if (!isInner && !isEntry) return at;
    isBehindGap = line.trim() === '';
    at += line.length + 1;
  }
  return text.length;
}
