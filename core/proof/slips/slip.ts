/** A way in which people come to a wrong number, and how it is told from the others. */
import type { Mistake } from './mistake.ts';

/** One row of the table of slips. */
export interface Slip {
  /** A noun phrase: `the finished size for the cut size`. It stands in reports for other programs. */
  readonly name: string;
  /** What the slip gives, where that is exactly the stated number; `undefined` where it is not. */
  explain(mistake: Mistake): Explained | undefined;
  /**
   * Whether it is named only where no other slip fits: such numbers come about in many ways. It has no clause, for the
   * stated number and the right one side by side say as much.
   */
  readonly isWeak?: boolean;
  readonly example: Example;
  /** The likest mistake that came about in another way. */
  readonly counterexample: Omit<Example, 'says'>;
}

export interface Explained {
  /** As a clause, `7 would be right with 44" of usable width`; `undefined` where the message says it already. */
  readonly clause: string | undefined;
  /**
   * What the stated number is, if another slip may say the same in other words: the figure's id, or the name of the
   * slip. Left out, it is the slip's own name.
   */
  readonly means?: string;
}

export interface Example {
  /** The lines of a measure block. */
  readonly block: readonly string[];
  /** A sentence in which the number in « » is wrong; a tag behind it names the figure. */
  readonly sentence: string;
  /** The clause with which the slip is named; `undefined` where the message says it already. */
  readonly says: string | undefined;
}
