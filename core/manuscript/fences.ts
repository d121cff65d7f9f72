/** Fenced measure blocks. */
import type { Code } from 'mdast';
import { placeOf, type Sheet } from './inline.ts';
import { addRaw, linesOf } from './lines.ts';
import type { Fence } from './manuscript.ts';
import { TextMap } from './textMap.ts';

export function readFence(node: Code, sheet: Sheet): Fence {
  const { start, end } = placeOf(node, sheet);
  const content = linesOf(sheet.source, start, end)[0]?.next ?? end;
  const map = new TextMap();
  addRaw(map, sheet.source, content, end, node.value);
  const offsets = map.offsets(content);
  return {
    start,
    end,
    value: node.value,
    toSource: (offset) => offsets[Math.max(0, Math.min(offset, offsets.length - 1))] ?? content,
  };
}
