/** The few forms of Markdown that the reference is written in. */

/** A page of the reference: its place under `shared/reference`, and its text. */
export interface Page {
  readonly path: string;
  readonly text: string;
}

const NOTICE =
  '<!-- This page is generated: change what it is written from, then run `npm run generate`. -->';

/** Parts that are left out leave no gap. */
export function page(path: string, ...parts: readonly (string | undefined)[]): Page {
  return { path, text: `${[NOTICE, ...present(parts)].join('\n\n')}\n` };
}

export function present(parts: readonly (string | undefined)[]): string[] {
  return parts.filter((part): part is string => part !== undefined && part !== '');
}

/** Text that holds no backtick. */
export function code(text: string): string {
  return `\`${text}\``;
}

/** A fence that is longer than any fence inside it. */
export function fenced(info: string, text: string): string {
  const longest = Math.max(2, ...[...text.matchAll(/^`{3,}/gm)].map(([run]) => run.length));
  const fence = '`'.repeat(longest + 1);
  return `${fence}${info}\n${text}\n${fence}`;
}

/** Columns without any content are left out. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const kept = head.flatMap((_, column) => (rows.some((row) => row[column]) ? [column] : []));
  const line = (cells: readonly string[]) =>
    `| ${kept.map((column) => cell(cells[column] ?? '')).join(' | ')} |`;
  return [line(head), `|${kept.map(() => '---|').join('')}`, ...rows.map(line)].join('\n');
}

/** A bar inside a cell would end it, also inside of code. */
function cell(text: string): string {
  return text.replace(/(?<!\\)\|/g, '\\|').replaceAll('\n', '<br>');
}

/** The name by which hosts link to a heading: `layout: sashing` -> `layout-sashing`. */
export function anchor(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s-]/gu, '')
    .trim()
    .replace(/\s/g, '-');
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
