/** Offsets of the core to and from positions of the protocol. */
import type { Position, Range } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit, Range as OffsetRange } from '../core/findings/finding.ts';

export function toRange(document: TextDocument, { start, end }: OffsetRange): Range {
  return { start: document.positionAt(start), end: document.positionAt(end) };
}

export function toTextEdit(document: TextDocument, edit: Edit): { range: Range; newText: string } {
  return { range: toRange(document, edit), newText: edit.text };
}

export function toOffsets(document: TextDocument, range: Range): OffsetRange {
  return { start: document.offsetAt(range.start), end: document.offsetAt(range.end) };
}

export function sameRange(a: Range, b: Range): boolean {
  return samePosition(a.start, b.start) && samePosition(a.end, b.end);
}

/** Whether two ranges have a place in common; one that ends where the other starts has. */
export function touches(a: OffsetRange, b: OffsetRange): boolean {
  return a.start <= b.end && b.start <= a.end;
}

function samePosition(a: Position, b: Position): boolean {
  return a.line === b.line && a.character === b.character;
}
