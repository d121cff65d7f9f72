/** A figure: one thing that the pattern fixes, with a value for every size and the working behind it. */
import type { House } from '../block/house.ts';
import type { BlockPath } from '../block/place.ts';
import type { Rational } from '../quantity/rational.ts';
import type { Real } from '../quantity/real.ts';

/** What a figure measures. A yardage is a length that is shown and sold in yards or metres. */
export type FigureKind = 'count' | 'length' | 'yardage';

export type HouseRule = Exclude<keyof House, 'system'>;

/** `exact`: a stated number must be this one. `at least`: one must cut or buy so much or more. */
export type FigureRule = 'exact' | 'at least';

export interface FigureValue {
  /** The exact need: a count, or inches. */
  readonly need: Real;
  /** What the pattern states: `need` after the one rounding; a count, or inches. */
  readonly shown: Rational;
  /** The step of that rounding, in the same unit; `undefined` where nothing was rounded. */
  readonly step: Rational | undefined;
  /** The safe direction of that rounding: up for what must be cut or bought, down for what something gives. */
  readonly round: 'up' | 'down';
  /**
   * The least that can do, however clever one is, in the same unit: a stated requirement below it is short. It is
   * less than `need` where a pattern cuts more plainly than one can; `undefined` where `need` is the least.
   */
  readonly least: Rational | undefined;
  /**
   * How far above what is needed a requirement may lie before it is worth a hint, in the same unit; `undefined`
   * where more is never worth a word.
   */
  readonly spare: Rational | undefined;
  /** One line per step, for a quilter with a calculator. */
  readonly steps: readonly string[];
  /** The steps, and how the result was rounded or turned into yards. */
  readonly working: readonly string[];
  /** The reason in a clause that can follow a colon: `262" around plus 12" to join is 274"`. */
  readonly because: string;
  /** What a wrong stated value would give: `7 strips joined give 266½"`; `undefined` when there is nothing to add. */
  readonly against: (stated: Rational) => string | undefined;
  /** Places in the block that this value was computed from, in the order in which they were read. */
  readonly inputs: readonly BlockPath[];
  /** Ids of the figures that this value was computed from. */
  readonly uses: readonly string[];
  /** Rules of the house that it was computed with although the block does not state them. */
  readonly assumes: readonly HouseRule[];
}

export interface Figure {
  /** In the words of the block: `binding.strips`. */
  readonly id: string;
  /** A noun phrase that starts a sentence: `The number of binding strips`. */
  readonly title: string;
  readonly kind: FigureKind;
  readonly rule: FigureRule;
  /** Whether fabric is cut to just this length, so that it is never told in whole inches only. */
  readonly isCut?: boolean;
  /** By name of the size, in the order of the pattern's sizes; a size whose value cannot be computed is left out. */
  readonly values: ReadonlyMap<string, FigureValue>;
}
