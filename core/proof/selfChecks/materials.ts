/** Yardage against the strips cut from the fabric, and against the exact need beside it. */
import { type Rational, ZERO } from '../../quantity/rational.ts';
import { writeInches } from '../../quantity/show.ts';
import { INCHES_PER } from '../../quantity/units.ts';
import type { Contradiction } from './contradiction.ts';
import { isLenient, type Said, type SaidLine, type Text, type Told } from './said.ts';

export function materials(text: Text): Contradiction[] {
  return [...exactNeeds(text), ...cuttingLists(text)];
}

function isYardage(told: Told | undefined): boolean {
  return told?.number.unit === 'yd' || told?.number.unit === 'm';
}

/** "1⅛ yards (37" exactly)". */
function exactNeeds({ phrases }: Text): Contradiction[] {
  return phrases.flatMap(({ size, behind, line, phrase }, index) => {
    const [yards, more] = size;
    const next = phrases[index + 1];
    const [exact, other] = next?.size ?? [];
    if (!yards || more || !isYardage(yards) || !next || !exact || other || next.line !== line) return [];
    const isExact =
      /^[^.;()]{0,12}\(\s*(?:exactly )?$/i.test(behind) &&
      /^["”″]?\s*(?:exactly|exact|needed|are needed|is needed)?\s*\)/i.test(next.behind);
    if (!isExact || !/exact|needed/i.test(line.text.slice(phrase.core.end, next.phrase.core.end + 16)))
      return [];
    if (exact.value.compare(yards.value) <= 0) return [];
    return [
      {
        code: 'not-enough' as const,
        message: `${yards.text} is only ${writeInches(yards.value)}, but exactly ${exact.text} are needed.`,
        at: yards,
        against: [{ told: exact, says: `The exact need is ${exact.text} here.` }],
      },
    ];
  });
}

interface CutStrips {
  readonly count: Told;
  readonly width: Told;
}

/** Every list under "From …, cut:" against the one line that says how much of this fabric to buy. */
function cuttingLists(text: Text): Contradiction[] {
  const lists = new Map<string, SaidLine[]>();
  for (const line of text.lines) {
    const name = fabricOf(line);
    if (name) lists.set(name, [...(lists.get(name) ?? []), line]);
  }
  return [...lists].flatMap(([name, lines]) => {
    const yards = yardageOf(name, text);
    const strips = lines.flatMap(({ phrases }) => phrases.flatMap((said) => wholeStrips(said) ?? []));
    if (!yards || strips.length === 0) return [];
    const sum = strips.reduce(
      (all: Rational, { count, width }) => all.add(count.value.mul(width.value)),
      ZERO,
    );
    if (sum.compare(yards.value) <= 0) return [];
    const working = strips
      .map(({ count, width }) => `${count.value.toString()} × ${writeInches(width.value)}`)
      .join(' + ');
    return [
      {
        code: 'not-enough' as const,
        message: `${yards.text} is ${writeInches(yards.value)} of fabric, but the strips cut from it take ${strips.length > 1 || !strips[0]?.count.value.equals(1) ? `${working} = ` : ''}${writeInches(sum)}.`,
        at: yards,
        against: strips.map(({ count, width }) => ({
          told: count,
          says: `${count.text} strips of ${width.text} are cut from it here.`,
        })),
      },
    ];
  });
}

const UNSURE = /\b(?:remain\w*|scraps?|each|and|or|left ?over|assorted|fat|rest|both|all)\b|[&,/+]/i;

/** The fabric that the nearest lead-in names, in small letters. */
function fabricOf({ line }: SaidLine): string | undefined {
  const isItem = line.spots.some(({ number }) => number.passage.context.list.length > 0);
  if (!isItem) return undefined;
  const [near] = line.layers.filter(
    ({ where }) => where === 'lead-in' || where === 'heading' || where === 'list',
  );
  const text = near?.text.replace(/[*_]/g, '').trim() ?? '';
  const letter = /^(?:from )?(?:the )?(?:fabric|colou?r) ([A-Z])\b(?:\s*\([^)]*\))?,?:?\s*(?:cut)?:?$/i.exec(
    text,
  )?.[1];
  if (letter) return `fabric ${letter}`.toLowerCase();
  const name = /^from (?:the )?([\p{L}][\p{L} ’'-]{2,30}?)(?: fabric)?(?:,? cut)?:?$/iu.exec(text)?.[1];
  return name && !UNSURE.test(name) ? name.toLowerCase() : undefined;
}

/** The yardage of the one line outside the cutting list that names this fabric. */
function yardageOf(name: string, { lines }: Text): Told | undefined {
  const word = new RegExp(`(?<![\\p{L}])${name.replace(/[^\p{L} ]/gu, '.')}(?![\\p{L}])`, 'iu');
  const letter = /^fabric ([a-z])$/.exec(name)?.[1]?.toUpperCase();
  const told = lines.flatMap((line) => {
    const isNamed =
      word.test(line.text) ||
      (letter !== undefined && new RegExp(`^${letter}\\b`).test(line.text) && line.line.isRow);
    if (!isNamed) return [];
    const yards = line.phrases.filter(({ size }) => size.length === 1 && isYardage(size[0]));
    return yards.map(({ size }) => ({ size, line }));
  });
  const [only] = told;
  if (told.length !== 1 || !only) return undefined;
  return isLenient(only.line.text) || /\b(?:each|fat|directional|or|wide)\b/i.test(only.line.text)
    ? undefined
    : only.size[0];
}

/** Strips from selvage to selvage: they take their width of the fabric's length, whatever is cut beside them. */
function wholeStrips({ count, size, own, line }: Said): CutStrips | undefined {
  const [width, length] = size;
  if (!count || !width || /\b(?:lengthwise|LOF|parallel|from|each|bias|fabric [A-Z]\b)/i.test(line.text))
    return undefined;
  const isAcross = length
    ? length.value.compare(INCHES_PER.in.mul(36n, 1n)) >= 0 && length.value.compare(46) <= 0
    : /\bWOF\b|width of (?:the )?fabric/i.test(own);
  return isAcross && /\bstrips?\b|\bWOF\b/i.test(own) ? { count, width } : undefined;
}
