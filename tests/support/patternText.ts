/** The text of the measure block of a random pattern. */
import type { RandomPattern, Shape } from './randomPattern.ts';
import type { Block, Pieced } from './randomQuilt.ts';

/** How a pattern is written; none of it changes what the pattern is. */
export interface Style {
  /** Entries, fabrics, blocks and pieces from the last to the first. */
  readonly reversed: boolean;
  /** The lengths of a pattern in inches written in centimetres: all, or all but those of the house. */
  readonly centimetres: 'all' | 'but the house' | 'none';
}

type LengthText = (value: number) => string;
type Parts = Readonly<Record<string, string | number | readonly number[]>>;

/** The measure block, with all lengths so many times as long. */
export function blockOf(pattern: RandomPattern, times = 1, style: Partial<Style> = {}): string {
  const { reversed = false, centimetres = 'none' } = style;
  return new Writer(pattern, times, reversed, centimetres).text();
}

class Writer {
  readonly #pattern: RandomPattern;
  readonly #length: LengthText;
  readonly #houseLength: LengthText;
  readonly #ordered: <T>(items: readonly T[]) => readonly T[];

  constructor(pattern: RandomPattern, times: number, reversed: boolean, inCentimetres: Style['centimetres']) {
    this.#pattern = pattern;
    const own: LengthText = (value) => (pattern.metric ? millimetres(value * times) : inches(value * times));
    const converted: LengthText = (value) => sixteenthsInCentimetres(value * times);
    this.#length = inCentimetres === 'none' || pattern.metric ? own : converted;
    this.#houseLength = inCentimetres === 'all' ? this.#length : own;
    this.#ordered = (items) => (reversed ? items.toReversed() : items);
  }

  text(): string {
    const { sizes, house, fabrics, top, pieces, entries } = this.#pattern;
    const l = this.#length;
    return this.#ordered([
      sizes.length > 1 ? [`sizes: [${sizes.join(', ')}]`] : [],
      this.#section('house', house, this.#houseLength),
      ['fabrics:', ...this.#ordered(Object.entries(fabrics)).map(([label, form]) => fabric(label, form, l))],
      ...(top.kind === 'shaped'
        ? [[`finished: ${this.#perSize(top.shapes.map((shape) => shapeText(shape, l)))}`]]
        : this.#quilt(top)),
      pieces.length > 0
        ? ['pieces:', ...this.#ordered(pieces).map((piece) => `  ${this.#piece(piece)}`)]
        : [],
      ...entries.map(({ name, parts }) => this.#section(name, parts, l)),
    ])
      .flat()
      .join('\n');
  }

  #perSize(values: readonly string[]): string {
    if (new Set(values).size === 1) return values[0] ?? '';
    const { sizes } = this.#pattern;
    return `{ ${values.map((value, index) => `${sizes[index]}: '${value.replaceAll("'", "''")}'`).join(', ')} }`;
  }

  #section(name: string, parts: Parts, l: LengthText): string[] {
    const text = (value: Parts[string]) =>
      typeof value === 'string'
        ? value
        : typeof value === 'number'
          ? l(value)
          : this.#perSize(value.map((each) => l(each)));
    const lines = Object.entries(parts).map(([key, value]) => `  ${key}: ${text(value)}`);
    return lines.length === 0 ? [`${name}: {}`] : [`${name}:`, ...lines];
  }

  #piece({ name, width, length, counts, from, along }: RandomPattern['pieces'][number]): string {
    const size = `${this.#length(width)} x ${this.#length(length)}`;
    const run = along === undefined ? '' : `, along: ${along}`;
    return `${name}: { cut: ${size}, count: ${this.#perSize(counts.map(String))}, from: ${from}${run} }`;
  }

  #quilt(top: Pieced): string[][] {
    const { blocks, grids, onPoint, sashing, borders } = top;
    const l = this.#length;
    return [
      ['blocks:', ...this.#ordered(blocks).flatMap((block) => this.#block(block, top))],
      [
        'layout:',
        `  set: ${onPoint ? 'on point' : 'straight set'}`,
        `  grid: ${this.#perSize(grids.map(([across, down]) => `${across} x ${down}`))}`,
        ...(onPoint ? ['  triangles: { from: A }'] : []),
        ...(sashing === undefined || onPoint
          ? []
          : [
              `  sashing: { finished: ${l(sashing.finished)}, from: B, cornerstones: ${sashing.stones}${sashing.around ? ', around: yes' : ''} }`,
            ]),
      ],
      borders.length === 0
        ? []
        : [
            'borders:',
            ...borders.map(({ finished, corners, along }) => {
              const made = corners === undefined ? '' : `, corners: ${corners}`;
              const squares = corners === 'corner squares' ? ', corners from: B' : '';
              const run = along === undefined ? '' : `, along: ${along}`;
              return `  - { finished: ${l(finished)}, from: A${made}${squares}${run} }`;
            }),
          ],
    ];
  }

  #block({ name, parts, make }: Block, { cell, cells }: Pieced): string[] {
    const l = this.#length;
    return [
      `  ${name}:`,
      `    finished: ${l(cell * cells)}`,
      ...(make ? [`    make: ${this.#perSize(make.map(String))}`] : []),
      '    of:',
      ...parts.map(({ what, wide, long, count, from, method, strips }) => {
        const size = `${l(cell * wide)} x ${l(cell * long)}`;
        const way = method === undefined ? '' : `, method: '${method}'`;
        const halves = strips ? `, strips: [${l(cell / 2)}, ${l(cell / 2)}]` : '';
        return `      - { ${what}, finished: ${size}, count: ${count}, from: ${from}${way}${halves} }`;
      }),
    ];
  }
}

function fabric(label: string, form: RandomPattern['fabrics'][string], l: LengthText): string {
  const more = Object.entries(form).map(
    ([key, value]) => `, ${key}: ${typeof value === 'number' ? l(value) : value}`,
  );
  return more.length === 0 ? `  ${label}: Plain` : `  ${label}: { name: Printed${more.join('')} }`;
}

function shapeText({ word, lengths }: Shape, l: LengthText): string {
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

/** Sixteenths as `2 1/4"`. */
function inches(sixteenths: number): string {
  const [whole, rest] = [Math.floor(sixteenths / 16), sixteenths % 16];
  if (rest === 0) return `${whole}"`;
  const common = [8, 4, 2, 1].find((divisor) => rest % divisor === 0) ?? 1;
  const part = `${rest / common}/${16 / common}`;
  return whole === 0 ? `${part}"` : `${whole} ${part}"`;
}

/** Millimetres as `5.5 cm`. */
function millimetres(value: number): string {
  return `${value / 10} cm`;
}

/** One inch is 2.54 cm exactly, so a sixteenth is 0.15875 cm. */
function sixteenthsInCentimetres(sixteenths: number): string {
  const [whole, rest] = [Math.floor((sixteenths * 15875) / 100_000), (sixteenths * 15875) % 100_000];
  const places = String(rest).padStart(5, '0').replace(/0+$/, '');
  return places === '' ? `${whole} cm` : `${whole}.${places} cm`;
}
