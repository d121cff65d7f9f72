/** Unfinished is finished and two seam allowances: for the same block or unit, and for a strip that is sewn in. */
import { rational } from '../../quantity/rational.ts';
import { finishedBlocks, hasSeveralBlocks } from './blocks.ts';
import type { Contradiction } from './contradiction.ts';
import { isLenient, type Said, type SaidLine, type Text, type Told, writeAs } from './said.ts';
import { isMetricLength, type Seams, seamsFor } from './seams.ts';

type State = 'finished' | 'unfinished' | 'cut';

export function finishedSize(text: Text): Contradiction[] {
  const beside = text.lines.flatMap((line) => inLine(line, text));
  return beside.length > 0 ? beside : ofTheBlock(text);
}

const UNFINISHED =
  /\b(?:unfinished|(?:should|must|will|to) (?:now )?(?:measure|be)|measur(?:es?|ing)|trim(?:med)? to|including (?:the )?seam allowances?)\b/i;
const FINISHED = /(?<!un)\bfinish(?:es|ed|ing)?\b/i;
const CUT = /\bcut\b/i;
/** Shapes to which more is added than two seams, and sizes of more than one thing. */
const OTHER =
  /\b(?:triangles?|HSTs?|QSTs?|geese|goose|diagonal\w*|hexagons?|diamonds?|circles?|appliqu\w*|template|half|halves|quilt (?:is|measures|top)|rows?|cent(?:er|re)|sets?|pairs?)\b/i;

function stateOf({ before, behind, line, phrase, size }: Said): State | undefined {
  if (line.line.isRow) {
    const column = phrase.size?.sides[0].spots[0]?.column ?? '';
    return /\bunfinished|raw\b/i.test(column) ? 'unfinished' : FINISHED.test(column) ? 'finished' : undefined;
  }
  if (size.length === 0) return undefined;
  // The nearest word decides; a word right behind the size counts before one ahead of it.
  const after = /^["”″)]?\s*(?:\)?\s*square\s*)?[,(]?\s*(?:when |once |is )?(unfinished|finished)\b/i.exec(
    behind,
  )?.[1];
  if (after) return after.toLowerCase() as State;
  const last = lastOf(before, [
    ['unfinished', UNFINISHED],
    ['finished', FINISHED],
    ['cut', CUT],
  ]);
  return last;
}

function lastOf(text: string, words: readonly (readonly [State, RegExp])[]): State | undefined {
  let [best, found]: [number, State | undefined] = [-1, undefined];
  for (const [state, pattern] of words)
    for (const { index } of text.matchAll(new RegExp(pattern.source, 'gi')))
      if (index > best) [best, found] = [index, state];
  return found;
}

function inLine(line: SaidLine, text: Text): Contradiction[] {
  const sizes = line.phrases.filter(({ size }) => size.length > 0 && isLength(size));
  return sizes.flatMap((one, index) => {
    const other = sizes[index + 1];
    const [a, b] = [stateOf(one), other && stateOf(other)];
    if (!other || !a || !b || a === b || (!line.line.isRow && !isOneThing(one, other))) return [];
    const [raw, finished, state] = b === 'finished' ? [one, other, a] : [other, one, b];
    if (state === 'finished' || (a !== 'finished' && b !== 'finished')) return [];
    return compared(raw, finished, text, state);
  });
}

function isLength(size: readonly Told[]): boolean {
  return size.every(({ number: { unit } }) => unit === 'in' || unit === 'cm' || unit === 'mm');
}

/** Whether two sizes stand so near that one thing has both: no other thing is named between them. */
function isOneThing(one: Said, other: Said): boolean {
  const gap = one.line.text.slice(one.phrase.core.end, other.phrase.core.start);
  if (gap.length > 70 || OTHER.test(one.sentence) || /[.!?]\s(?!(?:it|they|this|each)\b)/i.test(gap))
    return false;
  return !/\b(?:quilts?|blocks?|units?|pieces?|squares|rectangles?|patch(?:es)?|stars?|strips?|borders?|sash(?:es|ing)?|backing|batting|top|from|sew|join|add|into|make)\b/i.test(
    gap,
  );
}

