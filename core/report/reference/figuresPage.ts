/** The page of all figures, written from the ledgers of the example patterns. */
import { ENTRIES } from '../../block/entries/index.ts';
import type { Entry } from '../../block/entry.ts';
import type { Pattern } from '../../block/pattern.ts';
import type { Figure, FigureRule } from '../../figures/figure.ts';
import type { Ledger } from '../../figures/ledger.ts';
import { proofread } from '../../proof/proofread.ts';
import { plain } from '../plainMarkdown.ts';
import { EXAMPLE_PATTERNS, useOfExamples } from './examplePatterns.ts';
import { anchor, capitalised, code, fenced, type Page, page, table } from './markdown.ts';

const INTRODUCTION = `\
A figure is one thing that a pattern fixes: a size, a count, a length to cut or to buy. Each has a name, and by that
name a number of the manuscript is tied to it:`;

const TYING = `\
The comment behind the number is a tag. It is not printed. Where the pattern has several sizes, the tag names the one
that is meant, \`<!-- = binding.strips @ throw -->\`, unless a table or a list of sizes tells it. One tag can tie both
numbers of a size: \`36" × 48" <!-- = finished.width x finished.length -->\`.

A figure with **exactly** allows no other number. A figure with **at least** says what one must cut or buy, so a
larger number is right as well; what is well above it is worth a hint. Where a number had to be rounded, the working
says so.

The names below are real: they come from the example patterns at the end of this page, from the first one where no
other is named. Where a figure's name holds the name of a block, a piece or a fabric, yours stands in its place, and
where it holds a number, parts and borders are counted in the order of the measure block.`;

const RULES: Readonly<Record<FigureRule, string>> = { exact: 'exactly', 'at least': 'at least' };

/** Titles of groups that are not called like an entry. */
const TITLES: Readonly<Record<string, string>> = {
  unfinished: 'The top before it is bound',
  block: 'Blocks',
  unit: 'The units of a block',
  piece: 'Pieces',
  centre: 'The centre: the blocks without borders',
  setting: 'Setting triangles, on point',
  border: 'Borders',
  fabric: 'Fabrics',
  figures: 'Figures of your own',
};

/** The group of the author's own figures, whose names have no dot. */
const OWN = 'figures';

interface Example {
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  readonly figure: Figure;
  /** Whether it comes from the first of the example patterns. */
  readonly isFirst: boolean;
}

export function figuresPage(): Page {
  const proofs = EXAMPLE_PATTERNS.map((source) => proofread({ source, use: useOfExamples }));
  const groups = grouped(
    proofs.flatMap(({ pattern, ledger }, index) =>
      ledger.ids.flatMap((id) => {
        const figure = ledger.figure(id);
        return figure ? [{ pattern, ledger, figure, isFirst: index === 0 }] : [];
      }),
    ),
  );
  return page(
    'figures.md',
    '# Figures',
    INTRODUCTION,
    fenced('markdown', 'Cut 7 <!-- = binding.strips --> strips for the binding.'),
    TYING,
    [...groups.keys()].map((group) => `- [${title(group)}](#${anchor(title(group))})`).join('\n'),
    ...[...groups].flatMap(([group, examples]) => section(group, examples)),
    '## The example patterns',
    ...proofs.flatMap(({ pattern, manuscript }) => [
      `### ${nameOf(pattern)}`,
      fenced('markdown', manuscript.source),
    ]),
  );
}

/** Each figure once, by the first part of its name; the second block of a pattern has no figures of its own kind. */
function grouped(examples: readonly Example[]): Map<string, Example[]> {
  const groups = new Map<string, Example[]>();
  const seen = new Set<string>();
  for (const example of examples) {
    const { figure, pattern } = example;
    const kind = withoutNames(figure.id, pattern);
    if (seen.has(kind)) continue;
    seen.add(kind);
    const group = figure.id.includes('.') ? (figure.id.split('.')[0] ?? OWN) : OWN;
    groups.set(group, [...(groups.get(group) ?? []), example]);
  }
  return groups;
}

/** What two figures have in common that differ in the author's names and in numbers only. */
function withoutNames(id: string, { entries }: Pattern): string {
  const names = Object.entries<Entry<unknown>>(ENTRIES).flatMap(([key, { form }]) =>
    form === 'many' ? Object.keys(entries[key as keyof typeof entries] ?? {}) : [],
  );
  const pieces = Object.values(entries.blocks ?? {}).flatMap(({ of = [] }) =>
    of.flatMap((part) => ('piece' in part ? [part.piece] : [])),
  );
  const isName = (step: string) => names.includes(step) || pieces.includes(step) || /^\d[\d /]*$/.test(step);
  return id
    .split('.')
    .map((step) => (isName(step) ? '…' : step))
    .join('.');
}

function section(group: string, examples: readonly Example[]): string[] {
  const summary = (ENTRIES as Readonly<Record<string, Entry<unknown>>>)[group]?.summary;
  return [
    `## ${title(group)}`,
    ...(summary === undefined ? [] : [plain(summary)]),
    table(['Figure', 'What it is', 'For example', 'Working'], examples.map(row)),
  ];
}

function row({ pattern, ledger, figure, isFirst }: Example): string[] {
  const values = [...figure.values];
  const [first] = values;
  const differs = new Set(values.map(([, value]) => ledger.show.figure(value, figure.kind))).size > 1;
  const shown = (differs ? values : values.slice(0, 1)).map(([size, value]) =>
    [differs ? size : '', ledger.show.figure(value, figure.kind)].filter(Boolean).join(' '),
  );
  const where = isFirst ? '' : `\nin ${nameOf(pattern)}`;
  return [
    code(figure.id),
    plain(figure.title),
    plain(`${RULES[figure.rule]} ${shown.join(', ')}`) + where,
    [differs ? `For ${first?.[0]}:` : '', ...(first?.[1].working ?? []).map(plain)]
      .filter(Boolean)
      .join('\n'),
  ];
}

function title(group: string): string {
  return TITLES[group] ?? capitalised(group);
}

function nameOf({ entries }: Pattern): string {
  return plain(entries.pattern ?? '');
}
