/** What the sheet says of one manuscript, from the overview to the signature. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import { coverageSentence } from '../coverage.ts';
import type { Proofread } from '../proofread.ts';
import { coverageTables } from './coverage.ts';
import { findingList } from './findings.ts';
import { layouts } from './layouts.ts';
import { remarks, signature } from './signature.ts';
import { unchecked } from './unchecked.ts';
import { workings } from './workings.ts';

/** The name of the pattern: as its block says, else its title, else its file. */
export function nameOf({ path, proof: { pattern, manuscript } }: Proofread): string {
  const title = manuscript.passages.find(({ kind }) => kind === 'heading')?.text;
  return (pattern.entries.pattern ?? title ?? path).replace(/\s+/g, ' ').trim() || path;
}

export function manuscriptPart(document: Proofread, index: number): Element {
  const id = `m${index + 1}`;
  const { path, proof } = document;
  const parts: readonly (readonly [name: string, title: string, content: readonly Element[] | undefined])[] =
    [
      ['coverage', 'What has been checked', coverageTables(proof)],
      ['findings', 'What to look at', findingList(document, id)],
      ['unchecked', 'What nobody has checked', unchecked(proof)],
      ['workings', 'How each figure is worked out', workings(proof)],
      ['layouts', 'Cutting layouts', layouts(proof, id)],
      ['remarks', 'Remarks', remarks()],
      ['signature', 'Signature', signature()],
    ];
  return h('article', { id, ariaLabelledBy: `${id}-name` }, [
    h('h2', { id: `${id}-name` }, nameOf(document)),
    h('p.path', path),
    h('p.summary', proof.pattern.stated ? coverageSentence(proof.coverage) : NO_BLOCK),
    ...parts.flatMap(([name, title, content]) =>
      content === undefined ? [] : [h('section', { className: name }, [h('h3', title), ...content])],
    ),
  ]);
}

const NO_BLOCK =
  'Without a measure block there is nothing to check the numbers against, but what the manuscript says twice.';