/** Two seam allowances as most sew them, in inches. */
const HALF = rational(1, 2);
/** Less than any two seams are. */
const FEW = rational(1, 3);
/** What differs by more is the size of two things. */
const FAR = rational(3, 2);

function compared(raw: Said, finished: Said, text: Text, state: State): Contradiction[] {
  if (isLenient(raw.sentence) && state === 'cut') return [];
  const [a, b] = [raw.size, finished.size];
  const [from, to] = [a[0], b[0]];
  // "Cut 2" strips; they finish at 1½"": of a strip only the width has both sizes.
  if (!from || !to || from.number.unit !== to.number.unit) return [];
  if (a.length !== b.length && (state !== 'cut' || b.length > 1)) return [];
  const pairs = b.map((side, index) => [a[index], side] as const);
  const seams = seamsFor(text, to);
  const bad = pairs.find(([cut, side]) => cut && !seams.fit(cut.value.sub(side.value)));
  const [cut, side] = bad ?? [];
  if (!cut || !side) return [];
  const more = cut.value.sub(side.value);
  // Cut larger, to be trimmed down later, is no mistake; nor is what is not the size of one thing.
  if (state === 'cut' && more.compare(isMetricLength(side) ? (seams.both ?? FEW) : HALF) > 0) return [];
  if (more.abs().compare(FAR) > 0) return [];
  // Where nobody says how wide a seam is, only what leaves no room for one is wrong.
  if (isMetricLength(side) && !seams.both && more.compare(FEW) > 0) return [];
  return [contradiction(cut, side, state, seams)];
}

function contradiction(raw: Told, finished: Told, state: State, { both, words }: Seams): Contradiction {
  const word = state === 'cut' ? 'cut' : 'unfinished';
  const more = isMetricLength(finished) ? both : HALF;
  const right = more ? writeAs(finished.value.add(more), finished) : 'larger';
  return {
    code: 'sizes-disagree',
    message: `What finishes at ${finished.text} is ${right} ${word} with ${words}, not ${raw.text}.`,
    at: raw,
    against: [{ told: finished, says: `The finished size is ${finished.text} here.` }],
  };
}

/** The one block of the quilt, whose sizes stand in different places. */
function ofTheBlock(text: Text): Contradiction[] {
  if (
    hasSeveralBlocks(text) ||
    /\b(?:trim|square) (?:it |them |each |the )*(?:blocks? )?(?:down|up)\b/i.test(text.words)
  )
    return [];
  const blocks = text.phrases.filter(({ size, count }) => !count && size.length > 0 && isLength(size));
  const finished = finishedBlocks(text).filter(({ size }) => isLength(size));
  const raw = blocks.filter(
    ({ before, behind }) =>
      (/\b(?:(?:each|the|every|your) )?blocks? (?:should|must|will|to) (?:now )?(?:measure|be)\W{0,3}$/i.test(
        before,
      ) &&
        !/\bfinished\b/i.test(behind.slice(0, 30))) ||
      /\bunfinished blocks?(?: size)?\W{0,6}$/i.test(before),
  );
  const [one, other] = [onlyOf(raw), onlyOf(finished)];
  if (!one || !other) return [];
  const found = compared(one, other, text, 'unfinished');
  const [each] = found;
  // What differs by more than an inch is hardly the same block.
  return each &&
    each.at.value
      .sub(each.against[0]?.told.value ?? 0)
      .abs()
      .compare(1) <= 0
    ? found
    : [];
}

function onlyOf(all: readonly Said[]): Said | undefined {
  const [first] = all;
  const key = ({ size }: Said) => size.map(({ value }) => value.toFraction()).join();
  return first && all.every((each) => key(each) === key(first)) ? first : undefined;
}
