/** The fences of a manuscript -> one pattern, with a finding at the exact place for whatever cannot be read. */
import { CODES, type Code } from '../findings/codes.ts';
import type { Finding, Range, Related } from '../findings/finding.ts';
import { Broken } from './broken.ts';
import { checkConversion, checkFabrics, checkSizes, checkStrips, checkWidths } from './checks.ts';
import { ENTRIES } from './entries/index.ts';
import type { Entry } from './entry.ts';
import { completeHouse, type House, TELLING } from './house.ts';
import type { Entries, EntryKey, Pattern } from './pattern.ts';
import type { BlockPath } from './place.ts';
import { Taken } from './taken.ts';
import { endOfEntries } from './unclosed.ts';
import { follow, problemOf, TAKEN, type Take, takeNothing } from './used.ts';
import { type Complaint, validate } from './validate.ts';
import { PerSize } from './values/perSize.ts';
import { nearest, suggestion } from './words.ts';
import { type Plain, YamlBlock } from './yaml.ts';

/** A fence: its text, and where each offset of it stands in the source. */
export interface FenceText extends Range {
  readonly value: string;
  /** The line that opens it, where no line closes it. */
  readonly unclosed?: Range | undefined;
  toSource(offset: number): number;
}

/** @param take finds the manuscript that `use` names */
export function readPattern(fences: readonly FenceText[], take: Take = takeNothing): Pattern {
  return new Reading(fences).pattern(take);
}

/** A name or item of the pattern, and the block that it stands in. */
interface Held {
  readonly block: Block;
  readonly path: BlockPath;
}

/** What is wrong with a value that is taken is told where it is taken. */
const AT_USE = { path: ['use'], atKey: false } as const;

interface Block {
  readonly fence: FenceText;
  readonly yaml: YamlBlock;
  /** Entries with a mistake of the kind that hides where one value ends and the next begins. */
  readonly garbled: Set<string>;
  /** Whether its fence goes on over text that is no part of it. */
  readonly hidesText: boolean;
}

class Reading {
  readonly #blocks: readonly Block[];
  readonly #findings: Finding[] = [];
  readonly #values: Record<string, unknown> = {};
  /** Which block holds an entry, by its key, or by key and name for entries of the form `many`. */
  readonly #held = new Map<string, Held>();
  readonly #broken = new Broken();
  #taken = new Taken(undefined, () => true);
  /** Whether the binding has its strip from the house. */
  #stripOfHouse = false;

