/** The sentences of the proof: what is stated, what it should be, why. */
import { lowerFirst } from '../block/words.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import { SAYS_SO } from '../figures/rooms/stated.ts';
import type { Show } from '../figures/show.ts';
import type { Rational } from '../quantity/rational.ts';
import type { Verdict } from './judge.ts';

/** What a message is about. */
export interface Subject {
  readonly figure: Figure;
  readonly value: FigureValue;
  /** `null` when the figure is the same in all sizes. */
  readonly size: string | null;
  readonly show: Show;
}

/**
 * @param text the number as the author wrote it
 * @param expected the right value in the author's style
 * @param stated the stated value as a count or in inches; or what changed since it was right
 * @param elsewhere what another manuscript says that the figure rests on, as a clause
 * @param assumed what it rests on although nobody says it
 * @param slip how people come to the stated number, as a clause
 */
export function message(
  verdict: Exclude<Verdict, 'verified'>,
  subject: Subject,
  text: string,
  expected: string,
  stated: Rational | string | undefined,
  elsewhere?: string | undefined,
  assumed?: string | undefined,
  slip?: string | undefined,
): string {
  const { figure, value } = subject;
  const title = titleOf(subject);
  const usual = assumed === undefined ? '' : ` (${assumed})`;
  const how = slip === undefined ? '' : `; ${slip}`;
  const why = typeof stated === 'string' ? stated : reasons(value, stated, elsewhere) + usual + how;
  switch (verdict) {
    case 'wrong':
      return `${title} is ${expected}, not ${text}: ${why}.`;
    case 'short':
      return `${title} ${value.least ? 'should be' : 'must be at least'} ${expected}, not ${text}: ${why}.`;
    case 'generous':
      return `${title} need only be ${expected}, and ${text} is well above it: ${reasons(value, undefined, elsewhere)}${usual}${how}.`;
    case 'other kind':
      return `${title} is ${figure.kind === 'count' ? 'a count' : 'a length'}, but ${text} is ${figure.kind === 'count' ? 'a length' : 'a count'}.`;
  }
}

export function titleOf({ figure, size }: Subject): string {
  const { title } = figure;
  if (size === null || size === '') return title;
  return `In the size “${size}”, ${lowerFirst(title)}`;
}

/** The reason, what the stated value would give, and what another manuscript says for it. */
function reasons(
  { because, against }: FigureValue,
  amount: Rational | undefined,
  elsewhere: string | undefined,
): string {
  const isOnlyThere = because === SAYS_SO && elsewhere !== undefined;
  return [isOnlyThere ? undefined : because, amount && against(amount), elsewhere].filter(Boolean).join('; ');
}
