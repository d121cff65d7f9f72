/** Manuscripts that state the figures of a pattern, in many styles and places, each number with its place. */
import fc from 'fast-check';
import type { Pattern } from '../../core/block/pattern.ts';
import type { Figure, FigureKind, FigureValue } from '../../core/figures/figure.ts';
import { openLedger } from '../../core/figures/ledger.ts';
import { floor, type Rational, rational } from '../../core/quantity/rational.ts';
import { fromInches, type LengthUnit, toInches } from '../../core/quantity/units.ts';

/** A way to write a number; `undefined` for a value that it cannot express. */
export interface Style {
  readonly unit: LengthUnit | undefined;
  readonly write: (value: Rational) => string | undefined;
}

/** One number of a manuscript: right, or put wrong in the same style. */
export interface Stated {
  readonly id: string;
  readonly size: string;
  readonly right: string;
  readonly wrong: string;
  readonly code: 'wrong-figure' | 'short-figure';
}

const GLYPHS: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
  '1/3': '⅓',
  '2/3': '⅔',
};

const WORDS = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');

const mixed =
  (joiner: string, glyph: boolean) =>
  (value: Rational): string | undefined => {
    const whole = value.n / value.d;
    const rest = value.n % value.d;
    if (rest === 0n) return undefined;
    const part = glyph
      ? GLYPHS[`${rest}/${value.d}`]
      : 64n % value.d === 0n
        ? `${rest}/${value.d}`
        : undefined;
    if (part === undefined) return undefined;
    return whole === 0n ? part : `${whole}${joiner}${part}`;
  };
const integer = (value: Rational) => (value.d === 1n && value.n < 1000n ? String(value.n) : undefined);
const word = (value: Rational) => (value.d === 1n && value.n > 1n ? WORDS[Number(value.n)] : undefined);
const decimal = (places: number) => (value: Rational) => {
  const scaled = value.mul(10n ** BigInt(places), 1n);
  if (scaled.d !== 1n || scaled.n % 10n === 0n) return undefined;
  const digits = String(scaled.n).padStart(places + 1, '0');
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
};

const NUMERALS = [
  integer,
  mixed('', true),
  mixed(' ', false),
  mixed('-', false),
  mixed(' ', true),
  decimal(1),
  decimal(2),
  decimal(3),
];

const MARKS: Readonly<Record<LengthUnit, readonly string[]>> = {
  in: ['"', '”', '″', "''", ' inches|inch', '-inch', ' in.'],
  yd: [' yd', ' yards|yard', 'yd'],
  ft: [' ft', ' feet|foot'],
  cm: [' cm', 'cm'],
  mm: [' mm', 'mm'],
  m: [' m', ' metres|metre'],
};

/** ` inches|inch` for a value: the second form up to one. */
function inflected(mark: string, value: Rational): string {
  const [many = '', one] = mark.split('|');
  return one !== undefined && value.compare(1) <= 0 ? ` ${one}` : many;
}

function styles(kind: FigureKind, metric: boolean): readonly Style[] {
  if (kind === 'count') return [integer, word].map((write) => ({ unit: undefined, write }));
  const units: LengthUnit[] = metric
    ? kind === 'yardage'
      ? ['m', 'cm']
      : ['cm', 'mm']
    : kind === 'yardage'
      ? ['yd', 'in']
      : ['in', 'ft'];
  const own: LengthUnit = metric ? (kind === 'yardage' ? 'm' : 'cm') : kind === 'yardage' ? 'yd' : 'in';
  return [
    ...units.flatMap((unit) =>
      MARKS[unit].flatMap((mark) =>
        NUMERALS.map(
          (numeral): Style => ({
            unit,
            write: (value) => {
              const text = numeral(fromInches(value, unit));
              return text === undefined ? undefined : text + inflected(mark, fromInches(value, unit));
            },
          }),
        ),
      ),
    ),
    ...NUMERALS.map((numeral): Style => ({ unit: own, write: (value) => numeral(fromInches(value, own)) })),
  ];
}

/** All figures that a pattern can state: for each way of writing them, one number for each size that has a value. */
export function statementsOf(pattern: Pattern): readonly (readonly (readonly Stated[])[])[] {
  const ledger = openLedger(pattern);
  return ledger.ids.flatMap((id) => {
    const figure = ledger.figure(id);
    if (!figure) return [];
    const ways = styles(figure.kind, pattern.house.system === 'metric').flatMap((style) => {
      const all = [...figure.values].flatMap(([size, value]) => stated(figure, size, value, style) ?? []);
      return all.length === figure.values.size ? [all] : [];
    });
    return ways.length > 0 ? [ways] : [];
  });
}

/**
 * A number that states a value, and the same three units too much, or one unit too little of what is needed; where
 * a clever cutter can do with less than what is shown, one unit too little even for her.
 */
function stated(
  { id, rule }: Figure,
  size: string,
  { shown, need, least }: FigureValue,
  { unit, write }: Style,
): Stated | undefined {
  const one = unit ? toInches(rational(1), unit) : rational(1);
  const short = least ? one.mul(floor(shown.sub(least).div(one)) + 1n) : one;
  const off = rule === 'exact' ? shown.add(one.mul(3n)) : shown.sub(short);
  if (off.compare(0) <= 0) return undefined;
  // A requirement a hair below the need may be a rounding; and below one, a fraction no longer shows its joiner.
  const enough = least?.valueOf() ?? need.toNumber();
  if (rule !== 'exact' && (enough - off.valueOf() < 1 / 4 || off.compare(one) < 0)) return undefined;
  const [right, wrong] = [write(shown), write(off)];
  if (right === undefined || wrong === undefined) return undefined;
  return { id, size, right, wrong, code: rule === 'exact' ? 'wrong-figure' : 'short-figure' };
}

