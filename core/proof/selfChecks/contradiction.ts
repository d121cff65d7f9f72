/** What a check has to say: a number that another number of the manuscript contradicts. */
import { lowerFirst } from '../../block/words.ts';
import { CODES, type Code } from '../../findings/codes.ts';
import type { Finding, Related } from '../../findings/finding.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import { editsTo } from '../expected.ts';
import type { Told } from './said.ts';

export interface Contradiction {
  readonly code: Code;
  /** One sentence with both numbers. */
  readonly message: string;
  /** The number that is likelier wrong. */
  readonly at: Told;
  /** The numbers that it contradicts, each with what it says. */
  readonly against: readonly Against[];
  /** What should stand there instead, where the house says which of the numbers follows from the others. */
  readonly expected?: string | undefined;
}

export interface Against {
  readonly told: Told;
  readonly says: string;
}

export function numbersOf({ at, against }: Contradiction): ReadNumber[] {
  return [at.number, ...against.map(({ told }) => told.number)];
}

/** Whether both numbers are told for one size; what is told for none may be meant for another one. */
export function isOfOneSize({ at, against }: Contradiction): boolean {
  return at.isSized === true && against.some(({ told }) => told.isSized);
}

export function saidOfSize(found: Contradiction, size: string): Contradiction {
  return { ...found, message: `In the size “${size}”, ${lowerFirst(found.message)}` };
}

export function findingOf({ code, message, at, against, expected }: Contradiction, source: string): Finding {
  const edits = expected === undefined ? undefined : editsTo(expected, source, at.number.ranges);
  return {
    code,
    severity: CODES[code].severity,
    message,
    ...spanOf(at.number),
    related: against.map(({ told, says }): Related => ({ ...spanOf(told.number), message: says })),
    fixes: edits ? [{ title: `Change to ${expected}`, preferred: true, edits }] : [],
  };
}

function spanOf({ ranges }: ReadNumber) {
  return { start: ranges[0].start, end: ranges.at(-1)?.end ?? ranges[0].end };
}
