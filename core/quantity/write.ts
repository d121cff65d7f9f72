/** Writes a value in the way that a number in a text is written, so that a correction keeps the author's style. */
import { BREAK, glyphFor, LOWERED_DIGITS, matchAt, RAISED_DIGITS } from './characters.ts';
import { findNumbers } from './find.ts';
import { SLASH_DENOMINATORS } from './fractions.ts';
import { unitMark } from './marks.ts';
import type { FractionStyle, NumberText, NumeralStyle } from './notation.ts';
import { sameCase, TRADE_NOUNS } from './nouns.ts';
import { isInteger, ONE, type Rational, rational } from './rational.ts';
import { fractionWords, writeWords } from './spell.ts';
import { isMetric } from './units.ts';

export { writeInches, writeMetric, writeYards } from './show.ts';

/** The finest decimal that anyone writes: 1/64 in is 0.015625; behind a comma more than four digits are not read. */
const MOST_PLACES = { '.': 6, ',': 4 } as const;

/**
 * `value`, in the unit of `like`, written as `like` is written in `text`: what replaces
 * `text.slice(like.start, like.end)`. `undefined` when that way of writing cannot express the value, as decimals
 * cannot express a third.
 */
export function writeLike(
  value: Rational,
  like: NumberText,
  text: string,
  numbers: readonly NumberText[] = findNumbers(text),
): string | undefined {
  if (value.s < 0n) return undefined;
  if (value.equals(like.value)) return text.slice(like.start, like.end);
  const numeral = writeNumeral(value, like, numbers);
  if (numeral === undefined) return undefined;
  return numeral + ordinalSuffix(value, like) + writeMark(value, numeral, like, text);
}

function writeNumeral(value: Rational, like: NumberText, numbers: readonly NumberText[]): string | undefined {
  const style = like.notation.numeral;
  switch (style.form) {
    case 'words':
      return writeSpelled(value, like, style);
    case 'decimal':
      return writeDecimal(value, style);
    case 'integer':
      if (isInteger(value)) return writeInteger(value, like, style);
      if (like.unit && isMetric(like.unit)) return writeDecimal(value, PLAIN_DECIMAL);
      return writeBroken(value, numbers, style.grouped);
    case 'fraction': {
      const habit = mixedHabit(numbers);
      const joiner =
        habit.fraction.kind === style.fraction.kind ? habit.joiner : DEFAULT_JOINER[style.fraction.kind];
      return writeFraction(value, { joiner, fraction: style.fraction }, true);
    }
    case 'mixed':
      return writeFraction(value, style, style.grouped || like.value.compare(1000) < 0);
  }
}

type DecimalStyle = Extract<NumeralStyle, { form: 'decimal' }>;
type IntegerStyle = Extract<NumeralStyle, { form: 'integer' }>;
type WordsNumeral = Extract<NumeralStyle, { form: 'words' }>;
interface MixedStyle {
  readonly joiner: string;
  readonly fraction: FractionStyle;
}

const PLAIN_DECIMAL: DecimalStyle = {
  form: 'decimal',
  point: '.',
  places: 0,
  leadingZero: true,
  padded: false,
  grouped: false,
};
const GLYPHS: MixedStyle = { joiner: '', fraction: { kind: 'glyph', slash: '/' } };
const DEFAULT_JOINER: Readonly<Record<FractionStyle['kind'], string>> = {
  glyph: '',
  raised: '',
  slash: ' ',
  words: ' and ',
};

/** Where a whole number must become a broken one: as a decimal where the author's nearest broken number is one. */
function writeBroken(value: Rational, numbers: readonly NumberText[], grouped: boolean): string | undefined {
  const nearest = numbers.find(({ unit, notation: { numeral } }) => {
    if (numeral.form === 'decimal') return unit !== undefined && !isMetric(unit);
    return isMixed(numeral);
  });
  const style = nearest?.notation.numeral;
  const asDecimal = style?.form === 'decimal' ? writeDecimal(value, style) : undefined;
  return asDecimal ?? writeFraction(value, mixedHabit(numbers), grouped);
}

