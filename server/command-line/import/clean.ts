/** A web page, or what a word processor's file became, without all that is no part of a manuscript. */
import type { Comment, Element, ElementContent, Root, RootContent, Text } from 'hast';
import { readComment } from '../../../core/manuscript/tags.ts';
import { mendFractions, type Note } from './fractions.ts';

/** Stands in front of every place that has a note, until the Markdown is written. No text of the world holds it. */
export const MARK = '\ufdd0';

export interface Cleaning {
  /** In the order of the marks. */
  readonly notes: Note[];
  /** What was left out, and how often. */
  readonly dropped: Map<string, number>;
}

/** What holds no sentence of the author, or runs. */
const DROPPED: Readonly<Record<string, string>> = {
  script: 'a script',
  style: 'a style sheet',
  link: 'a style sheet',
  template: 'a hidden part',
  iframe: 'an embedded page',
  object: 'an embedded object',
  embed: 'an embedded object',
  svg: 'a picture',
  canvas: 'a picture',
  video: 'a film',
  audio: 'a recording',
  form: 'a form',
  input: 'a form',
  button: 'a form',
  select: 'a form',
  textarea: 'a form',
};
/** Adjacent ones are one, cut in two by the program that wrote the file. */
const PHRASING = new Set(['strong', 'b', 'em', 'i', 'u', 'sup', 'sub']);
const SAFE_ADDRESS = /^(?:https?:|mailto:|[^:]*$|[^:]*[/?#])/i;

/** Changes the tree. */
export function clean(tree: Root): Cleaning {
  const cleaning: Cleaning = { notes: [], dropped: new Map() };
  tree.children = cleaned(tree.children, cleaning, false) as RootContent[];
  return cleaning;
}

function cleaned(
  nodes: readonly (RootContent | ElementContent)[],
  cleaning: Cleaning,
  isCode: boolean,
): (RootContent | ElementContent)[] {
  const kept = joined(nodes.flatMap((node) => keep(node, cleaning)));
  return kept.map((node) => {
    if (node.type === 'text') return isCode ? node : mended(node, cleaning);
    if (node.type !== 'element') return node;
    const children = cleaned(node.children, cleaning, isCode || /^(?:code|pre)$/.test(node.tagName));
    return { ...node, children: (isCell(node) ? inOneLine(children) : children) as ElementContent[] };
  });
}

function keep(
  node: RootContent | ElementContent,
  { dropped }: Cleaning,
): readonly (RootContent | ElementContent)[] {
  const drop = (what: string) => {
    dropped.set(what, (dropped.get(what) ?? 0) + 1);
    return [];
  };
  if (node.type === 'text') return [{ ...node, value: node.value.replaceAll(MARK, '') }];
  if (node.type === 'comment') return isOurs(node) ? [node] : [];
  if (node.type !== 'element') return [node];
  // A list to tick off is a list of the author's.
  if (node.tagName === 'input' && node.properties.type === 'checkbox') return [node];
  const what = DROPPED[node.tagName];
  if (what !== undefined) return drop(what);
  if (node.tagName === 'img' && !/^(?!data:)./i.test(String(node.properties.src ?? '')))
    return drop('a picture');
  if (node.tagName === 'a' && !SAFE_ADDRESS.test(String(node.properties.href ?? '').trim())) {
    drop('an unsafe link');
    return node.children;
  }
  if (node.tagName === 'sup' || node.tagName === 'sub') return levelled(node);
  return [node];
}

/** Comments of word processors are of no use; tags of ours are the author's own work. */
function isOurs({ value }: Comment): boolean {
  return readComment(value, (start, end) => ({ start, end })) !== undefined;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

/** Raised and lowered digits keep their place as letters: Markdown would make 5² a 52. */
function levelled({ tagName, children }: Element): ElementContent[] {
  const digits = tagName === 'sup' ? RAISED : LOWERED;
  return children.map((child) =>
    child.type === 'text' && /^[\d\s/⁄]+$/.test(child.value)
      ? { ...child, value: child.value.replace(/\d/g, (digit) => digits[Number(digit)] ?? digit).trim() }
      : child,
  );
}

/** Neighbours that are one text, or one emphasis. */
function joined(nodes: readonly (RootContent | ElementContent)[]): (RootContent | ElementContent)[] {
  const result: (RootContent | ElementContent)[] = [];
  for (const node of nodes) {
    const last = result.at(-1);
    if (last?.type === 'text' && node.type === 'text') {
      result.splice(-1, 1, { ...last, value: last.value + node.value });
    } else if (
      last?.type === 'element' &&
      node.type === 'element' &&
      last.tagName === node.tagName &&
      PHRASING.has(node.tagName)
    ) {
      result.splice(-1, 1, { ...last, children: [...last.children, ...node.children] });
    } else {
      result.push(node);
    }
  }
  return result;
}

function mended(node: Text, { notes }: Cleaning): Text {
  const { text, notes: found } = mendFractions(node.value);
  let [value, last] = ['', 0];
  for (const { at, ...note } of found) {
    value += text.slice(last, at) + MARK;
    last = at;
    notes.push(note);
  }
  return { ...node, value: value + text.slice(last) };
}

function isCell({ tagName }: Element): boolean {
  return tagName === 'td' || tagName === 'th';
}

/** A cell of a Markdown table holds one line: its paragraphs stand in it with a break between them. */
function inOneLine(nodes: readonly (RootContent | ElementContent)[]): (RootContent | ElementContent)[] {
  const lines: (RootContent | ElementContent)[][] = [[]];
  const walk = (children: readonly (RootContent | ElementContent)[]) => {
    for (const child of children) {
      const isBlock = child.type === 'element' && /^(?:p|div|ul|ol|li|h[1-6])$/.test(child.tagName);
      if (isBlock) {
        lines.push([]);
        walk(child.children);
        lines.push([]);
      } else if (child.type === 'element' && child.tagName === 'br') lines.push([]);
      else lines.at(-1)?.push(child);
    }
  };
  walk(nodes);
  const filled = lines.filter((line) => line.some((one) => one.type !== 'text' || one.value.trim() !== ''));
  return filled.flatMap((line, index) => (index === 0 ? line : [CELL_BREAK, ...line]));
}

/** What the converter to Markdown turns into `<br>`. */
const CELL_BREAK: Element = { type: 'element', tagName: 'br', properties: { dataCell: '' }, children: [] };
