/** Another name for a size: in the block, in tags, in the heads of tables, and where sentences speak of the size. */
import type { Pattern } from '../../block/pattern.ts';
import type { Edit, Range } from '../../findings/finding.ts';
import type { Passage } from '../../manuscript/manuscript.ts';
import type { Proof } from '../../proof/proof.ts';
import { type Revision, withoutOverlaps } from '../revision.ts';
import type { SizeChange } from './change.ts';
import { sizedEntries } from './entries.ts';
import { renamed, SizeWords } from './sizeWords.ts';
import { yamlText } from './yamlText.ts';

type Renaming = Extract<SizeChange, { kind: 'rename' }>;

export function renameSize({ manuscript, pattern }: Proof, change: Renaming): Revision {
  const { source } = manuscript;
  const tags = manuscript.passages.flatMap(({ tags }) => tags);
  const inTags = tags.flatMap(({ meaning }): Edit[] =>
    'figures' in meaning && meaning.size === change.name && meaning.sizeRange
      ? [{ ...meaning.sizeRange, text: change.to }]
      : [],
  );
  const words = new SizeWords(pattern.sizes.map(({ name }) => name));
  const edits: Edit[] = [...inBlock(pattern, change), ...inTags];
  const open: Range[] = [];
  for (const passage of manuscript.passages)
    for (const place of namedIn(passage, words, change.name)) {
      if (place.isSure) edits.push(renamedAt(place, source, change));
      else open.push(place);
    }
  const message = `Here “${change.name}” may be another word; see whether it names the size.`;
  return {
    edits: withoutOverlaps(edits),
    open: open.map(({ start, end }) => ({ start, end, message })),
  };
}

function inBlock(pattern: Pattern, { name, to }: Renaming): Edit[] {
  const at = pattern.sizes.findIndex((size) => size.name === name);
  const places = [
    pattern.place(['sizes', at]),
    ...sizedEntries(pattern).flatMap(({ path, value }) =>
      value.form === 'named' && value.keys.includes(name) ? [pattern.keyPlace([...path, name])] : [],
    ),
  ];
  return places.flatMap((range) => (range ? [{ ...range, text: yamlText(to, true) }] : []));
}

/** With the article before it, which may change with the word. */
function renamedAt({ start, end }: Range, source: string, { name, to }: Renaming): Edit {
  const lead = /(?<![\p{L}\p{N}])an?\s+$/iu.exec(source.slice(0, start))?.[0].length ?? 0;
  return { start: start - lead, end, text: renamed(source.slice(start - lead, end), name, to) };
}

/** Words that stand before or behind the name of a size. */
const BEFORE =
  /(?:[(|/,;:–—-]\s*|(?<![\p{L}\p{N}])(?:the|a|an|for|each|every|one|our|your|and|or|your)\s+)$/iu;
const BEHIND = /^(?:\s*[)|/:–—]|\s+(?:sizes?|quilts?|tops?|versions?)(?![\p{L}\p{N}]))/iu;
/** “Throw away” is no size, whatever the sizes are called. */
const VERB = /^\s+(?:away|out|them|it|the|your|in|on|over)(?![\p{L}\p{N}])/iu;

function namedIn(passage: Passage, words: SizeWords, name: string): (Range & { isSure: boolean })[] {
  const { text, context } = passage;
  const isAlone = text.trim().toLowerCase() === name.toLowerCase();
  const isHead = isAlone || context.cell?.row === 0 || context.cell?.column === 0;
  const named = words.in(text);
  return named.flatMap(({ size, start, end }) => {
    if (size !== name) return [];
    const [before, behind] = [text.slice(0, start), text.slice(end)];
    const isAmong = named.some((other) => other.size !== name);
    const isSure = isHead || BEHIND.test(behind) || ((BEFORE.test(before) || isAmong) && !VERB.test(behind));
    const [place, ...more] = passage.toSource(start, end);
    return more.length > 0 ? [] : [{ ...place, isSure }];
  });
}
