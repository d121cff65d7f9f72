/** One length in both units: the one that is converted must be a rounding of the other. */
import type { House } from '../../block/house.ts';
import type { Passage, ReadNumber } from '../../manuscript/manuscript.ts';
import { granularity } from '../../quantity/notation.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { writeInches, writeMetric, writeYards } from '../../quantity/show.ts';
import { fromInches, isMetric, type LengthUnit } from '../../quantity/units.ts';
import { writeLike } from '../../quantity/write.ts';
import { agree, agreeRoughly, converted, isConverted, isHeld } from '../conversion.ts';
import { unitPairs } from '../unitPairs.ts';
import type { Contradiction } from './contradiction.ts';
import { isPlain, type Text, type Told, tellLength } from './said.ts';

/** Precuts differ by country, and the width of fabric is told as it is sold: no conversion of each other. */
export const PRECUT = /\b(?:fat|quarters?|eighths?|F\.?Q\.?s?|F8s?|charms?|pre-?cuts?|packs?)\b/i;
const WIDTH = /\b(?:wide|width|WOF)\b/i;
/** No fabric is sold narrower, and hardly a piece is cut wider (own choice). */
const NARROWEST_FABRIC = rational(30);

/** How many characters around a number say what it is. */
const NEAR = 24;

export function dualUnits({ manuscript, house }: Text): Contradiction[] {
  return manuscript.passages.flatMap((passage) =>
    unitPairs(passage).flatMap(({ first, second }) => {
      const near = surroundings(passage, first[0], second.at(-1) ?? second[0]);
      if (PRECUT.test(near)) return [];
      const isWidth = WIDTH.test(near);
      return first.flatMap((one, index) => {
        const [a, b] = [toldPlainly(one), toldPlainly(second[index])];
        if (!a || !b || (isWidth && a.value.compare(NARROWEST_FABRIC) >= 0)) return [];
        return compared(a, b, house);
      });
    }),
  );
}

function surroundings({ text, context: { cell } }: Passage, first: ReadNumber, last: ReadNumber): string {
  const near = text.slice(Math.max(0, first.written.start - NEAR), last.written.end + NEAR);
  return [near, cell?.rowHeader, cell?.columnHeader].join(' ');
}

function toldPlainly(number: ReadNumber | undefined): Told | undefined {
  return number && isPlain(number) ? tellLength(number) : undefined;
}

function compared(first: Told, second: Told, house: House): Contradiction[] {
  const [a, b] = [first.number.unit, second.number.unit];
  if (!a || !b) return [];
  const [stated, told] = isConverted(b, house) ? [first, second] : [second, first];
  if (agree(stated.number, told.number, house)) return [];
  const at = isHeld(house) ? told : second;
  const [other, unit] = at === second ? [first, b] : [second, a];
  const why = agreesWhenSwapped(first, second, a, b)
    ? 'with the two units exchanged they would agree'
    : 'both stand for one length';
  return [
    {
      code: 'units-disagree',
      message: `${other.text} is ${shownIn(other.value, unit)}, not ${at.text}; ${why}.`,
      at,
      expected: isHeld(house) ? restated(at.number, other, house) : undefined,
      against: [{ told: other, says: `The same length is ${other.text} here.` }],
    },
  ];
}

/** The other number in the unit of this one, written as this one is. */
function restated(
  { written, unit, value, passage }: ReadNumber,
  other: Told,
  house: House,
): string | undefined {
  if (!unit) return undefined;
  const style = { own: granularity(written), value };
  const right = converted({ need: Real.of(other.value), rule: 'exact', unit, style }, house);
  return writeLike(right, { ...written, unit }, passage.text);
}

function agreesWhenSwapped(first: Told, second: Told, a: LengthUnit, b: LengthUnit): boolean {
  return agreeRoughly({ ...first.number, unit: b }, { ...second.number, unit: a });
}

function shownIn(inches: Rational, unit: LengthUnit): string {
  const value = fromInches(inches, unit);
  if (isMetric(unit)) return `about ${writeMetric(nearest(value, unit === 'm' ? 100n : 10n), unit as 'cm')}`;
  const eighths = nearest(value, 8n);
  if (unit === 'yd') return `about ${writeYards(eighths)}`;
  return `about ${unit === 'ft' ? `${eighths.toFraction(true)} ft` : writeInches(eighths)}`;
}

function nearest(value: Rational, steps: bigint): Rational {
  return value.mul(steps).round().div(steps);
}
