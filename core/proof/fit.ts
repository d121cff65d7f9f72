/** How well a number fits a figure that it may state: right, wrong in a way in which people err, or neither. */
import type { House } from '../block/house.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { ONE, type Rational, rational } from '../quantity/rational.ts';
import { INCHES_PER } from '../quantity/units.ts';
import { amountOf, judge, unitOf } from './judge.ts';
import { isLikelySlip } from './likelySlip.ts';

/** How much it says that a number is a little more than what is required. */
const LOOSE = 0.3;

/** Whether a number is the very one, not only a little more than what is required. */
export function isExactFit(fit: number | 'slip' | 'strange'): boolean {
  return typeof fit === 'number' && fit !== LOOSE;
}

/** @returns how much the agreement says, or how the number differs */
export function fitOf(
  number: ReadNumber,
  figure: Figure,
  value: FigureValue,
  house: House,
): number | 'slip' | 'strange' {
  const amount = amountOf(number, figure.kind, house);
  if (!amount) return 'strange';
  if (judge(number, figure, value, house) === 'verified') {
    if (amount.equals(value.shown) || figure.rule === 'exact') return rarity(number);
    return isFarAbove(amount, figure, value) ? 'strange' : LOOSE;
  }
  // A bare count may be a length whose unit is understood, but only where it is the right one.
  if (figure.kind !== 'count' && number.kind === 'count') return 'strange';
  const scale = figure.kind === 'count' ? ONE : INCHES_PER[unitOf(number, figure.kind, house)];
  const others = [...figure.values.values()].map((other) => other.shown);
  const slip = {
    amount,
    right: value.shown,
    written: number.value,
    rightWritten: value.shown.div(scale),
    kind: figure.kind,
  };
  return isLikelySlip(slip, others, house.seam) ? 'slip' : 'strange';
}

/** Much more than what is required satisfies it, but is no sign that it is what the text speaks of. */
function isFarAbove(amount: Rational, { kind }: Figure, { shown }: FigureValue): boolean {
  const spare = kind === 'count' ? rational(2) : kind === 'yardage' ? rational(36) : rational(8);
  return amount.compare(shown.mul(5n, 4n).add(spare)) > 0;
}

/** How much agreement says: that a 2 is right may be chance, that a 168 is right is not. */
function rarity({ value, unit }: ReadNumber): number {
  const size = value.valueOf();
  if (!unit && value.d === 1n) return size <= 1 ? 0.5 : size <= 4 ? 1.2 : size <= 12 ? 2 : 3;
  if (size > 60 && value.d > 1n) return 4;
  return value.d > 1n || size > 12 ? 3 : 2;
}
