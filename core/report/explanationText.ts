/** An explanation as Markdown for editors, and as plain text for those that show no Markdown. */
import type { Explanation, ValueRow, ValueTable } from './explanation.ts';
import { plain } from './plainMarkdown.ts';

export function toMarkdown({ title, verdict, table, working, workingOf, evidence }: Explanation): string {
  const single = singleValue(table);
  const parts = [`**${plain(title)}**${single === undefined ? '' : `: ${plain(single)}`}`];
  if (verdict) parts.push(plain(verdict));
  if (single === undefined) parts.push(markdownTable(table));
  if (workingOf) parts.push(`For ${plain(workingOf)}:`);
  if (working.length > 0) parts.push(numbered(working.map(plain)));
  if (evidence.length > 0) parts.push(`*Why this number: ${plain(evidence.join('; '))}.*`);
  return parts.join('\n\n');
}

export function toPlainText({ title, verdict, table, working, workingOf, evidence }: Explanation): string {
  const [only] = table.rows.length === 1 ? table.rows : [];
  const rows = only
    ? [perSize(only, table)]
    : table.rows.map((row) => `${row.title}: ${perSize(row, table)}`);
  const parts = [
    singleValue(table) === undefined ? [title, ...rows].join('\n') : valueLine({ title, table }),
  ];
  if (verdict) parts.push(verdict);
  if (working.length > 0) parts.push((workingOf ? `For ${workingOf}:\n` : '') + numbered(working));
  if (evidence.length > 0) parts.push(`Why this number: ${evidence.join('; ')}.`);
  return parts.join('\n\n');
}

/** One figure with its value, or its values: `The number of binding strips: at least lap 7, twin 9`. */
export function valueLine({ title, table }: Pick<Explanation, 'title' | 'table'>): string {
  const [row] = table.rows;
  return `${title}: ${singleValue(table) ?? (row ? perSize(row, table) : '–')}`;
}

/** The value of one figure that is the same in all sizes. */
function singleValue({ isList, sizes, rows }: ValueTable): string | undefined {
  const [row] = rows;
  const value = row?.values[0];
  if (isList || !row || value === undefined || sizes.length > 1) return undefined;
  return row.atLeast ? `at least ${value}` : value;
}

function perSize({ atLeast, values }: ValueRow, { sizes }: ValueTable): string {
  const shown = values.map((value, index) => [sizes[index], value].filter(Boolean).join(' '));
  return `${atLeast ? 'at least ' : ''}${shown.join(', ')}`;
}

function markdownTable({ isList, sizes, rows }: ValueTable): string {
  // One figure needs no column for its name: the title says it.
  const label = isList ? named : rows.some(({ atLeast }) => atLeast) ? () => 'at least' : undefined;
  const columns = sizes.map((size) => size || 'value');
  const lines = [
    label ? ['', ...columns] : columns,
    ...rows.map((row) => (label ? [label(row), ...row.values] : row.values)),
  ].map((cells) => `| ${cells.map(plain).join(' | ')} |`);
  const rule = `| ${[...(label ? [':--'] : []), ...columns.map(() => '--:')].join(' | ')} |`;
  return [lines[0], rule, ...lines.slice(1)].join('\n');
}

function named({ title, atLeast }: ValueRow): string {
  return atLeast ? `${title}, at least` : title;
}

function numbered(steps: readonly string[]): string {
  return steps.map((step, index) => `${index + 1}. ${step}`).join('\n');
}
