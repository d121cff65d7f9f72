/** Whether a manuscript with equivalents reads as it did without them, and each equivalent as one of its length. */
import type { Account, Proof } from '../../proof/proof.ts';
import { unitPairs } from '../../proof/unitPairs.ts';
import type { Addition } from './addition.ts';

/** @returns the additions that must not stay: at least one whenever anything is not as it was */
export function findTroubles(
  before: Proof,
  additions: readonly Addition[],
  after: Proof,
): ReadonlySet<Addition> {
  const troubled = new Set<Addition>();
  const later = new Map(after.accounts.map((account) => [account.number.ranges[0].start, account]));
  const moved = new Map(
    before.accounts.map((account) => [account, later.get(movedStart(account, additions))]),
  );
  for (const [at, account] of before.accounts.entries())
    if (!isAsBefore(account, moved.get(account)))
      for (const addition of nearest(at, before, additions)) troubled.add(addition);
  const partners = partnersIn(after);
  const known = new Map(before.accounts.map((account) => [account.number, account]));
  for (const addition of additions) {
    const isSound = addition.sides.every((side) => {
      const account = known.get(side);
      const mate = account && moved.get(account);
      const partner = mate && partners.get(mate.number);
      const kind = partner && later.get(partner.ranges[0].start)?.kind;
      return kind === (mate?.kind === 'verified' ? 'verified' : 'unaccounted');
    });
    if (!isSound) troubled.add(addition);
  }
  return troubled;
}

function movedStart({ number }: Account, additions: readonly Addition[]): number {
  const { start } = number.ranges[0];
  return additions.reduce((sum, { at, text }) => (at <= start ? sum + text.length : sum), start);
}

function isAsBefore(account: Account, now: Account | undefined): boolean {
  return (
    now !== undefined &&
    now.number.text === account.number.text &&
    now.number.unit === account.number.unit &&
    (now.kind === account.kind || now.kind === 'verified') &&
    (account.kind !== 'verified' || now.tie?.figure.id === account.tie?.figure.id)
  );
}

/** Those of the same passage, or else the nearest ones. */
function nearest(at: number, { accounts }: Proof, additions: readonly Addition[]): readonly Addition[] {
  const number = accounts[at]?.number;
  const own = additions.filter(({ sides }) => sides[0].passage === number?.passage);
  if (own.length > 0 || !number) return own;
  const distance = (addition: Addition) => Math.abs(addition.at - number.ranges[0].start);
  const least = Math.min(...additions.map(distance));
  return additions.filter((addition) => distance(addition) === least);
}

function partnersIn({ manuscript }: Proof) {
  const pairs = manuscript.passages.flatMap(unitPairs);
  return new Map(
    pairs.flatMap(({ first, second }) =>
      first.flatMap((one, index) => {
        const other = second[index];
        return other ? [[one, other] as const] : [];
      }),
    ),
  );
}
