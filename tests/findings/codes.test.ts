import { describe, expect, it } from 'vitest';
import { CODES, type Code } from '../../core/findings/codes.ts';
import { proofreadExample } from '../../core/report/reference/example.ts';
import { summary } from '../support/pattern.ts';

/** What the example of every code is answered with: the text that is underlined, and the sentence. */
const SENTENCES: Readonly<Record<Code, readonly [underlined: string, sentence: string]>> = {
  'wrong-figure': [
    '160"',
    'The length of the finished edge is 168", not 160": 2 × (36" + 48") = 168" around.',
  ],
  'short-figure': [
    '4',
    'The number of binding strips must be at least 5, not 4: 168" around plus 12" to join is 180"; 4 strips joined give 153¼" (with 40" of usable width and 12" to join, unless the block says otherwise).',
  ],
  'stale-figure': [
    '2¼"',
    'The width of the binding strip is 2½", not 2¼": it was right until “strip” of the binding changed from 2 1/4" to 2 1/2".',
  ],
  'generous-figure': [
    '2 yd',
    'The fabric for the binding need only be ⅜ yd, and 2 yd is well above it: 5 strips × 2¼" = 11¼" (with 40" of usable width and 12" to join, unless the block says otherwise).',
  ],
  'wrong-unit': ['5"', 'The number of binding strips is a count, but 5" is a length.'],
  'unknown-figure': ['finished.egde', 'There is no figure “finished.egde”. Did you mean “finished.edge”?'],
  'unknown-size': ['wal', 'The pattern has no size “wal”. Did you mean “wall”?'],
  'size-needed': [
    '<!-- = finished.edge -->',
    'The length of the finished edge differs between the sizes; say which one is meant, for example “@ wall”.',
  ],
  'stray-tag': ['<!-- = finished.edge -->', 'No number stands before this tag.'],
  'unclear-figure': [
    '5',
    '5 is neither the number of strips for the inner border (6) nor the number of strips for the outer border (7).',
  ],
  'bad-tag': ['<!-- = @ wall -->', 'This tag names no figure; write it as = binding.strips.'],
  'block-syntax': ['binding: { strip: 2 1/4"', 'A bracket that opens before here is not closed.'],
  'unknown-entry': ['finnished', '“finnished” is no entry of the measure block. Did you mean “finished”?'],
  'missing-entry': [
    'binding',
    '“strip” is missing. Write a length, for example 2 1/4", here or as “binding strip” under “house”.',
  ],
  'duplicate-entry': ['finished', '“finished” stands in an earlier block already; the first one counts.'],
  'bad-value': ['36 x 48', '36 has no unit; write 36" for inches, or 36 cm.'],
  'missing-size': ['finished', 'The value for “throw” is missing here.'],
  'extra-size': ['trow', 'The pattern has no size “trow”. Did you mean “throw”?'],
  'unknown-fabric': ['B', 'No fabric “B” is defined; the only one is A.'],
  'use-missing': [
    'house.md',
    'There is no file “house.md”; the path begins at the folder of this manuscript.',
  ],
  'use-outside': ['/house.md', '“/house.md” leads out of the workspace, and nothing is read from there.'],
  'use-circle': ['house.md', 'These manuscripts use each other in a circle: house.md → line.md → house.md.'],
  'use-unreadable': [
    'house.md',
    '“seam” of the house rules of house.md cannot be read, so nothing that follows from it is checked here.',
  ],
  'use-unreachable': [
    'house.md',
    '“house.md” cannot be reached from here, so nothing that follows from its rules is checked; save this text in a folder first.',
  ],
  'use-empty': ['house.md', 'house.md has no measure block, so there is nothing to take from it.'],
  'too-wide': ['50"', 'The strip is as wide as the fabric or wider, so it cannot be cut across it.'],
  'longer-than-width': [
    '2 1/2" x 50"',
    'The piece is 50" long, but fabric A is only 40" wide; write “along: length” if it is cut along the length of the fabric.',
  ],
  'precut-too-small': ['6 1/2" x 6 1/2"', 'A square of 5" × 5" is too small for a piece of 6½" × 6½".'],
  'curve-needs-bias': [
    'straight',
    'A curved edge needs bias binding; straight-grain binding puckers on the curve.',
  ],
  'area-rule-short': [
    'area',
    '87.4" of binding is needed, but a 15" square gives 82.02" in 4 passes: the rule of thumb forgets the seams and what is left beside the last line, and a 16" square gives 87.68" in 4 passes.',
  ],
  'block-not-square': ['6" x 9"', 'Blocks on point are square, but “Ripple” finishes 6" × 9".'],
  'block-not-filled': [
    '- { unit: half-square triangles, finished: 3", count: 3 }',
    'The parts fill 27 square inches, but the block has 36: something is missing.',
  ],
  'too-few-made': ['11', 'The layout takes 12 blocks, but 11 are made: 3 across × 4 down = 12 blocks.'],
  'too-many-made': ['13', 'The layout takes 12 blocks, but 13 are made: 3 across × 4 down = 12 blocks.'],
  'bad-expression': ['+ 18', 'A length and a count cannot be added.'],
  'negative-figure': [
    'finished.width - finished.length',
    '“longer” comes to −12", which is less than nothing.',
  ],
  'broken-count': [
    'finished.length / 12"',
    '“bows” comes to 4.17, which is not a whole number: ceil(…) rounds it up, floor(…) down.',
  ],
  'figure-circle': ['ribbon + 2"', 'This figure depends on itself: cord → ribbon → cord.'],
  'strips-disagree': [
    '5',
    '5 strips give at most 85 pieces of 2½", 17 from each length of 44", but 90 are cut from them; that takes 6 strips.',
  ],
  'counts-disagree': ['20', '5 rows of 5 make 25 blocks, not 20.'],
  'units-disagree': ['2yd', '1.2m is about 1¼ yd, not 2yd; both stand for one length.'],
  'sizes-disagree': [
    '12"',
    'What finishes at 12" is 12½" unfinished with two seam allowances of ¼", not 12".',
  ],
  'not-enough': ['58"', 'The backing of 58" × 80" is smaller than the quilt, which is 60" × 72".'],
  gap: ['…', 'Here a finished size or shape is missing: write it in place of the mark.'],
};

describe('the table of findings', () => {
  it.each(Object.keys(CODES) as Code[])(
    'shows %s with an example in which the program reports it',
    (code) => {
      const { findings } = proofreadExample(CODES[code]);
      expect(findings.map((finding) => [finding.code, finding.severity])).toContainEqual([
        code,
        CODES[code].severity,
      ]);
    },
  );

  it.each(Object.keys(CODES) as Code[])('shows %s without any other finding beside it', (code) => {
    const { findings } = proofreadExample(CODES[code]);
    expect(new Set(findings.map((finding) => finding.code))).toEqual(new Set([code]));
  });

  it.each(Object.keys(CODES) as Code[])(
    'answers the example of %s with its sentence at its place',
    (code) => {
      const { example } = CODES[code];
      const { findings } = proofreadExample(CODES[code]);
      expect(findings.map((finding) => summary(finding, example))).toEqual([[code, ...SENTENCES[code]]]);
    },
  );
});
