/** Runs of text that read on: a line that begins with a comment splits a paragraph for Markdown, but not for its reader. */
import type { Range } from '../../findings/finding.ts';
import type { CellPlace, Manuscript, Passage, ReadNumber } from '../../manuscript/manuscript.ts';

/** A stretch of the source, with the comments behind its text. */
export interface Stretch extends Range {
  readonly numbers: readonly ReadNumber[];
  readonly cell: CellPlace | undefined;
}

export function stretchesOf({ passages, source }: Manuscript): Stretch[] {
  const stretches: (Stretch & { readonly kind: Passage['kind'] })[] = [];
  for (const passage of passages) {
    const { kind, numbers, context } = passage;
    const extent = extentOf(passage);
    const last = stretches.at(-1);
    const isSameKind = last?.kind === kind && kind === 'paragraph';
    if (last && isSameKind && CONTINUED.test(source.slice(last.end, extent.start)))
      stretches[stretches.length - 1] = { ...last, end: extent.end, numbers: [...last.numbers, ...numbers] };
    else stretches.push({ ...extent, kind, numbers, cell: context.cell });
  }
  return stretches;
}

/** Nothing, or the end of a line and what indents the next one. */
const CONTINUED = /^[ \t]*(?:\r\n|\r|\n)?[ \t]*$/;

function extentOf({ offsets, ends, tags }: Passage): Range {
  const start = offsets[0] ?? 0;
  return { start, end: Math.max(ends.at(-1) ?? start, ...tags.map(({ end }) => end)) };
}
