/** How a room of the pattern (binding, backing …) tells the ledger which figures it fixes. */
import type { Pattern } from '../block/pattern.ts';
import type { BlockPath } from '../block/place.ts';
import type { Code } from '../findings/codes.ts';
import type { Range } from '../findings/finding.ts';
import type { Rational } from '../quantity/rational.ts';
import type { Real } from '../quantity/real.ts';
import type { Derivation } from './derivation.ts';
import type { FigureKind, FigureRule } from './figure.ts';
import type { Ledger } from './ledger.ts';

export interface Derived {
  /** A count, or inches. */
  readonly need: Real;
  /** The step of the one rounding; a figure that is rational and without a step is shown as it is. */
  readonly step?: Rational | undefined;
  /** The safe direction: what must be cut or bought is rounded up, what something gives is rounded down. */
  readonly round?: 'up' | 'down';
  /** See `FigureValue.least`. */
  readonly least?: Rational | undefined;
  /** See `FigureValue.spare`; `any` where more is never worth a word although it is a yardage. */
  readonly spare?: Rational | 'any' | undefined;
  readonly steps: readonly string[];
  /** What the working says behind its result; worked out only when the working is read, for it may take long. */
  readonly remarks?: () => readonly string[];
  readonly because: string;
  /** What it measures, where only the value tells: the author's own figures. The same for all sizes. */
  readonly kind?: FigureKind;
  readonly against?: (stated: Rational) => string | undefined;
}

export interface Definition {
  readonly id: string;
  /** A noun phrase that starts a sentence. */
  readonly title: string;
  readonly kind: FigureKind;
  readonly rule: FigureRule;
  /** See `Figure.isCut`. */
  readonly isCut?: boolean;
  /** `undefined` when the pattern does not say enough for this size. */
  derive(at: Derivation): Derived | undefined;
}

/** What is wrong with the pattern as a whole, found only by computing with it. */
export interface Objection {
  readonly code: Code;
  readonly path: BlockPath;
  readonly message: string;
  /** Whether the name of the entry is meant rather than its value: something is missing in it. */
  readonly atKey?: boolean;
  /** The part of the value's text that is meant, where it is not all of it. */
  readonly within?: Range | undefined;
}

/** One room of the pattern. */
export interface Room {
  /** Which figures this pattern has; called once. */
  define(pattern: Pattern): readonly Definition[];
  /** What contradicts what; called when all figures can be asked for. */
  check?(pattern: Pattern, ledger: Ledger): readonly Objection[];
}

/** Thrown by `derive` when the pattern says something that cannot be computed. */
export class FigureError extends Error {
  readonly objection: Objection;

  constructor(objection: Objection) {
    super(objection.message);
    this.objection = objection;
  }
}
