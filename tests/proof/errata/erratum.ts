/** Invented manuscripts with one mistake each, of a kind that corrections of printed patterns show, and right ones that look like it. */

export interface Kind {
  readonly kind: string;
  readonly wrong: readonly Wrong[];
  /** Whole manuscripts, each said to look like a mistake in which way. */
  readonly right: readonly (readonly [looksLike: string, text: string])[];
}

export interface Wrong {
  readonly mistake: string;
  /** The manuscript; the wrong number, or the first of two that contradict each other, stands in « ». */
  readonly text: string;
  /** The name of the slip, where the mistake is a known one. */
  readonly slip?: string;
}

/** A manuscript of a title, a measure block and paragraphs. */
export function manuscript(
  title: string,
  block: readonly string[],
  ...paragraphs: readonly string[]
): string {
  return [
    `# ${title}`,
    ['```measure', `pattern: ${title}`, ...block, '```'].join('\n'),
    ...paragraphs,
    '',
  ].join('\n\n');
}
