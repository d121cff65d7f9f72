/** One length in both units: the second must be a rounding of the first. */
import { type Rational, rational } from '../../quantity/rational.ts';
import { writeInches, writeMetric, writeYards } from '../../quantity/show.ts';
import { fromInches, INCHES_PER, isMetric, type LengthUnit } from '../../quantity/units.ts';
import type { Contradiction } from './contradiction.ts';
import { isPlain, type SaidLine, type Text, type Told, tellLength } from './said.ts';

/** Precuts differ by country, and the width of fabric is told as it is sold: no conversion of each other. */
const OTHER = /\b(?:fat|quarters?|eighths?|F\.?Q\.?s?|F8s?|charms?|pre-?cuts?|packs?|wide|width|WOF)\b/i;

export function dualUnits({ lines }: Text): Contradiction[] {
  return lines.flatMap((line) =>
    pairsOf(line).flatMap(([first, second, near]) => (OTHER.test(near) ? [] : compared(first, second))),
  );
}

type Pair = readonly [first: Told, second: Told, near: string];

/** How many characters around a number say what it is. */
const NEAR = 24;

const BY = /^\s*(?:[x×X]|by)\s*$/;
const CLOSED = /^\s*(?:wide|long|square|each)?\s*\)/;

/** Numbers that stand for each other: 12½in (32cm), 70cm or ¾ yard, both sides of 12in x 18in (30cm x 46cm). */
function pairsOf({ line: { spots }, text }: SaidLine): Pair[] {
  const pairs: Pair[] = [];
  const gap = (a: number) => text.slice(spots[a]?.end, spots[a + 1]?.start);
  const add = (first: number, second: number) => {
    const [one, other] = [spots[first], spots[second]];
    const [a, b] = [one && tellLength(one.number), other && tellLength(other.number)];
    if (!one || !other || !a || !b || !isMixed(a, b) || !isPlain(a.number) || !isPlain(b.number)) return;
    pairs.push([a, b, text.slice(Math.max(0, one.start - NEAR), other.end + NEAR)]);
  };
  for (const at of spots.keys()) {
    if (!/^\s*(?:\(|\/|or|=)\s*$/.test(gap(at))) continue;
    const isSize = at > 0 && BY.test(gap(at - 1)) && BY.test(gap(at + 1)) && at + 2 < spots.length;
    const behind = text.slice(spots[at + (isSize ? 2 : 1)]?.end);
    if (gap(at).includes('(') && !CLOSED.test(behind)) continue;
    if (isSize) {
      add(at - 1, at + 1);
      add(at, at + 2);
    } else if (!BY.test(gap(at - 1)) || at === 0) add(at, at + 1);
  }
  return pairs;
}

function isMixed(a: Told, b: Told): boolean {
  const [one, other] = [a.number.unit, b.number.unit];
  return one !== undefined && other !== undefined && isMetric(one) !== isMetric(other);
}

function compared(first: Told, second: Told): Contradiction[] {
  const [a, b] = [first.number.unit, second.number.unit];
  if (!a || !b || agree(first, second)) return [];
  const why = agreesWhenSwapped(first, second, a, b)
    ? 'with the two units exchanged they would agree'
    : 'both stand for one length';
  return [
    {
      code: 'units-disagree',
      message: `${first.text} is ${shownIn(first.value, b)}, not ${second.text}; ${why}.`,
      at: second,
      against: [{ told: first, says: `The same length is ${first.text} here.` }],
    },
  ];
}

/**
 * The shop sells in steps: fabric may differ by an eighth of a yard (4½ in) and a little more for a long piece. Other
 * lengths are converted to the nearest half or whole centimetre (common practice), and long ones more coarsely.
 */
function agree(first: Told, second: Told): boolean {
  const isFabric = [first, second].some(({ number: { unit } }) => unit === 'yd' || unit === 'm');
  const least = isFabric ? rational(19, 4) : INCHES_PER.cm.mul(3n, 4n);
  const share = isFabric ? rational(6, 100) : rational(3, 100);
  const difference = first.value.sub(second.value).abs();
  const room = first.value.mul(share);
  return difference.compare(isFabric ? least.add(room) : room.compare(least) > 0 ? room : least) <= 0;
}

function agreesWhenSwapped(first: Told, second: Told, a: LengthUnit, b: LengthUnit): boolean {
  const swap = (told: Told, unit: LengthUnit): Told => ({
    ...told,
    value: told.number.value.mul(INCHES_PER[unit]),
  });
  return agree(swap(first, b), swap(second, a));
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
