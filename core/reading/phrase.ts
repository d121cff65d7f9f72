/** Phrases: a count, the size of what it counts, and the words that belong to both. */
import type { Amount } from './amount.ts';
import { CELL_BREAK, type Line } from './line.ts';

export interface Phrase {
  readonly count: Amount | undefined;
  readonly size: Amount | undefined;
  /** From the first word that belongs to it to the last, in the line's text. */
  readonly start: number;
  readonly end: number;
  /** Its amounts and all between them. */
  readonly core: { readonly start: number; readonly end: number };
  /** The sentence around it. */
  readonly sentence: { readonly start: number; readonly end: number };
}

/** Between a count and its size: words of kind and colour, signs, no verb. */
const COUNT_TO_SIZE =
  /^[\s)\]]*(?:[-–—:,@×x]|of|at|each|pieces?|cut|to|measuring|that are|which are|\((?=\s*$)|\p{L}[\p{L}’'-]*|\s|\)){0,9}[\s([]*$/iu;
const VERB =
  /\b(?:and|sew|join|trim|press|make|sub-?cut|cut them|from|for|into|then|to make|or|if|with|is|are|should|measures?|gives?|finish(?:es)?|totals?|until|so|by|per|on|in|need|takes?)\b|[.;:!?]\s/i;
/** A comma may stand between count and size when the size has no noun of its own: (2) pieces, each 64" long. */
const COMMA = /,(?!\s*(?:each|cut|all|measuring|both)?\s*[(]?$)/;
/** Where the words behind one amount end, and those before the next begin. */
const DIVIDE =
  /[,;:]\s|[.!?]["”)]?\s+(?=["“(]?[\p{Lu}\d(])|\n(?=[^\n]*:)|\s(?:and(?! (?:the )?bottom)|then|plus|or|while|but)\s|(?<=\brows?)\sof\s|\s(?:uses?|takes?|contains?)\s|\s[–—|]\s|--|—/gu;

export function readPhrases(line: Line, amounts: readonly Amount[]): Phrase[] {
  const groups = grouped(line.text, amounts);
  const sentences = sentencesOf(line.text);
  return groups.map((group, index) => {
    const core = span(group);
    const before = groups[index - 1];
    const next = groups[index + 1];
    const sentence = sentences.find(({ end }) => end > core.start) ?? { start: 0, end: line.text.length };
    const from = before ? divide(line.text, span(before).end, core.start) : 0;
    const to = next ? divide(line.text, core.end, span(next).start) : clauseEnd(line.text, core.end);
    return {
      ...group,
      core,
      sentence,
      start: Math.max(from, sentence.start),
      end: Math.min(to, Math.max(sentence.end, core.end)),
    };
  });
}

/** Behind the last amount, its clause ends at a semicolon. */
function clauseEnd(text: string, from: number): number {
  const end = text.indexOf(';', from);
  return end < 0 ? text.length : end;
}

type Group = Pick<Phrase, 'count' | 'size'>;

function span({ count, size }: Group): { start: number; end: number } {
  const both = [count, size].filter((amount) => amount !== undefined);
  return {
    start: Math.min(...both.map(({ start }) => start)),
    end: Math.max(...both.map(({ end }) => end)),
  };
}

function grouped(text: string, amounts: readonly Amount[]): Group[] {
  const groups: Group[] = [];
  for (let at = 0; at < amounts.length; at++) {
    const [amount, next] = [amounts[at] as Amount, amounts[at + 1]];
    if (
      next &&
      isCount(amount) &&
      !isCount(next) &&
      joins(text.slice(amount.end, next.start), text.slice(next.end))
    ) {
      groups.push({ count: amount, size: next });
      at++;
    } else if (
      next &&
      !isCount(amount) &&
      isCount(next) &&
      /^[^.;]{0,40}\s\|\s$/.test(text.slice(amount.end, next.start)) &&
      !headsOwnColumn(next)
    ) {
      // In a table the size often stands before the count.
      groups.push({ count: next, size: amount });
      at++;
    } else
      groups.push(isCount(amount) ? { count: amount, size: undefined } : { count: undefined, size: amount });
  }
  return groups;
}

/** Whether the head of its column says what is counted: "blocks" beside a column "finished". */
function headsOwnColumn({ sides: [side] }: Amount): boolean {
  return /\b(?:blocks?|strips?|squares?|triangles?|units?|rows?|panels?)\b/i.test(
    side.spots[0]?.column ?? '',
  );
}

export function isCount({ sides, isGrid }: Amount): boolean {
  const [side] = sides;
  return !isGrid && sides.length === 1 && side.spots.every(({ number }) => number.kind === 'count');
}

function joins(gap: string, behind: string): boolean {
  if (gap.length > 60) return false;
  const flat = gap.replace(/\n/g, ' ');
  if (flat === CELL_BREAK) return true;
  if (flat.includes(CELL_BREAK)) return /^[^.;|]*\|\s$/.test(flat);
  return (
    !isAnotherCut(flat, behind) &&
    COUNT_TO_SIZE.test(flat) &&
    !VERB.test(flat.replace(/\b(?:by|x) *$/i, '')) &&
    (!COMMA.test(flat) || isLast(flat, behind))
  );
}

/** "Join the six strips, cut 64½" pieces for the sides": what is cut of them has a noun of its own. */
function isAnotherCut(gap: string, behind: string): boolean {
  return (
    /,\s*cut\s*[(]?$/i.test(gap) &&
    /^["”″]?[)\s]*(?:long |wide )?(?:pieces?|strips?|lengths?|panels?|borders?|squares?|rectangles?)\b/.test(
      behind,
    )
  );
}

/** "(2) fruit squares, 3½"": the size closes the item. */
function isLast(gap: string, behind: string): boolean {
  return /^[^,]*, ?$/.test(gap) && /^["”″)]?\s*(?:$|[.;]|\n|(?:wide|long|square|each)\b)/.test(behind);
}

/** Where between two groups the words change sides: at the first sign that something new begins. */
function divide(text: string, from: number, to: number): number {
  const gap = text.slice(from, to);
  // "… 2⅜ yd. Green, ¾ yd": a list names each item before a comma.
  if (LABELLED.test(gap)) return from;
  DIVIDE.lastIndex = 0;
  const match = DIVIDE.exec(gap);
  if (match) return from + match.index + (match[0].length > 1 ? 1 : 0);
  return to;
}

const LABELLED = /^[.;]?\s+\p{Lu}[\p{L} ]{0,30}, $/u;

const ABBREVIATION =
  /(?:\b(?:approx|e\.g|i\.e|etc|fig|no|vs|in|yd|yds|cm|ft|st|dr|mrs?|incl)|^\s*\d{1,2})\.$/i;

export function sentencesOf(text: string): { start: number; end: number }[] {
  const sentences: { start: number; end: number }[] = [];
  let start = 0;
  for (const match of text.matchAll(/[.!?]["”’)]*(?=\s+["“(*]?[\p{Lu}\d(½¼¾])|\n(?=[^\n]{0,40}:)/gu)) {
    const end = match.index + match[0].length;
    if (ABBREVIATION.test(text.slice(start, end))) continue;
    sentences.push({ start, end });
    start = end;
  }
  sentences.push({ start, end: text.length });
  return sentences;
}
