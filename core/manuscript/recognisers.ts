/** Numbers that measure nothing in the pattern, and why. */
import type { NumberText } from '../quantity/notation.ts';
import { textBefore, textBehind } from './nearby.ts';
import { RECOGNISERS } from './recogniserTable.ts';

/** A noun phrase for the author, such as "step number". */
export type Reason = (typeof RECOGNISERS)[number]['reason'] | 'left alone';

/** What a recogniser looks at. */
export interface Sight {
  readonly number: NumberText;
  /** The whole text, where `number` has its offsets. */
  readonly text: string;
  /** A little of the text right before the number, and right behind it. */
  readonly before: string;
  readonly behind: string;
  /** Both, with the number between them. */
  readonly around: string;
}

/** One way to tell. All of its conditions must hold. */
export interface Recogniser {
  readonly reason: string;
  readonly before?: RegExp;
  readonly behind?: RegExp;
  /** A global pattern, one of whose matches near the number covers it. */
  readonly around?: RegExp;
  readonly when?: (sight: Sight) => boolean;
  /** A sentence in which the number in « » is one, and the likest one in which it is not. */
  readonly example: string;
  readonly counterexample: string;
}

/** The first recogniser's reason; `undefined` for a number that may measure something. */
export function whyNotMeasurement(number: NumberText, text: string): Reason | undefined {
  const sight = sightOf(number, text);
  return RECOGNISERS.find((row: Recogniser) => recognises(row, sight))?.reason;
}

export function sightOf(number: NumberText, text: string): Sight {
  const before = textBefore(text, number.start);
  const behind = textBehind(text, number.end);
  return { number, text, before, behind, around: before + text.slice(number.start, number.end) + behind };
}

export function recognises({ before, behind, around, when }: Recogniser, sight: Sight): boolean {
  return (
    (before === undefined || before.test(sight.before)) &&
    (behind === undefined || behind.test(sight.behind)) &&
    (around === undefined || covers(around, sight)) &&
    (when === undefined || when(sight))
  );
}

/** Whether a match of the global pattern covers the number. */
function covers(pattern: RegExp, { before, behind, around }: Sight): boolean {
  const end = around.length - behind.length;
  pattern.lastIndex = 0;
  for (
    let match = pattern.exec(around);
    match && match.index <= before.length;
    match = pattern.exec(around)
  ) {
    if (match.index + match[0].length >= end) return true;
    if (match[0] === '') pattern.lastIndex++;
  }
  return false;
}
