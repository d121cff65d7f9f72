/**
 * Manuscripts leave the house through general converters, as .docx by `docx` and as .html by `remark-rehype`, and come
 * back through the import: every number is there again, with the account that it had.
 */
import rehypeStringify from 'rehype-stringify';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { toFractionText } from '../../core/quantity/rational.ts';
import { fromHtml } from '../../server/command-line/import/markdown.ts';
import { wordFileToHtml } from '../../server/command-line/import/wordFile.ts';
import { plainManuscriptsIn } from '../manuscripts/annotated.ts';
import { CORPUS, SAMPLES } from '../support/manuscripts.ts';
import { wordFileOf } from '../support/wordFile.ts';

const FOLDERS = [SAMPLES, `${SAMPLES}before-proofreading/`, CORPUS];
const MANUSCRIPTS = FOLDERS.flatMap((folder) =>
  plainManuscriptsIn(folder).map(({ name, source }) => ({ path: folder + name, source })),
);

const FENCE = /^```measure\n[\s\S]*?^```$/gm;
const FRONT_MATTER = /^---\n[\s\S]*?\n---\n/;

/** What a word processor or a browser shows: neither comments, nor measure blocks, nor front matter. */
function shownOf(source: string): { readonly text: string; readonly blocks: string } {
  return {
    text: source
      .replace(FRONT_MATTER, '')
      .replace(FENCE, '')
      .replace(/[ \t]*<!--[\s\S]*?-->/g, ''),
    blocks: (source.match(FENCE) ?? []).join('\n\n'),
  };
}

/** Every number with its value, its unit, its account, and what its figure says; of two figures of one value either will do. */
function accountsOf(markdown: string, blocks: string): string[] {
  return proofread({ source: `${markdown}\n\n${blocks}\n` }).accounts.map(({ number, kind, tie, code }) =>
    [
      toFractionText(number.value),
      number.unit ?? '',
      number.kind,
      kind,
      tie ? toFractionText(tie.value.shown) : '',
      tie?.size ?? '',
      code ?? '',
    ].join(' '),
  );
}

function htmlOf(markdown: string): string {
  return String(
    unified().use(remarkParse).use(remarkGfm).use(remarkRehype).use(rehypeStringify).processSync(markdown),
  );
}

describe.each(MANUSCRIPTS)('$path', ({ source }) => {
  const { text, blocks } = shownOf(source);
  const before = accountsOf(text, blocks);

  it('keeps every number and its account as a web page', () => {
    const { markdown, notes, dropped } = fromHtml(htmlOf(text));

    expect(accountsOf(markdown, blocks)).toEqual(before);
    expect({ notes, dropped: dropped.size }).toEqual({ notes: [], dropped: 0 });
  });

  it('keeps every number and its account as a word processor’s file', async () => {
    const { markdown, notes } = fromHtml(await wordFileToHtml(await wordFileOf(text)));

    expect(accountsOf(markdown, blocks)).toEqual(before);
    expect(notes).toEqual([]);
  });
});
