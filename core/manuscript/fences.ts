/** Fenced measure blocks. */
import type { Code } from 'mdast';
import { placeOf, type Sheet } from './inline.ts';
import { addRaw, linesOf } from './lines.ts';
import type { Fence } from './manuscript.ts';
import { TextMap } from './textMap.ts';

export function readFence(node: Code, sheet: Sheet): Fence {
  const { start, end } = placeOf(node, sheet);
  const [first, ...others] = linesOf(sheet.source, start, end);
  const content = first?.next ?? end;
  const map = new TextMap();
  addRaw(map, sheet.source, content, end, node.value);
  const offsets = map.offsets(content);
  const opening = sheet.source.slice(start, first?.end);
  const last = others.at(-1);
  const isClosed = last && closes(opening, sheet.source.slice(last.start, end)) && !OPENS.test(node.value);
  return {
    start,
    end,
    value: node.value,
    unclosed: isClosed ? undefined : { start, end: start + opening.trimEnd().length },
    toSource: (offset) => offsets[Math.max(0, Math.min(offset, offsets.length - 1))] ?? content,
  };
}

/** A line that opens another fence: where one is not closed, the next one's end closes both. */
const OPENS = /^[ \t]*(?:```|~~~)/m;

/** Whether a line, behind the marks of its containers, ends what the other one opens. */
function closes(opening: string, line: string): boolean {
  const marks = /^(`+|~+)/.exec(opening)?.[0] ?? '';
  const own = line.replace(/^[ \t>]*/, '').trimEnd();
  return marks !== '' && own.length >= marks.length && own === marks.charAt(0).repeat(own.length);
}
