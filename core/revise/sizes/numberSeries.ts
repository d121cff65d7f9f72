/** Numbers that stand one for each size: `5 (7, 9)`, `12/20/30`, `60" for the lap, 72" for the twin and 84" for the queen`. */
import type { Range } from '../../findings/finding.ts';
import { GAP_MARKS } from '../../findings/gap.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import type { Member } from './series.ts';
import type { Stretch } from './stretches.ts';
import { NOTHING, type RevisedText } from './text.ts';

/** One number, or the sides of a size. */
export interface Element extends Range {
  /** None for the mark of a number that is still to be written. */
  readonly numbers: readonly ReadNumber[];
  /** The figures that it states; `undefined` when not all of its numbers are tied. */
  readonly figures: string | undefined;
  /** The size that all its numbers are about, if they are about one. */
  readonly size: string | null | undefined;
}

export interface NumberSeries {
  readonly elements: readonly Element[];
  readonly members: readonly Member[];
  /** Whether it is a mere list, `5 (7, 9)`, without words. */
  readonly isList: boolean;
}

export function elementsOf(stretch: Stretch, text: RevisedText): Element[] {
  const elements: Element[] = [];
  const measured = stretch.numbers.filter(({ notMeasurement }) => notMeasurement === undefined);
  for (let at = 0; at < measured.length; ) {
    const first = measured[at] as ReadNumber;
    const group = first.group?.kind === 'size' ? first.group : undefined;
    const numbers = group ? measured.filter((number) => number.group === group) : [first];
    elements.push(element(numbers, text));
    at += Math.max(1, numbers.length);
  }
  return [...elements, ...gapsIn(stretch, text)].sort((a, b) => a.start - b.start);
}

function gapsIn({ start, end }: Range, { source }: RevisedText): Element[] {
  return [...source.slice(start, end).matchAll(GAP_MARKS)].map((mark) => ({
    numbers: [],
    start: start + mark.index,
    end: start + mark.index + mark[0].length,
    figures: undefined,
    size: mark[1],
  }));
}

function element(numbers: readonly ReadNumber[], text: RevisedText): Element {
  const ties = numbers.map((number) => text.tie(number));
  const sizes = new Set(ties.map((tie) => tie?.size));
  const isTied = ties.every((tie) => tie !== undefined);
  return {
    numbers,
    start: numbers[0]?.ranges[0].start ?? 0,
    end: numbers.at(-1)?.ranges.at(-1)?.end ?? 0,
    figures: isTied ? ties.map((tie) => tie?.figure.id).join(' × ') : undefined,
    size: isTied && sizes.size === 1 ? [...sizes][0] : undefined,
  };
}

export function numberSeries(stretch: Stretch, text: RevisedText): NumberSeries[] {
  const elements = elementsOf(stretch, text);
  const count = text.names.length;
  const found: NumberSeries[] = [];
  if (count < 2) return found;
  for (let at = 0; at + count <= elements.length; ) {
    const some = elements.slice(at, at + count);
    const series = seriesOf(some, stretch, text);
    if (series) found.push(series);
    at += series ? count : 1;
  }
  return found;
}

