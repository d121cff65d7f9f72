/** What an author can say about a number that no figure accounts for: what it states, or that it is left alone. */
import { lowerFirst } from '../block/words.ts';
import type { Fix, Range } from '../findings/finding.ts';
import { type PlaceBehind, placeBehind } from '../manuscript/behind.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { readComment } from '../manuscript/tags.ts';
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
  const place = placeBehind(proof.manuscript, number);
  if (!place) return [];
  const tags = [...titled].slice(0, MOST).flatMap(([title, plausible]) => {
    const tag = tagFor(plausible);
    return tag === undefined ? [] : [fixWith(title, place, tag)];
  });
  return [...tags, fixWith(`Leave “${number.text.replace(/\s+/g, ' ')}” alone`, place, 'measure skip')];
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

/** `undefined` for the name of an author that would end the comment, or the cell of a table. */
function tagFor({ figure, size }: PlausibleFigure): string | undefined {
  const tag = `= ${figure.id}${size ? ` @ ${size}` : ''}`;
  const meaning = readComment(` ${tag} `, (start, end) => ({ start, end }));
  const isRead = meaning && 'figures' in meaning && meaning.figures.join() === figure.id;
  return isRead && !/--|[|\n]/.test(tag) ? tag : undefined;
}

function fixWith(title: string, { at, space }: PlaceBehind, said: string): Fix {
  return { title, preferred: false, edits: [{ start: at, end: at, text: `${space}<!-- ${said} -->` }] };
}
