/**
 * One length in both systems of units: the one rule for what is written, what is right, and what no longer is.
 *
 * 1 in is 25.4 mm exactly, and nobody sews to the hundredth of a millimetre: what is converted is rounded, a length to
 * the nearest step, what must be bought or cut at least up to the next. The step is that of the house (`convert to`).
 * A house that does not say one writes half centimetres and eighths of an inch, and takes other usual roundings for
 * right as well. A length under 1 in, such as a seam allowance, is told to the millimetre or the sixteenth of an inch:
 * half a centimetre would change it by a quarter. (All common practice, but for the inch.)
 */
import type { House } from '../block/house.ts';
import type { FigureRule } from '../figures/figure.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { granularity } from '../quantity/notation.ts';
import { max, min, ONE, type Rational, rational } from '../quantity/rational.ts';
import { Real, roundNearest, roundUp } from '../quantity/real.ts';
import { fromInches, INCHES_PER, isMetric, type LengthUnit, toInches } from '../quantity/units.ts';

/** Whether a unit belongs to the other system than the one that the house works in. */
export function isConverted(unit: LengthUnit, { system }: Pick<House, 'system'>): boolean {
  return isMetric(unit) !== (system === 'metric');
}

/** The unit in which a length is told in the other system. */
export function otherUnit(unit: LengthUnit, isFabric: boolean, house: House): LengthUnit {
  if (isFabric) return isMetric(unit) ? 'yd' : 'm';
  const stated = statedStep(house)?.unit;
  if (stated && isMetric(stated) !== isMetric(unit)) return stated;
  return isMetric(unit) ? 'in' : 'cm';
}

/** Whether the house says how it converts: then nothing but this is right. */
export function isHeld(house: House): boolean {
  return statedStep(house) !== undefined;
}

/** A number that is told in the other system. */
interface Converted {
  /** What it stands for, in inches. */
  readonly need: Real;
  readonly rule: FigureRule;
  readonly unit: LengthUnit;
  /** The smallest difference that its notation can show, and its value now, both in its unit. */
  readonly style?: { readonly own: Rational; readonly value: Rational };
}

/** What is written, in the unit; finer than the house has it where the author writes so. */
export function converted({ need, rule, unit, style }: Converted, house: House): Rational {
  const [usual] = stepsFor(need, unit, house);
  const coarse = rule !== 'exact' && unit === 'm' ? SOLD_BY : usual;
  const isUsual = !style || style.value.div(coarse).d === 1n;
  const step = isUsual ? coarse : min(coarse, style.own);
  const exact = need.mul(Real.of(fromInches(ONE, unit)));
  return rule === 'exact' ? roundNearest(exact, step) : roundUp(exact, step);
}

/**
 * All that may be written for a length, in its unit.
 *
 * @param safely rounds in the direction in which a cutter is safe; also right unless the house says how it converts
 */
export function conversions(
  { need, unit, style }: Converted,
  safely: (value: Real, step: Rational) => Rational,
  house: House,
): Rational[] {
  const usual = stepsFor(need, unit, house);
  const isFiner = style !== undefined && usual.some((step) => style.own.compare(step) < 0);
  const exact = need.mul(Real.of(fromInches(ONE, unit)));
  return (isFiner ? [style.own, ...usual] : usual).flatMap((step) =>
    isHeld(house) ? [roundNearest(exact, step)] : [roundNearest(exact, step), safely(exact, step)],
  );
}

/** A number with its unit. */
type Measure = Pick<ReadNumber, 'value' | 'unit'>;

/**
 * Whether two lengths may be one, told in both systems by an author whose rounding is not known.
 *
 * The shop sells in steps: fabric may differ by an eighth of a yard (4½ in) and a little more for a long piece. Other
 * lengths are converted to the nearest half or whole centimetre (common practice), and long ones more coarsely.
 */
export function agreeRoughly(first: Measure, second: Measure): boolean {
  if (!first.unit || !second.unit) return false;
  const [a, b] = [toInches(first.value, first.unit), toInches(second.value, second.unit)];
  const isFabric = isFabricUnit(first.unit) || isFabricUnit(second.unit);
  const least = isFabric ? rational(19, 4) : INCHES_PER.cm.mul(3n, 4n);
  const room = a.mul(isFabric ? rational(6, 100) : rational(3, 100));
  const allowed = isFabric ? least.add(room) : max(room, least);
  return a.sub(b).abs().compare(allowed) <= 0;
}

/**
 * The same where the house says how it converts; fabric, which shops sell in steps of their own, as ever.
 *
 * @param stated in the units of the house
 * @param told in those of the other system
 */
export function agree(stated: Measure, told: ReadNumber, house: House): boolean {
  if (!stated.unit || !told.unit) return false;
  if (!isHeld(house) || isFabricUnit(stated.unit) || isFabricUnit(told.unit))
    return agreeRoughly(stated, told);
  const need = Real.of(toInches(stated.value, stated.unit));
  const style = { own: granularity(told.written), value: told.value };
  const right = conversions({ need, rule: 'exact', unit: told.unit, style }, roundUp, house);
  return right.some((one) => one.equals(told.value));
}

function isFabricUnit(unit: LengthUnit): boolean {
  return unit === 'yd' || unit === 'm';
}

/** Fabric that is sold by the metre is bought to the next 5 cm (common practice). */
const SOLD_BY = rational(1, 20);

/** The steps, in their own unit and the finest first, to which a converted measure is rounded (common practice). */
const USUAL: Readonly<Record<LengthUnit, readonly [Rational, ...Rational[]]>> = {
  in: [rational(1, 8)],
  ft: [rational(1, 96)],
  yd: [rational(1, 8)],
  mm: [rational(1), rational(5)],
  cm: [rational(1, 2), rational(1)],
  m: [rational(1, 100)],
};

/** The same for a length under 1 in. */
const SMALL: Partial<Readonly<Record<LengthUnit, Rational>>> = {
  in: rational(1, 16),
  mm: rational(1),
  cm: rational(1, 10),
};

function stepsFor(need: Real, unit: LengthUnit, house: House): readonly [Rational, ...Rational[]] {
  const stated = statedStep(house);
  const isShort = unit !== 'm' && unit !== 'yd' && stated && isMetric(stated.unit) === isMetric(unit);
  const [first, ...others] = isShort ? [stated.inches.div(INCHES_PER[unit])] : USUAL[unit];
  const small = need.compare(Real.of(ONE)) < 0 ? SMALL[unit] : undefined;
  if (!small || small.compare(first) >= 0) return [first, ...others];
  return isShort ? [small] : [small, first, ...others];
}

function statedStep(house: House): House['convert to'] {
  const stated = house['convert to'];
  return stated && isConverted(stated.unit, house) ? stated : undefined;
}
