import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { completeHouse } from '../../core/block/house.ts';
import type { FigureValue } from '../../core/figures/figure.ts';
import { expectedText } from '../../core/proof/expected.ts';
import { judge, type Stated } from '../../core/proof/judge.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { rational } from '../../core/quantity/rational.ts';
import { readNumberAt } from '../../core/quantity/read.ts';
import { Real, roundDown, roundUp } from '../../core/quantity/real.ts';
import { toInches } from '../../core/quantity/units.ts';

const fence = (...lines: string[]) => ['```measure', ...lines, '```', '', ''].join('\n');

/** A circle 28 in across: 87.9645… in around, a value that no ruler measures. The rest is on the ruler. */
const INCHES = fence(
  'finished: circle 28"',
  'binding: { strip: 2 1/4", grain: bias }',
  'batting: {}',
  'figures: { third: 34" / 3, side: 14", fine: 5 5/16", half yard: 18" }',
);
const METRIC = fence(
  'house: { seam: 0.75 cm }',
  'finished: 30 cm x 45 cm',
  'backing: {}',
  'figures: { side: 14" }',
);

const CIRCLE = fence(
  'finished: circle 24"',
  'binding: { strip: 2 1/4", grain: bias }',
  'piping: { cord: 1/4" }',
  'house: { joining allowance: 11" }',
  'states: { binding.square: 16" }',
);
const ON_POINT = fence(
  'blocks: { Ripple: { finished: 12" } }',
  'layout: { set: on point, grid: 2 x 2 }',
  'borders: [{ finished: 2" }]',
  'figures: { bow: sqrt(20) * 1" }',
);

/** `[the text, what the number is called]`. */
type Case = readonly [text: string, kind: string];

const verdicts = (head: string, text: string) =>
  proofread({ source: head + text }).accounts.map(({ kind }) => kind);

describe('a stated length is right', () => {
  const right: readonly Case[] = [
    ['88" <!-- = finished.edge -->', 'rounded up to the step of the house'],
    ['87.96" <!-- = finished.edge -->', 'rounded to its own two places'],
    ['87.964594" <!-- = finished.edge -->', 'rounded to its own six places'],
    ['87.97" <!-- = finished.edge -->', 'rounded up in its own two places'],
    ['87 15/16" <!-- = finished.edge -->', 'rounded to the nearest sixteenth'],
    ['223.4 cm <!-- = finished.edge -->', 'converted, to the millimetre'],
    ['223.5 cm <!-- = finished.edge -->', 'converted, to the half centimetre'],
    ['223 cm <!-- = finished.edge -->', 'converted, to the nearest centimetre'],
    ['224 cm <!-- = finished.edge -->', 'converted, up to the centimetre'],
    ['2.23 m <!-- = finished.edge -->', 'converted, to the nearest hundredth of a metre'],
    ['2234 mm <!-- = finished.edge -->', 'converted, to the millimetre'],
    ['2235 mm <!-- = finished.edge -->', 'converted, to five millimetres'],
    ['11⅓" <!-- = third -->', 'a third, which no ruler shows'],
    ['11⅜" <!-- = third -->', 'the nearest eighth of a third'],
    ['11.33" <!-- = third -->', 'two places of a third'],
    ['35.5 cm <!-- = side -->', 'converted, to the half centimetre'],
    ['35.6 cm <!-- = side -->', 'converted, to the millimetre'],
    ['36 cm <!-- = side -->', 'converted, to the nearest centimetre'],
    ['5.31" <!-- = fine -->', 'a sixteenth in two places'],
    ['5.3125" <!-- = fine -->', 'a sixteenth in all its places'],
    ['½ yd <!-- = half yard -->', 'in yards'],
    ['1½ ft <!-- = half yard -->', 'in feet'],
    ['one and a half feet <!-- = half yard -->', 'in words'],
    ['18 <!-- = half yard -->', 'in the unit that is understood'],
    ['46" <!-- = batting.width -->', 'a requirement that is more than met'],
    ['37" <!-- = batting.width -->', 'a requirement that is just met'],
  ];
  it.each(right)('%s: %s', (text) => {
    expect(verdicts(INCHES, text)).toEqual(['verified']);
  });

  const metric: readonly Case[] = [
    ['150 cm <!-- = finished.edge -->', 'as it is'],
    ['1.5 m <!-- = finished.edge -->', 'in metres'],
    ['1500 mm <!-- = finished.edge -->', 'in millimetres'],
    ['59" <!-- = finished.edge -->', 'converted, to the nearest eighth of an inch'],
    ['59⅛" <!-- = finished.edge -->', 'converted, up to the eighth of an inch'],
    ['59.06" <!-- = finished.edge -->', 'converted, to two places'],
    ['1⅝ yd <!-- = finished.edge -->', 'converted, to the nearest eighth of a yard'],
    ['14" <!-- = side -->', 'exactly, in the other system'],
  ];
  const whole: readonly Case[] = [
    ['75" <!-- = finished.edge -->', 'to the nearest whole inch: 75.398"'],
    ['75 in. <!-- = finished.edge -->', 'to the nearest whole inch'],
    ['seventy-five inches <!-- = finished.edge -->', 'to the nearest whole inch, in words'],
    ['87" <!-- = piping.length -->', 'a requirement of 86.398", up to the whole inch'],
    ['87" <!-- = binding.yield -->', 'what something gives, 87.681", down to the whole inch'],
    ['38" <!-- = finished.width -->', 'a side of 37.941", to the nearest whole inch'],
  ];
  it.each(whole)('in a whole number of inches, %s: %s', (text) => {
    expect(verdicts(text.includes('width') ? ON_POINT : CIRCLE, text)).toEqual(['verified']);
  });

  it.each(metric)('in a metric pattern, %s: %s', (text) => {
    expect(verdicts(METRIC, text)).toEqual(['verified']);
  });
});

