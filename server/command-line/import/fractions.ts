/**
 * Fractions that a word processor or a web page took apart. One is put together only where nothing else can be meant;
 * where two readings are left, the text stays and a person is told.
 */

export interface Note {
  /** `undefined` for a doubt, which changes nothing. */
  readonly mended: string | undefined;
  readonly was: string;
  readonly reason: string;
}

export interface Mended {
  readonly text: string;
  /** In the order of the text; `at` is the place in the new text. */
  readonly notes: readonly (Note & { readonly at: number })[];
}

/** The fractions of rulers and of shops. */
const DENOMINATORS = new Set([2, 3, 4, 8, 16, 32]);
/** What is measured in fractions: without one of these behind it, `12/8` may be a date or a size of needle. */
const UNIT = /^(?:\s?(?:["″”]|''|’’|-?\s?(?:in(?:ch(?:es)?)?|yd|yards?)\b)|(?=\s?[x×]\s?\d))/i;

/** A whole number and a fraction, with what stands between them and between the numbers of the fraction. */
const FORMS: readonly {
  readonly pattern: RegExp;
  readonly mend: (groups: readonly string[], behind: string) => string | Doubt | undefined;
  readonly reason: string;
}[] = [
  {
    // 2^3/4
    pattern: /(\d+)\s?\^\s?(\d+)\s?[/⁄]\s?(\d+)/g,
    mend: ([whole, over, under]) => together(whole, over, under),
    reason: 'a caret stood before the fraction',
  },
  {
    // 2³⁄₄, 2³/4
    pattern: /(?:(\d+)\s?)?([⁰¹²³⁴⁵⁶⁷⁸⁹]+)\s?[/⁄]\s?([₀₁₂₃₄₅₆₇₈₉]+|[⁰¹²³⁴⁵⁶⁷⁸⁹]+|\d+)/g,
    mend: ([whole = '', over = '', under = '']) => together(whole, level(over), level(under)),
    reason: 'its digits were raised and lowered',
  },
  {
    // 2 3 / 4"
    pattern: /(?<![\d/.,])(?:(\d+) )?(\d+)(?: [/⁄] ?| ?[/⁄] )(\d+)(?![\d/])/g,
    mend: ([whole, over, under], behind) => (UNIT.test(behind) ? together(whole, over, under) : undefined),
    reason: 'spaces stood beside its bar',
  },
  {
    // 31/2", 21⁄2
    pattern: /(?<![\d/⁄.,$-])(\d{2,})[/⁄](\d+)(?![\d/⁄])/g,
    mend: ([run = '', under = ''], behind) => apart(run, under, UNIT.test(behind)),
    reason: 'the space behind the whole number was lost',
  },
  {
    // 5²
    pattern: /\d[⁰¹²³⁴⁵⁶⁷⁸⁹]+(?!\s?[/⁄])/g,
    mend: () => ({ doubt: 'raised digits stand behind a number' }),
    reason: '',
  },
];

type Doubt = { readonly doubt: string };

export function mendFractions(text: string): Mended {
  return FORMS.reduce<Mended>(
    (before, { pattern, mend, reason }) => {
      const notes: (Note & { at: number })[] = [];
      let [result, last] = ['', 0];
      for (const match of before.text.matchAll(pattern)) {
        const [was, ...groups] = match;
        const outcome = mend(groups, before.text.slice(match.index + was.length));
        if (outcome === undefined) continue;
        result += before.text.slice(last, match.index);
        const at = result.length;
        if (typeof outcome === 'string') notes.push({ at, was, mended: outcome, reason });
        else notes.push({ at, was, mended: undefined, reason: outcome.doubt });
        result += typeof outcome === 'string' ? outcome : was;
        last = match.index + was.length;
      }
      result += before.text.slice(last);
      const earlier = before.notes.map((note) => ({ ...note, at: shifted(note.at, notes) }));
      return { text: result, notes: [...earlier, ...notes].sort((a, b) => a.at - b.at) };
    },
    { text, notes: [] },
  );
}

/** Where a place of an earlier form stands after this one, which changed what `notes` say. */
function shifted(at: number, notes: readonly (Note & { at: number })[]): number {
  let moved = at;
  for (const note of notes) {
    if (note.at < moved) moved += (note.mended ?? note.was).length - note.was.length;
  }
  return moved;
}

/** `undefined` for what is no proper fraction of a ruler. */
function together(whole: string | undefined, over = '', under = ''): string | undefined {
  if (!isProper(over, under)) return undefined;
  return `${whole ? `${Number(whole)} ` : ''}${Number(over)}/${Number(under)}`;
}

/**
 * A run of digits before the bar. As it stands it would be more than one, which nobody prints; so a space was lost, and
 * where only one place for it gives a proper fraction in lowest terms, that was its place.
 */
function apart(run: string, under: string, hasUnit: boolean): string | Doubt | undefined {
  if (!DENOMINATORS.has(Number(under)) || Number(run) < Number(under)) return undefined;
  const ways = Array.from({ length: run.length - 1 }, (_, index) => [
    run.slice(0, index + 1),
    run.slice(index + 1),
  ])
    .filter(([whole = '', over = '']) => !/^0/.test(whole) && !/^0/.test(over) && isProper(over, under))
    .map(([whole, over]) => `${whole} ${over}/${under}`);
  const [only, ...others] = ways;
  if (only === undefined) return undefined;
  if (others.length > 0) return { doubt: `it may be ${ways.join(' or ')}` };
  return hasUnit ? only : { doubt: `it may be ${only}, but no unit stands behind it` };
}

/** Less than one, of a ruler, and in lowest terms. */
function isProper(over: string, under: string): boolean {
  const [n, d] = [Number(over), Number(under)];
  return n > 0 && n < d && DENOMINATORS.has(d) && (d === 3 || n % 2 === 1);
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

function level(digits: string): string {
  return digits.replace(/[^0-9]/g, (digit) =>
    String(Math.max(RAISED.indexOf(digit), LOWERED.indexOf(digit))),
  );
}
