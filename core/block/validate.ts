/**
 * A raw value against its schema, saving what is good.
 *
 * One bad line must not silence the rest of the block, so the parts that a schema refuses are reported, cut out,
 * and the remainder is tried again.
 */
import type { z } from 'zod';
import type { Code } from '../findings/codes.ts';
import type { BlockPath } from './place.ts';
import { knownNames, meantBy, unknownName } from './values/schema.ts';
import type { Plain } from './yaml.ts';

export interface Complaint {
  readonly code: Code;
  readonly message: string;
  readonly path: BlockPath;
  /** Whether the name of the entry is wrong, rather than its value. */
  readonly atKey: boolean;
  /** The known name that a misspelled one most likely means. */
  readonly meant?: string | undefined;
}

export interface Validated<T> {
  /** `undefined` when nothing could be saved. */
  readonly value: T | undefined;
  readonly complaints: readonly Complaint[];
  /** The places that were cut out. */
  readonly broken: readonly BlockPath[];
}

/** More rounds of cutting than any entry is deep. */
const MOST_ROUNDS = 12;

export function validate<T>(schema: z.ZodType<T>, raw: Plain): Validated<T> {
  const first = schema.safeParse(raw);
  if (first.success) return { value: first.data, complaints: [], broken: [] };
  const all = first.error.issues.flatMap((issue) => complain(issue, schema));
  const complaints = withoutConsequences(all);
  const broken: BlockPath[] = [];
  let rest: Plain | undefined = structuredClone(raw);
  let cuts = all.map(({ path }) => path);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    // What is missing, or was cut out and is needed, leaves the whole around it without sense.
    const places = cuts.map((path) => (holds(rest, path) ? path : path.slice(0, -1)));
    if (places.some(({ length }) => length === 0)) break;
    broken.push(...places);
    for (const place of places) rest = without(rest, place);
    const next = schema.safeParse(rest);
    if (next.success) return { value: next.data, complaints, broken };
    cuts = next.error.issues.map(pathOf);
  }
  return { value: undefined, complaints, broken: [[]] };
}

/** What is missing only because its name is misspelled is one mistake, not two. */
function withoutConsequences(complaints: readonly Complaint[]): Complaint[] {
  const beside = (path: BlockPath, name: string | undefined) => [...path.slice(0, -1), name].join('\u0000');
  const meant = new Set(complaints.flatMap(({ path, meant }) => (meant ? beside(path, meant) : [])));
  return complaints.filter(({ code, path }) => code !== 'missing-entry' || !meant.has(path.join('\u0000')));
}

function complain(issue: z.core.$ZodIssue, schema: z.ZodType): Complaint[] {
  const path = pathOf(issue);
  if (issue.code === 'unrecognized_keys') {
    const known = knownNames(schema, path);
    return issue.keys.map((key) => ({
      code: 'unknown-entry',
      message: unknownName(key, known),
      path: [...path, key],
      atKey: true,
      meant: meantBy(key, known),
    }));
  }
  if (issue.code === 'custom') {
    const code = (issue.params?.finding as Code | undefined) ?? 'bad-value';
    const missing = code === 'missing-entry';
    const name = path.at(-1);
    const message =
      missing && typeof name === 'string' ? `“${name}” is missing. ${issue.message}` : issue.message;
    const meant = issue.params?.meant as string | undefined;
    return [{ code, message, path, atKey: issue.params?.atKey === true, meant }];
  }
  const expected = issue.code === 'invalid_type' ? WANTED[issue.expected] : undefined;
  const message = expected ?? 'This value does not belong here.';
  return [{ code: 'bad-value', message, path, atKey: false }];
}

const WANTED: Readonly<Partial<Record<string, string>>> = {
  object: 'Write entries here, each with its name, a colon and a value.',
  array: 'Write a list here, each of its lines beginning with a dash.',
};

function pathOf({ path }: z.core.$ZodIssue): (string | number)[] {
  return path.map((step) => (typeof step === 'symbol' ? String(step) : step));
}

type Container = Record<string | number, Plain | undefined>;

function holds(value: Plain | undefined, path: BlockPath): boolean {
  const [step, ...rest] = path;
  if (step === undefined) return value !== undefined;
  if (typeof value !== 'object' || !Object.hasOwn(value, step)) return false;
  return holds((value as Container)[step], rest);
}

/** Leaves a gap in a list, so that the places of its other items stay true. */
function without(value: Plain | undefined, path: BlockPath): Plain | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return undefined;
  if (typeof value !== 'object' || !Object.hasOwn(value, step)) return value;
  const container = value as Container;
  const inner = without(container[step], rest);
  if (inner !== undefined || Array.isArray(value)) container[step] = inner;
  else delete container[step];
  return value;
}
