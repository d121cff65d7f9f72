/** Slips of the keyboard: digits swapped, lost or typed twice, a lost space in a mixed number. */
import { isInteger, type Rational } from '../../quantity/rational.ts';
import { readNumberAt } from '../../quantity/read.ts';
import type { Mistake } from './mistake.ts';
import type { Explained, Slip } from './slip.ts';

/** What the author wrote and what should stand there, without their marks; in digits only. */
function texts({ text, right }: Mistake): readonly [typed: string, meant: string] | undefined {
  const [typed, meant] = [text, right ?? ''].map((each) => /^[\d.,]+/.exec(each)?.[0]);
  if (typed === undefined || meant === undefined) return undefined;
  const isRestAlike = text.slice(typed.length) === right?.slice(meant.length);
  return isRestAlike ? [typed, meant] : undefined;
}

function ifTyped(how: (typed: string, meant: string) => boolean, clause: (text: string) => string) {
  return (mistake: Mistake): Explained | undefined => {
    const [typed, meant] = texts(mistake) ?? [];
    return typed !== undefined && meant !== undefined && typed !== meant && how(typed, meant)
      ? { clause: clause(mistake.text) }
      : undefined;
  };
}

function isSwapped(typed: string, meant: string): boolean {
  if (typed.length !== meant.length || /\D/.test(typed + meant)) return false;
  const at = [...typed].findIndex((digit, index) => digit !== meant[index]);
  return typed === meant.slice(0, at) + meant.charAt(at + 1) + meant.charAt(at) + meant.slice(at + 2);
}

/** Whether `short` is `long` without one of its digits; `double` if that digit stands beside its like. */
function isWithout(short: string, long: string, double: boolean): boolean {
  return [...long].some(
    (digit, at) =>
      short === long.slice(0, at) + long.slice(at + 1) && (!double || long.charAt(at + 1) === digit),
  );
}

function pointless(text: string): string {
  return text.replace(/[.,]/g, '').replace(/^0+/, '');
}

/** The mixed numbers that `21/2` is without its space, in the unit in which it stands. */
function mixedIn(text: string): { readonly text: string; readonly value: Rational }[] {
  const [, digits = '', below = ''] = /^(\d{2,3})[/⁄∕](\d{1,2})(?!\d)/.exec(text) ?? [];
  return [...digits].slice(1).flatMap((_, at) => {
    const mixed = `${digits.slice(0, at + 1)} ${digits.slice(at + 1)}/${below}`;
    const read = Number(below) > 0 ? readNumberAt(mixed, 0) : undefined;
    return read?.end === mixed.length ? [{ text: mixed, value: read.value }] : [];
  });
}

const QUILT = ['finished: 63" x 85 1/2"', 'binding: { strip: 2 1/2" }'];
const METRIC = ['house: { seam: 0.75 cm }', 'finished: 122.5 cm x 160 cm'];

export const TYPING: readonly Slip[] = [
  {
    name: 'two digits swapped',
    explain: ifTyped(isSwapped, (text) => `two digits are swapped in ${text}`),
    example: {
      block: QUILT,
      sentence: 'The quilt is «36"» <!-- = finished.width --> wide.',
      says: 'two digits are swapped in 36"',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «35"» <!-- = finished.width --> wide.' },
  },
  {
    name: 'a digit lost',
    explain: ifTyped(
      (typed, meant) => isWithout(typed, meant, false),
      (text) => `a digit is missing in ${text}`,
    ),
    example: {
      block: QUILT,
      sentence: 'The quilt is «5½"» <!-- = finished.length --> long.',
      says: 'a digit is missing in 5½"',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «7½"» <!-- = finished.length --> long.' },
  },
  {
    name: 'a digit typed twice',
    explain: ifTyped(
      (typed, meant) => isWithout(meant, typed, true),
      (text) => `a digit stands twice in ${text}`,
    ),
    example: {
      block: QUILT,
      sentence: 'The quilt is «633"» <!-- = finished.width --> wide.',
      says: 'a digit stands twice in 633"',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «634"» <!-- = finished.width --> wide.' },
  },
  {
    name: 'the decimal point misplaced',
    explain: ifTyped(
      (typed, meant) => /[.,]/.test(typed + meant) && pointless(typed) === pointless(meant),
      (text) => `the decimal point is misplaced in ${text}`,
    ),
    example: {
      block: METRIC,
      sentence: 'The quilt is «12.25 cm» <!-- = finished.width --> wide.',
      says: 'the decimal point is misplaced in 12.25 cm',
    },
    counterexample: { block: METRIC, sentence: 'The quilt is «12.24 cm» <!-- = finished.width --> wide.' },
  },
  {
    name: 'a lost space in a mixed number',
    explain: (mistake) => {
      const meant = mixedIn(mistake.text).find(({ value }) => mistake.isRightAs(value));
      return (
        meant && { clause: `a space is missing in ${mistake.text}, which reads as ${meant.text} with one` }
      );
    },
    example: {
      block: QUILT,
      sentence: 'Cut binding strips «21/2"» <!-- = binding.strip --> wide.',
      says: 'a space is missing in 21/2", which reads as 2 1/2 with one',
    },
    counterexample: { block: QUILT, sentence: 'Cut binding strips «21/4"» <!-- = binding.strip --> wide.' },
  },
  {
    name: 'a lost whole number',
    explain: (mistake) => {
      const lost = mistake.rightWritten.sub(mistake.stated.value);
      return mistake.stated.value.compare(1) < 0 &&
        !isInteger(mistake.stated.value) &&
        isInteger(lost) &&
        lost.compare(0) > 0
        ? { clause: `the whole number before ${mistake.text} is missing` }
        : undefined;
    },
    example: {
      block: QUILT,
      sentence: 'Cut binding strips «½"» <!-- = binding.strip --> wide.',
      says: 'the whole number before ½" is missing',
    },
    counterexample: { block: QUILT, sentence: 'Cut binding strips «¾"» <!-- = binding.strip --> wide.' },
  },
  {
    name: 'a lost fraction',
    isWeak: true,
    explain: ({ stated: { value }, rightWritten }) =>
      isInteger(value) && !isInteger(rightWritten) && value.equals(rightWritten.floor())
        ? { clause: undefined }
        : undefined,
    example: {
      block: QUILT,
      sentence: 'Cut binding strips «2"» <!-- = binding.strip --> wide.',
      says: undefined,
    },
    counterexample: { block: QUILT, sentence: 'Cut binding strips «3"» <!-- = binding.strip --> wide.' },
  },
];