describe('a stated length is wrong', () => {
  const wrong: readonly [text: string, kind: string, expected: string][] = [
    ['87" <!-- = finished.edge -->', 'wrong', '88"'],
    ['87¾" <!-- = finished.edge -->', 'wrong', '88"'],
    ['87.95" <!-- = finished.edge -->', 'wrong', '88"'],
    ['222 cm <!-- = finished.edge -->', 'wrong', '223.5 cm'],
    ['2 m <!-- = finished.edge -->', 'wrong', '2.23 m'],
    ['11¼" <!-- = third -->', 'wrong', '11⅓"'],
    ['35 cm <!-- = side -->', 'wrong', '35.5 cm'],
    ['35.4 cm <!-- = side -->', 'wrong', '35.6 cm'],
    ['5¼" <!-- = fine -->', 'wrong', '5 5/16"'],
    ['5.3" <!-- = fine -->', 'wrong', '5.3125"'],
    ['18 yd <!-- = half yard -->', 'wrong', '½ yd'],
    ['18 cm <!-- = half yard -->', 'wrong', '45.5 cm'],
    ['35¾" <!-- = batting.width -->', 'short', '36"'],
  ];
  it.each(wrong)('%s is %s, and should be %s', (text, kind, expected) => {
    const [account] = proofread({ source: INCHES + text }).accounts;
    expect([account?.kind, account?.expected]).toEqual([kind, expected]);
  });
});

describe('a whole number of inches for a length that no ruler shows is not right', () => {
  const wrong: readonly [text: string, kind: string, why: string][] = [
    ['76" <!-- = finished.edge -->', 'wrong', '75.398" is nearer to 75"'],
    ['76.0" <!-- = finished.edge -->', 'wrong', 'nor with a decimal place'],
    ['86" <!-- = piping.length -->', 'short', 'a requirement of 86.398" is not rounded down'],
    ['88" <!-- = binding.yield -->', 'wrong', 'a yield of 87.681" is not rounded up'],
    ['38" <!-- = border.1.top -->', 'wrong', 'a border of 38.441" is cut to this length'],
    ['4" <!-- = bow -->', 'wrong', 'of 4.472" a whole inch is a ninth'],
  ];
  it.each(wrong)('%s is %s: %s', (text, kind) => {
    const head = /border|bow/.test(text) ? ON_POINT : CIRCLE;
    expect(verdicts(head, text)).toEqual([kind]);
  });
});