/** A stretch of a manuscript: its text with the numbers that stand in it. */
export type Stretch = readonly (string | Stated)[];

type Frame = (numbers: readonly Stated[]) => Stretch | undefined;

const tag = (id: string, size = '') => (size === '' ? `<!-- = ${id} -->` : `<!-- = ${id} @ ${size} -->`);

/** A template for one number, the first, with its size in the tag. */
const one =
  (template: string): Frame =>
  ([number]) => {
    if (!number) return undefined;
    const [before = '', behind = ''] = template
      .replaceAll('TAG', tag(number.id, number.size))
      .split('NUMBER');
    return [before, number, behind];
  };

/** Several numbers, each behind a text of its own, where something other than the tag says which size is meant. */
const several =
  (before: (number: Stated, index: number) => string, behind: (number: Stated) => string): Frame =>
  (numbers) => {
    const last = numbers.at(-1);
    if (!last || numbers.length < 2) return undefined;
    return [...numbers.flatMap((number, index) => [before(number, index), number]), behind(last)];
  };

const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |\n`;

const FRAMES: readonly Frame[] = [
  one('It measures NUMBER TAG, as said.\n\n'),
  one('Here stand NUMBERTAG of it.\n\n'),
  one('Take NUMBER\nTAG for this.\n\n'),
  one('Take **NUMBER** TAG for this.\n\n'),
  one('Take *NUMBER TAG* for this.\n\n'),
  one('- First\n- Then NUMBER TAG for it\n- Last\n\n'),
  one('1. First\n2. Then NUMBER TAG for it\n\n'),
  one('- First\n  1. Then NUMBER TAG for it\n\n'),
  one('> Take NUMBER TAG\n> for this.\n\n'),
  one('- First\n\n  > Take NUMBER TAG\n  > for this.\n\n'),
  one('### Of NUMBER TAG in all\n\n'),
  one('| Item | Value |\n|---|:-:|\n| Top | NUMBER TAG |\n\n'),
  one('Item | Value\n---|---\nTop | NUMBER TAG\n\n'),
  one('See [the NUMBER TAG of it](https://example.org/17).\n\n'),
  one('See here.[^note]\n\n[^note]: Take NUMBER TAG for it.\n\n'),
  one('Take 🧵🪡𝟗 NUMBER TAG 🧶 for this.\n\n'),
  one('Take &mdash; &#x1F9F5; \\* NUMBER TAG for this.\n\n'),
  one('<div>\n<b>NUMBER</b>\nTAG\n</div>\n\n'),
  one('<!-- measure off -->\nNo. 17, 2 1/4" of it.\n<!-- measure on -->\n\nTake NUMBER TAG for this.\n\n'),
  // A list with one number for each size.
  several(
    (_, index) => ['Take ', ' (', ', '][index] ?? ', ',
    ({ id }) => `) ${tag(id)} for this.\n\n`,
  ),
  // With slashes between them, only numbers that differ are a list.
  (numbers) =>
    new Set(numbers.map(({ right }) => right)).size > 1
      ? several(
          (_, index) => (index === 0 ? 'Take ' : ' / '),
          ({ id }) => ` ${tag(id)} for this.\n\n`,
        )(numbers)
      : undefined,
  // Columns, rows and headings that name the sizes.
  (numbers) =>
    several(
      ({ id }, index) => {
        if (index > 0) return ` ${tag(id)} | `;
        const sizes = numbers.map(({ size }) => size);
        return `${row(['', ...sizes])}${row(['---', ...sizes.map(() => '---')])}| Top | `;
      },
      ({ id }) => ` ${tag(id)} |\n\n`,
    )(numbers),
  several(
    ({ id, size }, index) =>
      index > 0 ? ` ${tag(id)} |\n| ${size} | ` : `${row(['Size', 'Top'])}${row(['---', '---'])}| ${size} | `,
    ({ id }) => ` ${tag(id)} |\n\n`,
  ),
  several(
    ({ id, size }, index) =>
      `${index > 0 ? ` ${tag(id)} for this.\n\n` : ''}## The ${size.toUpperCase()} size\n\nTake `,
    ({ id }) => ` ${tag(id)} for this.\n\n## All sizes\n\n`,
  ),
];

/** Some stretches, each of which states one figure of the pattern. */
export function stretches(pattern: Pattern): fc.Arbitrary<readonly Stretch[]> {
  const all = statementsOf(pattern);
  const stretch = fc
    .tuple(fc.nat(), fc.nat(), fc.nat(), fc.constantFrom(...FRAMES))
    .map(([which, way, rotate, frame]) => {
      const numbers = pick(pick(all, which) ?? [], way) ?? [];
      const isWhole = numbers.length === pattern.sizes.length;
      const from = isWhole ? 0 : rotate % Math.max(1, numbers.length);
      const usable = isWhole && numbers.length > 1 ? numbers : numbers.slice(from, from + 1);
      return frame(usable) ?? FRAMES[0]?.(usable) ?? [];
    });
  return fc.array(stretch, { minLength: 1, maxLength: 10 });
}

function pick<T>(values: readonly T[], at: number): T | undefined {
  return values.length === 0 ? undefined : values[at % values.length];
}
