/** The rows of the draft: for each entry of the block, from which words it is taken and how it is written. */
import type { BlockPath } from '../block/place.ts';
import type { Range } from '../findings/finding.ts';
import type { Clause, Text, Told } from './text.ts';
import { writeTold } from './write.ts';

/** What a sentence says of one entry. */
export interface Claim {
  readonly at: Range;
  /** As the block writes it. */
  readonly text: string;
  /** Of several claims only the plainest count; 1 unless the row tells otherwise. */
  readonly plainness: number;
}

export interface Row {
  readonly path: BlockPath;
  /** In the words of an author: `the seam allowance`. */
  readonly title: string;
  find(text: Text): readonly Claim[];
  /** A manuscript that says it, what the block then holds, and the likest one that does not say it. */
  readonly example: string;
  readonly gives: string;
  readonly counterexample: string;
}

/** What stands in the block: one claim and all that agree with it. */
export interface Fact {
  readonly path: BlockPath;
  readonly title: string;
  readonly text: string;
  /** The places that say so, in reading order. */
  readonly from: readonly Range[];
}

/** An entry that is left out, because the places differ. */
export interface Gap {
  readonly path: BlockPath;
  readonly title: string;
  /** One sentence for the author. */
  readonly message: string;
  readonly places: readonly (Range & { readonly says: string })[];
}

type Picker = (clause: Clause, text: Text) => Told | undefined;

/** Claims of the clauses for which `pick` finds a value. */
export function claims(pick: Picker, plainness: (clause: Clause) => number = () => 1): Row['find'] {
  return (text) =>
    text.clauses.flatMap((clause) => {
      const told = pick(clause, text);
      if (!told) return [];
      const { start, end } = told;
      return [{ at: { start, end }, text: writeTold(told, text.pattern), plainness: plainness(clause) }];
    });
}

/** Claims of words that stand for a choice: the first row of `choices` that a sentence fits. */
export function choice(choices: readonly (readonly [text: string, words: RegExp])[]): Row['find'] {
  return ({ manuscript: { passages } }) =>
    passages.flatMap((passage) =>
      choices.flatMap(([text, words]) => {
        const match = words.exec(passage.text);
        if (!match) return [];
        const ranges = passage.toSource(match.index, match.index + match[0].length);
        const at = { start: ranges[0].start, end: ranges.at(-1)?.end ?? ranges[0].end };
        return [{ at, text, plainness: 1 }];
      }),
    );
}

/** One fact where all of the plainest claims agree, a gap where they differ, nothing where there is none. */
export function settle(row: Pick<Row, 'path' | 'title'>, all: readonly Claim[]): Fact | Gap | undefined {
  const plainest = Math.max(...all.map(({ plainness }) => plainness));
  const counted = all.filter(({ plainness }) => plainness === plainest);
  const [first] = counted;
  if (!first) return undefined;
  const { path, title } = row;
  const other = counted.find(({ text }) => text !== first.text);
  if (!other)
    return {
      path,
      title,
      text: first.text,
      from: all.filter(({ text }) => text === first.text).map(({ at }) => at),
    };
  return {
    path,
    title,
    message: `The manuscript tells ${title} twice, as ${first.text} and as ${other.text}.`,
    places: [first, other].map(({ at, text }) => ({ ...at, says: `Here it is ${text}.` })),
  };
}
