import { describe, expect, it } from 'vitest';
import { complaints } from '../support/pattern.ts';

/** Blocks that are no YAML: the text that is underlined, and the sentence. Each has the one finding. */
const BROKEN: readonly [title: string, block: string, underlined: string, message: string][] = [
  [
    'a brace that is not closed',
    'binding: { strip: 2 1/4"\nfinished: 3" x 4"',
    'binding: { strip: 2 1/4"',
    'A bracket that opens before here is not closed.',
  ],
  [
    'a bracket that is not closed at the end of the block',
    'finished: 3" x 4"\nsizes: [wall, throw',
    'sizes: [wall, throw',
    'A bracket that opens before here is not closed.',
  ],
  [
    'a note that swallows the bracket behind it',
    'fabrics: { A: Deep #3 }\nfinished: 3" x 4"',
    'fabrics: { A: Deep #3 }',
    'A bracket that opens before here is not closed. Behind a space, # begins a note of your own; put quotation marks around a value that holds it.',
  ],
  [
    'a quotation mark that is not closed',
    'pattern: "Kettle Pond\nfinished: 3 in x 4 in',
    'finished: 3 in x 4 in',
    'A quotation mark that opens before here is not closed.',
  ],
  [
    'a tab where spaces must stand',
    'house:\n\tseam: 1/4"\nfinished: 3" x 4"',
    '\t',
    'A tab stands where spaces must: indent with spaces.',
  ],
  [
    'a line that is indented too little',
    'house:\n  seam: 1/4"\n usable width: 40"',
    'usable width: 40"',
    'This line is not indented like the lines it belongs to.',
  ],
  [
    'a line that is indented too much, and so belongs to the value above',
    'house:\n  seam: 1/4"\n   usable width: 40"',
    '1/4"',
    'A name with its colon stands inside this value: begin a line of its own with it, put a comma before it, or put quotation marks around the whole value.',
  ],
  [
    'a value with a colon in it',
    'pattern: Kettle: Pond',
    'Kettle: Pond',
    'A name with its colon stands inside this value: begin a line of its own with it, put a comma before it, or put quotation marks around the whole value.',
  ],
  [
    'a name without a colon',
    'finished: 36" x 48"\nbinding strip 2"',
    'binding strip 2"',
    'A colon and a space are missing behind this name.',
  ],
  [
    'a name without a colon before another',
    'fabrics:\n  A Deep\n  B: Foam',
    'A Deep\n  B',
    'A name and its colon must stand on one line; perhaps the colon is missing.',
  ],
  [
    'text behind a quotation',
    'pattern: "Kettle" Pond',
    'Pond',
    'This cannot stand here; if it is part of the value, put quotation marks around the whole value.',
  ],
  [
    'a value that begins with a sign of YAML',
    'pattern: @home',
    '@home',
    'A value cannot begin with this sign; put quotation marks around the value.',
  ],
  [
    'a backslash between double quotation marks',
    'pattern: "a\\d"',
    '\\',
    'Between double quotation marks a backslash cannot stand here; use single ones.',
  ],
  [
    'a tag of YAML',
    'finished: !!str 36" x 48"',
    '36" x 48"',
    'A word with an exclamation mark before it is not part of the measure block; write the value alone.',
  ],
  [
    'an anchor and a reference to it',
    'fabrics: { A: &a Deep, B: *a }',
    '*a',
    'A reference with * is not part of the measure block; write the value itself.',
  ],
  [
    'two names between brackets without a comma',
    'sizes: ["wall" "throw"]',
    '"throw"]',
    'A comma is missing before this.',
  ],
  [
    'a second document',
    'finished: 36" x 48"\n---\nbatting: {}',
    '---',
    'One block holds one pattern: a line of three dashes cannot stand here.',
  ],
  [
    'a list instead of entries',
    '- finished: 36" x 48"',
    '- finished: 36" x 48"',
    'A measure block holds entries, each with its name, a colon, a space and a value.',
  ],
  [
    'no space behind the colon of the only entry',
    'finished:36" x 48"',
    'finished:36" x 48"',
    'A measure block holds entries, each with its name, a colon, a space and a value.',
  ],
  [
    'a list as a name',
    '[a, b]: 3\nfinished: 36" x 48"',
    '[a, b]',
    'An entry begins with its name and a colon.',
  ],
];

describe('a block that is no YAML', () => {
  it.each(BROKEN)('gets a plain sentence at the place: %s', (_, block, underlined, message) => {
    expect(complaints(block)).toEqual([['block-syntax', underlined, message]]);
  });

  it('is told of the space that is missing behind the colon of a part', () => {
    expect(complaints('finished: 3" x 4"\nbinding: {strip:2 1/4"}')).toEqual([
      ['unknown-entry', 'strip:2 1/4"', 'A space is missing behind the colon of “strip”.'],
    ]);
  });

  it('is told at the name when nothing stands behind it', () => {
    expect(complaints('finished:\nbatting: {}')).toEqual([
      ['bad-value', 'finished', 'Write a finished size or shape here, for example 36" x 48".'],
    ]);
  });

  it('takes quotation marks, notes and values over several lines as YAML does', () => {
    expect(
      complaints(`pattern: 'Kettle''s Pond' # a working title\nfinished: >\n  36" x\n  48"\nbatting: {} #\n`),
    ).toEqual([]);
  });
});
