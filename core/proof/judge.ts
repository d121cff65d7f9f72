/** Whether a stated value agrees with a figure. */
import type { House } from '../block/house.ts';
import type { Figure, FigureKind, FigureRule, FigureValue } from '../figures/figure.ts';
import { granularity, type NumberText } from '../quantity/notation.ts';
import { min, type Rational } from '../quantity/rational.ts';
import { Real, roundDown, roundNearest, roundUp } from '../quantity/real.ts';
import { INCHES_PER, type LengthUnit } from '../quantity/units.ts';
import { conversions, isConverted } from './conversion.ts';

/** A number as it stands, with what it measures. */
export interface Stated {
  /** As written, in `unit`. */
  readonly value: Rational;
  /** `undefined` for a count, and for a length whose unit is understood. */
  readonly unit: LengthUnit | undefined;
  readonly written: NumberText;
}

export type Verdict = 'verified' | 'wrong' | 'short' | 'generous' | 'other kind';

export function judge(stated: Stated, figure: Ruled, value: Judged, house: House): Verdict {
  const amount = amountOf(stated, figure.kind, house);
  if (!amount) return 'other kind';
  if (agrees(amount, stated, figure, value, house)) return 'verified';
  if (figure.rule === 'exact') return 'wrong';
  const isShort = value.least ? amount.compare(value.least) < 0 : Real.of(amount).compare(value.need) < 0;
  if (isShort) return 'short';
  return value.spare && amount.sub(value.shown).compare(value.spare) > 0 ? 'generous' : 'verified';
}

/** The stated value as a count, or in inches; `undefined` when it measures something else than the figure. */
export function amountOf(stated: Stated, kind: FigureKind, house: House): Rational | undefined {
  if (kind === 'count') return stated.unit ? undefined : stated.value;
  return stated.value.mul(INCHES_PER[unitOf(stated, kind, house)]);
}

/** The unit of a stated length; one that is written without a unit is understood in the unit of the house. */
export function unitOf(stated: Stated, kind: Exclude<FigureKind, 'count'>, house: House): LengthUnit {
  if (stated.unit) return stated.unit;
  if (house.system === 'metric') return kind === 'yardage' ? 'm' : 'cm';
  return kind === 'yardage' ? 'yd' : 'in';
}

/** What decides whether a stated value agrees. */
export type Judged = Pick<FigureValue, 'need' | 'shown' | 'round' | 'least' | 'spare'>;

type Ruled = Pick<Figure, 'kind' | 'rule' | 'isCut'>;

function agrees(amount: Rational, stated: Stated, figure: Ruled, value: Judged, house: House): boolean {
  if (amount.equals(value.shown) || (value.need.exact && amount.equals(value.need.exact))) return true;
  if (figure.kind === 'count') return false;
  const safely = value.round === 'up' ? roundUp : roundDown;
  if (isWhole(amount, stated, figure, value, house)) return true;
  const unit = unitOf(stated, figure.kind, house);
  if (isConverted(unit, house)) {
    const style = { own: granularity(stated.written), value: stated.value };
    const right = conversions({ need: value.need, rule: figure.rule, unit, style }, safely, house);
    return right.some((one) => one.equals(stated.value));
  }
  return steps(stated, unit, figure.rule, value, house).some(
    (step) => amount.equals(roundNearest(value.need, step)) || amount.equals(safely(value.need, step)),
  );
}

/**
 * Whether an irrational length is told in whole inches, or whole centimetres, of two digits or more: the edge of a
 * 24" circle is "about 75 inches". A requirement is rounded up, what something gives down, anything else to the
 * nearest. What is cut by this length is not told so coarsely.
 */
function isWhole(amount: Rational, stated: Stated, figure: Ruled, value: Judged, house: House): boolean {
  if (figure.kind !== 'length' || figure.isCut || value.need.exact) return false;
  const unit = house.system === 'inch' ? 'in' : 'cm';
  if (unitOf(stated, figure.kind, house) !== unit) return false;
  if (stated.written.notation.numeral.form === 'decimal' && stated.written.notation.numeral.places > 0)
    return false;
  if (stated.value.d !== 1n || stated.value.compare(10) < 0) return false;
  const safely = value.round === 'up' ? roundUp : roundDown;
  const round = figure.rule === 'exact' && value.round === 'up' ? roundNearest : safely;
  return amount.equals(round(value.need, INCHES_PER[unit]));
}

/**
 * The steps, in inches, to which a measure in the units of the house may have been rounded.
 *
 * A value that no ruler measures is right at the nearest ruler step or the next one in the safe direction, and at whatever finer
 * step the author writes (87.96"). A value on the ruler is right only as itself, unless it is stated in two decimal
 * places or more. A requirement is right from the exact need upwards.
 */
function steps(
  { written }: Stated,
  unit: LengthUnit,
  rule: FigureRule,
  value: Judged,
  house: House,
): Rational[] {
  const own = granularity(written).mul(INCHES_PER[unit]);
  if (rule === 'exact' && !isOnRuler(value, house)) return [house['cut to'], min(own, house['cut to'])];
  const { numeral } = written.notation;
  return numeral.form === 'decimal' && numeral.places >= 2 ? [own] : [];
}

function isOnRuler(value: Judged, house: House): boolean {
  const { exact } = value.need;
  if (!exact) return false;
  return house.system === 'inch' ? 16n % exact.d === 0n : 10n % exact.div(INCHES_PER.cm).d === 0n;
}
