/** One entry of the block language: its name, what it means, and the schema of its value. */
import type { z } from 'zod';

export interface Entry<T> {
  /** `one`: a single value. `many`: a mapping from the author's own names to values, which several blocks may add to. */
  readonly form: 'one' | 'many';
  readonly schema: z.ZodType<T>;
  /** One sentence for the reference. */
  readonly summary: string;
  /** Lines of a block that show it. */
  readonly example: string;
}

interface Words {
  readonly summary: string;
  readonly example: string;
}

export function one<T>(schema: z.ZodType<T>, words: Words): Entry<T> & { readonly form: 'one' } {
  return { form: 'one', schema, ...words };
}

export function many<T>(schema: z.ZodType<T>, words: Words): Entry<T> & { readonly form: 'many' } {
  return { form: 'many', schema, ...words };
}
