/** Rows, list items and sections that stand one for each size. */
import type { Edit, Range } from '../../findings/finding.ts';
import type { Outline } from './outline.ts';
import { type Member, reviseSeries } from './series.ts';
import type { RevisedText } from './text.ts';

export interface SiblingEdits {
  readonly edits: readonly Edit[];
  /** The stretches of the source that these edits take care of. */
  readonly taken: readonly Range[];
}

export function reviseSiblings({ sections, lists, tables }: Outline, text: RevisedText): SiblingEdits {
  const runs = [
    ...sections.map((list) => inOrder(list, text, ({ heading }) => sizeOf(heading, text))),
    ...lists.map((list) => inOrder(list, text, (item) => leadingSize(item, text))),
    ...tables.map(({ rows }) =>
      inOrder(rows.slice(2), text, ({ cells: [first] }) => first && sizeOf(first.inner, text)),
    ),
  ];
  const edits: Edit[] = [];
  const taken: Range[] = [];
  for (const run of runs) {
    const [first, last] = [run?.[0], run?.at(-1)];
    if (!run || !first || !last || taken.some(({ start, end }) => start < last.end && end > first.start))
      continue;
    const { change } = text;
    const model = run.find(({ size }) => change.kind === 'add' && size === change.model);
    const edit = reviseSeries(text.source, run, change, model ? text.copy(model, model.size, false) : '');
    if (edit) edits.push(edit);
    taken.push({ start: first.start, end: last.end });
  }
  return { edits, taken };
}

/** The members that name every size once and in order, one right behind the other. */
function inOrder<T extends Range>(
  siblings: readonly T[],
  { names, proof }: RevisedText,
  sizeOfOne: (sibling: T) => string | undefined,
): Member[] | undefined {
  if (names.length < 2) return undefined;
  const sizes = siblings.map(sizeOfOne);
  const from = sizes.findIndex((_, at) => names.every((name, index) => sizes[at + index] === name));
  if (from < 0) return undefined;
  const members = siblings.slice(from, from + names.length).map(({ start, end }, index) => ({
    start,
    end,
    size: names[index] ?? '',
  }));
  const holdsBlock = proof.manuscript.fences.some(({ start }) =>
    members.some((member) => member.start <= start && start < member.end),
  );
  return holdsBlock ? undefined : members;
}

function sizeOf({ start, end }: Range, { words, shown }: RevisedText): string | undefined {
  return words.only(shown.slice(start, end));
}

const LEAD = /^(?:[-*+]|\d+[.)])?[\s*_[\]x]*(?:(?:for\s+)?the\s+)?$/i;

function leadingSize({ start, end }: Range, { words, shown }: RevisedText): string | undefined {
  const item = shown.slice(start, end);
  const [first] = words.in(item);
  return first && LEAD.test(item.slice(0, first.start)) ? first.size : undefined;
}
