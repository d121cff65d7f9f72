/** The numbers of a passage, with what each of them measures. */
import type { Range } from '../findings/finding.ts';
import type { NumberText } from '../quantity/notation.ts';
import { isInteger, ONE } from '../quantity/rational.ts';
import { findNumbers } from '../quantity/read.ts';
import type { LengthUnit } from '../quantity/units.ts';
import { groupNumbers } from './groups.ts';
import type { NumberGroup, NumberKind, Passage, ReadNumber } from './manuscript.ts';
import { textBehind } from './nearby.ts';
import { isOff, skippedNumbers } from './off.ts';
import { whyNotMeasurement } from './recognisers.ts';

/** @param off the stretches of the source that are left alone, in order */
export function readNumbers(passage: Passage, off: readonly Range[]): ReadNumber[] {
  const { text } = passage;
  const found = findNumbers(text);
  const groups = groupNumbers(passage, found);
  const skipped = skippedNumbers(found, passage.tags);
  return found.map((written) => {
    const { group, unit = written.unit } = groups.get(written) ?? {};
    const ranges = passage.toSource(written.start, written.end);
    const isLeftAlone = skipped.has(written) || isOff(off, ranges[0].start);
    const notMeasurement = isLeftAlone ? 'left alone' : whyNotMeasurement(written, text);
    return {
      text: text.slice(written.start, written.end),
      ranges,
      kind: notMeasurement === undefined ? kindOf(written, unit, group, text) : 'other',
      value: written.value,
      unit,
      written,
      passage,
      group,
      notMeasurement,
    };
  });
}

function kindOf(
  { value, end, notation, weak }: NumberText,
  unit: LengthUnit | undefined,
  group: NumberGroup | undefined,
  text: string,
): NumberKind {
  if (group?.kind === 'size') return 'size';
  if (unit) return unit === 'yd' || unit === 'm' ? 'yardage' : 'length';
  if (isInteger(value)) return 'count';
  const isPart = value.compare(ONE) < 0;
  const ofSomething = notation.ordinal !== '' || (weak && notation.numeral.form === 'words');
  return isPart && (ofSomething || /^\s(?:of|the)\b/i.test(textBehind(text, end))) ? 'fraction-of' : 'length';
}
