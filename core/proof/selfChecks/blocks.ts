/** The blocks of a quilt with one kind of block, as far as the manuscript leaves no doubt. */
import { partialWords } from '../../reading/lexicon/partialWords.ts';
import { wholeWords } from '../../reading/wholeWords.ts';
import type { Said, Text, Told } from './said.ts';

const IDLE = new Set(
  'the each of a an per quilt finished unfinished same all these those and make made your every one total quilted sewn completed complete whole more any both other next first second last following in for into with from two three four five six seven eight nine ten twelve sixteen twenty pieced patchwork this that'.split(
    ' ',
  ),
);
/** Blocks of a second kind, or blocks that are not in the rows. */
const OTHERS = wholeWords(
  `(?:alternat\\w+|spare|extra|${partialWords('another kind', 'another thing')}) (?:blocks?|squares)|blocks? [A-Z1-9]`,
  'iu',
);

/** Whether the blocks are of several kinds, so that a number of blocks may be of one of them. */
export function hasSeveralBlocks({ words }: Text): boolean {
  if (OTHERS.test(words)) return true;
  const kinds = new Set(
    [...words.matchAll(/([\p{L}’'-]+) blocks?\b/giu)]
      .map(([, word = '']) => word.toLowerCase())
      .filter((word) => !IDLE.has(word) && !/\d|ing$/.test(word)),
  );
  return kinds.size > 1;
}

const FINISHED =
  /\b(?:finished blocks?(?: size)?|block size \(?finished\)?|blocks? finish(?:es)?(?: at)?|finished size of (?:the|each) block)\W{0,6}$/i;

/** Phrases that tell the finished size of a block. */
export function finishedBlocks({ phrases }: Text): Said[] {
  return phrases.filter(
    ({ size, count, before, behind }) =>
      !count && size.length > 0 && FINISHED.test(before) && !/^[^.;\d]{0,16}\bunfinished/i.test(behind),
  );
}

/** The finished side of the one square block. */
export function finishedBlock(text: Text): Told | undefined {
  const all = finishedBlocks(text);
  const [first] = all[0]?.size ?? [];
  const isOne = all.every(({ size }) => size.every(({ value }) => first && value.equals(first.value)));
  return isOne ? first : undefined;
}

/** The one number of blocks that the manuscript makes. */
export function soleTotalOfBlocks(text: Text): Told | undefined {
  if (hasSeveralBlocks(text)) return undefined;
  const totals = text.phrases.flatMap(({ count, size, line, phrase }) => {
    if (!count || size.length > 0) return [];
    const before = line.text.slice(Math.max(0, phrase.core.start - 40), phrase.core.start);
    const behind = line.text.slice(phrase.core.end);
    const isMade =
      /\b(?:make|makes|making|total of|you need|you will need|need|should have|takes|of all)\s*(?:a total of |all )?\(?$/i.test(
        before,
      );
    if (!isMade || !/^\)?\s*(?:[\p{L}’'-]+ ){0,2}?blocks\b/iu.test(behind)) return [];
    return [count];
  });
  const [first] = totals;
  return first && totals.every(({ value }) => value.equals(first.value)) ? first : undefined;
}
