import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { COUNTS } from './errata/counts.ts';
import { CUT_SIZES } from './errata/cutSizes.ts';
import type { Wrong } from './errata/erratum.ts';
import { FINISHED_SIZES } from './errata/finishedSizes.ts';
import { JOINS } from './errata/joins.ts';
import { LISTS } from './errata/lists.ts';
import { YARDAGES } from './errata/yardages.ts';

/** The numbers in « », each with its place in the text without the marks. */
function marked({ text }: Wrong) {
  const numbers = [...text.matchAll(/«([^»]*)»/g)].map((match, index) => ({
    text: match[1] ?? '',
    start: match.index - 2 * index,
  }));
  return { source: text.replace(/[«»]/g, ''), numbers };
}

/** What neither the reading nor the checks find yet. Whoever mends one takes it off the list. */
const NOT_FOUND_YET: ReadonlySet<string> = new Set([
  'two sides of a join that differ: the sides of the inner border as long as its top',
  'two sides of a join that differ: the outer top border without the width of the inner border',
  'a wrong cut size: the finished side of a block where it is trimmed before it is sewn in',
  'a wrong cut size: digits of a mixed number run together',
  'a list and a text that disagree: the count of another piece',
  'a list and a text that disagree: the size of another piece',
  'a list and a text that disagree: centimetres for inches',
  'a list and a text that disagree: without a block: words and digits',
  'a list and a text that disagree: without a block: two units that disagree',
  'a list and a text that disagree: a piece that is cut and used in different numbers',
  'a wrong finished size: inches printed as centimetres',
  'a short yardage: another size',
  'a short yardage: the diameter for the way around',
  'a short yardage: rounded down',
  'a wrong count: the units of one block for those of all',
  'a wrong count: the fabric counted wider than the pattern says',
  'a wrong count: sashes counted around the outside',
  'a wrong count: a binding strip too few',
  'a wrong count: rows and columns swapped',
]);

describe.each([JOINS, CUT_SIZES, LISTS, FINISHED_SIZES, YARDAGES, COUNTS])(
  'Of $kind',
  ({ kind, wrong, right }) => {
    const isFound = ({ mistake }: Wrong) => !NOT_FOUND_YET.has(`${kind}: ${mistake}`);

    it.each(wrong.filter(isFound).map((each) => [each.mistake, each] as const))(
      'this is found: %s',
      (_, each) => {
        const { source, numbers } = marked(each);
        const { findings, accounts } = proofread({ source });
        expect(findings.map(({ start, end }) => ({ text: source.slice(start, end), start }))).toEqual(
          numbers,
        );
        const slips = numbers.map(
          ({ start }) => accounts.find(({ number }) => number.ranges[0].start === start)?.slip?.name,
        );
        expect(slips).toEqual(numbers.map(() => each.slip));
      },
    );

    it.each(wrong.filter((each) => !isFound(each)).map((each) => [each.mistake, each] as const))(
      'this is not yet found at its place and by its slip: %s',
      (_, each) => {
        const { source, numbers } = marked(each);
        const { findings, accounts } = proofread({ source });
        const found = findings.map(({ start, end }) => ({
          text: source.slice(start, end),
          start,
          slip: accounts.find(({ number }) => number.ranges[0].start === start)?.slip?.name,
        }));
        expect(found).not.toEqual(numbers.map((number) => ({ ...number, slip: each.slip })));
      },
    );

    it.each(right)('this is not flagged, although it looks like one: %s', (_, source) => {
      expect(proofread({ source }).findings.map(({ message }) => message)).toEqual([]);
    });
  },
);
