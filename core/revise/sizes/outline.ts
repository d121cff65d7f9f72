/** What stands in the manuscript block by block: the cells of its tables, the items of its lists, its sections. */
import type { Nodes, Parent, Table } from 'mdast';
import type { Range } from '../../findings/finding.ts';
import { placeOf, type Sheet } from '../../manuscript/inline.ts';
import { parseMarkdown } from '../../manuscript/markdown.ts';

/** One cell, with what stands between its pipes. */
export interface Cell extends Range {
  /** Without the pipes. */
  readonly inner: Range;
}

export interface TableOutline extends Range {
  /** The head, the line of dashes, and the body. */
  readonly rows: readonly (Range & { readonly cells: readonly Cell[] })[];
}

export interface Outline {
  readonly tables: readonly TableOutline[];
  /** The items of each list. */
  readonly lists: readonly (readonly Range[])[];
  /** Sections side by side under one heading, each from its heading to the end of its last block. */
  readonly sections: readonly (readonly (Range & { readonly heading: Range })[])[];
}

export function outlineOf(source: string): Outline {
  const sheet = { source, shift: source.startsWith('\ufeff') ? 1 : 0 };
  const outline = { tables: [] as TableOutline[], lists: [] as Range[][], sections: [] as Section[][] };
  const open: Nodes[] = [parseMarkdown(source)];
  for (let node = open.pop(); node; node = open.pop()) {
    if (node.type === 'table') outline.tables.push(tableOf(node, sheet));
    else if (node.type === 'list') outline.lists.push(node.children.map((item) => placeOf(item, sheet)));
    if (node.type === 'root' || node.type === 'blockquote') outline.sections.push(...sectionsOf(node, sheet));
    if ('children' in node && node.type !== 'table') open.push(...(node.children as Nodes[]));
  }
  return outline;
}

function tableOf(table: Table, sheet: Sheet): TableOutline {
  const rows = table.children.map((row) => ({
    ...placeOf(row, sheet),
    cells: row.children.map((cell) => cellOf(placeOf(cell, sheet), sheet.source)),
  }));
  const [head, ...body] = rows;
  return { ...placeOf(table, sheet), rows: head ? [head, dashesBelow(head, sheet.source), ...body] : [] };
}

function cellOf({ start, end }: Range, source: string): Cell {
  const text = source.slice(start, end);
  const from = start + (text.startsWith('|') ? 1 : 0);
  const isClosed = /(?<!\\)(?:\\\\)*\|$/.test(text) && end - 1 >= from;
  return { start, end, inner: { start: from, end: isClosed ? end - 1 : end } };
}

/** The line of dashes is no row of the tree. */
function dashesBelow(head: Range, source: string): TableOutline['rows'][number] {
  const line = /(?:\r\n|\n|\r)([^\r\n]*)/y;
  line.lastIndex = head.end + (/^[ \t]*/.exec(source.slice(head.end))?.[0].length ?? 0);
  const found = line.exec(source);
  const text = /[|:-][|:\- \t]*$/.exec(found?.[1] ?? '')?.[0].trimEnd() ?? '';
  const start = source.indexOf(text, line.lastIndex - (found?.[1]?.length ?? 0));
  const cells: Cell[] = [];
  for (const { index, 0: cell } of text.matchAll(/(?:\||^(?!\|))[^|]*(?:\|$)?/g))
    if (cell.replace(/[|\s]/g, '') !== '')
      cells.push(cellOf({ start: start + index, end: start + index + cell.length }, source));
  return { start, end: start + text.length, cells };
}

type Section = Range & { readonly heading: Range };

/** Runs of sections of one depth without a higher heading between them. */
function sectionsOf({ children }: Parent, sheet: Sheet): Section[][] {
  const runs = new Map<number, Section[]>();
  const done: Section[][] = [];
  for (const [index, node] of children.entries()) {
    if (node.type !== 'heading') continue;
    for (const depth of [...runs.keys()].filter((one) => one > node.depth)) {
      done.push(runs.get(depth) ?? []);
      runs.delete(depth);
    }
    const next = children.findIndex(
      (other, at) => at > index && other.type === 'heading' && other.depth <= node.depth,
    );
    const last = children[(next < 0 ? children.length : next) - 1] ?? node;
    const heading = placeOf(node, sheet);
    const section = { start: heading.start, end: placeOf(last, sheet).end, heading };
    runs.set(node.depth, [...(runs.get(node.depth) ?? []), section]);
  }
  return [...done, ...runs.values()];
}
