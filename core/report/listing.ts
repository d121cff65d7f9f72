/** Every number of a manuscript with what is understood of it, before any block is applied. */
import stringWidth from 'string-width';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import { toFractionText } from '../quantity/rational.ts';
import { Lines, type Position } from './lines.ts';
import type { Layout } from './paint.ts';
import { placeOf } from './place.ts';

/** What each kind of number is called; the keys are those of the JSON report. */
const KINDS: Readonly<Record<ReadNumber['kind'], string>> = {
  count: 'a count',
  length: 'a length',
  size: 'one side of a size',
  yardage: 'a length of fabric to buy',
  'fraction-of': 'a part of something',
  other: 'a number',
};

/** A table with one line per number; ends with a line end. */
export function textListing(path: string, manuscript: Manuscript, { paint, width }: Layout): string {
  const lines = new Lines(manuscript.source);
  const rows = manuscript.numbers.map((number) => {
    const { line, column } = lines.position(placeOf(number).start);
    return { place: `${line}:${column}`, text: number.text.replace(/\s+/g, ' '), meaning: meaningOf(number) };
  });
  if (rows.length === 0) return `${path} holds no number.\n`;
  const header = { place: 'line:column', text: 'number', meaning: 'understood as' };
  const [place, text] = [widest([header, ...rows], 'place'), widest([header, ...rows], 'text')];
  const written = [header, ...rows].map((row, index) => {
    const cells = `${row.place.padStart(place)}  ${padded(row.text, Math.min(text, width - place - 30))}`;
    const result = `${cells}  ${row.meaning}`;
    return index === 0 ? paint.faint(result) : result;
  });
  const count = rows.length === 1 ? '1 number' : `${rows.length} numbers`;
  return `${[...written, '', `${count} in ${path}.`].join('\n')}\n`;
}

export interface JsonListing {
  readonly version: 1;
  readonly path: string;
  readonly numbers: readonly {
    readonly text: string;
    readonly start: Position;
    readonly end: Position;
    readonly kind: ReadNumber['kind'];
    readonly value: string;
    readonly unit: string | null;
  }[];
}

export function jsonListing(path: string, manuscript: Manuscript): JsonListing {
  const lines = new Lines(manuscript.source);
  return {
    version: 1,
    path,
    numbers: manuscript.numbers.map((number) => {
      const { start, end } = placeOf(number);
      return {
        text: number.text,
        start: lines.position(start),
        end: lines.position(end),
        kind: number.kind,
        value: toFractionText(number.value),
        unit: number.unit ?? null,
      };
    }),
  };
}

/** `a length: 2 1/4 in` */
function meaningOf({ kind, value, unit, notMeasurement }: ReadNumber): string {
  if (notMeasurement !== undefined) return `not a measurement: ${notMeasurement}`;
  return `${KINDS[kind]}: ${mixed(toFractionText(value))}${unit ? ` ${unit}` : ''}`;
}

/** `9/4` as `2 1/4`. */
function mixed(text: string): string {
  const [numerator, denominator] = text.split('/').map(BigInt);
  if (numerator === undefined || denominator === undefined || numerator < denominator) return text;
  return `${numerator / denominator} ${numerator % denominator}/${denominator}`;
}

function widest<K extends string>(rows: readonly Readonly<Record<K, string>>[], key: K): number {
  return Math.max(...rows.map((row) => stringWidth(row[key])));
}

function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(width - stringWidth(text), 0));
}