/** What joins members, without the comments around it. */
const JOINER = new RegExp(
  `[*_]*(?:\\s*[([{]\\s*|\\s*[,;](?:\\s+(?:and|or|then))?\\s+|\\s*\\/\\s*|(?<=[.;!?]${NOTHING}*)\\s+|\\s+(?:and|or|&)\\s+)[*_]*`,
  'gu',
);
const LIST_JOINER = /^[*_]*\s*[([{,;/]\s*[*_]*$/;

interface Gap {
  readonly tail: Range;
  readonly head: Range;
}

function seriesOf(
  elements: readonly Element[],
  stretch: Stretch,
  text: RevisedText,
): NumberSeries | undefined {
  const { names } = text;
  const shown = text.shown.slice(0, stretch.end);
  const known = elements.filter(({ numbers }) => numbers.length > 0);
  const isOne = known.every(({ figures }) => figures !== undefined && figures === known[0]?.figures);
  const isSized = elements.every(({ size }, index) => size === names[index]);
  if (known.length > 0 && isOne && isSized) return spoken(elements, shown, stretch, text);
  const between = elements.slice(1).map(({ start }, index) => shown.slice(elements[index]?.end, start));
  const isBracket = /[([{]/.test(between[0] ?? '') && between.slice(1).every((gap) => /[,;/]/.test(gap));
  const hasGap = known.length < elements.length;
  const isSure = (isOne || hasGap) && names.length > 2;
  const isList = between.every((gap) => LIST_JOINER.test(gap)) && (isBracket || isSure);
  const isUnsized = isOne && known.every(({ size }) => size === null);
  if (hasGap && !elements.every(({ numbers, size }, index) => numbers.length > 0 || size === names[index]))
    return undefined;
  if (!isList || !(isUnsized || hasGap || (isBracket && isUntiedList(elements, shown)))) return undefined;
  const members = elements.map(({ start, end }, index) => ({ start, end, size: names[index] ?? '' }));
  return { elements, members: withoutSharedMark(elements, members), isList: true };
}

/** In `⅞/1¼/3 yards` the mark behind the last number stays where it is, whichever number is the last. */
function withoutSharedMark(elements: readonly Element[], members: readonly Member[]): Member[] {
  const marked = elements.map(
    ({ numbers }) => numbers.length > 0 && numbers.at(-1)?.written.unit !== undefined,
  );
  const last = elements.at(-1)?.numbers.at(-1);
  if (!last || !marked.at(-1) || marked.slice(0, -1).some(Boolean)) return [...members];
  const { start, numeralEnd } = last.written;
  const end = last.passage.toSource(start, numeralEnd).at(-1)?.end ?? last.ranges[0].end;
  return members.map((member, index) => (index === members.length - 1 ? { ...member, end } : member));
}

/** `7 (9)`, but not `twelve (12)` or `20 cm (8")`: no figure is known, but the form says that each size has its number. */
function isUntiedList(elements: readonly Element[], shown: string): boolean {
  const numbers = elements.flatMap((element) => element.numbers);
  const forms = numbers.map(({ unit, written }) => `${unit} ${written.notation.numeral.form === 'words'}`);
  const isSame = numbers.every(({ value }) => numbers[0] && value.equals(numbers[0].value));
  const isClosed = /^["”″]?[*_]*\s*[)\]}]/.test(shown.slice(elements.at(-1)?.end));
  const isUntied = elements.every(({ figures }) => figures === undefined);
  return isUntied && isClosed && !isSame && new Set(forms).size === 1;
}

/** A series with words between its numbers, or none. */
function spoken(
  elements: readonly Element[],
  shown: string,
  extent: Range,
  text: RevisedText,
): NumberSeries | undefined {
  const gaps = elements.slice(1).map((next, index) => {
    const [size = '', following = ''] = [text.names[index], text.names[index + 1]];
    return gapBetween(elements[index]?.end ?? 0, next.start, shown, [size, following], text);
  });
  if (gaps.some((gap) => gap === undefined)) return undefined;
  const heads = gaps.map((gap) => gap?.head ?? { start: 0, end: 0 });
  const tails = gaps.map((gap) => gap?.tail ?? { start: 0, end: 0 });
  const start = firstHead(elements, heads, shown, extent, text);
  const end = lastTail(elements, tails, shown, text);
  if (start === undefined || end === undefined) return undefined;
  const members = elements.map((each, index) => ({
    size: text.names[index] ?? '',
    start: index === 0 ? start : (heads[index - 1]?.start ?? each.start),
    end: index === elements.length - 1 ? end : (tails[index]?.end ?? each.end),
  }));
  const isList = members.every((member, index) => {
    const each = elements[index];
    return member.start === each?.start && member.end === each.end;
  });
  return { elements, members: isList ? withoutSharedMark(elements, members) : members, isList };
}

/** A joiner behind which nothing but the next size is named, and before which nothing but the one before. */
function gapBetween(
  start: number,
  end: number,
  shown: string,
  [before, behind]: readonly [string, string],
  text: RevisedText,
): Gap | undefined {
  const gap = shown.slice(start, end);
  for (const match of gap.matchAll(JOINER)) {
    const [tail, head] = [gap.slice(0, match.index), gap.slice(match.index + match[0].length)];
    const isAbout = (part: string, size: string) => text.words.in(part).every((named) => named.size === size);
    const isBare = text.words.in(head).length > 0 || head === '';
    if (!isBare || !isAbout(tail, before) || !isAbout(head, behind)) continue;
    return {
      tail: { start, end: start + match.index },
      head: { start: start + match.index + match[0].length, end },
    };
  }
  return undefined;
}

/** Where the first member begins: with words like those before the second, if there are any. */
function firstHead(
  elements: readonly Element[],
  heads: readonly Range[],
  shown: string,
  extent: Range,
  { words, names }: RevisedText,
): number | undefined {
  const [first] = elements;
  const head = heads[0] && shown.slice(heads[0].start, heads[0].end);
  if (!first || !head) return heads.every(({ start, end }) => start === end) ? first?.start : undefined;
  const named = words.in(head)[0];
  const before = shown.slice(extent.start, first.start);
  const own = words.in(before).findLast(({ size }) => size === names[0]);
  if (!named || !own) return undefined;
  const lead = head.slice(0, named.start);
  const isLed = before.slice(0, own.start).toLowerCase().endsWith(lead.toLowerCase());
  return extent.start + own.start - (isLed ? lead.length : 0);
}

/** How far behind the last number its size is looked for. */
const REACH = 60;
const SIZE_WORD = /^\s+(?:sizes?|quilts?)(?![\p{L}\p{N}])/u;
const COMMENTS = /^(?:\s*\ue000+)*/;

/** Where the last member ends: with words like those behind the one before it, if there are any. */
function lastTail(
  elements: readonly Element[],
  tails: readonly Range[],
  shown: string,
  { words, names }: RevisedText,
): number | undefined {
  const last = elements.at(-1);
  const model = tails.at(-1);
  if (!last || !model) return undefined;
  const tail = shown.slice(model.start, model.end);
  const behind = shown.slice(last.end);
  const comments = tail.includes('\ue000') ? (COMMENTS.exec(behind)?.[0].length ?? 0) : 0;
  const rest = tail.replaceAll('\ue000', '').trim();
  if (rest === '') return last.end + comments;
  const named = words.in(behind.slice(comments, comments + REACH))[0];
  if (words.in(tail).length > 0) {
    if (!named || named.size !== names.at(-1)) return undefined;
    if (/[.!?;\d]/.test(behind.slice(comments, comments + named.start))) return undefined;
    const at = last.end + comments + named.end;
    return at + (SIZE_WORD.exec(shown.slice(at))?.[0].length ?? 0);
  }
  const own = new RegExp(`^(?:${NOTHING})*`).exec(behind)?.[0].length ?? 0;
  return behind.startsWith(rest, own) ? last.end + own + rest.length : undefined;
}
