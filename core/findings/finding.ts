/**
 * What the tool has to say about a place in a manuscript: plain data that every host can show.
 *
 * All places are offsets into the source in UTF-16 code units, end exclusive; they become lines and columns
 * only at the edge of a host.
 */
import type { Code } from './codes.ts';

export interface Range {
  readonly start: number;
  readonly end: number;
}

export interface Edit extends Range {
  readonly text: string;
}

/** One way to mend a finding. Applied whole or not at all; its edits never overlap. */
export interface Fix {
  readonly title: string;
  /** The fix that "fix all" applies; at most one of a finding's fixes is preferred. */
  readonly preferred: boolean;
  readonly edits: readonly Edit[];
}

/** Another place that the finding is about: the first of two equal entries, the input behind a figure. */
export interface Related extends Range {
  readonly message: string;
  /** The very place, where it is in another file; the range is then where this file names that one. */
  readonly origin?: Range & { readonly file: { readonly id: string; readonly source: string } };
}

export type Severity = 'error' | 'warning' | 'hint';

export interface Finding extends Range {
  readonly code: Code;
  readonly severity: Severity;
  /** One sentence for a pattern author: what is stated, what it should be, why. */
  readonly message: string;
  readonly related: readonly Related[];
  readonly fixes: readonly Fix[];
}

/** The text after all edits, which must not overlap; the rest of the text is untouched. */
export function applyEdits(source: string, edits: readonly Edit[]): string {
  const ordered = [...edits].sort((a, b) => a.start - b.start || a.end - b.end);
  let result = '';
  let position = 0;
  for (const edit of ordered) {
    if (edit.start < position) throw new RangeError('edits overlap');
    result += source.slice(position, edit.start) + edit.text;
    position = edit.end;
  }
  return result + source.slice(position);
}
