/** Which values of the block cannot be read, so that what depends on them is unknown rather than wrong. */
import type { BlockPath } from './place.ts';

/** Entries that no figure follows from. */
const WITHOUT_FIGURES: ReadonlySet<unknown> = new Set(['pattern', 'states']);

export class Broken {
  readonly #places = new Map<string, BlockPath>();
  readonly #consequences = new Set<string>();
  readonly #holders = new Set<string>();
  #hidesFigures = false;
  /** Whether an entry says something that counts, for entries of which more may stand where nobody can look. */
  #open: { readonly entries: ReadonlySet<unknown>; isSaid(path: BlockPath): boolean } | undefined;

  /** The empty path stands for a block that holds no entries at all. */
  add(path: BlockPath): void {
    this.#places.set(key(path), path);
    if (path.length > 0) this.#holders.add(key(path.slice(0, -1)));
    this.#hidesFigures ||= !WITHOUT_FIGURES.has(path[0]);
  }

  /** Whatever these entries do not say may be said where nobody can look. */
  leaveOpen(entries: ReadonlySet<unknown>, isSaid: (path: BlockPath) => boolean): void {
    this.#open = { entries, isSaid };
    this.#hidesFigures = true;
  }

  get isEmpty(): boolean {
    return this.#places.size === 0 && !this.#open;
  }

  /** Can be read, and yet tells nothing: what it means depends on a value that cannot. */
  addConsequence(path: BlockPath): void {
    this.#consequences.add(key(path));
  }

  /** What cannot be read, without the consequences. */
  get places(): readonly BlockPath[] {
    return [...this.#places.values()];
  }

  /** Whether there may be entries that cannot be told by name. */
  get hidesEntries(): boolean {
    return this.#open !== undefined || this.#places.has(key([]));
  }

  /** Whether there may be figures that would be there if everything could be read. */
  get hidesFigures(): boolean {
    return this.#hidesFigures;
  }

  /** Whether the value at `path`, or one around it, cannot be read. */
  at(path: BlockPath): boolean {
    const isKnown = (around: string) => !this.#places.has(around) && !this.#consequences.has(around);
    if (!path.every((_, index) => isKnown(key(path.slice(0, index + 1))))) return true;
    if (path.length < 2 || !this.#open?.entries.has(path[0])) return false;
    return !this.#open.isSaid(path.slice(0, 2));
  }

  /** Whether one of the values right inside the one at `path` cannot be read. */
  inside(path: BlockPath): boolean {
    const isOpen = path.length === 1 && this.#open?.entries.has(path[0]) === true;
    return isOpen || this.#holders.has(key(path));
  }
}

function key(path: BlockPath): string {
  return path.join('\u0000');
}