function isMixed(style: NumeralStyle): style is Extract<NumeralStyle, { form: 'mixed' }> {
  return style.form === 'mixed' && style.fraction.kind !== 'words';
}

/** How the author writes mixed numbers; glyphs where nothing tells. */
function mixedHabit(numbers: readonly NumberText[]): MixedStyle {
  const styles = numbers.map(({ notation }) => notation.numeral);
  const mixed = styles.find(isMixed);
  if (mixed) return mixed;
  const fraction = styles.find((style) => style.form === 'fraction');
  return fraction?.form === 'fraction'
    ? { joiner: DEFAULT_JOINER[fraction.fraction.kind], fraction: fraction.fraction }
    : GLYPHS;
}

function writeInteger(value: Rational, like: NumberText, style: IntegerStyle): string {
  if (style.dozen && value.n > 0n && value.n % 12n === 0n) return `${value.n / 12n} dozen`;
  return digits(value.n, style.grouped || like.value.compare(1000) < 0);
}

function digits(n: bigint, grouped: boolean): string {
  return grouped ? String(n).replace(/\B(?=(?:\d{3})+$)/g, ',') : String(n);
}

function writeDecimal(value: Rational, style: DecimalStyle): string | undefined {
  const most = MOST_PLACES[style.point];
  let places = style.padded ? style.places : 0;
  while (places <= most && !isInteger(value.mul(10n ** BigInt(places), 1n))) places++;
  if (places > most) return undefined;
  // `1,125 m` would read as a thousand and more.
  if (style.point === ',' && places === 3 && value.compare(ONE) >= 0) places = 4;
  const scaled = String(value.mul(10n ** BigInt(places), 1n).n).padStart(places + 1, '0');
  const whole = scaled.slice(0, scaled.length - places);
  const shown = whole === '0' && !style.leadingZero && places > 0 ? '' : digits(BigInt(whole), style.grouped);
  return places === 0 ? shown : shown + style.point + scaled.slice(-places);
}

/** A whole number, a fraction or a mixed number. */
function writeFraction(value: Rational, style: MixedStyle, grouped: boolean): string | undefined {
  const whole = value.n / value.d;
  const rest = value.sub(rational(whole));
  if (rest.n === 0n) return digits(whole, grouped);
  const part = fractionText(rest, style.fraction);
  if (part === undefined) return undefined;
  if (whole === 0n) return part.text;
  return digits(whole, grouped) + joinerFor(style.joiner, part.kind) + part.text;
}

function fractionText(
  value: Rational,
  { kind, slash }: FractionStyle,
): { text: string; kind: FractionStyle['kind'] } | undefined {
  const { n, d } = value;
  if (kind === 'words') {
    const words = fractionWords(value);
    return words === undefined
      ? undefined
      : { text: n === 1n ? words.replace(/^(?:one-)?/, 'a ') : words, kind };
  }
  const glyph = kind === 'glyph' ? glyphFor(n, d) : undefined;
  if (glyph) return { text: glyph, kind };
  if (kind === 'raised' && n < 10_000n && d < 10_000n) {
    return { text: inDigits(n, RAISED_DIGITS) + slash + inDigits(d, LOWERED_DIGITS), kind };
  }
  if (slash === '/' && !SLASH_DENOMINATORS.has(d)) return undefined;
  return { text: `${n}${slash}${d}`, kind: 'slash' };
}

function inDigits(n: bigint, alphabet: string): string {
  return [...String(n)].map((digit) => alphabet[Number(digit)]).join('');
}

/** The author's joiner, except where it was a slip, broke a line, or would glue two numbers together. */
function joinerFor(joiner: string, kind: FractionStyle['kind']): string {
  if (joiner.includes('\n')) return DEFAULT_JOINER[kind];
  if (joiner === '^' || /^\s[-\u2010\u2011]$|^[-\u2010\u2011]\s$/.test(joiner)) return '-';
  return joiner === '' && kind === 'slash' ? ' ' : joiner;
}

