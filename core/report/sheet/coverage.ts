/** How many numbers of each section, and of each size, have been checked. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import type { Account, AccountKind, Proof } from '../../proof/proof.ts';
import { groupBy } from '../groupBy.ts';
import { type Cell, type Head, table } from './table.ts';

/** What is counted in each column, besides all that measure something. */
const COLUMNS: readonly (readonly [head: string, kinds: readonly AccountKind[]])[] = [
  ['Checked and right', ['verified']],
  ['To correct', ['wrong', 'short']],
  ['Out of date', ['stale']],
  ['More than needed', ['generous']],
  ['Nobody has checked', ['unaccounted']],
];

/** @returns `undefined` where nothing measures anything */
export function coverageTables({ accounts, pattern }: Proof): Element[] | undefined {
  const measuring = accounts.filter(({ kind }) => kind !== 'not-measurement');
  if (measuring.length === 0) return undefined;
  const used = COLUMNS.filter(([, kinds]) => measuring.some(({ kind }) => kinds.includes(kind)));
  const tableBy = (head: string, groups: readonly (readonly [string, readonly Account[]])[]) => {
    const heads: Head[] = [head, { number: 'Measurements' }, ...used.map(([name]) => ({ number: name }))];
    const row = (name: string, members: readonly Account[]): Cell[] => [
      name,
      String(members.length),
      ...used.map(([, kinds]) => String(members.filter(({ kind }) => kinds.includes(kind)).length)),
    ];
    const rows = groups.map(([name, members]) => row(name, members));
    return table(heads, rows, groups.length > 1 ? row('All', measuring) : undefined);
  };
  const bySection = tableBy('Section', [...groupBy(measuring, sectionOf)]);
  if (pattern.sizes.length < 2) return [bySection];
  const order = [...pattern.sizes.map(({ name }) => name), SAME, UNKNOWN];
  const sizes = [...groupBy(measuring, sizeOf)].sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  return [h('h4', 'By section'), bySection, h('h4', 'By size'), tableBy('Size', sizes)];
}

const SAME = 'The same in all sizes';
const UNKNOWN = 'No figure known';

/** The headings above, without the title of the whole. */
function sectionOf({ number: { passage } }: Account): string {
  const { headings } = passage.context;
  const all =
    passage.kind === 'heading'
      ? [...headings.map(({ text }) => text), passage.text]
      : headings.map(({ text }) => text);
  const below = headings[0]?.depth === 1 && all.length > 1 ? all.slice(1) : all;
  return below.join(' › ').replace(/\s+/g, ' ') || 'Before the first heading';
}

function sizeOf({ tie }: Account): string {
  if (!tie) return UNKNOWN;
  return tie.size ?? SAME;
}
