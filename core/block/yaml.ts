/**
 * The text of one fence -> plain values with positions.
 *
 * YAML 1.2 with the failsafe schema: every scalar stays the text that the author wrote, so that `2.50` keeps its
 * digits and no word turns into a truth value. Lengths and counts are read by our own rules afterwards.
 */
import {
  Composer,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  Parser,
  type YAMLMap,
} from 'yaml';
import type { Range } from '../findings/finding.ts';
import { depthOf } from './nesting.ts';
import type { BlockPath } from './place.ts';
import { explain, visible } from './yamlErrors.ts';

/** What a YAML node means to us: text, a list, or a mapping. */
export type Plain = string | Plain[] | { [key: string]: Plain };

export interface YamlProblem extends Range {
  readonly code: 'block-syntax' | 'duplicate-entry';
  readonly message: string;
}

/** Deeper nesting than any entry needs. */
const DEEPEST = 12;
/** Deeper nesting than this is not even parsed, so that hostile input cannot exhaust the stack. */
const MOST_FOLLOWED = 200;

const TOO_DEEP = 'The entries are nested too deeply to be a pattern.';
const SECOND = 'One block holds one pattern: a line of three dashes cannot stand here.';
const TWICE = 'This entry stands in the block twice; the first one counts.';
/** Names that stand twice are found by `toPlain`: the parser compares each with every other. */
const OPTIONS = { schema: 'failsafe', strict: true, uniqueKeys: false } as const;

export class YamlBlock {
  readonly problems: readonly YamlProblem[];
  readonly value: Plain | undefined;
  readonly #text: string;
  readonly #contents: unknown;
  /** Where each entry begins. */
  #begins: readonly number[] | undefined;
  readonly #pairs = new Map<YAMLMap, ReadonlyMap<string, Pair>>();

