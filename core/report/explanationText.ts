/** An explanation as Markdown for editors, and as plain text for those that show no Markdown. */
import type { Explanation, ValueTable } from './explanation.ts';

export function toMarkdown({ title, verdict, table, working, evidence }: Explanation): string {
  const [only] = table.rows;
  const single = table.sizes.length === 1 && table.rows.length === 1;
  const parts = [`**${escaped(title)}**${single && only ? `: ${escaped(only.values[0] ?? '')}` : ''}`];
  if (verdict) parts.push(escaped(verdict));
  if (!single) parts.push(markdownTable(table));
  if (working.length > 0)
    parts.push(working.map((step, index) => `${index + 1}. ${escaped(step)}`).join('\n'));
  if (evidence.length > 0) parts.push(`*Why this number: ${escaped(evidence.join('; '))}.*`);
  return parts.join('\n\n');
}

export function toPlainText({ title, verdict, table, working, evidence }: Explanation): string {
  const single = table.rows.length === 1;
  const values = table.rows.map((row) => {
    const perSize = row.values.map((value, index) => [table.sizes[index], value].filter(Boolean).join(' '));
    return `${single ? '' : `${row.title}: `}${perSize.join(', ')}`;
  });
  const parts = [single ? `${title}: ${values.join('')}` : [title, ...values].join('\n')];
  if (verdict) parts.push(verdict);
  if (working.length > 0) parts.push(working.map((step, index) => `${index + 1}. ${step}`).join('\n'));
  if (evidence.length > 0) parts.push(`Why this number: ${evidence.join('; ')}.`);
  return parts.join('\n\n');
}

function markdownTable({ sizes, rows }: ValueTable): string {
  const columns = sizes.map((size) => size || 'value');
  // One figure needs no column for its name: the title says it.
  const named = rows.length > 1;
  const lines = [
    named ? ['figure', ...columns] : columns,
    [...(named ? [':--'] : []), ...columns.map(() => '--:')],
    ...rows.map(({ title, values }) => (named ? [title, ...values] : values)),
  ];
  return lines
    .map((cells, index) => `| ${cells.map((cell) => (index === 1 ? cell : escaped(cell))).join(' | ')} |`)
    .join('\n');
}

/** Names that authors give must not become emphasis, links or HTML. */
function escaped(text: string): string {
  return text.replace(/[\\`*_[\]<>|~#&]/g, '\\$&').replace(/\s+/g, ' ');
}
