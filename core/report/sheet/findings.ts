/** The findings in reading order, each with the sentence around it and a box to tick. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import { FINDING_WORDS } from '../findingWords.ts';
import { Lines } from '../lines.ts';
import type { Proofread } from '../proofread.ts';
import { SEVERITIES } from '../reference/severities.ts';
import { sentencesAround } from '../sentence.ts';
import type { ReportedFinding } from '../unaccounted.ts';
import { aboutId } from './about.ts';
import { quotation } from './quotation.ts';

export function findingList({ proof, findings }: Proofread, id: string): Element[] {
  if (findings.length === 0) return [h('p', 'Nothing contradicts the pattern.')];
  const lines = new Lines(proof.manuscript.source);
  const shown = findings.map((finding, index) => {
    const [sentence] = sentencesAround(proof.manuscript, [finding]);
    return h('li', { className: ['finding', finding.severity], id: `${id}-f${index + 1}` }, [
      h('p.place', [
        h('strong.severity', SEVERITIES[finding.severity].name),
        ` in line ${lines.position(finding.start).line}`,
        h('span.tick', [h('span.box', { ariaHidden: 'true' }), ' settled']),
      ]),
      h('p.message', finding.message),
      ...(sentence ? [quotation(sentence)] : []),
      ...remedies(finding),
      ...elsewhere(finding, lines),
      h(
        'p.about',
        h('a', { href: `#${aboutId(finding.code)}` }, FINDING_WORDS[finding.code]?.title ?? finding.code),
      ),
    ]);
  });
  return [h('ol.findings', shown)];
}

/** Several fixes are a choice. */
function remedies({ fixes }: ReportedFinding): Element[] {
  if (fixes.length === 0) return [];
  return [h('p.fix', `To fix it: ${fixes.map(({ title }) => title).join(', or: ')}.`)];
}

/** One other place is told in full; of several, only the lines. */
function elsewhere({ related }: ReportedFinding, lines: Lines): Element[] {
  const [first, ...others] = related;
  if (!first) return [];
  const places = [...new Set(related.map(({ start }) => lines.position(start).line))].sort((a, b) => a - b);
  const text =
    others.length === 0
      ? `See line ${places[0]}: ${first.message}`
      : `See ${places.length === 1 ? 'line' : 'lines'} ${places.join(', ')}.`;
  return [h('p.related', text)];
}
