/**
 * The proof sheet: one page that holds everything a technical editor signs, for a screen, for paper and for people who
 * listen to it. It needs no script and no network, and says so to the browser.
 */
import type { Element } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { h } from 'hastscript';
import { coverageLabel } from '../coverage.ts';
import type { Proofread } from '../proofread.ts';
import { aboutFindings } from './about.ts';
import { manuscriptPart, nameOf } from './manuscript.ts';
import { SHEET_STYLE } from './style.ts';
import { table } from './table.ts';

export interface SheetTool {
  readonly name: string;
  readonly version: string;
}

/** Nothing is loaded and nothing runs, whatever a manuscript says; only the sheet's own style counts. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** @returns a whole HTML document, ending with a line end */
export function htmlSheet(documents: readonly Proofread[], { name, version }: SheetTool): string {
  const [first] = documents;
  const title =
    documents.length === 1 && first
      ? `Proof sheet: ${nameOf(first)}`
      : `Proof sheets: ${documents.length} manuscripts`;
  const page = h('html', { lang: 'en' }, [
    h('head', [
      h('meta', { charSet: 'utf-8' }),
      h('meta', { httpEquiv: 'Content-Security-Policy', content: POLICY }),
      h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      h('meta', { name: 'color-scheme', content: 'light dark' }),
      h('meta', { name: 'generator', content: `${name} ${version}` }),
      h('title', title),
      h('style', SHEET_STYLE),
    ]),
    h('body', [
      h('header', [
        h('h1', 'Proof sheet'),
        h('p.tool', `Every number of the pattern, checked by ${name} ${version}.`),
      ]),
      ...(documents.length > 1 ? [contents(documents)] : []),
      h(
        'main',
        documents.length === 0
          ? h('p', 'There is no manuscript here.')
          : [...documents.map(manuscriptPart), ...aboutFindings(documents)],
      ),
      h('footer', h('p', WHAT_IT_CANNOT)),
    ]),
  ]);
  return `${toHtml({ type: 'root', children: [{ type: 'doctype' }, page] })}\n`;
}

const WHAT_IT_CANNOT =
  'This sheet checks arithmetic. Whether a template has its shape, a diagram its colours and a sentence its sense, ' +
  'a person has to see. Cutting layouts are one way to cut, and no instruction: check the first pieces with a ruler, and ' +
  'close the blade of a rotary cutter after every cut.';

/** Where to find which manuscript, and how each came out. */
function contents(documents: readonly Proofread[]): Element {
  return h(
    'nav',
    { ariaLabelledBy: 'contents' },
    h('h2', { id: 'contents' }, 'Manuscripts'),
    table(
      ['Manuscript', 'File', { number: 'Mistakes' }, { number: 'Warnings' }, 'Checked'],
      documents.map((document, index) => {
        const count = (severity: string) =>
          String(document.findings.filter((finding) => finding.severity === severity).length);
        return [
          h('a', { href: `#m${index + 1}` }, nameOf(document)),
          document.path,
          count('error'),
          count('warning'),
          document.proof.pattern.stated ? coverageLabel(document.proof.coverage) : 'no measure block',
        ];
      }),
    ),
  );
}
