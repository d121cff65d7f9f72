/**
 * How numbers that measure nothing are told from those that do, the surest first.
 *
 * The rows follow the forms of manuscripts that name such numbers: times, labels, references, ordinals, and the
 * numbers of needles, threads and tools. Every row is tested with its own example and counterexample.
 */
import { ADDRESSES } from './recognisers/addresses.ts';
import { AMOUNTS } from './recognisers/amounts.ts';
import { DATES } from './recognisers/dates.ts';
import { LABELS } from './recognisers/labels.ts';
import { POINTERS } from './recognisers/pointers.ts';
import { SUPPLIES } from './recognisers/supplies.ts';
import { TIMES } from './recognisers/times.ts';
import { ORDINALS, WORDS } from './recognisers/words.ts';

export const RECOGNISERS = [
  ...ORDINALS,
  ...AMOUNTS,
  ...DATES,
  ...TIMES,
  ...ADDRESSES,
  ...SUPPLIES,
  ...POINTERS,
  ...LABELS,
  ...WORDS,
] as const;
