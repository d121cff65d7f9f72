/**
 * A raw value against its schema, saving what is good.
 *
 * One bad line must not silence the rest of the block, so the parts that a schema refuses are reported, cut out,
 * and the remainder is tried again.
 */
import type { z } from 'zod';
import type { Code } from '../findings/codes.ts';
import type { BlockPath } from './place.ts';
import { knownNames, unknownName } from './values/schema.ts';
import type { Plain } from './yaml.ts';

export interface Complaint {
  readonly code: Code;
  readonly message: string;
  readonly path: BlockPath;
  /** Whether the name of the entry is wrong, rather than its value. */
  readonly atKey: boolean;
}

export interface Validated<T> {
  /** `undefined` when nothing could be saved. */
  readonly value: T | undefined;
  readonly complaints: readonly Complaint[];
}

export function validate<T>(schema: z.ZodType<T>, raw: Plain): Validated<T> {
  const first = schema.safeParse(raw);
  if (first.success) return { value: first.data, complaints: [] };
  const complaints = first.error.issues.flatMap((issue) => complain(issue, schema));
  // From the last to the first, so that the places of list items stay true. Cutting out one part can only uncover problems of the whole, never of the parts: twice is enough.
  const rest = [...complaints]
    .reverse()
    .reduce<Plain | undefined>((value, { path }) => without(value, path), structuredClone(raw));
  const second = rest === undefined ? undefined : schema.safeParse(rest);
  return { value: second?.success ? second.data : undefined, complaints };
}

function complain(issue: z.core.$ZodIssue, schema: z.ZodType): Complaint[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') {
    const known = knownNames(schema, path);
    return issue.keys.map((key) => ({
      code: 'unknown-entry',
      message: unknownName(key, known),
      path: [...path, key],
      atKey: true,
    }));
  }
  if (issue.code === 'custom') {
    const code = (issue.params?.finding as Code | undefined) ?? 'bad-value';
    const missing = code === 'missing-entry';
    const name = path.at(-1);
    const message =
      missing && typeof name === 'string' ? `“${name}” is missing. ${issue.message}` : issue.message;
    return [{ code, message, path, atKey: issue.params?.atKey === true }];
  }
  const message =
    issue.code === 'invalid_type' && issue.expected === 'object'
      ? 'Here stand entries, each with its name and a colon.'
      : 'This value does not belong here.';
  return [{ code: 'bad-value', message, path, atKey: false }];
}

function without(value: Plain | undefined, path: BlockPath): Plain | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  if (typeof value !== 'object') return value;
  const container = value as Record<string | number, Plain>;
  const inner = without(container[step], rest);
  if (inner !== undefined) container[step] = inner;
  else if (!Array.isArray(value)) delete container[step];
  else if (rest.length === 0) value.splice(Number(step), 1);
  return value;
}
