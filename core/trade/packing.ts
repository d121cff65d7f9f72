/** Whether rectangles can be laid side by side so that they fill a larger one exactly: the parts of a block. */
import { type Rational, ZERO } from '../quantity/rational.ts';

export interface Laid {
  readonly width: Rational;
  readonly length: Rational;
  /** Whole, 1 or more. */
  readonly count: number;
}

/** Steps after which the search gives up, so that equal blocks give equal answers on every computer. */
const WORK = 20_000;
/** Blocks of more units across, or of more parts, than this are not tried. */
const FINEST = 1000;

/**
 * An exact search for a layout without gaps and overlaps, each part lying either way.
 *
 * The layout grows from the bottom. Wherever it is lowest, and there as far left as possible, the lower left corner
 * of some part must lie, for nothing else can cover that place; so it is enough to try every kind of part there,
 * and where none leads to the end there is no layout. Equal outlines with equal parts left over are tried once.
 *
 * @returns `undefined` when the search was given up, or the areas differ.
 */
export function canBeFilled(
  block: { readonly width: Rational; readonly length: Rational },
  parts: readonly Laid[],
): boolean | undefined {
  const unit = [block, ...parts].flatMap(({ width, length }) => [width, length]).reduce((a, b) => a.gcd(b));
  const units = (side: Rational) => Number(side.div(unit).valueOf());
  const [width, height] = [units(block.width), units(block.length)];
  const area = parts.reduce((sum, part) => sum.add(part.width.mul(part.length).mul(part.count)), ZERO);
  const number = parts.reduce((sum, { count }) => sum + count, 0);
  if (!area.equals(block.width.mul(block.length)) || Math.max(width, height, number) > FINEST)
    return undefined;
  return new Search(width, height, kindsOf(parts, units)).run();
}

/** Parts of equal size are one kind; the largest are tried first. */
function kindsOf(parts: readonly Laid[], units: (side: Rational) => number): Kind[] {
  const kinds = new Map<string, Kind>();
  for (const part of parts) {
    const [short = 0, long = 0] = [units(part.width), units(part.length)].sort((a, b) => a - b);
    const left = (kinds.get(`${short} ${long}`)?.left ?? 0) + part.count;
    kinds.set(`${short} ${long}`, { width: long, height: short, left });
  }
  return [...kinds.values()].sort((a, b) => b.width * b.height - a.width * a.height);
}

interface Kind {
  readonly width: number;
  readonly height: number;
  left: number;
}

class Search {
  readonly #height: number;
  readonly #kinds: readonly Kind[];
  /** How high the layout is at each unit of the width. */
  readonly #tops: number[];
  readonly #hopeless = new Set<string>();
  #work = 0;

  constructor(width: number, height: number, kinds: readonly Kind[]) {
    this.#height = height;
    this.#kinds = kinds;
    this.#tops = new Array<number>(width).fill(0);
  }

  run(): boolean | undefined {
    const found = this.#fill();
    return this.#work > WORK ? undefined : found;
  }

  #fill(): boolean {
    const low = Math.min(...this.#tops);
    if (low === this.#height) return true;
    const key = this.#state();
    if (this.#hopeless.has(key)) return false;
    const at = this.#tops.indexOf(low);
    const end = this.#tops.findIndex((top, x) => x > at && top !== low);
    const room = (end < 0 ? this.#tops.length : end) - at;
    for (const kind of this.#kinds) {
      if (kind.left === 0) continue;
      const ways = kind.width === kind.height ? [false] : [false, true];
      for (const turned of ways) {
        const [across, up] = turned ? [kind.height, kind.width] : [kind.width, kind.height];
        if (across > room || low + up > this.#height) continue;
        if (++this.#work > WORK) return false;
        kind.left--;
        this.#tops.fill(low + up, at, at + across);
        const filled = this.#fill();
        this.#tops.fill(low, at, at + across);
        kind.left++;
        if (filled) return true;
      }
    }
    if (this.#work <= WORK) this.#hopeless.add(key);
    return false;
  }

  /** The outline as its steps, and what is left to lay. */
  #state(): string {
    const steps = this.#tops.flatMap((top, x) => (top === this.#tops[x - 1] ? [] : [`${x}:${top}`]));
    return `${steps.join()} ${this.#kinds.map(({ left }) => left).join()}`;
  }
}
