/** Shows the numbers of a text in one line: `12-1/2" = 25/2 in`, for tables of examples. */
import type { NumberText } from '../../core/quantity/notation.ts';
import { toFractionText } from '../../core/quantity/rational.ts';
import { findNumbers } from '../../core/quantity/read.ts';

/** Each number as `text = value unit`; `~` marks a weak one, `?` an ambiguous one. */
export function tokens(text: string): string[] {
  return findNumbers(text).map((number) => token(number, text));
}

export function token(number: NumberText, text: string): string {
  const { start, end, value, unit, weak, ambiguous } = number;
  const flags = (weak ? ' ~' : '') + (ambiguous ? ' ?' : '');
  return `${text.slice(start, end)} = ${toFractionText(value)}${unit ? ` ${unit}` : ''}${flags}`;
}
