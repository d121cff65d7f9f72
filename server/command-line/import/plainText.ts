/** Plain text is nearly Markdown: its bullets and its tables of tabs become those of Markdown. */
import { MARK } from './clean.ts';
import { mendFractions, type Note } from './fractions.ts';
import { type Imported, withoutMarks } from './markdown.ts';

const BULLET = /^\s*[•●▪◦‣·–—]\s+/;

export function fromPlainText(text: string): Imported {
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\n|\r|\f/);
  const written: string[] = [];
  const notes: Note[] = [];
  for (let at = 0; at < lines.length; ) {
    const rows = tableAt(lines, at);
    const taken = Math.max(rows.length, 1);
    const plain = rows.length > 0 ? tableLines(rows) : [lineOf(lines[at] ?? '')];
    for (const line of plain) written.push(mended(line, notes));
    at += taken;
  }
  const tidy = `${written
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim()}\n`;
  return { ...withoutMarks(tidy, notes), dropped: new Map() };
}

/** An indented line is no code here, and an angle bracket opens nothing. */
function lineOf(line: string): string {
  const text = line.replaceAll(MARK, '').replace(BULLET, '- ').trim();
  return text.replace(/<(?!!--\s*(?:=|measure\b))/g, '\\<');
}

/** Two or more lines with the same number of tabs between words. */
function tableAt(lines: readonly string[], start: number): string[][] {
  const rows: string[][] = [];
  for (let at = start; at < lines.length; at++) {
    const cells = (lines[at] ?? '').split('\t').map((cell) => cell.trim());
    const isRow = cells.length > 1 && cells.filter(Boolean).length > 1;
    if (!isRow || (rows[0] && rows[0].length !== cells.length)) break;
    rows.push(cells);
  }
  return rows.length > 1 ? rows : [];
}

function tableLines([head = [], ...rows]: readonly string[][]): string[] {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => lineOf(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  return ['', line(head), `| ${head.map(() => '---').join(' | ')} |`, ...rows.map(line), ''];
}

function mended(line: string, notes: Note[]): string {
  const { text, notes: found } = mendFractions(line);
  let [value, last] = ['', 0];
  for (const { at, ...note } of found) {
    value += text.slice(last, at) + MARK;
    last = at;
    notes.push(note);
  }
  return value + text.slice(last);
}
