/** Lengths that no equivalent is added to, each with the reason in a sentence. */
import type { Passage, ReadNumber } from '../../manuscript/manuscript.ts';
import type { Account } from '../../proof/proof.ts';
import { PRECUT } from '../../proof/selfChecks/dualUnits.ts';
import type { Sides } from './addition.ts';

interface Standing {
  readonly sides: Sides;
  readonly passage: Passage;
  readonly accounts: ReadonlyMap<ReadNumber, Account>;
  /** The text right before and right behind. */
  readonly before: string;
  readonly behind: string;
}

/** What shows that a number beside belongs to it: `7" (9", 12")`, `5 ft 6 in`. */
const LISTED = /^["”″]?\s*[([{/,;:]\s*\(?$/;
/** A name of precuts so near that it speaks of this length. */
const NEAR = 24;

const REASONS: readonly { readonly when: (standing: Standing) => boolean; readonly message: string }[] = [
  {
    when: ({ passage }) => passage.kind === 'heading',
    message: 'A heading stays as it is, so that links to it still lead there.',
  },
  {
    when: ({ sides, accounts }) =>
      sides.some((side) => ['wrong', 'stale', 'short'].includes(accounts.get(side)?.kind ?? '')),
    message: 'This length does not agree with the pattern yet; correct it first, then add its equivalent.',
  },
  {
    when: ({ sides }) => sides[0].group?.kind === 'range',
    message: 'This is a range, and both ends would need an equivalent; write it yourself.',
  },
  {
    when: ({ sides }) => sides.length > 2 || new Set(sides.map(({ unit }) => unit)).size > 1,
    message: 'This size has more than two sides, or sides in different units; write the equivalent yourself.',
  },
  {
    when: ({ sides }) => sides.some(({ written }) => written.ambiguous),
    message: 'This number can be read in two ways; write the equivalent yourself.',
  },
  {
    when: ({ before, behind }) => PRECUT.test(before.slice(-NEAR)) || PRECUT.test(behind.slice(0, NEAR)),
    message: 'Precuts measure something else in the shops of other countries; write the equivalent yourself.',
  },
  {
    when: ({ behind }) => /^[-\u2010\u2011]?\p{L}/u.test(behind),
    message: 'This length is joined to the word behind it; write the equivalent yourself.',
  },
  {
    when: (standing) => neighbours(standing).some(({ gap }) => LISTED.test(gap)),
    message: 'This is one of a list of lengths, which would be hard to read with an equivalent for each.',
  },
  {
    when: (standing) => neighbours(standing).some(({ gap }) => /^\s*(?:and|\+)?\s*$/.test(gap)),
    message:
      'This length is told in two units together, such as feet and inches; write the equivalent yourself.',
  },
];

export function whyNot(
  sides: Sides,
  passage: Passage,
  accounts: ReadonlyMap<ReadNumber, Account>,
): string | undefined {
  const end = (sides.at(-1) ?? sides[0]).written.end;
  const before = passage.text.slice(0, sides[0].written.start);
  const behind = passage.text.slice(end);
  return REASONS.find(({ when }) => when({ sides, passage, accounts, before, behind }))?.message;
}

/** The lengths beside, with the text between. */
function neighbours({ sides, passage: { numbers, text } }: Standing): { readonly gap: string }[] {
  const [first, last] = [sides[0], sides.at(-1) ?? sides[0]];
  const before = numbers[numbers.indexOf(first) - 1];
  const next = numbers[numbers.indexOf(last) + 1];
  const gaps = [
    { other: before, gap: text.slice(before?.written.end, first.written.start) },
    { other: next, gap: text.slice(last.written.end, next?.written.start) },
  ];
  return gaps.filter(({ other }) => other?.unit !== undefined);
}
