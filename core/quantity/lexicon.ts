/** The words that numbers are spelled with. */

export const UNDER_TWENTY = (
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen ' +
  'seventeen eighteen nineteen'
).split(' ');
export const TENS = ', ,twenty,thirty,forty,fifty,sixty,seventy,eighty,ninety'.split(',');

/** Words for a part, by denominator: one, several. */
export const PARTS: readonly (readonly [denominator: number, one: string, many: string])[] = [
  [2, 'half', 'halves'],
  [3, 'third', 'thirds'],
  [4, 'quarter', 'quarters'],
  [4, 'fourth', 'fourths'],
  [5, 'fifth', 'fifths'],
  [6, 'sixth', 'sixths'],
  [8, 'eighth', 'eighths'],
  [10, 'tenth', 'tenths'],
  [16, 'sixteenth', 'sixteenths'],
];

/** Words that stand for a number and are as often just words. */
export const LOOSE: ReadonlyMap<string, number> = new Map([
  ['another', 1],
  ['both', 2],
  ['once', 1],
  ['twice', 2],
  ['thrice', 3],
  ['pair', 2],
  ['pairs', 2],
]);

export const ONES = new Map(UNDER_TWENTY.map((word, value) => [word, value]));
export const TENS_VALUES = new Map(
  TENS.flatMap((word, tens) => (word.trim() ? [[word, tens * 10] as const] : [])),
);
export const PART_VALUES: ReadonlyMap<string, { readonly denominator: number; readonly many: boolean }> =
  new Map(
    PARTS.flatMap(([denominator, one, many]): [string, { denominator: number; many: boolean }][] => [
      [one, { denominator, many: false }],
      [many, { denominator, many: true }],
    ]),
  );
