/** The sizes in the block: the list of their names, and every value that is given for each of them. */
import type { Pattern } from '../../block/pattern.ts';
import { type BlockPath, pathText } from '../../block/place.ts';
import type { Edit, Range } from '../../findings/finding.ts';
import { GAP } from '../../findings/gap.ts';
import type { SizeChange } from './change.ts';
import { type SizedEntry, sizedEntries } from './entries.ts';
import { type Member, reviseSeries } from './series.ts';
import { yamlText } from './yamlText.ts';

/** What a statement about a figure must say for the new size, written like the given one. */
export type StatedValue = (figure: string, like: string) => string | undefined;

/**
 * @param values what the author gave for the new size, by the path of its entry
 */
export function reviseBlock(
  source: string,
  pattern: Pattern,
  change: SizeChange,
  values: ReadonlyMap<string, string>,
  stated: StatedValue,
): Edit[] {
  const block = new BlockRevision(source, pattern, change, values, stated);
  return [block.names(), ...sizedEntries(pattern).map((entry) => block.entry(entry))].flatMap(
    (edit) => edit ?? [],
  );
}

class BlockRevision {
  readonly #source: string;
  readonly #pattern: Pattern;
  readonly #change: SizeChange;
  readonly #values: ReadonlyMap<string, string>;
  readonly #stated: StatedValue;

  constructor(
    source: string,
    pattern: Pattern,
    change: SizeChange,
    values: ReadonlyMap<string, string>,
    stated: StatedValue,
  ) {
    this.#source = source;
    this.#pattern = pattern;
    this.#change = change;
    this.#values = values;
    this.#stated = stated;
  }

  names(): Edit | undefined {
    const path = ['sizes'];
    const members = this.#members(path, this.#names, (_, index) => [...path, index]);
    const written = this.#change.kind === 'add' ? yamlText(this.#change.name, this.#isInBraces(path)) : '';
    return members && reviseSeries(this.#source, members, this.#change, written);
  }

  entry({ path, value }: SizedEntry): Edit | undefined {
    if (value.form === 'same') return this.#differ(path);
    const isNamed = value.form === 'named';
    const at = (size: string, index: number) => [...path, isNamed ? size : index];
    // Also what cannot be read, as the mark of what is still to be written.
    const sizes = this.#names.filter(
      (size, index) => this.#pattern.statedPath(at(size, index))?.length === path.length + 1,
    );
    const members = this.#members(path, sizes, at);
    if (!members) return undefined;
    return (
      (this.#change.kind === 'drop' && this.#united(path, members)) ||
      reviseSeries(this.#source, members, this.#change, this.#written(path, members, isNamed))
    );
  }

  get #names(): string[] {
    return this.#pattern.sizes.map(({ name }) => name);
  }

  /** Entries of a mapping from their name on, items of a list; where each has lines of its own, up to their ends. */
  #members(
    path: BlockPath,
    sizes: readonly string[],
    at: (size: string, index: number) => BlockPath,
  ): Member[] | undefined {
    const isInBraces = this.#isInBraces(path);
    const members = sizes.flatMap((size, index): Member[] => {
      const place = at(size, index);
      const [key, value] = [this.#pattern.keyPlace(place), this.#pattern.place(place)];
      if (!key || !value) return [];
      return [{ size, start: key.start, end: isInBraces ? value.end : this.#lineEnd(value.end) }];
    });
    return members.length === sizes.length && members.length > 0
      ? members.sort((a, b) => a.start - b.start)
      : undefined;
  }

  /** A value that was the same for all sizes, and is not for the new one. */
  #differ(path: BlockPath): Edit | undefined {
    const value = this.#values.get(pathText(path));
    const range = this.#pattern.place(path);
    if (value === undefined || !range || this.#change.kind !== 'add') return undefined;
    const old = this.#source.slice(range.start, range.end);
    const { after, name } = this.#change;
    const entries = this.#names.map((size) => `${yamlText(size, true)}: ${asInBraces(old)}`);
    const at = after === undefined ? 0 : this.#names.indexOf(after) + 1;
    const all = entries.toSpliced(at, 0, `${yamlText(name, true)}: ${yamlText(value, true)}`);
    return { ...range, text: `{ ${all.join(', ')} }` };
  }

  /** One value for all sizes where the one that differed is dropped: nobody writes the same twice. */
  #united(path: BlockPath, members: readonly Member[]): Edit | undefined {
    const range = this.#pattern.place(path);
    const change = this.#change;
    if (!range || change.kind !== 'drop' || !this.#isInBraces(path)) return undefined;
    const texts = new Map(members.map((member) => [member.size, this.#valueText(path, member)]));
    const dropped = texts.get(change.name);
    texts.delete(change.name);
    const [text, ...others] = new Set(texts.values());
    if (text === undefined || others.length > 0 || text === dropped) return undefined;
    return { ...range, text };
  }

  #written(path: BlockPath, members: readonly Member[], isNamed: boolean): string {
    const change = this.#change;
    if (change.kind !== 'add') return '';
    const model = members.find(({ size }) => size === change.model) ?? members.at(-1);
    if (!model) return '';
    const value = this.#newValue(path, members, this.#valueText(path, model));
    if (!isNamed) return value;
    const place = [...path, model.size];
    const between = this.#source.slice(
      this.#pattern.keyPlace(place)?.end,
      this.#pattern.place(place)?.start ?? model.start,
    );
    return yamlText(change.name, this.#isInBraces(path)) + between + value;
  }

  #newValue(path: BlockPath, members: readonly Member[], like: string): string {
    const given = this.#values.get(pathText(path));
    const isInBraces = this.#isInBraces(path);
    if (given !== undefined) return yamlText(given, isInBraces);
    const stated = path[0] === 'states' ? this.#stated(String(path[1]), like) : undefined;
    if (stated !== undefined) return yamlText(stated, isInBraces);
    const isSame = members.every((member) => this.#valueText(path, member) === like);
    return isSame && members.length > 1 ? like : GAP;
  }

  #valueText(path: BlockPath, { size, start, end }: Member): string {
    const at = [...path, size];
    const range = this.#pattern.statedPath(at) ? this.#pattern.place(at) : undefined;
    return this.#source.slice(range?.start ?? start, range?.end ?? end);
  }

  #isInBraces(path: BlockPath): boolean {
    const range: Range | undefined = this.#pattern.place(path);
    return range !== undefined && /[[{]/.test(this.#source[range.start] ?? '');
  }

  #lineEnd(offset: number): number {
    const rest = /[^\r\n]*/y;
    rest.lastIndex = offset;
    return offset + (rest.exec(this.#source)?.[0].trimEnd().length ?? 0);
  }
}

/** A value as it stands in the block, also where a comma would end it. */
function asInBraces(text: string): string {
  return /^['"]/.test(text) ? text : yamlText(text, true);
}
