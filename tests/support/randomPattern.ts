/** Random patterns that contradict themselves nowhere, as the text of a measure block. */
import fc from 'fast-check';
import { length } from './randomLength.ts';
import { type Pieced, pieced } from './randomQuilt.ts';

export { blockOf } from './patternText.ts';

/** All lengths are whole counts of a sixteenth of an inch, or of a millimetre in a metric house. */
export interface RandomPattern {
  readonly metric: boolean;
  readonly sizes: readonly string[];
  readonly house: Readonly<Record<string, string | number>>;
  /** Lengths, and words as the block says them. */
  readonly fabrics: Readonly<Record<string, Readonly<Record<string, string | number>>>>;
  readonly top: Shaped | Pieced;
  readonly pieces: readonly OwnPiece[];
  readonly entries: readonly Entry[];
}

interface Shaped {
  readonly kind: 'shaped';
  /** One for each size. */
  readonly shapes: readonly Shape[];
}

export interface Shape {
  readonly word: string;
  readonly lengths: readonly number[];
  readonly curved: boolean;
}

/** A piece that belongs to no block. */
interface OwnPiece {
  readonly name: string;
  readonly width: number;
  readonly length: number;
  /** One for each size. */
  readonly counts: readonly number[];
  readonly from: string;
  readonly along: string | undefined;
}

interface Entry {
  readonly name: string;
  readonly parts: Readonly<Record<string, string | number | readonly number[]>>;
}

const NAMES = [['wall', 'throw', 'queen'], ['small', 'large'], ['lap', 'twin', 'king'], ['']];

const shapeOf = (metric: boolean, word: string): fc.Arbitrary<Shape> => {
  const side = length(metric, 14, 90, 8);
  const curved = !['', 'square', 'hexagon', 'octagon'].includes(word);
  const shape = (lengths: fc.Arbitrary<readonly number[]>) =>
    lengths.map((found) => ({ word, lengths: found, curved }));
  switch (word) {
    case '':
    case 'oval':
      return shape(fc.tuple(side, side));
    case 'rounded':
      return shape(fc.tuple(side, side, length(metric, 1, 6)));
    case 'scalloped':
      return shape(fc.tuple(side, side, length(metric, 1 / 2, 3 / 4)));
    case 'hexagon':
    case 'octagon':
      return shape(fc.tuple(length(metric, 6, 20)));
    default:
      return shape(fc.tuple(side));
  }
};

function shaped(metric: boolean, sizes: number): fc.Arbitrary<Shaped> {
  return fc
    .constantFrom('', 'square', 'circle', 'oval', 'hexagon', 'octagon', 'rounded', 'scalloped')
    .chain((word) => fc.array(shapeOf(metric, word), { minLength: sizes, maxLength: sizes }))
    .map((shapes) => ({ kind: 'shaped', shapes }));
}

const houseOf = (metric: boolean) =>
  fc
    .record(
      {
        'usable width': length(metric, 38, 44, 16),
        'cut to': fc.constant(metric ? 5 : 2),
        'sell by': fc.constantFrom(...(metric ? [50, 100] : [72, 144])),
        squaring: length(metric, 1, 2),
        'generous over': length(metric, 9, 36),
        join: fc.constantFrom('diagonal', 'straight'),
        'joining allowance': length(metric, 8, 14),
        overhang: length(metric, 2, 5),
        'backing seam': fc.constant(metric ? 10 : 8),
        // The rule of thumb gives too little most of the time, which is a finding.
        'bias square by': fc.constant('yield'),
      },
      { requiredKeys: [] },
    )
    .map((rules) => ({ seam: metric ? 10 : 4, ...rules }));

