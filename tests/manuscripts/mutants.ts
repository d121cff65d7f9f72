/**
 * Wrong values of the kinds that people write: the neighbouring count, another size's value, a seam allowance too
 * much or too little, swapped digits, a lost fraction.
 */

import { applyEdits } from '../../core/findings/finding.ts';
import { amountOf, judge } from '../../core/proof/judge.ts';
import type { Account, Proof } from '../../core/proof/proof.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { type Rational, rational } from '../../core/quantity/rational.ts';
import { INCHES_PER } from '../../core/quantity/units.ts';
import { writeLike } from '../../core/quantity/write.ts';
import { isAlarm } from './quality.ts';

export interface Mutant {
  readonly start: number;
  /** The right number, and the wrong one in its place, as they are written. */
  readonly right: string;
  readonly wrong: string;
  readonly source: string;
  /** Whether the number was the figure's very own, so that a fix must give it back. */
  readonly isExact: boolean;
}

const MOST = 3;

/** Up to three for each verified number that stands in one piece. */
export function mutantsOf(source: string, proof: Proof): Mutant[] {
  return proof.accounts.flatMap((account): Mutant[] => {
    const { number, kind, tie } = account;
    const [range] = number.ranges;
    if (kind !== 'verified' || !tie || number.ranges.length > 1) return [];
    const isExact = amountOf(number, tie.figure.kind, proof.pattern.house)?.equals(tie.value.shown) === true;
    return wrongValues(account, proof)
      .slice(0, MOST)
      .flatMap((value) => {
        const wrong = writeLike(value, number.written, number.passage.text);
        if (wrong === undefined || wrong === number.text) return [];
        const text = source.slice(0, range.start) + wrong + source.slice(range.end);
        return [{ start: range.start, right: number.text, wrong, source: text, isExact }];
      });
  });
}

export interface Verdict {
  readonly isFlagged: boolean;
  /** Whether the first fix gives the right text back. */
  readonly isMended: boolean;
}

export function judgeMutant({ start, source }: Mutant, right: string): Verdict {
  const { accounts, findings } = proofread({ source });
  const account = accounts.find(({ number }) => number.ranges[0].start === start);
  const isFlagged = account !== undefined && isAlarm(account);
  const fix = findings.find((finding) => finding.start === start && finding.fixes.length > 0)?.fixes[0];
  const mended = applyEdits(source, fix?.edits ?? []);
  return { isFlagged, isMended: mended === right };
}

function wrongValues(account: Account, { pattern: { house } }: Proof): Rational[] {
  const { number, tie } = account;
  if (!tie) return [];
  const { value, unit } = number;
  const isCount = tie.figure.kind === 'count';
  const step = isCount ? rational(1) : seams(unit);
  const scale = unit ? INCHES_PER[unit] : rational(1);
  const others = [...tie.figure.values.values()].map(({ shown }) => shown.div(scale));
  const all = [
    value.add(step),
    value.sub(step),
    ...(value.d === 1n || value.compare(1) < 0 || number.written.notation.numeral.form === 'decimal'
      ? []
      : [value.floor()]),
    ...(tie.size === null ? [] : others),
    ...swapped(value),
  ];
  return all.filter((wrong, index) => {
    if (wrong.compare(0) <= 0 || wrong.equals(value)) return false;
    if (all.findIndex((one) => one.equals(wrong)) < index) return false;
    // More than what is required is not wrong.
    return judge({ ...number, value: wrong }, tie.figure, tie.value, house) !== 'verified';
  });
}

/** What a forgotten or doubled seam allowance makes, in the number's own unit. */
function seams(unit: Account['number']['unit']): Rational {
  if (unit === 'cm') return rational(3, 2);
  if (unit === 'mm') return rational(15);
  return unit === 'm' || unit === 'yd' ? rational(1, 4) : rational(1, 2);
}

/** 36 for 63. */
function swapped(value: Rational): Rational[] {
  const whole = value.floor();
  const digits = whole.toString();
  if (digits.length !== 2 || digits[1] === '0' || digits[0] === digits[1]) return [];
  return [value.sub(whole).add(rational(BigInt(`${digits[1]}${digits[0]}`)))];
}
