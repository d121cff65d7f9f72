/**
 * The text of one fence -> plain values with positions.
 *
 * YAML 1.2 with the failsafe schema: every scalar stays the text that the author wrote, so that `2.50` keeps its
 * digits and no word turns into a truth value. Lengths and counts are read by our own rules afterwards.
 */
import {
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  parseDocument,
  type YAMLError,
} from 'yaml';
import type { Range } from '../findings/finding.ts';
import type { BlockPath } from './place.ts';

/** What a YAML node means to us: text, a list, or a mapping. */
export type Plain = string | Plain[] | { [key: string]: Plain };

export interface YamlProblem extends Range {
  readonly code: 'block-syntax' | 'duplicate-entry';
  readonly message: string;
}

/** Deeper nesting than any entry needs; refused so that hostile input cannot exhaust the stack. */
const DEEPEST = 12;

export class YamlBlock {
  readonly problems: readonly YamlProblem[];
  readonly value: Plain | undefined;
  readonly #document: Document;

  constructor(text: string) {
    const problems: YamlProblem[] = [];
    this.#document = parseDocument(text, { schema: 'failsafe', prettyErrors: false, strict: true });
    for (const error of this.#document.errors) problems.push(explain(error, text));
    this.value = toPlain(this.#document.contents, problems, 0);
    this.problems = problems;
  }

  /** The place of the value at `path`, or of the nearest entry around it. */
  place(path: BlockPath): Range | undefined {
    let range = valueRange(this.#document.contents);
    let node: unknown = this.#document.contents;
    for (const step of path) {
      node = child(node, step);
      const next = valueRange(node);
      if (!next) return range;
      range = next;
    }
    return range;
  }

  /** The place of the key that names `path`; for a list item, of the item. */
  keyPlace(path: BlockPath): Range | undefined {
    const parent = path.slice(0, -1).reduce<unknown>(child, this.#document.contents);
    const last = path.at(-1);
    if (!isMap(parent)) return this.place(path);
    const pair = parent.items.find((item) => keyText(item.key) === last);
    return valueRange(pair?.key) ?? this.place(path);
  }

  /** The path as far as the author's own text that stands there; `undefined` when the block does not say it. */
  statedPath(path: BlockPath): BlockPath | undefined {
    let node: unknown = this.#document.contents;
    for (const [depth, step] of path.entries()) {
      if (isScalar(node)) return path.slice(0, depth);
      node = child(node, step);
      if (!node) return undefined;
    }
    return path;
  }

  /** The path of the innermost entry whose key or value holds `offset`. */
  pathAt(offset: number): BlockPath {
    const path: (string | number)[] = [];
    let node: unknown = this.#document.contents;
    for (;;) {
      if (isMap(node)) {
        const pair = node.items.find((item) => holds(item.key, offset) || holds(item.value, offset));
        const key = pair && keyText(pair.key);
        if (!pair || key === undefined) return path;
        path.push(key);
        node = pair.value;
      } else if (isSeq(node)) {
        const index = node.items.findIndex((item) => holds(item, offset));
        if (index < 0) return path;
        path.push(index);
        node = node.items[index];
      } else return path;
    }
  }
}

/** `undefined` for what was refused and reported; an empty value is empty text. */
function toPlain(node: unknown, problems: YamlProblem[], depth: number): Plain | undefined {
  const range = valueRange(node);
  const refuse = (message: string) => {
    problems.push({ code: 'block-syntax', message, ...(range ?? { start: 0, end: 0 }) });
    return undefined;
  };
  if (node === null || node === undefined) return '';
  if (depth > DEEPEST) return refuse('The entries are nested too deeply to be a pattern.');
  if (isAlias(node))
    return refuse('A reference with * is not part of the measure block; write the value itself.');
  if (isScalar(node)) return String(node.value ?? '');
  // A refused item leaves empty text, so that the places of the others stay true.
  if (isSeq(node)) return node.items.map((item) => toPlain(item, problems, depth + 1) ?? '');
  if (!isMap(node)) return refuse('This is not an entry.');
  const result: { [key: string]: Plain } = Object.create(null);
  for (const pair of node.items) {
    const key = keyText(pair.key);
    if (key === undefined || key === '') {
      const at = valueRange(pair.key) ?? range ?? { start: 0, end: 0 };
      problems.push({ code: 'block-syntax', message: 'An entry begins with its name and a colon.', ...at });
    } else if (!(key in result)) {
      const value = toPlain(pair.value, problems, depth + 1);
      if (value !== undefined) result[key] = value;
    }
  }
  return result;
}

function child(node: unknown, step: string | number): unknown {
  if (isMap(node)) return node.items.find((item) => keyText(item.key) === String(step))?.value;
  if (isSeq(node) && typeof step === 'number') return node.items[step];
  return undefined;
}

function keyText(key: unknown): string | undefined {
  return isScalar(key) ? String(key.value ?? '') : undefined;
}

function valueRange(node: unknown): Range | undefined {
  const range = (node as Node | null | undefined)?.range;
  return range ? { start: range[0], end: range[1] } : undefined;
}

function holds(node: unknown, offset: number): boolean {
  const range = valueRange(node);
  return range !== undefined && range.start <= offset && offset <= range.end;
}

/** What the commonest YAML errors mean to someone who has never heard of YAML. */
const WORDS: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  BAD_INDENT: 'This line is not indented like the lines it belongs to.',
  TAB_AS_INDENT: 'A tab stands where spaces must: indent with spaces.',
  DUPLICATE_KEY: 'This entry stands in the block twice; the first one counts.',
  MISSING_CHAR: 'A bracket, a comma, a quotation mark or the space behind a colon is missing here.',
  UNEXPECTED_TOKEN: 'This cannot stand here; put quotation marks around the value if it is meant so.',
  MULTILINE_IMPLICIT_KEY: 'A name and its colon must stand on one line; perhaps the colon is missing.',
  IMPOSSIBLE: 'This cannot be read; look for a missing bracket or quotation mark above.',
  MULTIPLE_DOCS: 'One block holds one pattern: a line of three dashes cannot stand here.',
};

function explain(error: YAMLError, text: string): YamlProblem {
  const [start, end] = error.pos;
  const at = Math.min(start, text.length);
  if (error.code === 'DUPLICATE_KEY') {
    const key = /[^:\r\n]*/y;
    key.lastIndex = at;
    const name = key.exec(text)?.[0].trimEnd() ?? '';
    return { code: 'duplicate-entry', message: WORDS.DUPLICATE_KEY ?? '', start: at, end: at + name.length };
  }
  return {
    code: 'block-syntax',
    message: WORDS[error.code] ?? 'This part of the block cannot be read.',
    start: at,
    end: Math.max(at, Math.min(end, text.length)),
  };
}
