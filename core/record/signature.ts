/** What a technical editor signed off: a text, its figures, and every number with how it came out. */

import type { KeptLine } from '../proof/earlier/keptLine.ts';
import type { Input } from '../proof/inputs.ts';

export interface Signature {
  readonly by: string;
  /** `2026-11-25` */
  readonly on: string;
  /** A digest of the text, without regard to how its lines end. */
  readonly digest: string;
  readonly system: 'inch' | 'metric';
  /** The names of the sizes; one empty name for a pattern of one size. */
  readonly sizes: readonly string[];
  /** What the block said, as far as any figure follows from it. */
  readonly inputs: readonly Input[];
  readonly figures: ReadonlyMap<string, SignedFigure>;
  /** The lines that hold numbers, in reading order. */
  readonly lines: readonly KeptLine[];
}

export interface SignedFigure {
  readonly rule: 'exact' | 'at least';
  /** As the pattern writes them, `2½"`, `1⅛ yd`, `8`; by name of the size. */
  readonly values: ReadonlyMap<string, string>;
  /** The inputs of all its values, each by its place in the list of inputs. */
  readonly from: readonly number[];
}

/** What the digest of a text is taken from: the same on machines that end lines otherwise. */
export function digestible(source: string): string {
  return source.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}
