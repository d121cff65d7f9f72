/** The names of the sizes: from the heads of tables, or from a list that announces them. */
import type { Range } from '../../findings/finding.ts';
import type { Manuscript, Passage } from '../../manuscript/manuscript.ts';

export interface Named<T> extends Range {
  readonly names: T;
}

/** Words that name sizes of quilts, as the trade uses them (common practice). */
const SIZE_WORDS =
  /^(?:mini|crib|cot|baby|toddler|child|lap|throw|sofa|single|twin|full|double|queen|king|wall|runner|table|small|medium|large|(?:small|large|medium) set|stool|chair)$/i;

/** `sizes: small (medium, large)`, `three sizes: lap, twin and queen`, `in a lap, a twin and a queen size`. */
const LISTS: readonly RegExp[] = [
  /\bsizes?\b[^.;:\n]{0,60}:\s*(?<list>[\p{L} ]+(?:[ ,(]+(?:and )?[\p{L} ]+){1,4}\)?)/iu,
  /\bgiven (?:as|for|in) (?<list>[\p{L}]+ \([\p{L} ,]+\))/iu,
  /\bin (?:a |an )?(?<list>[\p{L}]+(?:, (?:a |an )?[\p{L}]+)*,? (?:and|or) (?:a |an )?[\p{L}]+) sizes?\b/iu,
];

export function findSizes({ passages }: Manuscript): Named<string[]> | undefined {
  return fromColumns(passages) ?? fromLists(passages);
}

function fromColumns(passages: readonly Passage[]): Named<string[]> | undefined {
  const heads = passages.filter(({ context: { cell } }) => cell?.row === 0);
  for (const [at, head] of heads.entries()) {
    if (head.context.cell?.column !== 0) continue;
    const row = [head];
    for (const next of heads.slice(at + 1)) {
      if (next.context.cell?.column === 0) break;
      row.push(next);
    }
    const sizes = row.filter(({ text }) => SIZE_WORDS.test(text.trim()));
    const [first] = sizes;
    if (first && sizes.length > 1)
      return {
        names: sizes.map(({ text }) => text.trim().toLowerCase()),
        ...rangeOf(first, 0, first.text.length),
      };
  }
  return undefined;
}

function fromLists(passages: readonly Passage[]): Named<string[]> | undefined {
  for (const passage of passages)
    for (const list of LISTS) {
      const match = list.exec(passage.text);
      const names = (match?.groups?.list ?? '')
        .split(/[,()]|\band\b|\bor\b/)
        .map((name) =>
          name
            .replace(/\b(?:a|an|the|sizes?)\b/gi, '')
            .trim()
            .toLowerCase(),
        )
        .filter((name) => name !== '');
      if (!match || names.length < 2 || !names.every((name) => SIZE_WORDS.test(name))) continue;
      return { names, ...rangeOf(passage, match.index, match.index + match[0].length) };
    }
  return undefined;
}

export function rangeOf(passage: Passage, from: number, to: number): Range {
  const ranges = passage.toSource(from, to);
  return { start: ranges[0].start, end: ranges.at(-1)?.end ?? ranges[0].end };
}
