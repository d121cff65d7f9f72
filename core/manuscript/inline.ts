/** The inline content of a paragraph, heading or cell -> its text, and the comments inside. */
import type { Html, PhrasingContent } from 'mdast';
import { addRaw, addText, OBJECT } from './lines.ts';
import type { Comment } from './manuscript.ts';
import type { Words } from './markdown.ts';
import { readComment } from './tags.ts';
import { TextMap } from './textMap.ts';

/** What offsets are counted in: the source, and how far the tree's offsets lag behind it. */
export interface Sheet {
  readonly source: string;
  /** 1 behind a byte order mark, otherwise 0. */
  readonly shift: number;
}

interface Point {
  offset?: number | undefined;
}

export interface Placed {
  readonly position?: { start: Point; end: Point } | undefined;
}

export type Inline = PhrasingContent | Words;

export function placeOf({ position }: Placed, { shift }: Sheet): { start: number; end: number } {
  return { start: (position?.start.offset ?? 0) + shift, end: (position?.end.offset ?? 0) + shift };
}

export interface InlineText {
  readonly map: TextMap;
  readonly comments: readonly Comment[];
}

export function readInline(nodes: readonly Inline[], sheet: Sheet): InlineText {
  const reading: { map: TextMap; comments: Comment[] } = { map: new TextMap(), comments: [] };
  const open: Inline[] = [...nodes].reverse();
  for (let node = open.pop(); node; node = open.pop()) {
    if ('children' in node && !isBareAddress(node, sheet)) {
      for (let child = node.children.length - 1; child >= 0; child--)
        open.push(node.children[child] as Inline);
    } else addLeaf(node, sheet, reading);
  }
  return reading;
}

function addLeaf(node: Inline, sheet: Sheet, { map, comments }: { map: TextMap; comments: Comment[] }): void {
  const { start, end } = placeOf(node as Placed, sheet);
  switch (node.type) {
    case 'words':
      addText(map, sheet.source, start, end, node.value);
      break;
    case 'break':
      map.add('\n', start, end);
      break;
    case 'html': {
      const comment = inlineComment(node, sheet, map.length);
      if (comment) comments.push(comment);
      else if (/^<br/i.test(node.value)) map.add('\n', start, end);
      else if (/^<img/i.test(node.value)) map.add(OBJECT, start, end);
      break;
    }
    default:
      map.add(OBJECT, start, end);
  }
}

/** An address in the text, `https://…` or `<https://…>`: its digits are no numbers. */
function isBareAddress(node: Inline, sheet: Sheet): boolean {
  return node.type === 'link' && sheet.source[placeOf(node as Placed, sheet).start] !== '[';
}

function inlineComment(node: Html, sheet: Sheet, at: number): Comment | undefined {
  if (!node.value.startsWith('<!--')) return undefined;
  const { start, end } = placeOf(node, sheet);
  const map = new TextMap();
  addRaw(map, sheet.source, start, end, node.value, '\n');
  return commentIn(map, 0, map.length, at);
}

/** The comment from `start` to `end` in a text with its map; `undefined` for one that is the author's own. */
export function commentIn(
  map: TextMap,
  start: number,
  end: number,
  at: number | undefined,
): Comment | undefined {
  const [open, close] = [start + '<!--'.length, Math.max(end - '-->'.length, start + '<!--'.length)];
  const meaning = readComment(map.text.slice(open, close), (from, to) => map.range(open + from, open + to));
  return meaning && { ...map.range(start, end), at, meaning };
}
