/** Which entries of the block changed between two states, of those that a figure follows from. */
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import { placeWords } from '../../block/placeWords.ts';
import { readCount, readLength } from '../../quantity/read.ts';
import type { Input } from '../inputs.ts';

export interface Change {
  readonly path: BlockPath;
  /** `undefined` where the block did not say it. */
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/** The inputs of one figure in one state, and everything else that the block said then. */
export interface InputState {
  readonly inputs: readonly Input[];
  textAt(path: BlockPath): string | undefined;
}

/** Those that the figure follows from now come first, in the order of `after`, then those that nobody says any more. */
export function changesBetween(before: InputState, after: InputState): Change[] {
  const now = after.inputs.map(
    ({ path, text }): Change => ({ path, before: textIn(before, path), after: text }),
  );
  const gone = before.inputs
    .filter(
      ({ path }) => !after.inputs.some((input) => isWithin(input.path, path) || isWithin(path, input.path)),
    )
    .filter(({ path }) => textIn(after, path) === undefined)
    .map(({ path, text }): Change => ({ path, before: text, after: undefined }));
  return [...now, ...gone].filter((change) => !isSame(change.before, change.after));
}

const MOST_NAMED = 2;
/** Longer values are not repeated in a sentence. */
const LONGEST = 40;

/** `“strip” of the binding changed from 2¼" to 2½"`; of several the first two, and how many more there are. */
export function changesInWords(changes: readonly Change[], pattern: Pattern): string {
  const named = changes.slice(0, MOST_NAMED).map((change) => inWords(change, pattern));
  const more = changes.length - named.length;
  if (more === 0) return named.join(' and ');
  return `${named.join(', ')}, and ${more} more ${more === 1 ? 'entry' : 'entries'} changed`;
}

function inWords({ path, before, after }: Change, pattern: Pattern): string {
  const name = placeWords(path, pattern);
  if (before === undefined) return `${name} was added`;
  if (after === undefined) return `${name} was taken out`;
  return before.length > LONGEST || after.length > LONGEST
    ? `${name} changed`
    : `${name} changed from ${before} to ${after}`;
}

/** A value that has become one value for each size, or the reverse, is still the value of this entry. */
function textIn({ inputs, textAt }: InputState, path: BlockPath): string | undefined {
  return textAt(path) ?? inputs.find((input) => isWithin(input.path, path))?.text;
}

function isWithin(inner: BlockPath, outer: BlockPath): boolean {
  return outer.every((step, index) => inner[index] === step);
}

/** The same value, however it is written: 2 1/4" is 2¼". */
function isSame(a: string | undefined, b: string | undefined): boolean {
  if (a === undefined || b === undefined || a === b) return a === b;
  const [one, other] = [amountOf(a), amountOf(b)];
  return one !== undefined && one === other;
}

function amountOf(text: string): string | undefined {
  const length = readLength(text, { zero: true });
  if (!('problem' in length)) return `${length.inches.toFraction()} in`;
  const count = readCount(text);
  return 'problem' in count ? undefined : count.value.toFraction();
}