function writeSpelled(value: Rational, like: NumberText, style: WordsNumeral): string | undefined {
  if (value.compare(999) > 0) return isInteger(value) ? digits(value.n, true) : undefined;
  const words = writeWords(value, style);
  if (words === undefined) return undefined;
  const { gap } = like.notation;
  if (gap.endsWith('-')) return singularPart(words).replaceAll(' ', '-');
  return gap !== '' && gap.trim() === '' && value.compare(ONE) < 0 && like.value.compare(ONE) < 0
    ? singularPart(words)
    : words;
}

/** "three-quarters" as it stands right before a unit: "three-quarter inch". */
function singularPart(words: string): string {
  return words.replace(/(half|third|quarter|fourth|fifth|sixth|eighth|tenth|sixteenth)s$/i, '$1');
}

function ordinalSuffix(value: Rational, like: NumberText): string {
  const { ordinal } = like.notation;
  if (ordinal === '') return '';
  if (!isInteger(value)) return 'th';
  const [last, lastTwo] = [value.n % 10n, value.n % 100n];
  const irregular =
    lastTwo >= 11n && lastTwo <= 13n ? undefined : { 1: 'st', 2: 'nd', 3: 'rd' }[Number(last)];
  const suffix = irregular ?? 'th';
  return ordinal === ordinal.toUpperCase() ? suffix.toUpperCase() : suffix;
}

const ATTRIBUTED = new RegExp(`${BREAK}([\\p{L}-]+)`, 'uy');

/** The gap and the mark, in the number that the value asks for. */
function writeMark(value: Rational, numeral: string, like: NumberText, text: string): string {
  const { gap, mark } = like.notation;
  return mark === '' ? '' : writeGap(value, numeral, like, gap) + inflect(value, like, text, mark);
}

/** "half an inch", but "three-quarters of an inch", "two inches" and "zero inches". */
function writeGap(value: Rational, numeral: string, like: NumberText, gap: string): string {
  const linked = /[a-z]/i.test(gap);
  const spelled = like.notation.numeral.form === 'words';
  const isWhole = isInteger(value) || value.compare(ONE) >= 0;
  if (linked && isWhole) return ' ';
  if (!spelled || isWhole || gap.includes('-')) return gap;
  const wasWhole = like.value.compare(ONE) >= 0;
  if (!linked && !wasWhole) return gap;
  const article = like.unit === 'in' ? 'an' : 'a';
  const half = /^half$/i.test(numeral);
  return half && !/of/i.test(gap) ? ` ${article} ` : ` of ${article} `;
}

function inflect(value: Rational, like: NumberText, text: string, mark: string): string {
  const { one, many } = unitMark(mark) ?? {};
  if (one === undefined || many === undefined || like.notation.gap.endsWith('-')) return mark;
  const stem = mark.replace(/\.$/, '');
  const [isPlural, wasMany, becomesMany] = [stem.toLowerCase() === many, isMany(like.value), isMany(value)];
  // Many authors write "2 1/2 yard" or "3 yd": whoever does not inflect the mark keeps it.
  if (isPlural !== wasMany || wasMany === becomesMany) return mark;
  if (!isPlural && (stem.length <= 3 || isAttribute(like, text))) return mark;
  const target = becomesMany ? many : one;
  return sameCase(stem, target) + mark.slice(stem.length);
}

/** "zero yards", "half a yard", "1 yard", "2 yards". */
function isMany(value: Rational): boolean {
  return value.n === 0n || value.compare(ONE) > 0;
}

/** "1 inch seam": the measure of a noun keeps its singular; fabric is sold as "2 yards backing" all the same. */
function isAttribute(like: NumberText, text: string): boolean {
  const word = matchAt(ATTRIBUTED, text, like.end)?.[1]?.toLowerCase();
  return (
    like.unit !== 'yd' &&
    word !== undefined &&
    (TRADE_NOUNS.has(word) || /^(?:finished|wide-|long-)/.test(word))
  );
}