  constructor(fences: readonly FenceText[]) {
    this.#blocks = fences.map((fence) => {
      const end = fence.unclosed ? endOfEntries(fence.value) : fence.value.length;
      const hidesText = end < fence.value.length;
      if (fence.unclosed && hidesText) this.#reportUnclosed(fence.unclosed);
      return { fence, yaml: new YamlBlock(fence.value.slice(0, end)), garbled: new Set(), hidesText };
    });
  }

  pattern(take: Take): Pattern {
    for (const block of this.#blocks) this.#readBlock(block);
    this.#doubtUnread();
    this.#takeFrom(take);
    this.#fillStrip();
    const entries = this.#values as Entries;
    const names = entries.sizes && entries.sizes.length > 0 ? entries.sizes : [''];
    const sizes = names.map((name, index) => ({ name, index }));
    const house = this.#house(entries);
    const objections = [
      ...checkSizes(entries, sizes, this.#broken),
      ...checkFabrics(entries, this.#broken),
      ...checkWidths(entries, house),
      ...checkConversion(entries, house),
      ...checkStrips(entries, sizes, house, this.#broken),
    ];
    for (const { breaks, ...complaint } of objections) {
      const path = this.#source(complaint.path);
      const isTaken = this.#taken.statedPath(path) !== undefined;
      const block = this.#holder(isTaken ? ['use'] : path)?.block;
      const isKnown = isTaken && this.#broken.at(path);
      if (block && !isKnown) this.#complain(block, { ...complaint, ...(isTaken ? AT_USE : { path }) });
      for (const path of breaks) this.#broken.add(path);
    }
    return {
      entries,
      house,
      sizes,
      stated: this.#blocks.length > 0,
      broken: this.#broken,
      findings: this.#findings.sort((a, b) => a.start - b.start),
      place: (path) => this.#locate(path, 'place'),
      textPlace: (path) => this.#locate(path, 'textPlace'),
      keyPlace: (path) => this.#locate(path, 'keyPlace'),
      statedPath: (path) => this.#statedPath(this.#source(path)),
      origin: (path) => this.#taken.origin(this.#source(path)),
      textAt: (path) => this.#textAt(this.#source(path)),
      pathAt: (offset) => this.#pathAt(offset),
    };
  }

  /** The house rules and fabrics of the manuscript that this one uses, below its own. */
  #takeFrom(take: Take): void {
    const path = this.#values.use as string | undefined;
    const used = path === undefined ? undefined : follow(path, take);
    const isOwn = (place: BlockPath) => this.#holder(place)?.block.yaml.statedPath(place) !== undefined;
    this.#taken = new Taken(used && !('code' in used) ? used : undefined, isOwn);
    const problem = used && path !== undefined && ('code' in used ? used : problemOf(used, path, isOwn));
    const block = this.#holder(['use'])?.block;
    if (problem && block) this.#complain(block, { ...problem, ...AT_USE });
    const isLost =
      (used !== undefined && !('pattern' in used) && !('circle' in used)) || this.#broken.at(['use']);
    for (const entry of TAKEN) {
      const merged = this.#taken.beside(entry, this.#values) ?? (isLost ? {} : undefined);
      if (merged) this.#values[entry] = merged;
    }
    this.#taken.spoil(this.#broken, isLost);
  }

  /** A binding that does not say how wide its strip is has the strip of the house. */
  #fillStrip(): void {
    const { binding, house } = this.#values as Entries;
    if (!binding || binding.strip || this.#broken.at(['binding', 'strip'])) return;
    const strip = house?.['binding strip'];
    this.#stripOfHouse = strip !== undefined;
    if (strip) this.#values.binding = { ...binding, strip: PerSize.same(strip) };
    else if (this.#broken.at(['house', 'binding strip'])) this.#broken.add(['binding', 'strip']);
  }

  #reportUnclosed(opening: Range): void {
    const code = 'block-syntax';
    const message =
      'This measure block is not closed, so the text behind it is taken for a part of it; put ``` on a line of its own behind the last entry.';
    this.#findings.push({
      code,
      severity: CODES[code].severity,
      message,
      ...opening,
      related: [],
      fixes: [],
    });
  }

  /** What no block says may stand where a block that is not closed hides it. */
  #doubtUnread(): void {
    if (!this.#blocks.some(({ hidesText }) => hidesText)) return;
    for (const entry of Object.keys(ENTRIES)) if (!this.#held.has(entry)) this.#broken.add([entry]);
    this.#broken.add([]);
  }

  /** Where a value really stands. */
  #source(path: BlockPath): BlockPath {
    const isStrip = this.#stripOfHouse && path[0] === 'binding' && path[1] === 'strip';
    return isStrip ? ['house', 'binding strip'] : path;
  }

  #statedPath(path: BlockPath): BlockPath | undefined {
    return this.#taken.statedPath(path) ?? this.#holder(path)?.block.yaml.statedPath(path);
  }

  #textAt(path: BlockPath): string | undefined {
    return this.#taken.textAt(path) ?? this.#holder(path)?.block.yaml.textAt(path);
  }

  /** Whether the house is metric is unknown while the rule that tells it cannot be read; so is then all of it. */
  #house(entries: Entries): House {
    const stated = entries.house ?? {};
    const telling = TELLING.find((rule) => stated[rule] ?? this.#broken.at(['house', rule]));
    if (telling && !stated[telling]) this.#broken.addConsequence(['house']);
    return completeHouse(stated);
  }

  #readBlock(block: Block): void {
    const { yaml, fence } = block;
    for (const { code, message, start, end } of yaml.problems) {
      this.#report(block, code, message, { start, end });
      if (code !== 'block-syntax') continue;
      this.#broken.add([]);
      for (const entry of yaml.entriesAt({ start, end })) {
        block.garbled.add(entry);
        this.#broken.add([entry]);
      }
    }
    const { value } = yaml;
    if (value === undefined || value === '') return;
    if (typeof value !== 'object' || Array.isArray(value)) {
      const all = { start: 0, end: fence.value.length };
      this.#report(
        block,
        'block-syntax',
        'A measure block holds entries, each with its name, a colon, a space and a value.',
        all,
      );
      this.#broken.add([]);
      return;
    }
    for (const [key, raw] of Object.entries(value)) {
      if (Object.hasOwn(ENTRIES, key)) this.#readEntry(block, key as EntryKey, raw);
      else {
        const known = Object.keys(ENTRIES);
        const message = `“${key}” is no entry of the measure block.${suggestion(key, known)}`;
        const meant = nearest(key, known);
        this.#complain(block, { code: 'unknown-entry', message, path: [key], atKey: true, meant });
        this.#broken.add([key]);
      }
    }
  }

  #readEntry(block: Block, key: EntryKey, raw: Plain): void {
    const entry: Entry<unknown> = ENTRIES[key];
    if (entry.form === 'one') {
      if (this.#isFirst(block, [key])) this.#keep(block, [key], entry, raw, this.#values, key);
      return;
    }
    if (typeof raw !== 'object' || Array.isArray(raw)) {
      if (raw !== '') {
        const message = `Under “${key}” write names, each with a colon and a value.`;
        this.#complain(block, { code: 'bad-value', message, path: [key], atKey: false });
        this.#broken.add([key]);
      }
      return;
    }
    this.#values[key] ??= Object.create(null);
    const collection = this.#values[key] as Record<string, unknown>;
    if (!this.#held.has(key)) this.#held.set(key, { block, path: [key] });
    let before: readonly [name: string, item: Plain] | undefined;
    for (const [name, item] of Object.entries(raw)) {
      if (before && item === '' && isCutOff(before[1])) this.#cutOff(block, [key, before[0]], [key, name]);
      else if (this.#isFirst(block, [key, name]))
        this.#keep(block, [key, name], entry, item, collection, name);
      before = [name, item];
    }
  }

  /** Between braces a comma ends a value, and what stands behind it is taken for the next name. */
  #cutOff(block: Block, path: string[], rest: string[]): void {
    const message =
      'A comma ends a value between brackets: put quotation marks around a value that holds one, or give it a line of its own.';
    this.#complain(block, { code: 'bad-value', message, path, atKey: false });
    for (const place of [path, rest]) this.#broken.add(place);
  }

  #keep(
    block: Block,
    path: string[],
    entry: Entry<unknown>,
    raw: Plain,
    into: Record<string, unknown>,
    name: string,
  ): void {
    const { value, complaints, broken } = validate(entry.schema, raw);
    for (const complaint of complaints)
      this.#complain(block, { ...complaint, path: [...path, ...complaint.path] });
    for (const place of broken) this.#broken.add([...path, ...place]);
    if (value !== undefined) into[name] = value;
  }

  /** The first block that holds an entry counts; a later one is reported with the first as related place. */
  #isFirst(block: Block, path: string[]): boolean {
    const first = this.#held.get(path.join('.'));
    if (!first) {
      this.#held.set(path.join('.'), { block, path });
      return true;
    }
    const at = first.block.yaml.keyPlace(first.path);
    const related = at ? [{ message: 'The first one, which counts.', ...sourceRange(first.block, at) }] : [];
    const message = `“${path.at(-1)}” stands in an earlier block already; the first one counts.`;
    this.#complain(block, { code: 'duplicate-entry', message, path, atKey: true }, related);
    return false;
  }

  #complain(block: Block, complaint: Complaint, related: readonly Related[] = []): void {
    const { path, atKey, code, message, meant } = complaint;
    const found =
      code === 'missing-entry'
        ? block.yaml.keyPlace(path.slice(0, -1))
        : atKey
          ? block.yaml.keyPlace(path)
          : block.yaml.place(path);
    if (!block.garbled.has(String(path[0])))
      this.#report(block, code, message, found ?? { start: 0, end: 0 }, related);
    // What the misspelled name says does not count, so the entry that it means is unknown.
    const place = meant === undefined ? undefined : [...path.slice(0, -1), meant];
    if (place && !block.yaml.statedPath(place)) this.#broken.add(place);
  }

  #report(block: Block, code: Code, message: string, range: Range, related: readonly Related[] = []): void {
    const { severity } = CODES[code];
    this.#findings.push({ code, severity, message, ...sourceRange(block, range), related, fixes: [] });
  }

  #holder(path: BlockPath): Held | undefined {
    const [key, name] = path;
    return this.#held.get(`${key}.${name}`) ?? this.#held.get(String(key));
  }

  #locate(place: BlockPath, what: 'place' | 'textPlace' | 'keyPlace'): Range | undefined {
    const source = this.#source(place);
    if (this.#taken.statedPath(source))
      return what === 'textPlace' ? undefined : this.#locate(['use'], 'place');
    const path = source;
    const block = this.#holder(path)?.block;
    const range = block?.yaml[what](path);
    return block && range ? sourceRange(block, range) : undefined;
  }

  #pathAt(offset: number): BlockPath | undefined {
    const block = this.#blocks.find(({ fence }) => fence.start <= offset && offset <= fence.end);
    if (!block) return undefined;
    return block.yaml.pathAt(valueOffset(block.fence, offset));
  }
}

/** Whether a value ends within parentheses. */
function isCutOff(value: Plain): boolean {
  return typeof value === 'string' && value.split('(').length > value.split(')').length;
}

function sourceRange({ fence }: Block, { start, end }: Range): Range {
  return { start: fence.toSource(start), end: fence.toSource(end) };
}

/** The last offset of the fence's text that stands at or before a source offset. */
function valueOffset(fence: FenceText, offset: number): number {
  let [low, high] = [0, fence.value.length];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (fence.toSource(middle) <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
