/** Units that are made against the units that all blocks together use. */
import { partialPattern } from '../../reading/lexicon/partialWords.ts';
import { soleTotalOfBlocks } from './blocks.ts';
import type { Contradiction } from './contradiction.ts';
import type { Said, Text, Told } from './said.ts';

const NOUNS: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['half-square triangles', /^(?:HSTs?|half[- ]square[- ]triangles?|triangle[- ]squares?)(?: units?)?\b/i],
  ['flying geese', /^(?:flying[- ])?(?:geese|goose)(?: units?)?\b/i],
  ['four-patches', /^four[- ]patch(?:es)?(?: units?)?\b/i],
  ['nine-patches', /^nine[- ]patch(?:es)?(?: units?)?\b/i],
  ['hourglass units', /^(?:hourglass(?:es)?|quarter[- ]square[- ]triangle units?|QSTs?)(?: units?)?\b/i],
  ['pinwheels', /^pinwheels?(?: units?)?\b/i],
  ['units', /^units?\b(?! [A-Z\d])/i],
];
/** Where units are made set by set, a number may be that of one set. */
const IN_SETS = partialPattern(['set by set', 'each time']);
/** Words of colour may stand before the name of a unit, but then others may have another colour. */
const PLAIN = /^["”″)]?\s*$/;
const MADE =
  /\b(?:make|makes|making|for a total of|total of|you (?:will |should )?(?:need|have))\s*(?:a total of )?\(?$/i;
const PER_BLOCK =
  /\b(?:(?:each|every|one|per) block (?:uses|needs|takes|has)|for (?:each|every|one) block,? (?:you need|use|take|lay out|arrange|join|sew)|to make (?:one|each|a) block,? (?:you need|use|take|lay out|arrange|join|sew))[^.;\d]{0,40}$/i;
const MORE = partialPattern(['a part', 'one of several', 'left over'], 'borders?', 'blue', 'red');

export function madeUsed(text: Text): Contradiction[] {
  const blocks = soleTotalOfBlocks(text);
  if (!blocks || IN_SETS.test(text.words)) return [];
  return NOUNS.flatMap(([name, noun]) => {
    const all = text.phrases.filter(
      (said) => said.count && said.size.length === 0 && noun.test(nounBehind(said)),
    );
    const made = onlyOf(
      all.filter(
        (said) => MADE.test(said.before) && !PER_BLOCK.test(said.before) && !/\bblock\b/i.test(said.sentence),
      ),
    );
    const used = onlyOf(
      all.filter(
        ({ before, sentence, phrase }) =>
          PER_BLOCK.test(sentence.slice(0, phrase.core.start - phrase.sentence.start)) && !MORE.test(before),
      ),
    );
    if (!made || !used || isMadeInColours(text, noun) || made.number === used.number) return [];
    const need = used.value.mul(blocks.value);
    if (made.value.compare(need) >= 0) return [];
    return [
      {
        code: 'counts-disagree' as const,
        message: `${made.text} ${name} are made, but ${blocks.text} blocks with ${used.text} each use ${need.toString()}.`,
        at: made,
        against: [
          { told: used, says: `Each block uses ${used.text} here.` },
          { told: blocks, says: `There are ${blocks.text} blocks here.` },
        ],
      },
    ];
  });
}

/** Whether some are made of other colours, which the blocks take too: "Make 24 blue HSTs". */
function isMadeInColours({ phrases }: Text, noun: RegExp): boolean {
  const coloured = new RegExp(`^["”″)]?\\s*(?:[\\p{L}’'/-]+ ){1,3}?${noun.source.slice(1)}`, 'iu');
  return phrases.some(
    ({ count, before, line, phrase }) =>
      count && MADE.test(before) && coloured.test(line.text.slice(phrase.core.end)),
  );
}

function nounBehind({ line, phrase }: Said): string {
  const behind = line.text.slice(phrase.core.end);
  const gap = /^["”″)]?\s*/.exec(behind)?.[0] ?? '';
  return PLAIN.test(gap) ? behind.slice(gap.length) : '';
}

function onlyOf(all: readonly Said[]): Told | undefined {
  const [first] = all;
  return all.length === 1 ? first?.count : undefined;
}
