/** Numbers that measure nothing in the pattern, and why. */
import type { NumberText } from '../quantity/notation.ts';
import { covers, textBefore, textBehind } from './nearby.ts';
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
  const { start, end } = number;
  return { number, text, before: textBefore(text, start), behind: textBehind(text, end) };
}

export function recognises({ before, behind, around, when }: Recogniser, sight: Sight): boolean {
  return (
    (before === undefined || before.test(sight.before)) &&
    (behind === undefined || behind.test(sight.behind)) &&
    (around === undefined || covers(around, sight.text, sight.number)) &&
    (when === undefined || when(sight))
  );
}