const entriesOf = (metric: boolean, sizes: number, curved: boolean): fc.Arbitrary<readonly Entry[]> => {
  const strip = length(metric, 2, 3, 2);
  const perSize = fc.oneof(strip, fc.array(strip, { minLength: sizes, maxLength: sizes }));
  const grain = curved ? fc.constant('bias') : fc.constantFrom('straight', 'bias');
  const entry = <T extends Entry['parts']>(name: string, parts: fc.Arbitrary<T>): fc.Arbitrary<Entry> =>
    parts.map((found) => ({ name, parts: found }));
  return fc
    .tuple(
      entry(
        'binding',
        fc.record(
          {
            from: fc.constant('A'),
            strip: sizes > 1 ? perSize : strip,
            grain,
            'cut as': fc.constantFrom('one square', 'strips'),
            join: fc.constantFrom('diagonal', 'straight'),
          },
          { requiredKeys: ['strip'] },
        ),
      ),
      entry('piping', fc.record({ cord: length(metric, 1 / 8, 1 / 2, 2) })),
      entry(
        'backing',
        fc.record(
          {
            from: fc.constant('B'),
            overhang: length(metric, 2, 4),
            seams: fc.constantFrom('vertical', 'horizontal'),
          },
          { requiredKeys: [] },
        ),
      ),
      entry('batting', fc.record({ overhang: length(metric, 1, 4) }, { requiredKeys: [] })),
      entry(
        'sleeve',
        fc.record(
          { 'finished depth': length(metric, 2, 5), 'short of edge': length(metric, 1 / 4, 3 / 4) },
          { requiredKeys: ['finished depth'] },
        ),
      ),
    )
    .chain((all) => fc.subarray(all));
};

/** Small pieces, which fit on a fat quarter too, and long ones along the selvage. */
function piecesOf(metric: boolean, sizes: number): fc.Arbitrary<readonly OwnPiece[]> {
  const counts = fc.array(fc.integer({ min: 1, max: 12 }), { minLength: sizes, maxLength: sizes });
  const own = (piece: { [Key in keyof Omit<OwnPiece, 'counts'>]: fc.Arbitrary<OwnPiece[Key]> }) =>
    fc.record({ ...piece, counts });
  return fc
    .tuple(
      own({
        name: fc.constant('label'),
        width: length(metric, 1, 8),
        length: length(metric, 1, 8),
        from: fc.constant('C'),
        along: fc.constantFrom(undefined, 'width', 'length'),
      }),
      own({
        name: fc.constant('streamer'),
        width: length(metric, 1, 4),
        length: length(metric, 20, 60),
        from: fc.constantFrom('A', 'B'),
        along: fc.constant('length'),
      }),
    )
    .chain((all) => fc.subarray(all));
}

export const randomPattern: fc.Arbitrary<RandomPattern> = fc
  .record({ metric: fc.boolean(), sizes: fc.constantFrom(...NAMES) })
  .chain(({ metric, sizes }) =>
    fc
      .oneof<fc.Arbitrary<Shaped | Pieced>[]>(shaped(metric, sizes.length), pieced(metric, sizes.length))
      .chain((top) =>
        fc.record({
          metric: fc.constant(metric),
          sizes: fc.constant(sizes),
          house: houseOf(metric),
          fabrics: fc.record({
            A: fc.constant({}),
            B: fc.constant({ 'usable width': metric ? 1100 : 43 * 16 }),
            C: fc.constantFrom<Readonly<Record<string, string>>>(
              {},
              { directional: 'yes' },
              { 'cut from': 'fat quarters' },
            ),
          }),
          top: fc.constant(top),
          pieces: piecesOf(metric, sizes.length),
          entries: entriesOf(
            metric,
            sizes.length,
            top.kind === 'shaped' && top.shapes.some(({ curved }) => curved),
          ),
        }),
      ),
  );

/** The same pattern with every rule of the house stated, so that none is filled in. */
export function withWholeHouse(pattern: RandomPattern): RandomPattern {
  const rules = pattern.metric
    ? {
        squaring: 10,
        'usable width': 1000,
        'cut to': 5,
        'sell by': 100,
        'generous over': 350,
        'joining allowance': 300,
        overhang: 100,
        'backing seam': 10,
      }
    : {
        squaring: 16,
        'usable width': 640,
        'cut to': 2,
        'sell by': 72,
        'generous over': 216,
        'joining allowance': 192,
        overhang: 64,
        'backing seam': 8,
      };
  return { ...pattern, house: { ...rules, ...pattern.house } };
}
