/** Lines: the runs of text in which numbers explain each other, with everything that stands around them. */
import type { Manuscript, Passage, ReadNumber } from '../manuscript/manuscript.ts';

/** A number in a line. Offsets count in the line's text. */
export interface Spot {
  readonly number: ReadNumber;
  readonly start: number;
  readonly end: number;
  /** The heads of its column and row, for a number in a table. */
  readonly column: string | undefined;
}

/** A text from around the line that still speaks of its numbers. */
export interface Layer {
  readonly where: 'row' | 'column' | 'list' | 'lead-in' | 'heading' | 'before';
  readonly text: string;
  /** How surely, from 0 to 1. */
  readonly strength: number;
}

/** A paragraph, a heading, or one row of a table with a bar between its cells. */
export interface Line {
  readonly text: string;
  readonly spots: readonly Spot[];
  readonly isRow: boolean;
  readonly isHeading: boolean;
  /** The strongest first. */
  readonly layers: readonly Layer[];
}

export const CELL_BREAK = ' | ';

/** A lead-in speaks for what follows it until the next one; a longer text is a sentence of its own. */
const LONGEST_LABEL = 70;

export function readLines({ passages }: Manuscript): Line[] {
  const lines: Line[] = [];
  const around = new Surroundings();
  for (let at = 0; at < passages.length; ) {
    const passage = passages[at] as Passage;
    const row = rowFrom(passages, at);
    lines.push(row.length > 0 ? rowLine(row, around) : plainLine(passage, around));
    around.pass(row.length > 0 ? row : [passage]);
    at += Math.max(1, row.length);
  }
  return lines;
}

/** The cells of one row of a table, from the passage at `from` on; none when it is no cell. */
function rowFrom(passages: readonly Passage[], from: number): Passage[] {
  const first = passages[from]?.context.cell;
  if (!first) return [];
  const row: Passage[] = [];
  for (let at = from; at < passages.length; at++) {
    const passage = passages[at];
    const cell = passage?.context.cell;
    if (!passage || !cell || cell.row !== first.row || (row.length > 0 && cell.column === 0)) break;
    row.push(passage);
  }
  return row;
}

function plainLine(passage: Passage, around: Surroundings): Line {
  return {
    text: passage.text,
    spots: passage.numbers.map((number) => spot(number, 0, undefined)),
    isRow: false,
    isHeading: passage.kind === 'heading',
    layers: around.layers(passage),
  };
}

function rowLine(cells: readonly Passage[], around: Surroundings): Line {
  let text = '';
  const spots: Spot[] = [];
  for (const [index, cell] of cells.entries()) {
    if (index > 0) text += CELL_BREAK;
    const shift = text.length;
    const column = cell.context.cell?.columnHeader;
    spots.push(...cell.numbers.map((number) => spot(number, shift, column)));
    text += cell.text;
  }
  const [first] = cells;
  return { text, spots, isRow: true, isHeading: false, layers: first ? around.layers(first) : [] };
}

function spot(number: ReadNumber, shift: number, column: string | undefined): Spot {
  return { number, start: number.written.start + shift, end: number.written.end + shift, column };
}

/** The title names the pattern, and so perhaps a block, but speaks of no number in particular. */
const TITLE = 0.1;

/** What was read so far and still holds. */
class Surroundings {
  #label: { readonly text: string; readonly section: string } | undefined;
  #leadIn: { readonly text: string; readonly section: string } | undefined;
  #before: string | undefined;
  /** The last text at each depth of the list around. */
  #items: string[] = [];
  /** The last words at the head of a row: an empty first cell means the same again. */
  #rowHead = '';

  layers(passage: Passage): Layer[] {
    const { headings, list, cell } = passage.context;
    const section = sectionOf(passage);
    const layers: Layer[] = [];
    const add = (where: Layer['where'], text: string | undefined, strength: number) => {
      if (text) layers.push({ where, text, strength });
    };
    if (cell && cell.row > 0 && cell.rowHeader === '') add('row', this.#rowHead, 0.85);
    for (const text of this.#items.slice(0, Math.max(0, list.length - 1)).reverse()) add('list', text, 0.7);
    if (this.#leadIn?.section === section && (list.length > 0 || cell))
      add('lead-in', this.#leadIn.text, leads(this.#leadIn.text) ? 0.75 : 0.4);
    if (this.#label?.section === section) add('lead-in', this.#label.text, 0.7);
    for (const [index, { text }] of [...headings].reverse().entries())
      add('heading', text, index === headings.length - 1 ? TITLE : ([0.6, 0.4, 0.2][index] ?? 0.1));
    if (passage.kind !== 'heading' && !cell) add('before', this.#before, 0.3);
    return layers;
  }

  pass(row: readonly Passage[]): void {
    const [passage] = row;
    if (!passage) return;
    const { list, cell } = passage.context;
    const section = sectionOf(passage);
    if (cell) {
      if (cell.column === 0 && passage.text.trim() !== '') this.#rowHead = passage.text;
      return;
    }
    const text = passage.text.trim();
    this.#items = [...this.#items.slice(0, Math.max(0, list.length - 1))];
    if (list.length > 0) this.#items[list.length - 1] = text;
    if (passage.kind === 'heading') {
      this.#label = undefined;
      this.#leadIn = undefined;
      this.#before = undefined;
      return;
    }
    if (list.length === 0) {
      const isLabel =
        text.length <= LONGEST_LABEL && passage.numbers.every(isLabelNumber) && !/[.!?]$/.test(text);
      this.#leadIn = { text: lastSentence(text), section };
      if (isLabel) this.#label = { text, section };
    }
    this.#before = text;
  }
}

function isLabelNumber({ notMeasurement }: ReadNumber): boolean {
  return notMeasurement !== undefined;
}

function sectionOf({ context }: Passage): string {
  return context.headings.map(({ text }) => text).join('\n');
}

/** A short line, or one that ends in a colon, speaks for all that follows; a longer sentence speaks of more. */
function leads(text: string): boolean {
  return text.length <= LONGEST_LABEL || text.endsWith(':');
}

function lastSentence(text: string): string {
  return /[^.!?]*[.!?:]?\s*$/.exec(text)?.[0].trim() || text;
}
