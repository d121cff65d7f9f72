/** Tables with a column for each size. */
import type { Edit, Range } from '../../findings/finding.ts';
import { rearranged } from './change.ts';
import { columnLike } from './columnStyle.ts';
import type { Cell, TableOutline } from './outline.ts';
import { renamed } from './sizeWords.ts';
import type { RevisedText } from './text.ts';

/** The column of each size, by its place. */
type Columns = ReadonlyMap<string, number>;

export function reviseColumns(table: TableOutline, text: RevisedText): Edit[] {
  const columns = columnsOf(table, text);
  const { change } = text;
  if (change.kind === 'drop') {
    const at = columns.get(change.name);
    return at === undefined ? [] : table.rows.flatMap(({ cells }) => dropped(cells, at, text.source));
  }
  if (columns.size < text.names.length) return [];
  if (change.kind === 'add') return added(table, columns, text);
  return change.kind === 'order' ? table.rows.flatMap(({ cells }) => ordered(cells, columns, text)) : [];
}

/** Sizes that the head of exactly one column names. */
function columnsOf({ rows: [head] }: TableOutline, { words, shown, names }: RevisedText): Columns {
  const named = (head?.cells ?? []).map(({ inner }) => words.only(shown.slice(inner.start, inner.end)));
  const once = names.filter((name) => named.filter((other) => other === name).length === 1);
  return new Map(once.map((name) => [name, named.indexOf(name)]));
}

function added({ rows }: TableOutline, columns: Columns, text: RevisedText): Edit[] {
  if (text.change.kind !== 'add') return [];
  const at = columns.get(text.change.model) ?? 0;
  const full = rows.map((row, index) => ({ ...row, index })).filter(({ cells }) => cells[at]);
  const models = full.flatMap(({ cells }) => cells[at] ?? []);
  const cells = columnLike(
    models.map(({ inner }) => text.source.slice(inner.start, inner.end)),
    full.map((row) => newCell(row.cells, row.index, columns, text)),
  );
  return models.map((model, index) => inserted(model, cells[index] ?? '', text));
}

function inserted(model: Cell, cell: string, { change, source }: RevisedText): Edit {
  const { start, end } = model.inner;
  if (change.kind === 'add' && change.after === undefined)
    return { start, end: start, text: start > model.start ? `${cell}|` : `${cell.trim()} | ` };
  const isClosed = source[end] === '|';
  const space = /\s$/.test(source.slice(start, end)) ? '' : ' ';
  return { start: end, end, text: isClosed ? `|${cell}` : `${space}| ${cell.trim()}` };
}

/** What stands in the column of the new size; the line of dashes is written by its style alone. */
function newCell(cells: readonly Cell[], row: number, columns: Columns, text: RevisedText): string {
  const { change, source } = text;
  const at = change.kind === 'add' ? columns.get(change.model) : undefined;
  const model = at === undefined ? undefined : cells[at];
  if (change.kind !== 'add' || !model || row === 1) return '';
  const old = source.slice(model.inner.start, model.inner.end).trim();
  if (row === 0) return renamed(old, change.model, change.name);
  const all = [...columns.values()].flatMap((column) => cells[column] ?? []);
  const isSame =
    all.length > 1 && all.every(({ inner }) => source.slice(inner.start, inner.end).trim() === old);
  if (!isSame && new Set(all.map(({ inner }) => wording(inner, text))).size > 1) return text.gap;
  const copy = text.copy(model.inner, change.model, isSame).trim();
  return copy.includes(text.gap) ? text.gap : copy;
}

/** The words of a cell, without its numbers and their comments. */
function wording({ start, end }: Range, text: RevisedText): string {
  let words = '';
  let done = start;
  for (const { ranges } of text.numbersIn({ start, end })) {
    words += `${text.shown.slice(done, ranges[0].start)}#`;
    done = ranges.at(-1)?.end ?? done;
  }
  return (words + text.shown.slice(done, end))
    .replace(/[\ue000\s]+/g, ' ')
    .replace(/(\p{L})s\b/gu, '$1')
    .trim();
}

function dropped(cells: readonly Cell[], at: number, source: string): Edit[] {
  const cell = cells[at];
  if (!cell) return [];
  const { start, end } = cell.inner;
  if (start === cell.start) {
    const behind = /^\|[ \t]*/.exec(source.slice(end))?.[0].length ?? 0;
    return [{ start, end: end + behind, text: '' }];
  }
  const isLast = at === cells.length - 1 && end === cell.end;
  const space = isLast ? (/[ \t]*$/.exec(source.slice(0, cell.start))?.[0].length ?? 0) : 0;
  return [{ start: cell.start - space, end, text: '' }];
}

function ordered(cells: readonly Cell[], columns: Columns, { change, source }: RevisedText): Edit[] {
  const now = rearranged([...columns.keys()], change);
  return [...columns].flatMap(([size, column], index): Edit[] => {
    const [place, other] = [cells[column]?.inner, cells[columns.get(now[index] ?? size) ?? column]?.inner];
    if (!place || !other || place === other) return [];
    return [{ ...place, text: source.slice(other.start, other.end) }];
  });
}
