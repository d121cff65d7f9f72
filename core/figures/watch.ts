/**
 * A pattern that tells whether something was read that stands in the block but cannot be understood. Whatever
 * follows from such a reading is unknown: it would rest on the rule that holds where the author says nothing.
 */
import type { Pattern } from '../block/pattern.ts';
import type { BlockPath } from '../block/place.ts';
import { PerSize, type Size } from '../block/values/perSize.ts';

export class Watch {
  /** To be read in place of the pattern that it is. */
  readonly pattern: Pattern;
  readonly #size: Size | undefined;
  #spoiled = false;

  /** @param size the one that values per size are read for; left out, all of them count. */
  constructor(pattern: Pattern, size?: Size) {
    this.#size = size;
    const { entries, house } = pattern;
    this.pattern = pattern.broken.isEmpty
      ? pattern
      : {
          ...pattern,
          entries: this.#over(entries, [], pattern),
          house: this.#over(house, ['house'], pattern),
        };
  }

  /** Whether something was read that cannot be understood. */
  get isSpoiled(): boolean {
    return this.#spoiled;
  }

  spoil(): void {
    this.#spoiled = true;
  }

  #over<T extends object>(container: T, path: BlockPath, pattern: Pattern): T {
    return new Proxy(container, {
      get: (target, key) => {
        const value: unknown = Reflect.get(target, key);
        if (typeof key !== 'string') return value;
        const here = [...path, key];
        if (this.#isBroken(value, here, pattern)) this.#spoiled = true;
        return isContainer(value) ? this.#over(value, here, pattern) : value;
      },
      ownKeys: (target) => {
        if (pattern.broken.inside(path)) this.#spoiled = true;
        return Reflect.ownKeys(target);
      },
    });
  }

  #isBroken(value: unknown, path: BlockPath, { broken }: Pattern): boolean {
    if (broken.at(path)) return true;
    if (!(value instanceof PerSize)) return false;
    return this.#size ? broken.at([...path, ...value.pathAt(this.#size)]) : broken.inside(path);
  }
}

/** Lists and mappings of the block; everything else in it is one value. */
export function isContainer(value: unknown): value is object {
  if (Array.isArray(value)) return true;
  if (typeof value !== 'object' || value === null) return false;
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}
