/** What the findings on the sheet mean and what to do about them: the sheet must be understood far from the program. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import { FINDING_WORDS } from '../findingWords.ts';
import type { Proofread } from '../proofread.ts';

/** Where on the page a kind of finding is explained. */
export function aboutId(code: string): string {
  return `about-${code}`;
}

export function aboutFindings(documents: readonly Proofread[]): Element[] {
  const codes = new Set<string>(documents.flatMap(({ findings }) => findings.map(({ code }) => code)));
  const words = Object.entries(FINDING_WORDS).filter(([code]) => codes.has(code));
  if (words.length === 0) return [];
  return [
    h('section.about', { ariaLabelledBy: 'about' }, [
      h('h2', { id: 'about' }, 'What the findings mean'),
      h(
        'dl',
        words.flatMap(([code, { title, meaning, remedy }]) => [
          h('dt', { id: aboutId(code) }, title),
          h('dd', [h('p', withCode(meaning)), h('p', withCode(remedy))]),
        ]),
      ),
    ]),
  ];
}

/** The only marks of Markdown in the words about findings are those of code. */
function withCode(text: string): (string | Element)[] {
  return text.split('`').map((part, index) => (index % 2 === 1 ? h('code', part) : part));
}
