/** Markdown with tables, footnotes and front matter -> the syntax tree that passages are taken from. */
import type { Root } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { type Processor, unified } from 'unified';

/** A run of text as it left the parser. */
export interface Words {
  type: 'words';
  value: string;
  position?: { start: { offset?: number | undefined }; end: { offset?: number | undefined } };
}

/**
 * Hides text nodes from the search for addresses that follows the parsing. That search replaces nodes by others
 * that have no place in the source; the parser itself has found the addresses that matter already.
 */
function keepPlaces(this: Processor): void {
  const data = this.data() as { fromMarkdownExtensions?: unknown[] };
  data.fromMarkdownExtensions ??= [];
  data.fromMarkdownExtensions.push({ transforms: [hideText] });
}

function hideText(tree: Root): void {
  const open: { type: string; children?: unknown[] }[] = [tree];
  for (let node = open.pop(); node; node = open.pop()) {
    if (node.type === 'text') node.type = 'words' satisfies Words['type'];
    open.push(...((node.children ?? []) as typeof open));
  }
}

const processor = unified()
  .use(remarkParse)
  .use(keepPlaces)
  .use(remarkGfm)
  .use(remarkFrontmatter, ['yaml', 'toml'])
  .freeze();

/** Offsets in the tree count from behind the byte order mark, if the source has one. */
export function parseMarkdown(source: string): Root {
  return processor.parse(source);
}
