/** The list of corrections as Markdown, or as an HTML page that needs nothing beside it. */
import type { Root as Html } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import remarkGfm from 'remark-gfm';
import remarkRehype from 'remark-rehype';
import remarkStringify from 'remark-stringify';
import { unified } from 'unified';
import { correctionsDocument, type Revised } from './document.ts';

const markdown = unified().use(remarkGfm, { tablePipeAlign: false }).use(remarkStringify).freeze();
const toTree = unified().use(remarkRehype).freeze();

export function correctionsMarkdown(patterns: readonly Revised[]): string {
  return markdown.stringify(correctionsDocument(patterns));
}

export function correctionsHtml(patterns: readonly Revised[]): string {
  const body = toTree.runSync(correctionsDocument(patterns)) as Html;
  const title = patterns.length === 1 ? `Corrections to ${patterns[0]?.title}` : 'Corrections';
  const page = h(null, [
    { type: 'doctype' },
    h('html', { lang: 'en' }, [
      h('head', [
        h('meta', { charset: 'utf-8' }),
        h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
        h('title', title),
        h('style', STYLE),
      ]),
      h('body', h('main', body.children as never)),
    ]),
  ]);
  return `${toHtml(page)}\n`;
}

/** Made for reading on a screen and for printing; follows the reader's choice of light or dark. */
const STYLE = `
:root { color-scheme: light dark; }
body { font: 1rem/1.5 system-ui, sans-serif; margin: 2rem auto; max-width: 60rem; padding: 0 1rem; }
table { border-collapse: collapse; width: 100%; }
th, td { border-bottom: 1px solid #8888; padding: .4rem .6rem; text-align: left; vertical-align: top; }
td em { font-style: normal; text-decoration: underline; text-underline-offset: .2em; }
tr { break-inside: avoid; }
`;
