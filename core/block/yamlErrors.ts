/** What the mistakes that a YAML parser finds mean to someone who has never heard of YAML. */
import type { YAMLError } from 'yaml';
import type { Range } from '../findings/finding.ts';

/** Which part of the text around the place that the parser names is meant. */
type Part = 'place' | 'line' | 'line before';

/** By the parser's code and message; the first row that fits counts. */
const WORDS: readonly (readonly [found: RegExp, part: Part, message: string])[] = [
  [/^TAB_AS_INDENT/, 'place', 'A tab stands where spaces must: indent with spaces.'],
  [/end with a [\]}]$/, 'line before', 'A bracket that opens before here is not closed.'],
  [/Missing closing ['"]quote/, 'line before', 'A quotation mark that opens before here is not closed.'],
  [/Implicit map keys need/, 'line', 'A colon and a space are missing behind this name.'],
  [/Missing space after :/, 'line', 'A space is missing behind a colon here.'],
  [/Missing ,/, 'line', 'A comma is missing before this.'],
  [
    /^MULTILINE_IMPLICIT_KEY/,
    'place',
    'A name and its colon must stand on one line; perhaps the colon is missing.',
  ],
  [
    /^BLOCK_AS_IMPLICIT_KEY|^BLOCK_IN_FLOW/,
    'line',
    'A name with its colon stands inside this value: begin a line of its own with it, put a comma before it, or put quotation marks around the whole value.',
  ],
  [/^BAD_INDENT/, 'line', 'This line is not indented like the lines it belongs to.'],
  [/^BAD_SCALAR_START/, 'line', 'A value cannot begin with this sign; put quotation marks around the value.'],
  [
    /^BAD_DQ_ESCAPE/,
    'place',
    'Between double quotation marks a backslash cannot stand here; use single ones.',
  ],
  [
    /^UNEXPECTED_TOKEN/,
    'line',
    'This cannot stand here; if it is part of the value, put quotation marks around the whole value.',
  ],
  [
    /^MISSING_CHAR/,
    'line',
    'Something is missing here: a comma, a bracket, a quotation mark, or the space behind a colon.',
  ],
];

const OTHERWISE = 'This part of the block cannot be read.';
/** Common practice of YAML, and surprising: `A: Deep #3 }` ends before the bracket. */
const NOTE =
  ' Behind a space, # begins a note of your own; put quotation marks around a value that holds it.';

/** The sentence for a mistake, and where it is shown. */
export function explain({ code, message, pos }: YAMLError, text: string): Range & { message: string } {
  const place = { start: Math.min(pos[0], text.length), end: Math.min(Math.max(...pos), text.length) };
  const row = WORDS.find(([found]) => found.test(`${code} ${message}`));
  const [, part, words] = row ?? [undefined, 'place', OTHERWISE];
  const range = { place, line: lineFrom(place, text), 'line before': lineBefore(place, text) }[part];
  const noted = part === 'line before' && /\s#/.test(text.slice(range.start, range.end));
  return { ...visible(range, text), message: noted ? words + NOTE : words };
}

/** From a place to the end of its line. */
function lineFrom({ start, end }: Range, text: string): Range {
  const first = start + (/^\s*/.exec(text.slice(start))?.[0].length ?? 0);
  const lineEnd = /[\r\n]|$/.exec(text.slice(first))?.index ?? 0;
  return { start: first, end: Math.max(end, first + text.slice(first, first + lineEnd).trimEnd().length) };
}

/** The line that ends before a place, without the spaces around it. */
function lineBefore({ start }: Range, text: string): Range {
  const before = text.slice(0, start).trimEnd();
  const line = before.slice(Math.max(before.lastIndexOf('\n'), before.lastIndexOf('\r')) + 1);
  return { start: before.length - line.trimStart().length, end: before.length };
}

/** Nothing can be underlined that is empty: the last character before it is then. */
export function visible({ start, end }: Range, text: string): Range {
  if (end > start) return { start, end };
  const last = text.slice(0, start).trimEnd().length;
  return last > 0 ? { start: last - 1, end: last } : { start, end: Math.min(start + 1, text.length) };
}
