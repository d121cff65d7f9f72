/** From HTML to Markdown, by the libraries of the unified collective. */
import type { Element } from 'hast';
import type { State } from 'hast-util-to-mdast';
import rehypeParse from 'rehype-parse';
import rehypeRemark from 'rehype-remark';
import remarkGfm from 'remark-gfm';
import remarkStringify from 'remark-stringify';
import { unified } from 'unified';
import { clean, MARK } from './clean.ts';
import type { Note } from './fractions.ts';

export interface Imported {
  readonly markdown: string;
  /** With the line of the Markdown on which each stands. */
  readonly notes: readonly (Note & { readonly line: number })[];
  /** What was left out, and how often. */
  readonly dropped: ReadonlyMap<string, number>;
}

export function fromHtml(html: string): Imported {
  const tree = unified().use(rehypeParse).parse(html);
  const { notes, dropped } = clean(tree);
  const processor = unified()
    .use(rehypeRemark, { handlers: { br } })
    .use(remarkGfm)
    // Three hyphens at the top of a page would open front matter.
    .use(remarkStringify, { bullet: '-', rule: '*', listItemIndent: 'one' });
  const marked = processor.stringify(processor.runSync(tree) as Parameters<typeof processor.stringify>[0]);
  return { ...withoutMarks(marked, notes), dropped };
}

function br(_state: State, { properties }: Element) {
  return properties.dataCell === undefined
    ? { type: 'break' as const }
    : { type: 'html' as const, value: '<br>' };
}

/** Tells where the marks stood, and takes them out. */
export function withoutMarks(marked: string, notes: readonly Note[]): Pick<Imported, 'markdown' | 'notes'> {
  const pieces = marked.split(MARK);
  let line = 1;
  const placed = notes.map((note, index) => {
    line += pieces[index]?.match(/\n/g)?.length ?? 0;
    return { ...note, line };
  });
  return { markdown: pieces.join(''), notes: placed };
}
