/** The house rules with everything filled in. All lengths are inches. */
import { type Rational, rational } from '../quantity/rational.ts';
import { isMetric, toInches } from '../quantity/units.ts';
import type { Length } from './values/length.ts';

export interface House {
  /** Whether the pattern is worked in centimetres: its steps and its working are then metric. */
  readonly system: 'inch' | 'metric';
  readonly seam: Rational;
  readonly 'usable width': Rational;
  readonly 'cut to': Rational;
  readonly 'sell by': Rational;
  readonly squaring: Rational;
  readonly 'generous over': Rational;
  readonly join: 'diagonal' | 'straight';
  readonly 'joining allowance': Rational;
  /** `undefined` where each binding must say how wide its strip is. */
  readonly 'binding strip': Rational | undefined;
  readonly overhang: Rational;
  readonly 'backing seam': Rational;
  readonly 'bias square by': 'yield' | 'area';
  /** How lengths are told in the other system of units; `undefined` where the house does not say. */
  readonly 'convert to': Length | undefined;
}

type LengthRule = {
  [Rule in keyof House]: House[Rule] extends Rational ? Rule : never;
}[keyof House];

/** The same rules as the block states them: all may be left out. */
export type HouseEntries = { readonly [Rule in LengthRule]?: Length | undefined } & {
  readonly 'binding strip'?: Length | undefined;
  readonly 'convert to'?: Length | undefined;
  readonly join?: House['join'] | undefined;
  readonly 'bias square by'?: House['bias square by'] | undefined;
};

const inch = (numerator: number, denominator = 1) => rational(numerator, denominator);
const centimetre = (numerator: number, denominator = 1) => toInches(rational(numerator, denominator), 'cm');

/**
 * What holds when the house is silent. Common practice, except 1/4 in for the seam, which the trade takes for
 * granted; a metric house sews 0.75 cm and buys by 10 cm.
 */
const DEFAULTS: Readonly<Record<House['system'], { readonly [Rule in LengthRule]: Rational }>> = {
  inch: {
    seam: inch(1, 4),
    'usable width': inch(40),
    'cut to': inch(1, 8),
    'sell by': inch(36, 8),
    squaring: inch(0),
    'generous over': inch(36 * 3, 8),
    'joining allowance': inch(12),
    overhang: inch(4),
    'backing seam': inch(1, 2),
  },
  metric: {
    seam: centimetre(3, 4),
    'usable width': centimetre(102),
    'cut to': centimetre(1, 2),
    'sell by': centimetre(10),
    squaring: centimetre(0),
    'generous over': centimetre(35),
    'joining allowance': centimetre(30),
    overhang: centimetre(10),
    'backing seam': centimetre(1),
  },
};

/** The rules whose units tell the system, the first one that is stated before the others. */
export const TELLING = ['seam', 'cut to', 'sell by', 'usable width'] as const satisfies LengthRule[];

/** A house is metric when it states its seam, or else its steps, in metric units. */
export function completeHouse(entries: HouseEntries): House {
  const telling = TELLING.map((rule) => entries[rule]).find((length) => length !== undefined);
  const system = telling && isMetric(telling.unit) ? 'metric' : 'inch';
  const defaults = DEFAULTS[system];
  const lengths = Object.fromEntries(
    (Object.keys(defaults) as LengthRule[]).map((rule) => [rule, entries[rule]?.inches ?? defaults[rule]]),
  ) as { [Rule in LengthRule]: Rational };
  return {
    system,
    ...lengths,
    'binding strip': entries['binding strip']?.inches,
    join: entries.join ?? 'diagonal',
    'bias square by': entries['bias square by'] ?? 'yield',
    'convert to': entries['convert to'],
  };
}
