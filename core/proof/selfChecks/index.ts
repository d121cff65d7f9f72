/**
 * The manuscript against itself, without any measure block: numbers that contradict each other by the trade's
 * arithmetic. A check speaks only where the words leave no doubt that both numbers are about the same thing; it
 * names both. Which of the two is wrong only the author knows, so it offers a fix only where the house says which one
 * follows from the other.
 */
import type { Pattern } from '../../block/pattern.ts';
import type { Finding } from '../../findings/finding.ts';
import type { Manuscript, ReadNumber } from '../../manuscript/manuscript.ts';
import { readAmounts } from '../../reading/amount.ts';
import { type Line, readLines } from '../../reading/line.ts';
import { readPhrases } from '../../reading/phrase.ts';
import { sizeNames } from '../../reading/sizeNames.ts';
import { binding } from './binding.ts';
import { borders } from './borders.ts';
import { type Contradiction, findingOf, isOfOneSize, numbersOf, saidOfSize } from './contradiction.ts';
import { dualUnits } from './dualUnits.ts';
import { finishedSize } from './finishedSize.ts';
import { labels } from './labels.ts';
import { layers } from './layers.ts';
import { madeUsed } from './madeUsed.ts';
import { materials } from './materials.ts';
import { quiltSize } from './quiltSize.ts';
import { rows } from './rows.ts';
import { type OneSize, saidLine, type Text } from './said.ts';
import { samePiece } from './samePiece.ts';
import { sizesOf } from './severalSizes.ts';
import { strips } from './strips.ts';
import { triangles } from './triangles.ts';
import { wordsAndDigits } from './wordsAndDigits.ts';

export interface Check {
  readonly find: (text: Text) => readonly Contradiction[];
  /** Whether it compares what stands side by side, so that other sizes of the quilt do not matter. */
  readonly isLocal?: true;
}

const CHECKS: readonly Check[] = [
  { find: dualUnits, isLocal: true },
  { find: wordsAndDigits },
  { find: strips },
  { find: triangles },
  { find: rows },
  { find: finishedSize },
  { find: layers },
  { find: binding },
  { find: borders },
  { find: quiltSize },
  { find: materials },
  { find: madeUsed },
  { find: samePiece },
  { find: labels },
];

/**
 * @param isOpen whether nothing else accounts for a number
 * @param isRight whether a number is one that a figure verifies
 * @returns the findings, each with the number that it calls wrong; one at most for a number
 */
export function selfChecks(
  manuscript: Manuscript,
  pattern: Pattern,
  isOpen: (number: ReadNumber) => boolean,
  isRight: (number: ReadNumber) => boolean,
): Map<ReadNumber, Finding> {
  const found = new Map<ReadNumber, Finding>();
  const involved = new Set<ReadNumber>();
  for (const each of contradictions(manuscript, pattern)) {
    const [at, ...against] = numbersOf(each);
    if (!at || !isOpen(at) || !against.every((number) => isOpen(number) || isRight(number))) continue;
    // What one mistake explains is said once.
    if ([at, ...against].some((number) => found.has(number)) || involved.has(at)) continue;
    found.set(at, findingOf(each, manuscript.source));
    for (const number of against) involved.add(number);
  }
  return found;
}

function contradictions(manuscript: Manuscript, pattern: Pattern): Contradiction[] {
  const lines = readLines(manuscript);
  const sizes = sizesOf(lines, pattern);
  const own = textOf(manuscript, lines, pattern);
  const isOne = sizes?.length === 0;
  const beside = CHECKS.filter(({ isLocal }) => isOne || isLocal).flatMap(({ find }) => find(own));
  return [
    ...beside,
    ...(sizes ?? []).flatMap((size) => ofSize(size, sizes ?? [], manuscript, lines, pattern)),
  ];
}

/** What the numbers for one of several sizes contradict, element by element of their lists and tables. */
function ofSize(
  name: string,
  names: readonly string[],
  manuscript: Manuscript,
  lines: readonly Line[],
  pattern: Pattern,
): Contradiction[] {
  const sized = { ...pattern, sizes: names.map((name, index) => ({ name, index })) };
  const text = textOf(manuscript, lines, sized, { name, in: sizeNames(sized).in });
  return CHECKS.filter(({ isLocal }) => !isLocal)
    .flatMap(({ find }) => find(text))
    .filter(isOfOneSize)
    .map((each) => saidOfSize(each, name));
}

function textOf(manuscript: Manuscript, from: readonly Line[], pattern: Pattern, size?: OneSize): Text {
  const sizes = sizeNames(pattern);
  const lines = from.map((line) => {
    const amounts = readAmounts(line, pattern, sizes);
    return saidLine(line, amounts, readPhrases(line, amounts), size);
  });
  return {
    manuscript,
    house: pattern.house,
    lines,
    phrases: lines.flatMap(({ phrases }) => phrases),
    words: lines.map(({ text }) => text).join('\n'),
  };
}
