import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../core/manuscript/read.ts';
import { type Recogniser, whyNotMeasurement } from '../../core/manuscript/recognisers.ts';
import { RECOGNISERS } from '../../core/manuscript/recogniserTable.ts';
import { findNumbers } from '../../core/quantity/read.ts';
import { NOTHING, SOMETHING } from './wordings.ts';

/** Whether each number between « and » may measure something; as its text where no number is read. */
function measuring(line: string): (boolean | string)[] {
  const { numbers } = readManuscript(line.replace(/[«»]/g, ''));
  return [...line.matchAll(/«([^»]*)»/g)].map(({ 0: marked, index }) => {
    const start = line.slice(0, index).replace(/[«»]/g, '').length;
    const found = numbers.find(({ ranges }) => ranges[0].start === start);
    return found ? found.notMeasurement === undefined : marked;
  });
}

const lines = (text: string) => text.trim().split('\n');

describe('Wordings of manuscripts', () => {
  test.each(lines(NOTHING))('measure nothing in: %s', (line) => {
    expect(measuring(line).filter((each) => each === true)).toEqual([]);
  });

  test.each(lines(SOMETHING))('measure something in: %s', (line) => {
    const found = measuring(line);
    expect(found).toEqual(found.map(() => true));
  });
});

describe('The recognisers', () => {
  const rows: readonly Recogniser[] = RECOGNISERS;
  const reasons = new Set<string | undefined>(rows.map(({ reason }) => reason));
  const words = rows.flatMap(({ example, counterexample }) =>
    `${example} ${counterexample}`.replace(/[«»]/g, '').split(' '),
  );

  test('give every number of any text a reason of theirs, or none', () => {
    const piece = fc.oneof(
      fc.constantFrom(...words),
      fc.string({ unit: 'binary', maxLength: 6 }),
      fc.nat(2100).map(String),
    );
    const glue = fc.constantFrom(' ', ' ', ' ', '', '-', '\n', ', ', '/');
    const text = fc.array(fc.tuple(piece, glue), { maxLength: 40 }).map((parts) => parts.flat().join(''));
    fc.assert(
      fc.property(text, (each) => {
        for (const number of findNumbers(each)) {
          const reason = whyNotMeasurement(number, each);
          expect(reason === undefined || reasons.has(reason)).toBe(true);
        }
      }),
    );
  });

  const start = fc.constantFrom(
    '',
    'Step 3: ',
    'See Figure 2. ',
    'From Fabric 4, ',
    'In row 2, ',
    'On Saturday, ',
    'Before lunch, ',
    'On page 7: ',
    'For Border 1, ',
    'With a 90/14 needle, ',
    'With your ruler, ',
    'After 2 hours, ',
    'By 6 May, ',
    'Using Template B, ',
    'Repeat steps 2 and 3, then ',
    'Version 2. ',
    'Kit $40. ',
    'Set the stitch length to 2. ',
  );
  const verb = fc.constantFrom(
    'cut',
    'make',
    'sew',
    'join',
    'take',
    'use',
    'lay out',
    'press',
    'trim',
    'you need',
    'arrange',
  );
  const count = fc.oneof(
    fc.integer({ min: 2, max: 999 }).map(String),
    fc.constantFrom('two', 'twelve', 'twenty-four'),
  );
  const kind = fc.constantFrom(
    '',
    'blue ',
    'night ',
    'striped ',
    'corner ',
    'paper-backed ',
    'remaining ',
    'half-square ',
  );
  const noun = fc.constantFrom(
    'squares',
    'strips',
    'triangles',
    'blocks',
    'units',
    'rows',
    'segments',
    'HSTs',
    'geese',
  );

  test('never drop a count of pieces behind a verb', () => {
    fc.assert(
      fc.property(start, verb, count, kind, noun, (opening, does, many, like, pieces) => {
        const text = `${opening}${does} ${many} ${like}${pieces} for the top.`;
        const at = opening.length + does.length + 1;
        const number = findNumbers(text).find((each) => each.start === at);
        expect(number && whyNotMeasurement(number, text)).toBeUndefined();
        expect(number).toBeDefined();
      }),
    );
  });

  test('never drop the size of pieces behind a verb and a count', () => {
    const size = fc.constantFrom('2½"', '3-1/2"', '6"', '10 cm', '2.5"');
    fc.assert(
      fc.property(start, verb, count, size, noun, (opening, does, many, width, pieces) => {
        const text = `${opening}${does} ${many} ${width} ${pieces} for the top.`;
        const at = opening.length + does.length + 1;
        const read = findNumbers(text).filter((each) => each.start >= at);
        expect(read.map((number) => whyNotMeasurement(number, text))).toEqual(read.map(() => undefined));
        expect(read.length).toBeGreaterThan(0);
      }),
    );
  });
});
