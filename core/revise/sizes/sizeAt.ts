/** The size that the author points at: in the block, or in the head of a table. */
import type { Range } from '../../findings/finding.ts';
import type { Proof } from '../../proof/proof.ts';
import { SizeWords } from './sizeWords.ts';

export interface SizePlace extends Range {
  readonly size: string;
}

/** @returns the name and the place where it stands; `undefined` where no size is named */
export function sizeAt({ manuscript, pattern }: Proof, offset: number): SizePlace | undefined {
  const names = pattern.entries.sizes ?? [];
  const path = pattern.pathAt(offset);
  if (path) {
    const last = path.at(-1);
    const size = path[0] === 'sizes' && typeof last === 'number' ? names[last] : last;
    const place = path[0] === 'sizes' ? pattern.textPlace(path) : pattern.keyPlace(path);
    if (typeof size !== 'string' || !names.includes(size) || !place) return undefined;
    return holds(place, offset) ? { size, ...place } : undefined;
  }
  const words = new SizeWords(names);
  for (const passage of manuscript.passages) {
    if (passage.context.cell?.row !== 0) continue;
    for (const { size, start, end } of words.in(passage.text)) {
      const [place, ...more] = passage.toSource(start, end);
      if (more.length === 0 && holds(place, offset)) return { size, ...place };
    }
  }
  return undefined;
}

function holds({ start, end }: Range, offset: number): boolean {
  return start <= offset && offset <= end;
}
