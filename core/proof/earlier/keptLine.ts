/** The lines of a manuscript as plain data that outlives it: what stood there, and how each number came out. */
import type { Manuscript, ReadNumber } from '../../manuscript/manuscript.ts';
import { readLines, type Spot } from '../../reading/line.ts';
import type { Account, AccountKind } from '../proof.ts';

/** A paragraph, a heading, or one row of a table, with the numbers that stand in it. */
export interface KeptLine {
  readonly text: string;
  /** The headings above it, the outermost first. */
  readonly headings: readonly string[];
  /** The numbered steps that it belongs to, `2` or `2.1`; empty for a line outside of numbered lists. */
  readonly step: string;
  readonly isRow: boolean;
  /** In reading order. */
  readonly numbers: readonly KeptNumber[];
}

export interface KeptNumber {
  /** Its place in the text of its line. */
  readonly start: number;
  readonly end: number;
  readonly account: AccountKind;
  /** The id of the figure that it states. */
  readonly figure: string | undefined;
  /** The size whose value it states; `undefined` where the sizes do not differ. */
  readonly size: string | undefined;
  /** The head of its column, for a number in a table. */
  readonly column: string | undefined;
}

/** A number of a manuscript that is at hand. */
export interface SeenNumber extends KeptNumber {
  readonly read: ReadNumber;
}

/** A line whose numbers can still be found in their manuscript. */
export interface SeenLine extends KeptLine {
  readonly numbers: readonly SeenNumber[];
}

/** All lines that hold numbers, in reading order. */
export function seenLines(manuscript: Manuscript, accounts: readonly Account[] = []): SeenLine[] {
  const known = new Map(accounts.map((account) => [account.number, account]));
  return readLines(manuscript).flatMap(({ text, spots, isRow }): SeenLine[] => {
    const context = spots[0]?.number.passage.context;
    if (!context) return [];
    return [
      {
        text,
        headings: context.headings.map((heading) => heading.text),
        step: context.list.flatMap(({ number }) => number ?? []).join('.'),
        isRow,
        numbers: spots.map((spot) => seenNumber(spot, known.get(spot.number))),
      },
    ];
  });
}

function seenNumber({ number, start, end, column }: Spot, account: Account | undefined): SeenNumber {
  return {
    read: number,
    start,
    end,
    column,
    account: account?.kind ?? (number.notMeasurement === undefined ? 'unaccounted' : 'not-measurement'),
    figure: account?.tie?.figure.id,
    size: account?.tie?.size ?? undefined,
  };
}