  constructor(value: string) {
    // YAML ends a line at a carriage return too, as Markdown does; the parser does not.
    const text = value.replace(/\r(?!\n)/g, '\n');
    const problems: YamlProblem[] = [];
    const document = parse(text, problems);
    this.#contents = document?.contents;
    for (const error of document?.errors ?? []) {
      const problem = explain(error, text);
      // The parser goes on from the last mistake, and often stumbles over the same words again.
      if (problem.start >= (problems.at(-1)?.end ?? 0)) problems.push({ code: 'block-syntax', ...problem });
    }
    this.value = toPlain(this.#contents, problems, 0);
    this.problems = problems.map((problem) => ({ ...problem, ...visible(problem, text) }));
    this.#text = text;
  }

  /** The place of the value at `path`, or of the nearest entry around it; of its name where nothing stands behind it. */
  place(path: BlockPath): Range | undefined {
    let range = valueRange(this.#contents);
    let node = this.#contents;
    for (const step of path) {
      const key = valueRange(this.#pair(node, step)?.key);
      node = this.#child(node, step);
      const next = valueRange(node);
      if (!next) return range;
      range = next.start === next.end && key ? key : next;
    }
    return range;
  }

  /** The place of the text of a value, without quotation marks; `undefined` where it does not stand there as it is. */
  textPlace(path: BlockPath): Range | undefined {
    const node = path.reduce((inner, step) => this.#child(inner, step), this.#contents);
    const range = valueRange(node);
    if (!range || !isScalar(node)) return undefined;
    const text = String(node.value ?? '').trim();
    const start = this.#text.indexOf(text, range.start);
    return start >= 0 && start + text.length <= range.end ? { start, end: start + text.length } : undefined;
  }

  /** The place of the key that names `path`; for a list item, of the item. */
  keyPlace(path: BlockPath): Range | undefined {
    const parent = path.slice(0, -1).reduce((node, step) => this.#child(node, step), this.#contents);
    const last = path.at(-1);
    const key = last === undefined ? undefined : this.#pair(parent, last)?.key;
    return valueRange(key) ?? this.place(path);
  }

  /** The path as far as the author's own text that stands there; `undefined` when the block does not say it. */
  statedPath(path: BlockPath): BlockPath | undefined {
    let node = this.#contents;
    for (const [depth, step] of path.entries()) {
      if (isScalar(node)) return path.slice(0, depth);
      node = this.#child(node, step);
      if (!node) return undefined;
    }
    return path;
  }

  /** The text of the value at `path`, or of the nearest value around it; `undefined` when the block does not say it. */
  textAt(path: BlockPath): string | undefined {
    const node = this.statedPath(path)?.reduce((inner, step) => this.#child(inner, step), this.#contents);
    return isScalar(node) ? String(node.value ?? '').trim() : undefined;
  }

  /** The path of the innermost entry whose key or value holds `offset`. */
  pathAt(offset: number): BlockPath {
    const path: (string | number)[] = [];
    let node = this.#contents;
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

  /** The entries that a mistake may have spoiled: those in its lines, and the one that it cut short. */
  entriesAt({ start, end }: Range): string[] {
    if (!isMap(this.#contents)) return [];
    this.#begins ??= this.#contents.items.map(({ key }) => valueRange(key)?.start ?? 0);
    const begins = this.#begins;
    const around = begins.findLastIndex((begin) => begin <= start);
    const first = begins[around] === start ? around - 1 : around;
    const lineEnd = this.#text.indexOf('\n', Math.max(start, end - 1));
    const last = begins.findLastIndex((begin) => lineEnd < 0 || begin < lineEnd);
    const entries = this.#contents.items.slice(Math.max(0, first), last + 1);
    return entries.flatMap(({ key }) => keyText(key) ?? []);
  }

  #child(node: unknown, step: string | number): unknown {
    if (isSeq(node)) return typeof step === 'number' ? node.items[step] : undefined;
    return this.#pair(node, step)?.value;
  }

  /** The first of a name counts. */
  #pair(node: unknown, step: string | number): Pair | undefined {
    if (!isMap(node)) return undefined;
    let pairs = this.#pairs.get(node);
    if (!pairs) {
      pairs = new Map([...node.items].reverse().map((pair) => [keyText(pair.key) ?? '', pair]));
      this.#pairs.set(node, pairs);
    }
    return pairs.get(String(step));
  }
}

type Pair = YAMLMap['items'][number];

/** The document of the block, if the text can be followed safely. */
function parse(text: string, problems: YamlProblem[]): Document | undefined {
  const tokens = [...new Parser().parse(text)];
  if (depthOf(tokens) > MOST_FOLLOWED) {
    problems.push({ code: 'block-syntax', message: TOO_DEEP, start: 0, end: text.length });
    return undefined;
  }
  const [document, second] = new Composer(OPTIONS).compose(tokens, true, text.length);
  if (second) {
    const [start] = second.range;
    problems.push({ code: 'block-syntax', message: SECOND, start, end: start + '---'.length });
  }
  return document;
}

/** `undefined` for what was refused and reported; an empty value is empty text. */
function toPlain(node: unknown, problems: YamlProblem[], depth: number): Plain | undefined {
  const range = valueRange(node);
  const refuse = (message: string) => {
    problems.push({ code: 'block-syntax', message, ...(range ?? { start: 0, end: 0 }) });
    return undefined;
  };
  if (node === null || node === undefined) return '';
  if (depth > DEEPEST) return refuse(TOO_DEEP);
  if (isAlias(node))
    return refuse('A reference with * is not part of the measure block; write the value itself.');
  if ((node as Node).tag !== undefined)
    return refuse(
      'A word with an exclamation mark before it is not part of the measure block; write the value alone.',
    );
  if (isScalar(node)) return String(node.value ?? '');
  // A refused item leaves empty text, so that the places of the others stay true.
  if (isSeq(node)) return node.items.map((item) => toPlain(item, problems, depth + 1) ?? '');
  if (!isMap(node)) return refuse('This is not an entry.');
  const result: { [key: string]: Plain } = Object.create(null);
  const names = new Set<string>();
  for (const pair of node.items) {
    const key = keyText(pair.key);
    if (key === undefined || key === '') {
      const at = valueRange(pair.key) ?? range ?? { start: 0, end: 0 };
      problems.push({ code: 'block-syntax', message: 'An entry begins with its name and a colon.', ...at });
    } else if (names.has(key)) {
      const at = valueRange(pair.key) ?? range ?? { start: 0, end: 0 };
      problems.push({ code: 'duplicate-entry', message: TWICE, ...at });
    } else {
      names.add(key);
      const value = toPlain(pair.value, problems, depth + 1);
      if (value !== undefined) result[key] = value;
    }
  }
  return result;
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
