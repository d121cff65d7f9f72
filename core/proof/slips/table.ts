/**
 * The slips by which people come to a wrong number, as the corrections of printed patterns show them.
 *
 * Every row is tested with its own example and counterexample. Where two say the same in other words, the first does.
 */
import { ARITHMETIC } from './arithmetic.ts';
import { OTHER_FIGURES } from './otherFigures.ts';
import { PARTS } from './parts.ts';
import { RULES } from './rules.ts';
import type { Slip } from './slip.ts';
import { TYPING } from './typing.ts';

export const SLIPS: readonly Slip[] = [...OTHER_FIGURES, ...PARTS, ...RULES, ...ARITHMETIC, ...TYPING];
