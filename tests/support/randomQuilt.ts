/** Random tops that are built from blocks: what the blocks are made of, and how they are put together. */
import fc from 'fast-check';
import { length } from './randomLength.ts';

/** Square blocks of cells × cells cells, laid out with sashing and borders. Lengths as in `RandomPattern`. */
export interface Pieced {
  readonly kind: 'pieced';
  readonly cell: number;
  readonly cells: number;
  /** All of one size; two only where every size takes two or more. */
  readonly blocks: readonly Block[];
  readonly grids: readonly (readonly [number, number])[];
  readonly onPoint: boolean;
  readonly sashing:
    | { readonly finished: number; readonly around: boolean; readonly stones: string }
    | undefined;
  readonly borders: readonly {
    readonly finished: number;
    readonly corners: string | undefined;
    readonly along: string | undefined;
  }[];
}

export interface Block {
  readonly name: string;
  readonly parts: readonly Part[];
  /** How many are made of each size; left out, it follows from the layout. */
  readonly make?: readonly number[];
}

/** Units or pieces of a block, so many cells wide and long. */
export interface Part {
  /** As the block says it: `unit: flying geese`. */
  readonly what: string;
  readonly wide: number;
  readonly long: number;
  readonly count: number;
  readonly from: string;
  readonly method?: string | undefined;
  /** Whether it is sewn from two strips, each half a cell wide. */
  readonly strips?: boolean;
}

type Kind = Omit<Part, 'count'>;

/** Each fills one cell. */
const SINGLE: readonly Kind[] = [
  ...[undefined, 'two at a time', 'eight at a time', 'cut triangles', 'two at a time, trimmed'].map(
    (method): Kind => ({ what: 'unit: half-square triangles', wide: 1, long: 1, from: '[A, B]', method }),
  ),
  { what: 'unit: hourglasses', wide: 1, long: 1, from: '[B, A]' },
  { what: 'unit: square in a square', wide: 1, long: 1, from: '[A, B]', method: 'cut triangles' },
  { what: 'unit: strip sets', wide: 1, long: 1, from: '[A, B]', strips: true },
  { what: 'unit: squares', wide: 1, long: 1, from: 'A' },
  { what: 'piece: patch', wide: 1, long: 1, from: 'B' },
];

/** Each fills two cells that lie side by side. */
const DOUBLE: readonly Kind[] = [
  ...[undefined, 'four at a time', 'stitch and flip', 'cut triangles'].map(
    (method): Kind => ({ what: 'unit: flying geese', wide: 2, long: 1, from: '[A, B]', method }),
  ),
  { what: 'unit: rectangles', wide: 1, long: 2, from: 'B' },
  { what: 'piece: bar', wide: 1, long: 2, from: 'A' },
];

const named = (kinds: readonly Kind[]) =>
  fc.uniqueArray(fc.constantFrom(...kinds), { minLength: 1, maxLength: 2, selector: ({ what }) => what });

/** Parts that fill a block: some of two cells, row by row, and all the rest of one. */
function partsFilling(cells: number): fc.Arbitrary<readonly Part[]> {
  return fc
    .record({
      doubles: fc.integer({ min: 0, max: cells * Math.floor(cells / 2) }),
      double: named(DOUBLE),
      single: named(SINGLE),
      share: fc.integer({ min: 1, max: 3 }),
    })
    .map(({ doubles, double, single, share }) =>
      [...shared(double, doubles, share), ...shared(single, cells * cells - 2 * doubles, share)].filter(
        ({ count }) => count > 0,
      ),
    );
}

/** A number divided between the kinds. */
function shared(kinds: readonly Kind[], count: number, share: number): Part[] {
  const [first, second] = kinds;
  if (!first) return [];
  if (!second) return [{ ...first, count }];
  const part = Math.ceil((count * share) / 4);
  return [
    { ...first, count: part },
    { ...second, count: count - part },
  ];
}

/** How many blocks a layout takes. */
export function blocksTaken([across, down]: readonly [number, number], onPoint: boolean): number {
  return across * down + (onPoint ? (across - 1) * (down - 1) : 0);
}

export function pieced(metric: boolean, sizes: number): fc.Arbitrary<Pieced> {
  const side = fc.integer({ min: 1, max: 6 });
  return fc.integer({ min: 2, max: 4 }).chain((cells) =>
    fc
      .record({
        kind: fc.constant('pieced' as const),
        cell: length(metric, 1, 4),
        cells: fc.constant(cells),
        parts: fc.array(partsFilling(cells), { minLength: 1, maxLength: 2 }),
        grids: fc.array(fc.tuple(side, side), { minLength: sizes, maxLength: sizes }),
        onPoint: fc.boolean(),
        sashing: fc.option(
          fc.record({
            finished: length(metric, 1, 3),
            around: fc.boolean(),
            stones: fc.constantFrom('A', 'C'),
          }),
          { nil: undefined },
        ),
        borders: fc.array(
          fc.record({
            finished: length(metric, 1, 6),
            corners: fc.constantFrom(undefined, 'butted', 'mitred', 'corner squares'),
            along: fc.constantFrom(undefined, undefined, 'width', 'length'),
          }),
          { maxLength: 2 },
        ),
      })
      .map(({ parts, ...rest }) => ({ ...rest, blocks: blocksOf(parts, rest.grids, rest.onPoint) })),
  );
}

function blocksOf(
  parts: readonly (readonly Part[])[],
  grids: Pieced['grids'],
  onPoint: boolean,
): readonly Block[] {
  const taken = grids.map((grid) => blocksTaken(grid, onPoint));
  const [first = [], second] = parts;
  if (!second || taken.some((count) => count < 2)) return [{ name: 'Ripple', parts: first }];
  return made([first, second], taken);
}

function made([first, second]: readonly [readonly Part[], readonly Part[]], taken: readonly number[]) {
  return [
    { name: 'Ripple', parts: first, make: taken.map((count) => Math.ceil(count / 2)) },
    { name: 'Shore', parts: second, make: taken.map((count) => Math.floor(count / 2)) },
  ];
}

/** The same quilt, one row of blocks longer. */
export function oneRowLonger(top: Pieced): Pieced {
  const grids = top.grids.map(([across, down]) => [across, down + 1] as const);
  const [first, second] = top.blocks;
  const taken = grids.map((grid) => blocksTaken(grid, top.onPoint));
  const blocks = first && second ? made([first.parts, second.parts], taken) : top.blocks;
  return { ...top, grids, blocks };
}
