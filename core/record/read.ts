/** The text of a record file -> the signatures in it, with a problem at its place for each that cannot be read. */
import { Composer, type Document, isNode, Parser, visit } from 'yaml';
import type { z } from 'zod';
import { depthOf } from '../block/nesting.ts';
import type { Range } from '../findings/finding.ts';
import type { KeptLine, KeptNumber } from '../proof/earlier/keptLine.ts';
import { type ReadSignature, SIGNATURE } from './schema.ts';
import type { Signature, SignedFigure } from './signature.ts';

/** Why a section cannot be read, in a sentence, and where. */
export interface RecordProblem extends Range {
  readonly message: string;
}

export interface SignatureRecord {
  /** The oldest first. */
  readonly signatures: readonly Signature[];
  readonly problems: readonly RecordProblem[];
}

/** Deeper than any signature; what is nested deeper is not followed. */
const DEEPEST = 20;

export function readRecord(text: string): SignatureRecord {
  const signatures: Signature[] = [];
  const problems: RecordProblem[] = [];
  const conflict = /^(?:<{7}|={7}|>{7})(?: .*)?$/m.exec(text);
  if (conflict) {
    const message =
      'Two versions of this file were put together here and not merged: keep the sections of both, and delete the lines of the marks.';
    return { signatures, problems: [{ ...from(conflict.index, conflict[0].length), message }] };
  }
  const tokens = [...new Parser().parse(text)];
  if (depthOf(tokens) > DEEPEST)
    return {
      signatures,
      problems: [{ start: 0, end: text.length, message: 'This is no record of signatures.' }],
    };
  for (const document of new Composer({ schema: 'core', uniqueKeys: true }).compose(
    tokens,
    false,
    text.length,
  )) {
    const read = readSection(document, text);
    if (read && 'message' in read) problems.push(read);
    else if (read) signatures.push(read);
  }
  return { signatures, problems };
}

/** @returns `undefined` for an empty section */
function readSection(document: Document.Parsed, text: string): Signature | RecordProblem | undefined {
  const [error] = document.errors;
  if (error) {
    const start = Math.min(error.pos[0], Math.max(0, text.length - 1));
    return {
      ...from(start, 1),
      message: 'This signature cannot be read from here on, so it does not count.',
    };
  }
  if (document.contents === null) return undefined;
  const alias = aliasIn(document);
  if (alias)
    return { ...alias, message: 'This signature does not count: a reference with * cannot stand here.' };
  const { data, error: refused } = SIGNATURE.safeParse(document.toJS());
  if (data) return toSignature(data);
  const issue = refused.issues[0] as z.core.$ZodIssue;
  return { ...placeOf(document, issue.path), message: complaint(issue) };
}

/** The program writes none, and a few of them can stand for more than a machine can hold. */
function aliasIn(document: Document.Parsed): Range | undefined {
  let found: Range | undefined;
  visit(document, {
    Alias: (_, { range }) => {
      found = range ? { start: range[0], end: range[1] } : undefined;
      return visit.BREAK;
    },
  });
  return found;
}

function complaint({ path, message, code }: z.core.$ZodIssue): string {
  const name = path.map((step) => (typeof step === 'number' ? step + 1 : String(step))).join('.');
  if (code === 'custom') return `This signature does not count: ${message}`;
  return name === ''
    ? 'This section is no signature, so it does not count.'
    : `This signature does not count: “${name}” cannot be read.`;
}

/** The value at a path, or the nearest one around it. */
function placeOf(document: Document.Parsed, path: readonly PropertyKey[]): Range {
  for (let length = path.length; length >= 0; length--) {
    const node = document.getIn(path.slice(0, length), true);
    if (isNode(node) && node.range) return { start: node.range[0], end: node.range[1] };
  }
  return { start: document.range[0], end: document.range[1] };
}

function from(start: number, length: number): Range {
  return { start, end: start + length };
}

function toSignature(read: ReadSignature): Signature {
  const { on, text, system, sizes, inputs, figures, lines } = read;
  return {
    by: read['signed by'],
    on,
    digest: text,
    system,
    sizes,
    inputs: Object.values(inputs).map(({ at, is }) => ({ path: at, text: is })),
    figures: new Map(Object.entries(figures).map(([id, figure]) => [id, toFigure(figure, sizes)])),
    lines: lines.map(toLine),
  };
}

function toFigure(figure: ReadSignature['figures'][string], sizes: readonly string[]): SignedFigure {
  const [rule, value] =
    'is' in figure ? (['exact', figure.is] as const) : (['at least', figure['at least']] as const);
  const values = sizes.flatMap((size): [string, string][] => {
    const text = typeof value === 'string' ? value : value[size];
    return text === undefined ? [] : [[size, text]];
  });
  return { rule, values: new Map(values), from: figure.from.map((number) => number - 1) };
}

function toLine({ under = [], step = '', row, text, numbers }: ReadSignature['lines'][number]): KeptLine {
  return { text, headings: under, step, isRow: row === true, numbers: numbers.map(toNumber) };
}

function toNumber(read: ReadSignature['lines'][number]['numbers'][number]): KeptNumber {
  const { at, is, verified, accepted, figure, size, column } = read;
  return {
    start: at,
    end: at + is.length,
    account: verified !== undefined ? 'verified' : (accepted ?? 'not-measurement'),
    figure: verified ?? figure,
    size,
    column,
  };
}
