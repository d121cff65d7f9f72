/** The result of proofreading one manuscript: the same object for every host. */
import type { Pattern } from '../block/pattern.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { Code } from '../findings/codes.ts';
import type { Finding } from '../findings/finding.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import type { FoundSlip } from './slips/slipFinder.ts';
import type { Statement } from './statements.ts';

export type AccountKind =
  | 'verified'
  | 'wrong'
  | 'stale'
  | 'short'
  | 'generous'
  | 'unaccounted'
  | 'not-measurement';

/** What ties a number to a figure, with the evidence that can be shown. */
export interface Tie {
  readonly figure: Figure;
  /** Name of the size; `null` when the pattern has one size, or the figure is the same in all. */
  readonly size: string | null;
  readonly value: FigureValue;
  /** Why the tool reads it so, in words: `tagged in the manuscript`. */
  readonly evidence: readonly string[];
}

/** The account of one number in the manuscript. Every number has exactly one. */
export interface Account {
  readonly number: ReadNumber;
  readonly kind: AccountKind;
  readonly tie: Tie | undefined;
  /** The right value in the author's own style; equal to the text when the number is right. */
  readonly expected: string | undefined;
  /** The code of the finding about this number, if there is one. */
  readonly code: Code | undefined;
  /** The slip that gives just this number, where only one does. */
  readonly slip?: FoundSlip | undefined;
  /** For `not-measurement`: why. */
  readonly reason: string | undefined;
}

/** How many numbers have which account; `notMeasurement` is outside the coverage. */
export interface Coverage {
  readonly verified: number;
  readonly wrong: number;
  readonly stale: number;
  readonly short: number;
  readonly generous: number;
  readonly unaccounted: number;
  readonly notMeasurement: number;
}

export interface Proof {
  readonly manuscript: Manuscript;
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  /** In reading order. */
  readonly accounts: readonly Account[];
  /** What the `states` entries of the block say, in the order of the block. */
  readonly statements: readonly Statement[];
  /** In the order of their places. */
  readonly findings: readonly Finding[];
  readonly coverage: Coverage;
}
