/** How the draft writes values into the block. */
import { stringify } from 'yaml';
import type { Pattern } from '../block/pattern.ts';
import type { Rational } from '../quantity/rational.ts';
import { fromInches, isMetric, type LengthUnit } from '../quantity/units.ts';
import { writeInches, writeMetric } from '../quantity/write.ts';
import type { Told } from './text.ts';

/** `4 1/2"`, `12`, or `{ lap: 4", twin: 5" }`. */
export function writeTold({ values, unit }: Told, pattern: Pattern): string {
  return writePerSize(
    values.map((value) => writeValue(value, unit)),
    pattern,
  );
}

/** Two lengths, or two counts, with the sign between them: `2" x 4"`. */
export function writePair([a, b]: readonly [Told, Told], pattern: Pattern): string {
  const most = a.values.length > b.values.length ? a : b;
  return writePerSize(
    most.values.map((_, index) =>
      [a, b].map(({ values, unit }) => writeValue(values[index] ?? values[0], unit)).join(' x '),
    ),
    pattern,
  );
}

export function writePerSize(texts: readonly string[], { sizes }: Pattern): string {
  const [first = ''] = texts;
  if (texts.every((text) => text === first)) return first;
  return `{ ${sizes.map(({ name }, index) => `${writeName(name)}: ${texts[index] ?? first}`).join(', ')} }`;
}

export function writeValue(value: Rational, unit: LengthUnit | undefined): string {
  if (unit === undefined) return value.toFraction();
  return isMetric(unit) ? writeMetric(fromInches(value, 'cm')) : writeInches(value, 'ascii');
}

/** A name as YAML reads it back, inside braces too. */
export function writeName(name: string): string {
  const text = stringify(name, { lineWidth: 0 }).trim();
  return /[,[\]{}]/.test(text) && !/^["']/.test(text) ? JSON.stringify(name) : text;
}
