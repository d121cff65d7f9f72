/** How many borders there are, as far as the manuscript counts or orders them. */
import { stripWidth } from '../rows/strip.ts';
import type { Text } from '../text.ts';

const COUNTED: readonly RegExp[] = [
  /\b(?:first|1st) border/i,
  /\b(?:second|2nd) border/i,
  /\b(?:third|3rd) border/i,
  /\b(?:fourth|4th) border/i,
];

/**
 * The fabrics of borders that nothing else tells apart, in the order in which the text sews them on; empty where the
 * borders are counted, or where there is one.
 */
export function borderFabrics(text: Text): string[] {
  if (countBorders(text) !== 1) return [];
  const about = text.clauses.filter((clause) => clause.speaksOf('part:border') && stripWidth(clause, text));
  const cut = [...new Set(about.flatMap((clause) => clause.nearest('fabric') ?? []))];
  if (cut.length !== 2) return [];
  const sewn = text.clauses.filter(
    ({ line, speaksOf, says }) => says('state:cut') < 0.6 && speaksOf('part:border') && !line.isRow,
  );
  const order = [...new Set(sewn.flatMap((clause) => clause.nearest('fabric') ?? []))].filter((label) =>
    cut.includes(label),
  );
  return order.length === 2 ? order : cut;
}

export function countBorders({ words }: Text): number {
  if (!/\bborders?\b/i.test(words)) return 0;
  const counted = COUNTED.filter((each) => each.test(words)).length;
  if (counted > 1) return counted;
  const says = (word: string) =>
    new RegExp(`\\b${word}\\b[^.;\\n]{0,24}\\bborder|\\b${word}:`, 'i').test(words);
  const isOrdered = says('inner') && says('outer');
  return isOrdered ? (says('middle') ? 3 : 2) : 1;
}
