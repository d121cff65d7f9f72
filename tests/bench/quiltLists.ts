/**
 * Made-up cutting lists of one fabric, as patterns have them: everything on a common grid, so that there are few
 * widths of strips and many pieces of each; patchwork squares, squares for triangles, logs and sashes, borders and
 * binding. All sizes are whole eighths of an inch.
 */
import { rational } from '../../core/quantity/rational.ts';
import type { CutPiece } from '../../core/trade/plan/fabric.ts';

/** Added to a finished size, in eighths: seams; half-square and quarter-square triangles from squares. */
const [SEAMS, HALVES, QUARTERS] = [4, 7, 10];
const USABLE = 320;

/** A multiplicative congruential generator, so that every run plans the same lists. */
class Dice {
  #state: number;

  constructor(start: number) {
    this.#state = start * 7919 + 20_250;
    for (let i = 0; i < 5; i++) this.below(2);
  }

  below(n: number): number {
    this.#state = (this.#state * 48_271) % 2_147_483_647;
    return this.#state % n;
  }

  pick<T>(items: readonly [T, ...T[]]): T {
    return items[this.below(items.length)] ?? items[0];
  }
}

type Size = readonly [width: number, length: number, count: number];

/** So many lists of so many different sizes. */
export function quiltLists(kinds: number, start: number, lists: number): CutPiece[][] {
  const dice = new Dice(start);
  return Array.from({ length: lists }, () => quiltList(kinds, dice));
}

/** Fewer copies of each where all of them would take more yards of one fabric than a quilt does. */
function noMoreThan(yards: number, list: readonly CutPiece[]): CutPiece[] {
  const area = list.reduce((sum, { width, length, count }) => sum + width.mul(length).valueOf() * count, 0);
  const factor = Math.min(1, (yards * 36 * USABLE) / 8 / area);
  return list.map((piece) => ({ ...piece, count: Math.max(1, Math.round(piece.count * factor)) }));
}

function quiltList(kinds: number, dice: Dice): CutPiece[] {
  const grid = dice.pick([8, 12, 16, 20, 24]);
  const block = grid * (3 + dice.below(4));
  const sash = dice.pick([8, 12, 16]);
  const border = dice.pick([16, 24, 32, 40, 48]);
  const copies = 4 * (2 + dice.below(11)); // of a piece that each block has once
  const shapes: [() => Size, ...(() => Size)[]] = [
    () => square(grid * (1 + dice.below(4)) + SEAMS, copies * (1 + dice.below(4))),
    () => square(grid * (1 + dice.below(3)) + HALVES, (copies / 2) * (1 + dice.below(4))),
    () => square(grid * (2 + dice.below(3)) + QUARTERS, Math.ceil(copies / 4)),
    () => log(grid, 2 + dice.below(9), copies * (1 + dice.below(2))),
    () => log(grid, 2 + dice.below(9), copies * (1 + dice.below(2))),
    () => log(2 * grid, 3 + dice.below(4), copies),
    () => [sash + SEAMS, block + SEAMS, copies + 2 * dice.below(8)],
    () => square(sash + SEAMS, copies - dice.below(8)),
    () => [sash + SEAMS, Math.min(USABLE, (block + sash) * (2 + dice.below(3)) + SEAMS), 2 + dice.below(6)],
    () => [border + SEAMS, Math.min(USABLE, block * (2 + dice.below(6)) + SEAMS), 2 * (1 + dice.below(2))],
    () => square(border + SEAMS, 4),
    () => [dice.pick([18, 20]), USABLE, 4 + dice.below(6)],
    () => square(Math.ceil(block * Math.SQRT2) + QUARTERS, 1 + dice.below(4)),
  ];
  const list = new Map<string, CutPiece>();
  for (let tries = 0; list.size < kinds; tries++) {
    // A list longer than one grid has sizes for goes on with other blocks, as a sampler does.
    const other = tries > 12 * kinds ? 4 * (1 + dice.below(8)) : 0;
    const [width, length, count] = dice.pick(shapes)();
    const [wide, long] = [width + other, Math.min(USABLE, length + (width === length ? other : 0))];
    const id = `${wide} x ${long}`;
    if (wide > USABLE || list.has(id)) continue;
    list.set(id, { id, width: rational(wide, 8), length: rational(long, 8), count });
  }
  return noMoreThan(2 + dice.below(9), [...list.values()]);

  function log(width: number, times: number, count: number): Size {
    return [width + SEAMS, Math.min(USABLE, grid * times + SEAMS), count];
  }

  function square(side: number, count: number): Size {
    return [side, side, count];
  }
}
