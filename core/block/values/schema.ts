/** How the block's values become zod schemas: from the text that stands in the block to what it means. */
import { z } from 'zod';
import type { Code } from '../../findings/codes.ts';

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
        report(context, 'missing-entry', `This needs ${words.title}, for example ${words.examples[0]}.`);
      else if (typeof raw !== 'string' || raw.trim() === '')
        report(context, 'bad-value', `Here stands ${words.title}, for example ${words.examples[0]}.`);
      else {
        const value = read(raw.trim());
        if (!isProblem(value)) return value;
        report(context, 'bad-value', value.problem);
      }
      return z.NEVER;
    })
    .meta({ title: words.title, examples: [...words.examples] });
}
