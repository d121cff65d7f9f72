/** The right value, written as the author writes, and the edits that put it there. */
import type { House } from '../block/house.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import type { Edit, Range } from '../findings/finding.ts';
import { granularity, type NumberText } from '../quantity/notation.ts';
import { ZERO } from '../quantity/rational.ts';
import { fromInches } from '../quantity/units.ts';
import { writeLike } from '../quantity/write.ts';
import { converted, isConverted } from './conversion.ts';
import { type Stated, unitOf } from './judge.ts';

/**
 * What should stand in place of a stated number; `undefined` when it cannot be written in the author's style.
 *
 * @param habits numbers that show this style, the nearest first
 */
export function expectedText(
  stated: Stated,
  text: string,
  { kind, rule }: Pick<Figure, 'kind' | 'rule'>,
  value: FigureValue,
  house: House,
  habits?: readonly NumberText[],
): string | undefined {
  if (kind === 'count') return stated.unit ? undefined : writeLike(value.shown, stated.written, text, habits);
  const unit = unitOf(stated, kind, house);
  const style = { own: granularity(stated.written), value: stated.value };
  const right = isConverted(unit, house)
    ? converted({ need: value.need, rule, unit, style }, house)
    : fromInches(value.shown, unit);
  const isLost = right.equals(ZERO) && !value.shown.equals(ZERO);
  return isLost ? undefined : writeLike(right, { ...stated.written, unit }, text, habits);
}

/**
 * The edits that change a number's text and nothing else.
 *
 * A number may be split over emphasis (`**2**½"`), so only what differs is replaced. `undefined` when the change
 * would empty one of the parts, which would leave stray marks of emphasis behind.
 *
 * @param ranges the parts of the number in the source, whose slices joined are its text
 */
export function editsTo(text: string, source: string, ranges: readonly Range[]): Edit[] | undefined {
  const [only] = ranges;
  if (only && ranges.length === 1) return [{ start: only.start, end: only.end, text }];
  const places = ranges.flatMap(({ start, end }) => Array.from({ length: end - start }, (_, i) => start + i));
  const old = places.map((place) => source[place]).join('');
  const head = common(old, text);
  const tail = common(reverse(old.slice(head)), reverse(text.slice(head)));
  const gone = new Set(places.slice(head, old.length - tail));
  const emptied = ranges.some(({ start, end }) =>
    places.filter((p) => p >= start && p < end).every((p) => gone.has(p)),
  );
  if (emptied) return undefined;
  const at = places[head] ?? (places.at(-1) ?? 0) + 1;
  const edits: Edit[] = [];
  for (const { start, end } of runs([...gone])) edits.push({ start, end, text: '' });
  const replacement = text.slice(head, text.length - tail);
  const [first, ...rest] = edits;
  return first ? [{ ...first, text: replacement }, ...rest] : [{ start: at, end: at, text: replacement }];
}

/** Ascending places as ranges without gaps. */
function runs(places: readonly number[]): Range[] {
  const found: Range[] = [];
  for (const place of places) {
    const last = found.at(-1);
    if (last?.end === place) found[found.length - 1] = { start: last.start, end: place + 1 };
    else found.push({ start: place, end: place + 1 });
  }
  return found;
}

function common(a: string, b: string): number {
  let n = 0;
  while (n < a.length && n < b.length && a[n] === b[n]) n++;
  return n;
}

function reverse(text: string): string {
  return text.split('').reverse().join('');
}
