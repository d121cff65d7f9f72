/** References: figures, pages, steps, and the sheet of several that one has in hand. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger, isTold, nounsBehind } from '../sights.ts';

const AND = '(?:\\s?,\\s?(?:and\\s|or\\s)?|\\s?&\\s?|\\s(?:and|or|plus)\\s)';
const TO = '(?:\\s?[-–—]\\s?|\\s(?:to|through|thru|until)\\s)';
const MEMBER = '\\d{1,3}[A-Za-z]?';
/** Earlier members of a list: the `1, ` before the 2 of "steps 1, 2 and 3". */
const LIST = `(?:${MEMBER}(?:${AND}|${TO})){0,6}`;
const FIGURES =
  'fig(?:ure)?|diagrams?|diag|photo(?:graph)?|picture|pic|illustration|illus|image|chart|table|sketch|drawing|plate|video|tutorial';
const VERBS =
  'Cut|Sew|Press|From|Make|Join|Arrange|Lay|Repeat|Trim|Draw|Place|Pin|Fold|Stitch|Mark|Layer|Quilt|Attach|Bind|Turn|Using|With|To';

export const POINTERS = [
  {
    reason: 'figure reference',
    before: new RegExp(`\\b(?:${FIGURES})s?\\.?\\s?(?:no\\.?\\s)?${LIST}$`, 'i'),
    when: (sight) => isBareInteger(sight.number, 0, 999) && !isTold(sight) && !listGoesOn(sight),
    example: 'Arrange them as in Figures 2 and «3».',
    counterexample: 'In the figures «3» strips meet.',
  },
  {
    reason: 'page reference',
    before: new RegExp(`\\b(?:pages?\\s|pp?\\.\\s?)${LIST}$`, 'i'),
    when: (sight) => isBareInteger(sight.number, 0, 9999) && !isTold(sight) && !listGoesOn(sight),
    example: 'See pages 12 and «14».',
    counterexample: 'Print the pages and cut «14» shapes.',
  },
  {
    reason: 'page reference',
    before: /\b(?:pages?|parts?|sheets?|charts?|clues?)\s\d{1,3}\s?(?:of|\/)\s?$/i,
    when: ({ number }) => isBareInteger(number, 1, 999),
    example: 'Sheet 1 of «4».',
    counterexample: 'From sheet 1 cut «4» shapes.',
  },
  {
    reason: 'page reference',
    when: ({ text }) =>
      /^\s*\(?\d{1,3}\s?(?:of|\/)\s?\d{1,3}\)?\s*$/.test(text.slice(0, 24)) &&
      text.length < 24 &&
      /of/.test(text),
    example: '«1» of 2',
    counterexample: '«1» of 2 strips',
  },
  {
    reason: 'step number',
    before: new RegExp(`\\bsteps?\\s(?:no\\.?\\s)?${LIST}$`, 'i'),
    when: (sight) => isBareInteger(sight.number, 0, 999) && !isTold(sight) && !listGoesOn(sight),
    example: 'Repeat steps 3–«5».',
    counterexample: 'Take two segments from step 1 and «one» segment from step 2.',
  },
  {
    reason: 'step number',
    before: /^\s*$|[.!?:]\s*\n\s*$/,
    behind: new RegExp(`^(?:[a-h]?[.)]\\s|\\s(?=(?:${VERBS})\\s))`),
    when: ({ number }) => isBareInteger(number, 0, 99) && number.notation.numeral.form === 'integer',
    example: '«3» Cut 4 strips.',
    counterexample: '«3» Ripple blocks.',
  },
  {
    reason: 'step number',
    before: /^\s*$|[.!?:]\s*\n\s*$/,
    behind: /^\s\p{Lu}\p{Ll}*\s/u,
    when: ({ number, text }) =>
      number.unit === undefined &&
      /^\d{1,2}\.\d{1,2}$/.test(text.slice(number.start, number.end)) &&
      nounsBehind(text, number.end)[0]?.at !== 0,
    example: '«5.2» Sew an HST to each end.',
    counterexample: '«2.5» Strips are wide enough.',
  },
] as const satisfies readonly Recogniser[];

/** "step 1 and one segment": joined by "and" or a comma, and it counts something of its own. */
function listGoesOn({ number, text, before }: Parameters<typeof isTold>[0]): boolean {
  const joined = new RegExp(`\\d[A-Za-z]?${AND}$`, 'i').test(before);
  return joined && (nounsBehind(text, number.end).length > 0 || countsPieces(text, number.end));
}
