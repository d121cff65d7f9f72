/**
 * Finds the lines of a node's value in the source.
 *
 * A node may stand in block quotes and lists, so that each of its lines begins with markers and spaces that are not
 * part of the value. How much of a line that is follows from the length of what the line must show.
 */
import { TextMap } from './textMap.ts';

/** Stands in a text for what has no text of its own. */
export const OBJECT = '\ufffc';

export interface Line {
  readonly start: number;
  /** Before the line ending. */
  readonly end: number;
  /** Behind the line ending, or the end of the node. */
  readonly next: number;
}

const LINE_END = /\r\n|\n|\r/g;

/** The lines of the source between two offsets. */
export function linesOf(source: string, start: number, end: number): Line[] {
  const lines: Line[] = [];
  let from = start;
  LINE_END.lastIndex = start;
  for (let match = LINE_END.exec(source); match && match.index < end; match = LINE_END.exec(source)) {
    const next = match.index + match[0].length;
    lines.push({ start: from, end: match.index, next });
    from = next;
  }
  lines.push({ start: from, end, next: end });
  return lines;
}

/** Lines of a value, without their endings. */
export function splitLines(value: string): string[] {
  return value.split(/\r\n|\n|\r/);
}

/**
 * Adds the text of a node: `value`, which the source shows from `start` to `end` with references and escapes.
 * Every line ending becomes `\n`. Spaces around a line ending are not part of the text.
 */
export function addText(map: TextMap, source: string, start: number, end: number, value: string): void {
  const lines = linesOf(source, start, end);
  for (const [index, text] of splitLines(value).entries()) {
    const [line, before] = [lines[index], lines[index - 1]];
    if (!line) return;
    if (before) map.add('\n', before.end, before.next);
    const last = index === lines.length - 1;
    map.append(textLine(source, line.start, last ? line.end : trimmedEnd(source, line), text));
  }
}

/** One line of text, behind the markers and spaces that belong to its containers. */
function textLine(source: string, start: number, end: number, text: string): TextMap {
  let content = start;
  while (content < end && ' \t>'.includes(source[content] ?? '')) content++;
  const rest = new TextMap();
  rest.addEncoded(source, content, end, true);
  // Some of them may be text after all: the line "> 5" of a paragraph that began with an escape.
  const own = text.length - rest.length;
  const line = new TextMap();
  if (own >= 0 && own <= content - start) line.copy(source, content - own, content);
  line.append(rest);
  return line.text === text ? line : unreadable(start, end);
}

/** Stands for a line that is not where the parser says: nothing in it is read, so nothing of it is ever changed. */
function unreadable(start: number, end: number): TextMap {
  const line = new TextMap();
  line.add(OBJECT, start, end);
  return line;
}

function trimmedEnd(source: string, { start, end }: Line): number {
  let trimmed = end;
  while (trimmed > start && ' \t'.includes(source[trimmed - 1] ?? '')) trimmed--;
  return trimmed;
}

/**
 * Adds a value that the source shows as it stands, code or HTML, in the lines from `start` to `end`.
 *
 * @param lineEnd what each line ending becomes; left out, it stays as it is
 */
export function addRaw(
  map: TextMap,
  source: string,
  start: number,
  end: number,
  value: string,
  lineEnd?: '\n',
): void {
  const lines = linesOf(source, start, end);
  for (const [index, text] of splitLines(value).entries()) {
    const [line, before] = [lines[index], lines[index - 1]];
    if (!line) return;
    if (before) map.add(lineEnd ?? source.slice(before.end, before.next), before.end, before.next);
    rawLine(map, source, line, text);
  }
}

/** What the line shows is its end; a tab that its containers use up in part shows as spaces. */
function rawLine(map: TextMap, source: string, { start, end }: Line, text: string): void {
  let [at, shown] = [end, text.length];
  while (shown > 0 && at > start && isShown(source[at - 1], text[shown - 1])) {
    at--;
    shown--;
  }
  const tab = source[at - 1] === '\t' ? at - 1 : at;
  map.add(text.slice(0, shown), tab, at);
  for (let unit = shown; unit < text.length; unit++, at++) map.add(text.charAt(unit), at, at + 1);
}

function isShown(written: string | undefined, shown: string | undefined): boolean {
  return written === shown || (written === '\0' && shown === '\ufffd');
}
