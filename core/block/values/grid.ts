import { readCount } from '../../quantity/read.ts';
import { isProblem, text } from './schema.ts';

/** Blocks across and down. */
export interface BlockGrid {
  readonly across: number;
  readonly down: number;
}

const EXAMPLES = ['3 x 4', '7 x 7'];
/** More blocks than any quilt has; a larger grid is a slip of the keyboard. */
const MOST = 500;

export const grid = text<BlockGrid>({ title: 'a grid, across x down', examples: EXAMPLES }, (raw) => {
  const match = /^(\S+)\s*(?:x|×|by)\s*(\S+)$/i.exec(raw);
  if (!match) return { problem: `A grid is written across x down, for example ${EXAMPLES[0]}.` };
  const [across, down] = [readCount(match[1] ?? ''), readCount(match[2] ?? '')];
  if (isProblem(across)) return across;
  if (isProblem(down)) return down;
  const [m, n] = [Number(across.value.valueOf()), Number(down.value.valueOf())];
  if (m < 1 || n < 1 || m > MOST || n > MOST)
    return { problem: `A grid has between 1 and ${MOST} blocks each way.` };
  return { across: m, down: n };
});
