/** Which values of the block cannot be read, so that what depends on them is unknown rather than wrong. */
import type { BlockPath } from './place.ts';

/** Entries that no figure follows from. */
const WITHOUT_FIGURES: ReadonlySet<unknown> = new Set(['pattern', 'states']);

export class Broken {
  readonly #places = new Set<string>();
  readonly #holders = new Set<string>();
  #hidesFigures = false;

  /** The empty path stands for a block that holds no entries at all. */
  add(path: BlockPath): void {
    this.#places.add(key(path));
    if (path.length > 0) this.#holders.add(key(path.slice(0, -1)));
    this.#hidesFigures ||= !WITHOUT_FIGURES.has(path[0]);
  }

  get isEmpty(): boolean {
    return this.#places.size === 0;
  }

  /** Whether there may be figures that would be there if everything could be read. */
  get hidesFigures(): boolean {
    return this.#hidesFigures;
  }

  /** Whether the value at `path`, or one around it, cannot be read. */
  at(path: BlockPath): boolean {
    return path.some((_, index) => this.#places.has(key(path.slice(0, index + 1))));
  }

  /** Whether one of the values right inside the one at `path` cannot be read. */
  inside(path: BlockPath): boolean {
    return this.#holders.has(key(path));
  }
}

function key(path: BlockPath): string {
  return path.join('\u0000');
}
