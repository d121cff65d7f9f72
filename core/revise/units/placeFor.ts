/** Where an equivalent stands: in brackets behind the length and its tag, behind a stroke where brackets are open. */
import { CLOSING } from '../../manuscript/behind.ts';
import { type Addition, rangeOf, type Sides } from './addition.ts';

export function placeFor(sides: Sides, text: string, source: string): Pick<Addition, 'at' | 'text'> {
  const { passage, written } = sides[0];
  const before = passage.text.slice(0, written.start);
  const isInBrackets = before.lastIndexOf('(') > before.lastIndexOf(')');
  return { at: placeBehind(sides, source), text: isInBrackets ? ` / ${text}` : ` (${text})` };
}

/** A tag on a line of its own may speak of the equivalent, which is the same length. */
function placeBehind(sides: Sides, source: string): number {
  const { end } = rangeOf({ sides });
  const closed = end + (CLOSING.exec(source.slice(end))?.[0].length ?? 0);
  const tag = sides[0].passage.tags.find(({ start }) => start >= end);
  const isBeside = tag !== undefined && /^[ \t]*$/.test(source.slice(closed, tag.start));
  return isBeside ? tag.end : closed;
}
