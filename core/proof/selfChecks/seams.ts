/** How much larger than finished a piece is with its seam allowances. */
import { type Rational, rational } from '../../quantity/rational.ts';
import { INCHES_PER, isMetric, type LengthUnit } from '../../quantity/units.ts';
import { type Text, type Told, writeAs } from './said.ts';

export interface Seams {
  /** Whether two allowances may be so much. */
  fit(more: Rational): boolean;
  /** Two allowances; `undefined` where the manuscript does not say how wide a seam is. */
  readonly both: Rational | undefined;
  /** As messages call two allowances. */
  readonly words: string;
}

const WIDEST = rational(3, 4);
const QUARTER = rational(1, 4);
/** Two metric seams, where none is stated: from 5 mm to 1 cm each (common practice), with room for rounding. */
const [LEAST, MOST] = [INCHES_PER.mm.mul(9n), INCHES_PER.mm.mul(22n)];
/** Metric sizes are rounded to the millimetre, on both sides. */
const ROUNDING = INCHES_PER.mm.mul(2n);

/** @param like a length in the unit of the piece */
export function seamsFor(text: Text, like: Told): Seams {
  const stated = statedSeams(text);
  if (isMetricLength(like)) return metricSeams(stated, like);
  const allowances = [QUARTER, ...stated.map(({ value }) => value)];
  return {
    fit: (more) => allowances.some((seam) => more.equals(seam.mul(2n))),
    both: allowances.every((seam) => seam.equals(QUARTER)) ? QUARTER.mul(2n) : undefined,
    words: 'two seam allowances of ¼"',
  };
}

export function isMetricLength({ number: { unit } }: Told): boolean {
  return unit !== undefined && isMetric(unit as LengthUnit);
}

function statedSeams({ phrases }: Text): Told[] {
  return phrases.flatMap(({ size, sentence, count }) => {
    const [seam, more] = size;
    const isSeam = !count && seam && !more && /\bseam/i.test(sentence) && seam.value.compare(WIDEST) <= 0;
    return isSeam ? [seam] : [];
  });
}

function metricSeams(stated: readonly Told[], like: Told): Seams {
  const [seam] = stated;
  if (!seam)
    return {
      fit: (more) => more.compare(LEAST) >= 0 && more.compare(MOST) <= 0,
      both: undefined,
      words: 'seam allowances on both sides',
    };
  const isOne = stated.every(({ value }) => value.equals(seam.value));
  return {
    fit: (more) => stated.some(({ value }) => more.sub(value.mul(2n)).abs().compare(ROUNDING) <= 0),
    both: isOne ? seam.value.mul(2n) : undefined,
    words: `two seam allowances of ${isMetricLength(seam) ? seam.text : writeAs(seam.value, like)}`,
  };
}
