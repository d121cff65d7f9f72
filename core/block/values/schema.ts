/** How the block's values become zod schemas: from the text that stands in the block to what it means. */
import { z } from 'zod';
import type { Code } from '../../findings/codes.ts';
import { GAP } from '../../findings/gap.ts';
import { listed, nearest } from '../words.ts';

/** A reading that failed, with a sentence for the author. */
export interface Problem {
  readonly problem: string;
}

export function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && 'problem' in value;
}

/** What the reference says of a kind of value. */
export interface ValueWords {
  /** With its article: `a length`. */
  readonly title: string;
  readonly examples: readonly string[];
}

/**
 * Passes the issues of an inner reading on, as they stand under `path`. An unknown name is turned into a sentence
 * here, where the schema that does not know it is at hand.
 */
export function forward(
  context: z.RefinementCtx,
  error: z.ZodError,
  schema: z.ZodType,
  path: (string | number)[] = [],
): void {
  for (const issue of error.issues) {
    const here = [...path, ...issue.path];
    if (issue.code !== 'unrecognized_keys') context.issues.push({ ...issue, path: here } as never);
    else
      for (const key of issue.keys) {
        const known = knownNames(schema, issue.path);
        const message = unknownName(key, known);
        const params = { finding: 'unknown-entry', atKey: true, meant: meantBy(key, known) };
        context.addIssue({ code: 'custom', message, path: [...here, key], params });
      }
  }
}

/** The known name that an unknown one stands for: the nearest, or the one that it begins with, as in `strip:2"`. */
export function meantBy(name: string, known: readonly string[]): string | undefined {
  return known.find((entry) => name.startsWith(`${entry}:`)) ?? nearest(name, known);
}

export function unknownName(name: string, known: readonly string[]): string {
  if (/^\d{3}$/.test(name)) return `A comma ends a value between brackets: write the number without it.`;
  const meant = meantBy(name, known);
  if (meant !== undefined && name.startsWith(`${meant}:`))
    return `A space is missing behind the colon of “${meant}”.`;
  if (meant !== undefined) return `“${name}” is no entry here. Did you mean “${meant}”?`;
  const all =
    known.length === 1 ? `the only one is “${known[0]}”` : `the entries are ${listed(known, 'and')}`;
  return `“${name}” is no entry here${known.length > 0 ? `; ${all}` : ''}.`;
}

/** The names that a mapping at `path` inside a schema knows. */
export function knownNames(schema: z.ZodType, path: readonly PropertyKey[]): string[] {
  const at = path.reduce<z.ZodType | undefined>((inner, step) => shapeOf(inner)?.[String(step)], schema);
  return Object.keys(shapeOf(at) ?? {});
}

function shapeOf(schema: z.ZodType | undefined): Record<string, z.ZodType> | undefined {
  let inner = schema as { shape?: Record<string, z.ZodType>; unwrap?: () => z.ZodType } | undefined;
  while (inner && !inner.shape) inner = inner.unwrap?.() as typeof inner;
  return inner?.shape;
}

/** Adds an issue that carries the code of its finding. */
export function report(
  context: z.RefinementCtx,
  code: Code,
  message: string,
  path: (string | number)[] = [],
): void {
  context.addIssue({ code: 'custom', message, path, params: { finding: code } });
}

/**
 * A schema for a value that is written as one piece of text.
 * `read` gets the text without surrounding space and says what is wrong in a sentence.
 */
export function text<T>(words: ValueWords, read: (text: string) => T | Problem) {
  return z
    .unknown()
    .transform((raw, context): T => {
      if (raw === undefined)
        report(context, 'missing-entry', `Write ${words.title}, for example ${words.examples[0]}.`);
      else if (typeof raw !== 'string' || raw.trim() === '')
        report(context, 'bad-value', `Write ${words.title} here, for example ${words.examples[0]}.`);
      else if (raw.trim() === GAP)
        report(context, 'gap', `Here ${words.title} is missing: write it in place of the mark.`);
      else {
        const value = read(raw.trim());
        if (!isProblem(value)) return value;
        report(context, 'bad-value', value.problem);
      }
      return z.NEVER;
    })
    .meta({ title: words.title, examples: [...words.examples] });
}
