/** The form of a signature in its file: YAML that people can read, one section for each signature. */
import { z } from 'zod';
import type { AccountKind } from '../proof/proof.ts';

const ACCEPTED = ['unaccounted', 'wrong', 'stale', 'short', 'generous'] as const satisfies AccountKind[];

/** Whole numbers stand without quotation marks. */
const text = z.union([z.string(), z.number()]).transform(String);
const words = z.string().min(1);
const place = z.int().nonnegative();

/** One for all sizes, or one for each by its name. */
const perSize = <T>(value: z.ZodType<T>) => z.union([value, z.record(z.string(), value)]);

const value = perSize(text);

/** `from` tells the numbers of its inputs, those of all sizes together. */
const figure = z.union([
  z.strictObject({ is: value, from: z.array(place) }),
  z.strictObject({ 'at least': value, from: z.array(place) }),
]);

/** A number: where it stands in the text of its line, and whether it was verified or accepted as it stands. */
const number = z.strictObject({
  at: place,
  is: text,
  verified: words.optional(),
  accepted: z.enum(ACCEPTED).optional(),
  figure: words.optional(),
  'measures nothing': z.literal(true).optional(),
  size: words.optional(),
  column: z.string().optional(),
});

const line = z
  .strictObject({
    under: z.array(z.string()).optional(),
    step: text.optional(),
    row: z.literal(true).optional(),
    text: z.string(),
    numbers: z.array(number).min(1),
  })
  .superRefine(({ text, numbers }, context) => {
    for (const [index, { at, is }] of numbers.entries())
      if (!text.startsWith(is, at))
        context.addIssue({
          code: 'custom',
          path: ['numbers', index],
          message: `“${is}” does not stand there.`,
        });
  });

export const SIGNATURE = z.strictObject({
  record: z.literal(1),
  'signed by': words,
  on: z.iso.date(),
  text: words,
  system: z.enum(['inch', 'metric']),
  sizes: z.array(z.string()).min(1),
  /** Counted from one. */
  inputs: z.record(
    z.string(),
    z.strictObject({ at: z.array(z.union([z.string(), place])).min(1), is: text }),
  ),
  figures: z.record(z.string(), figure),
  lines: z.array(line),
});

/** As it is written; `z.output` is what was read. */
export type WrittenSignature = z.input<typeof SIGNATURE>;
export type WrittenFigure = z.input<typeof figure>;
export type WrittenLine = z.input<typeof line>;
export type WrittenNumber = z.input<typeof number>;
export type ReadSignature = z.output<typeof SIGNATURE>;