/** Numbers as authors write them, in every unit. */
const WRITTEN = [
  '5"',
  '5½"',
  '5 1/2"',
  '5-1/2"',
  '5.5"',
  '5.50"',
  '5 1/16"',
  'five inches',
  '½"',
  '.25"',
  '0.5 in',
  '2 ft',
  '2½ ft',
  '2 yd',
  '2½ yd',
  '2 1/2 yards',
  '⅞ yd',
  '2.25 yd',
  'half a yard',
  '⅓ yd',
  'two yards',
  '30 cm',
  '30.5 cm',
  '30.25 cm',
  '300 mm',
  '2 m',
  '2.5 m',
  '2.55 m',
  '5',
  '5½',
  '5.5',
];

const HOUSES = [
  completeHouse({}),
  completeHouse({ seam: { inches: toInches(rational(3, 4), 'cm'), unit: 'cm' } }),
];

const needs = fc.oneof(
  fc
    .tuple(fc.integer({ min: 1, max: 2000 }), fc.constantFrom(1, 2, 3, 4, 5, 7, 8, 16, 32))
    .map(([n, d]) => Real.of(rational(n, d))),
  fc.integer({ min: 1, max: 6000 }).map((halves) => Real.of(toInches(rational(halves, 2), 'cm'))),
  fc.integer({ min: 2, max: 5000 }).map((n) => Real.of(n).sqrt()),
);

describe('what should stand in place of a wrong number', () => {
  it('is itself right, whatever the number looked like', () => {
    const rules = fc.constantFrom('exact', 'at least');
    const kinds = fc.constantFrom('length', 'yardage');
    fc.assert(
      fc.property(
        needs,
        rules,
        kinds,
        fc.constantFrom('up', 'down'),
        fc.boolean(),
        fc.constantFrom(...HOUSES),
        fc.constantFrom(...WRITTEN),
        fc.constantFrom(undefined, rational(1, 2), rational(9, 10)),
        (need, rule, kind, direction, rounded, house, text, share) => {
          const round = rule === 'exact' ? direction : 'up';
          const step =
            kind === 'yardage' ? house['sell by'] : need.exact && !rounded ? undefined : house['cut to'];
          const shown = step
            ? (round === 'up' ? roundUp : roundDown)(need, step)
            : (need.exact ?? rational(0));
          fc.pre(shown.compare(0) > 0);
          const spare = kind === 'yardage' ? house['generous over'] : undefined;
          const value: FigureValue = {
            need,
            shown,
            step,
            round,
            least:
              share && rule === 'at least'
                ? roundDown(need.mul(Real.of(share)), rational(1, 1000))
                : undefined,
            spare,
            steps: [],
            working: [],
            because: '',
            inputs: [],
            uses: [],
            assumes: [],
            against: () => undefined,
          };
          const stated = read(text);
          const expected = expectedText(stated, text, { kind, rule }, value, house);
          if (judge(stated, { kind, rule }, value, house) === 'verified' || expected === undefined) return;
          expect(judge(read(expected), { kind, rule }, value, house), `${text} -> ${expected}`).toBe(
            'verified',
          );
        },
      ),
      { seed: 20_261_128, numRuns: 5000 },
    );
  });
});

function read(text: string): Stated {
  const written = readNumberAt(text, 0);
  if (written?.end !== text.length) throw new Error(`${text} is not read as one number`);
  return { value: written.value, unit: written.unit, written };
}
