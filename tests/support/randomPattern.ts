/** Random patterns that contradict themselves nowhere, as the text of a measure block. */
import fc from 'fast-check';

/** All lengths are whole counts of a sixteenth of an inch, or of a millimetre in a metric house. */
export interface RandomPattern {
  readonly metric: boolean;
  readonly sizes: readonly string[];
  readonly house: Readonly<Record<string, string | number>>;
  readonly fabrics: Readonly<Record<string, { readonly 'usable width'?: number }>>;
  readonly top: Shaped | Pieced;
  readonly entries: readonly Entry[];
}

interface Shaped {
  readonly kind: 'shaped';
  /** One for each size. */
  readonly shapes: readonly Shape[];
}

interface Shape {
  readonly word: string;
  readonly lengths: readonly number[];
  readonly curved: boolean;
}

/** Square blocks of cells × cells patches, each a half-square triangle or a plain square. */
interface Pieced {
  readonly kind: 'pieced';
  readonly cell: number;
  readonly cells: number;
  readonly triangles: number;
  readonly method: string | undefined;
  readonly grids: readonly (readonly [number, number])[];
  readonly onPoint: boolean;
  readonly sashing: number | undefined;
  readonly borders: readonly { readonly finished: number; readonly corners: string | undefined }[];
}

interface Entry {
  readonly name: string;
  readonly parts: Readonly<Record<string, string | number | readonly number[]>>;
}

const NAMES = [['wall', 'throw', 'queen'], ['small', 'large'], ['lap', 'twin', 'king'], ['']];

/** Lengths from so many inches on, in the unit of the model: 16 to the inch, or 10 to the centimetre. */
const length = (metric: boolean, from: number, to: number, step = 4) =>
  fc
    .integer({ min: Math.ceil((from * 16) / step), max: Math.floor((to * 16) / step) })
    .map((steps) => (metric ? Math.round((steps * step * 25.4) / 16 / 5) * 5 : steps * step));

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

function pieced(metric: boolean, sizes: number): fc.Arbitrary<Pieced> {
  const side = fc.integer({ min: 1, max: 6 });
  return fc.integer({ min: 2, max: 4 }).chain((cells) =>
    fc.record({
      kind: fc.constant('pieced' as const),
      cell: length(metric, 1, 4),
      cells: fc.constant(cells),
      triangles: fc.integer({ min: 1, max: cells * cells }),
      method: fc.constantFrom(undefined, 'two at a time', 'eight at a time'),
      grids: fc.array(fc.tuple(side, side), { minLength: sizes, maxLength: sizes }),
      onPoint: fc.boolean(),
      sashing: fc.option(length(metric, 1, 3), { nil: undefined }),
      borders: fc.array(
        fc.record({
          finished: length(metric, 1, 6),
          corners: fc.constantFrom(undefined, 'butted', 'mitred', 'corner squares'),
        }),
        { maxLength: 2 },
      ),
    }),
  );
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
          fabrics: fc.constant({ A: {}, B: { 'usable width': metric ? 1100 : 43 * 16 } }),
          top: fc.constant(top),
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

/** The measure block, with all lengths so many times as long. */
export function blockOf(pattern: RandomPattern, times = 1): string {
  const { metric, sizes, house, fabrics, top, entries } = pattern;
  const l = (value: number) => (metric ? centimetres(value * times) : inches(value * times));
  const perSize = (values: readonly string[]) =>
    new Set(values).size === 1 && values.length > 0
      ? (values[0] ?? '')
      : `{ ${values.map((value, index) => `${sizes[index]}: '${value.replaceAll("'", "''")}'`).join(', ')} }`;
  const part = (value: string | number | readonly number[]) =>
    typeof value === 'string' ? value : typeof value === 'number' ? l(value) : perSize(value.map(l));
  const mapping = (parts: Readonly<Record<string, string | number | readonly number[]>>) =>
    Object.entries(parts).map(([key, value]) => `  ${key}: ${part(value)}`);
  const section = (name: string, parts: Parameters<typeof mapping>[0]) =>
    Object.keys(parts).length === 0 ? [`${name}: {}`] : [`${name}:`, ...mapping(parts)];
  return [
    ...(sizes.length > 1 ? [`sizes: [${sizes.join(', ')}]`] : []),
    ...section('house', house),
    'fabrics:',
    ...Object.entries(fabrics).map(([label, { 'usable width': width }]) =>
      width === undefined ? `  ${label}: Plain` : `  ${label}: { name: Printed, usable width: ${l(width)} }`,
    ),
    ...(top.kind === 'shaped'
      ? [`finished: ${perSize(top.shapes.map((shape) => shapeText(shape, l)))}`]
      : quilt(top, l, perSize)),
    ...entries.flatMap(({ name, parts }) => section(name, parts)),
  ].join('\n');
}

function shapeText({ word, lengths }: Shape, l: (value: number) => string): string {
  const [first = 0, second = 0, third = 0] = lengths;
  switch (word) {
    case '':
      return `${l(first)} x ${l(second)}`;
    case 'oval':
      return `oval ${l(first)} x ${l(second)}`;
    case 'rounded':
      return `rounded ${l(first)} x ${l(second)}, corners ${l(third)}`;
    case 'scalloped':
      return `scalloped ${l(first)} x ${l(second)}, 12 scallops ${l(third)} deep`;
    default:
      return `${word} ${l(first)}`;
  }
}

function quilt(
  top: Pieced,
  l: (value: number) => string,
  perSize: (values: readonly string[]) => string,
): string[] {
  const { cell, cells, triangles, method, grids, onPoint, sashing, borders } = top;
  const squares = cells * cells - triangles;
  return [
    'blocks:',
    '  Ripple:',
    `    finished: ${l(cell * cells)}`,
    '    of:',
    `      - { unit: half-square triangles, finished: ${l(cell)}, count: ${triangles}, from: [A, B]${method ? `, method: ${method}` : ''} }`,
    ...(squares > 0 ? [`      - { piece: patch, finished: ${l(cell)}, count: ${squares}, from: B }`] : []),
    'layout:',
    `  set: ${onPoint ? 'on point' : 'straight set'}`,
    `  grid: ${perSize(grids.map(([across, down]) => `${across} x ${down}`))}`,
    ...(sashing === undefined || onPoint
      ? []
      : [`  sashing: { finished: ${l(sashing)}, from: B, cornerstones: A }`]),
    ...(borders.length === 0 ? [] : ['borders:']),
    ...borders.map(
      ({ finished, corners }) =>
        `  - { finished: ${l(finished)}, from: A${corners ? `, corners: ${corners}` : ''} }`,
    ),
  ];
}

/** Sixteenths as `2 1/4"`. */
function inches(sixteenths: number): string {
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  if (rest === 0) return `${whole}"`;
  const common = [8, 4, 2, 1].find((divisor) => rest % divisor === 0) ?? 1;
  const part = `${rest / common}/${16 / common}`;
  return whole === 0 ? `${part}"` : `${whole} ${part}"`;
}

/** Millimetres as `5.5 cm`. */
function centimetres(millimetres: number): string {
  return `${millimetres / 10} cm`;
}
