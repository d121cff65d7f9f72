/** What a signature covers, in words. */

import { listed } from '../block/words.ts';
import type { Found } from '../proof/earlier/align.ts';
import type { KeptLine, SeenLine } from '../proof/earlier/keptLine.ts';
import type { Covering } from '../record/covers.ts';
import type { Signature } from '../record/signature.ts';
import { Lines } from './lines.ts';

/** `Ada Lund signed off runner.md on 2026-11-25: 41 numbers were verified, and 5 were accepted as they stand.` */
export function signedSentence({ by, on, lines }: Signature, name: string): string {
  const accounts = lines.flatMap(({ numbers }) => numbers.map(({ account }) => account));
  const verified = accounts.filter((account) => account === 'verified').length;
  const accepted = accounts.filter(
    (account) => account !== 'verified' && account !== 'not-measurement',
  ).length;
  const parts = [
    `${counted(verified, 'number was', 'numbers were')} verified`,
    ...(accepted > 0
      ? [
          `${accepted} ${accepted === 1 ? 'was' : 'were'} accepted as ${accepted === 1 ? 'it stands' : 'they stand'}`,
        ]
      : []),
  ];
  return `${by} signed off ${name} on ${on}: ${listed(parts, 'and')}.`;
}

/** Who signed it, and what has come since that the signature does not cover. */
export function coveringSentence(covering: Covering, source: string): string {
  const { signature, isSameText, changed, added, removed, rightNoMore } = covering;
  const signed = `Signed off by ${signature.by} on ${signature.on}`;
  const lines = new Lines(source);
  const part = (found: readonly Found<KeptLine | SeenLine>[], one: string, many: string) =>
    found.length === 0 ? [] : [`${counted(found.length, one, many)}${linesOf(found, lines)}`];
  const parts = [
    ...part(changed, 'number has changed', 'numbers have changed'),
    ...part(rightNoMore, 'number is right no more', 'numbers are right no more'),
    ...part(added, 'number is new', 'numbers are new'),
    ...part(removed, 'number is gone', 'numbers are gone'),
  ];
  if (parts.length > 0) return `${signed}; not covered by the signature: ${listed(parts, 'and')}.`;
  return isSameText
    ? `${signed}, just as it stands.`
    : `${signed}; the text has changed since then, but no number in it.`;
}

/** ` (lines 12 and 40)`; nothing for numbers that are gone. */
function linesOf(found: readonly Found<KeptLine | SeenLine>[], lines: Lines): string {
  const all = found.flatMap(({ number }) =>
    'read' in number ? [lines.position(number.read.ranges[0].start).line] : [],
  );
  const named = [...new Set(all)].sort((a, b) => a - b).map(String);
  if (named.length === 0) return '';
  return ` (${named.length === 1 ? 'line' : 'lines'} ${listed(named, 'and')})`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
