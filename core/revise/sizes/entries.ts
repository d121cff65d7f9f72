/** The values of the block that may differ between the sizes, and how an author calls them. */
import type { Pattern } from '../../block/pattern.ts';
import { type BlockPath, pathText } from '../../block/place.ts';
import { PerSize } from '../../block/values/perSize.ts';
import { listed, suggestion } from '../../block/words.ts';
import type { Refusal } from '../revision.ts';

export interface SizedEntry {
  readonly path: BlockPath;
  readonly value: PerSize<unknown>;
}

export function sizedEntries({ entries }: Pattern): SizedEntry[] {
  return below(entries, []);
}

function below(value: unknown, path: BlockPath): SizedEntry[] {
  if (value instanceof PerSize) return [{ path, value }];
  if (Array.isArray(value)) return value.flatMap((item, index) => below(item, [...path, index]));
  const prototype = typeof value === 'object' && value !== null ? Object.getPrototypeOf(value) : undefined;
  if (prototype !== null && prototype !== Object.prototype) return [];
  return Object.entries(value as object).flatMap(([name, item]) => below(item, [...path, name]));
}

/**
 * The given values by the path of their entry. An entry may be called by the end or the beginning of its path where
 * that leaves no choice: `grid` or `layout` for `layout.grid`.
 */
export function valuesByPath(
  pattern: Pattern,
  values: Readonly<Record<string, string>>,
): ReadonlyMap<string, string> | Refusal {
  const all = sizedEntries(pattern);
  const found = new Map<string, string>();
  for (const [name, value] of Object.entries(values)) {
    const fitting = called(name, all);
    const [only, ...others] = fitting.map(({ path }) => pathText(path));
    if (only === undefined || others.length > 0) return { refusal: whyNot(name, all, fitting) };
    found.set(only, value.trim());
  }
  return found;
}

function called(name: string, all: readonly SizedEntry[]): SizedEntry[] {
  const wanted = name.trim().toLowerCase();
  const fits = (test: (text: string) => boolean) =>
    all.filter(({ path }) => test(pathText(path).toLowerCase()));
  const exact = fits((text) => text === wanted);
  if (exact.length > 0) return exact;
  const near = fits((text) => text.endsWith(`.${wanted}`) || text.startsWith(`${wanted}.`));
  const differing = near.filter(({ value }) => value.form !== 'same');
  return differing.length === 1 ? differing : near;
}

function whyNot(name: string, all: readonly SizedEntry[], fitting: readonly SizedEntry[]): string {
  const names = (entries: readonly SizedEntry[]) => entries.map(({ path }) => pathText(path));
  if (fitting.length > 1)
    return `“${name}” may be ${listed(names(fitting), 'or')}; write which one is meant.`;
  const hint = suggestion(name, names(all));
  const some = all.filter(({ value }) => value.form !== 'same');
  const known = some.length > 0 ? ` Values for each size have ${listed(names(some), 'and')}.` : '';
  return `No entry “${name}” of the block has a value for each size.${hint || known}`;
}
