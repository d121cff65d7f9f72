import { z } from 'zod';
import type { BlockPath } from '../place.ts';
import { forward } from './schema.ts';

/** One size of the pattern: its name, and its place in `sizes`. */
export interface Size {
  readonly name: string;
  readonly index: number;
}

/** A value that may differ from size to size: one for all, one per name, or a list in the order of `sizes`. */
export class PerSize<T> {
  readonly form: 'same' | 'named' | 'listed';
  readonly #values: ReadonlyMap<string | number, T>;

  constructor(form: 'same' | 'named' | 'listed', values: ReadonlyMap<string | number, T>) {
    this.form = form;
    this.#values = values;
  }

  static same<T>(value: T): PerSize<T> {
    return new PerSize('same', new Map([['', value]]));
  }

  /** Names (or places, for a list) for which a value is given; empty for one value for all. */
  get keys(): readonly (string | number)[] {
    return this.form === 'same' ? [] : [...this.#values.keys()];
  }

  get values(): readonly T[] {
    return [...this.#values.values()];
  }

  at(size: Size): T | undefined {
    return this.#values.get(this.#key(size));
  }

  /** Where the value of a size stands, seen from the entry. */
  pathAt(size: Size): BlockPath {
    return this.form === 'same' ? [] : [this.#key(size)];
  }

  #key(size: Size): string | number {
    return { same: '', named: size.name, listed: size.index }[this.form];
  }
}

/** A schema that takes a value for all sizes, a mapping by name, or a list. */
export function perSize<T>(inner: z.ZodType<T>) {
  return z
    .unknown()
    .transform((raw, context): PerSize<T> => {
      const values = new Map<string | number, T>();
      const read = (value: unknown, path: (string | number)[], key: string | number) => {
        const result = inner.safeParse(value);
        if (result.success) values.set(key, result.data);
        else forward(context, result.error, inner, path);
      };
      if (Array.isArray(raw)) {
        raw.forEach((value, index) => {
          // A gap stands for what was refused and reported.
          if (value !== undefined) read(value, [index], index);
        });
        return new PerSize('listed', values);
      }
      if (typeof raw === 'object' && raw !== null) {
        for (const [name, value] of Object.entries(raw)) read(value, [name], name);
        return new PerSize('named', values);
      }
      read(raw, [], '');
      return new PerSize('same', values);
    })
    .meta({ ...inner.meta(), perSize: true });
}
