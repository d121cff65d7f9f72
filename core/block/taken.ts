/** The house rules and fabrics that a manuscript takes from the one that it uses: all that its own blocks do not say. */
import type { Broken } from './broken.ts';
import type { Entries } from './pattern.ts';
import type { BlockPath } from './place.ts';
import { type Origin, TAKEN, type Used } from './used.ts';

const ENTRIES: ReadonlySet<unknown> = new Set(TAKEN);

export class Taken {
  readonly #used: Extract<Used, { readonly pattern: unknown }> | undefined;
  readonly #isOwn: (path: BlockPath) => boolean;

  /**
   * @param used `undefined` where nothing is used
   * @param isOwn whether the manuscript's own blocks say a rule or a fabric, be it in a way that cannot be read
   */
  constructor(used: Used | undefined, isOwn: (path: BlockPath) => boolean) {
    this.#used = used && 'pattern' in used ? used : undefined;
    this.#isOwn = isOwn;
  }

  /** An entry with what the manuscript says, and what it takes beside that. */
  beside(entry: (typeof TAKEN)[number], own: Entries): Readonly<Record<string, unknown>> | undefined {
    const used = this.#used?.pattern.entries[entry];
    if (!used) return own[entry];
    const taken = Object.entries(used).filter(([name]) => !this.#isOwn([entry, name]));
    return { ...Object.fromEntries(taken), ...own[entry] };
  }

  /** What cannot be read where it is taken from is unknown here as well. */
  spoil(broken: Broken, isLost: boolean): void {
    const used = this.#used?.pattern;
    const places = used?.broken.places.filter(([entry]) => ENTRIES.has(entry)) ?? [];
    for (const place of places) if (this.#takes(place)) broken.add(place);
    const isWhole = places.some(({ length }) => length === 1);
    if (!isLost && !isWhole && !used?.broken.hidesEntries) return;
    broken.leaveOpen(ENTRIES, (path) => this.#isOwn(path) || used?.statedPath(path) !== undefined);
  }

  /** The path as far as the text that stands in the used file, or in one that it uses. */
  statedPath(path: BlockPath): BlockPath | undefined {
    return this.#takes(path) ? this.#used?.pattern.statedPath(path) : undefined;
  }

  textAt(path: BlockPath): string | undefined {
    return this.statedPath(path) && this.#used?.pattern.textAt(path);
  }

  origin(path: BlockPath): Origin | undefined {
    if (!this.#used || !this.statedPath(path)) return undefined;
    const { file, pattern } = this.#used;
    const further = pattern.origin(path);
    if (further) return further;
    const place = pattern.place(path);
    return place && { ...place, file };
  }

  #takes(path: BlockPath): boolean {
    return path.length > 1 && ENTRIES.has(path[0]) && !this.#isOwn(path.slice(0, 2));
  }
}
