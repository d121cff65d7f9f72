/** The edits at sentences that name the sizes without numbers: “in a lap, a twin and a queen size”. */
import type { Edit, Range } from '../../findings/finding.ts';
import { sameCase } from '../../quantity/nouns.ts';
import { rearranged } from './change.ts';
import { type Member, reviseSeries, rewriteSeries } from './series.ts';
import { type NamedSize, renamed } from './sizeWords.ts';
import type { RevisedText } from './text.ts';

const ARTICLE = '(?:for )?(?:a|an|the|one|our|for) ';
const BETWEEN = new RegExp(
  `^(?: sizes?| quilts?)?(?:,(?: (?:and|or))?\\s+|\\s+(?:and|or|&)\\s+|\\s*\\/\\s*)(${ARTICLE})?$`,
  'i',
);
const BEFORE = new RegExp(`(?<![\\p{L}\\p{N}])${ARTICLE}$`, 'iu');
/** Sentences that say in which order numbers are listed name every size in its place. */
const EXPLAINS =
  /\b(?:first|brackets?|parenthes[ei]s|in (?:this|that|the same) order|left to right|slash(?:es)?)\b/i;

export interface NameEdits {
  readonly edits: readonly Edit[];
  /** Sentences about the sizes that only their author can revise. */
  readonly open: readonly Range[];
}

/** @param taken stretches of the source that were revised already */
export function reviseNames(stretch: Range, text: RevisedText, taken: readonly Range[]): NameEdits {
  const edits: Edit[] = [];
  const open: Range[] = [];
  for (const sentence of sentencesOf(stretch, text.shown)) {
    if (taken.some(({ start, end }) => start < sentence.end && end > sentence.start)) continue;
    const found = reviseSentence(sentence, text);
    edits.push(...found.edits);
    open.push(...found.open);
  }
  return { edits, open };
}

function sentencesOf({ start, end }: Range, shown: string): Range[] {
  const breaks = [...shown.slice(start, end).matchAll(/[.!?](?=\s|$)/g)].map(({ index }) => start + index);
  const ends = [...breaks, end].filter((at, index, all) => at !== all[index - 1]);
  return ends.map((at, index) => ({ start: index === 0 ? start : (ends[index - 1] ?? start) + 1, end: at }));
}

function reviseSentence(sentence: Range, text: RevisedText): NameEdits {
  const { change, names, shown } = text;
  const said = shown.slice(sentence.start, sentence.end);
  const named = text.words
    .in(said)
    .map(({ size, start, end }) => ({ size, start: start + sentence.start, end: end + sentence.start }));
  if (named.length === 0) return { edits: [], open: [] };
  const runs = runsOf(named, sentence, shown);
  const whole = runs.filter((run) => run.length === names.length && isInOrder(run, names));
  if (whole.length > 0) return { edits: whole.flatMap((run) => runEdits(run, text)), open: [] };
  const isEach = named.length === names.length && isInOrder(named, names);
  if (isEach && EXPLAINS.test(said)) return { edits: explained(named, runs, text), open: [] };
  if (change.kind === 'drop') {
    const holding = runs.filter((run) => run.length > 1 && run.some(({ size }) => size === change.name));
    const left = named.filter(({ size }) => size === change.name).length - holding.length;
    return { edits: holding.flatMap((run) => runEdits(run, text)), open: left > 0 ? [sentence] : [] };
  }
  const isAll = names.length > 1 && names.every((name) => named.some(({ size }) => size === name));
  if (!isAll) return { edits: [], open: [] };
  if (change.kind !== 'add') return { edits: [], open: [sentence] };
  return { edits: [{ start: sentence.end, end: sentence.end, text: ` ${text.gap}` }], open: [] };
}

function isInOrder(run: readonly NamedSize[], names: readonly string[]): boolean {
  return run.every(({ size }, index) => size === names[index]);
}

/** Names that nothing but a joiner stands between, each with its article. */
function runsOf(named: readonly NamedSize[], sentence: Range, shown: string): Member[][] {
  const runs: Member[][] = [];
  for (const [index, name] of named.entries()) {
    const before = named[index - 1];
    const between = before && BETWEEN.exec(shown.slice(before.end, name.start));
    if (between) {
      runs.at(-1)?.push({ ...name, start: name.start - (between[1]?.length ?? 0) });
      continue;
    }
    const follows = named[index + 1];
    const next = follows && BETWEEN.exec(shown.slice(name.end, follows.start));
    const lead = next?.[1] ? (BEFORE.exec(shown.slice(sentence.start, name.start))?.[0].length ?? 0) : 0;
    runs.push([{ ...name, start: name.start - lead }]);
  }
  return runs;
}

function runEdits(run: readonly Member[], text: RevisedText): Edit[] {
  const { change } = text;
  const model = run.find(({ size }) => change.kind === 'add' && size === change.model) ?? run.at(-1);
  const edit = reviseSeries(text.source, run, change, model ? text.copy(model, model.size, true) : '');
  const now = rearranged(
    run.map(({ size }) => size),
    change,
  );
  return edit ? [edit, ...agreement(run.length, now.length, run.at(-1)?.end ?? 0, text)] : [];
}

/** “Twin and queen follow”, but “twin follows”. */
const VERBS: Readonly<Record<string, string>> = {
  follow: 'follows',
  are: 'is',
  come: 'comes',
  have: 'has',
  take: 'takes',
};
const VERB = /^\s+(\p{L}+)/u;

function agreement(were: number, are: number, end: number, { shown }: RevisedText): Edit[] {
  const match = VERB.exec(shown.slice(end, end + 20));
  const word = match?.[1] ?? '';
  const [many, one] = Object.entries(VERBS).find((forms) => forms.includes(word)) ?? [];
  if (!match || many === undefined || one === undefined || are > 1 === were > 1) return [];
  const start = end + match[0].length - word.length;
  return [{ start, end: start + word.length, text: are > 1 ? many : one }];
}

/** Each place keeps its words, and names the size that then stands there. */
function explained(named: readonly NamedSize[], runs: readonly Member[][], text: RevisedText): Edit[] {
  const { change, names, source } = text;
  const order = rearranged(names, change);
  const last = withLead(runs.at(-1) ?? [], text);
  const kept = named.length - last.length;
  const edits = named.slice(0, kept).flatMap(({ size, start, end }, index): Edit[] => {
    const now = order[index] ?? size;
    return now === size ? [] : [{ start, end, text: sameCase(source.slice(start, end), now) }];
  });
  const texts = order.slice(kept).map((now, index) => {
    const { size, start, end } = last[index] ?? last.at(-1) ?? { size: '', start: 0, end: 0 };
    return renamed(source.slice(start, end), size, now);
  });
  const edit = rewriteSeries(source, last, texts, ' and ');
  return edit
    ? [...edits, edit, ...agreement(last.length, texts.length, last.at(-1)?.end ?? 0, text)]
    : edits;
}

/** One name has no other beside it that shows whether its article belongs to it. */
function withLead(run: readonly Member[], { shown }: RevisedText): readonly Member[] {
  const [only, ...others] = run;
  if (!only || others.length > 0) return run;
  return [{ ...only, start: only.start - (BEFORE.exec(shown.slice(0, only.start))?.[0].length ?? 0) }];
}
