/** A pattern from the text of a block that stands nowhere yet. */
import type { Pattern } from '../block/pattern.ts';
import { readPattern } from '../block/read.ts';

export function patternFrom(block: string): Pattern {
  return readPattern([{ value: block, start: 0, end: block.length, toSource: (offset) => offset }]);
}
