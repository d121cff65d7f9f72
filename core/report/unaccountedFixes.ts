/** What an author can say about a number that no figure accounts for: what it states, or that it is left alone. */
import { lowerFirst } from '../block/words.ts';
import type { Fix, Range } from '../findings/finding.ts';
import { commentBehind } from '../manuscript/behind.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { type PlausibleFigure, plausibleFigures } from '../proof/plausible.ts';
import type { Proof } from '../proof/proof.ts';
import { placeOf } from './place.ts';

/** More than this is no choice any more. */
const MOST = 5;

/**
 * Takes as long as a proofreading, so it is asked for only where the author wants to know.
 *
 * @param place of a number
 */
export function unaccountedFixes(proof: Proof, { start }: Range): Fix[] {
  const account = proof.accounts.find(
    ({ kind, number }) => kind === 'unaccounted' && placeOf(number).start === start,
  );
  if (!account || isTagged(account.number)) return [];
  const { number } = account;
  const titled = new Map<string, PlausibleFigure>();
  // Figures that are called the same are no choice for who reads the titles: the likeliest stands for all.
  for (const plausible of plausibleFigures(proof, number)) {
    const title = titleOf(proof, plausible);
    if (!titled.has(title)) titled.set(title, plausible);
  }
  const tags = [...titled]
    .slice(0, MOST)
    .flatMap(([title, plausible]) => tagFix(proof, number, title, plausible) ?? []);
  const skip = skipFix(proof, number);
  return [...tags, ...(skip ? [skip] : [])];
}

/** A tag that could not be followed has a finding of its own. */
function isTagged({ passage: { tags, numbers }, written: { end } }: ReadNumber): boolean {
  const next = numbers.find(({ written }) => written.start >= end)?.written.start ?? Number.POSITIVE_INFINITY;
  return tags.some(({ at }) => at >= end && at <= next);
}

function titleOf({ ledger }: Proof, { figure, size, value }: PlausibleFigure): string {
  const where = size ? ` in the size “${size}”` : '';
  const amount = value ? `: ${ledger.show.figure(value, figure.kind)}` : '';
  return `This is ${lowerFirst(figure.title)}${where}${amount}`;
}

function tagFix(
  { manuscript }: Proof,
  number: ReadNumber,
  title: string,
  { figure, size }: PlausibleFigure,
): Fix | undefined {
  const at = size ? ` @ ${size}` : '';
  const edit = commentBehind(
    manuscript,
    number,
    `<!-- = ${figure.id}${at} -->`,
    (meaning) =>
      'figures' in meaning && meaning.figures.join() === figure.id && meaning.size === (size || undefined),
  );
  return edit && { title, preferred: false, edits: [edit] };
}

function skipFix({ manuscript }: Proof, number: ReadNumber): Fix | undefined {
  const edit = commentBehind(manuscript, number, '<!-- measure skip -->', (meaning) => 'skip' in meaning);
  return (
    edit && { title: `Leave “${number.text.replace(/\s+/g, ' ')}” alone`, preferred: false, edits: [edit] }
  );
}
