/** An explanation as Markdown for editors, and as plain text for those that show no Markdown. */
import type { Explanation, ValueRow, ValueTable } from './explanation.ts';
import { plain } from './plainMarkdown.ts';

/** The value that is asked for and its working come first; the other sizes may lie below the fold. */
export function toMarkdown(explanation: Explanation): string {
  const { title, table, working, evidence } = explanation;
  const { value, size } = headline(explanation);
  const parts = [
    `**${plain(title)}**${size === undefined ? '' : ` for ${plain(size)}`}${value === undefined ? '' : `: ${plain(value)}`}`,
  ];
  const verdict = news(explanation);
  if (verdict) parts.push(plain(verdict));
  const all = singleValue(table) === undefined ? [markdownTable(table)] : [];
  if (value === undefined) parts.push(...all);
  if (working.length > 0) parts.push(numbered(working.map(plain)));
  if (value !== undefined) parts.push(...all);
  if (evidence.length > 0) parts.push(`*Why this number: ${plain(evidence.join('; '))}.*`);
  return parts.join('\n\n');
}

export function toPlainText(explanation: Explanation): string {
  const { title, table, working, evidence } = explanation;
  const { value, size } = headline(explanation);
  const rows =
    table.rows.length === 1
      ? table.rows.map((row) => perSize(row, table))
      : table.rows.map((row) => `${row.title}: ${perSize(row, table)}`);
  const parts = [
    value === undefined
      ? [title, ...rows].join('\n')
      : `${title}${size === undefined ? '' : ` for ${size}`}: ${value}`,
  ];
  const verdict = news(explanation);
  if (verdict) parts.push(verdict);
  if (working.length > 0) parts.push(numbered(working));
  if (size !== undefined) parts.push(`In all sizes: ${rows.join('; ')}`);
  if (evidence.length > 0) parts.push(`Why this number: ${evidence.join('; ')}.`);
  return parts.join('\n\n');
}

/** The one value that is asked for, and the size that it is for where the sizes differ. */
function headline({ table, workingOf }: Explanation): {
  value: string | undefined;
  size: string | undefined;
} {
  const [row] = table.rows;
  const value = row?.values[table.sizes.indexOf(workingOf ?? '')];
  if (workingOf === undefined || table.isList || !row || value === undefined)
    return { value: singleValue(table), size: undefined };
  return { value: row.atLeast ? `at least ${value}` : value, size: workingOf };
}

/** An editor shows the finding beside the explanation, so that only what is no finding is said here. */
function news({ verdict, isReported }: Explanation): string | undefined {
  return isReported ? undefined : verdict;
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
