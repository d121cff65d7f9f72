import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';

interface Wrong {
  readonly situation: string;
  readonly lines: readonly string[];
  readonly code: string;
  /** The text that the finding stands at. */
  readonly at: string;
  readonly message: string;
  /** The texts at the other places. */
  readonly against: readonly string[];
}

/** Short manuscripts without a block, each with one mistake of a kind found in print. */
const WRONG: readonly Wrong[] = [
  {
    situation: 'one square too few for every strip',
    lines: [
      'From the heron grey, cut:',
      '',
      '- (7) 2½" x WOF strips; subcut into (125) 2½" squares',
      '- (2) 4½" x WOF strips',
    ],
    code: 'strips-disagree',
    at: '7',
    message:
      '7 strips give at most 119 pieces of 2½", 17 from each length of 44", but 125 are cut from them; that takes 8 strips.',
    against: ['125'],
  },
  {
    situation: 'rectangles along the strip, the width of the fabric told',
    lines: [
      'All yardage is 40" wide, usable width.',
      '',
      '**Cut**',
      '',
      '1. Cut four strips 3½" wide across the fabric. From these, cut 28 rectangles 3½" × 6½".',
    ],
    code: 'strips-disagree',
    at: 'four',
    message:
      '4 strips give at most 24 pieces of 3½" × 6½", 6 from each length of 40", but 28 are cut from them; that takes 5 strips.',
    against: ['28'],
  },
  {
    situation: 'a table with first and next cut',
    lines: [
      '| Fabric | First cut | Next cut |',
      '|---|---|---|',
      '| Moss | 6 strips 4½" × 42" | 60 squares 4½" |',
      '| Fog | 3 strips 2½" × 42" | 48 squares 2½" |',
    ],
    code: 'strips-disagree',
    at: '6',
    message:
      '6 strips give at most 54 pieces of 4½", 9 from each length of 42", but 60 are cut from them; that takes 7 strips.',
    against: ['60'],
  },
  {
    situation: 'segments from strip sets',
    lines: [
      'Sew the strips into 4 strip sets. Each strip set gives 12 segments.',
      '',
      'Cut three strips 2½" × WOF, sub-cut 30 rectangles 2½" × 4½".',
    ],
    code: 'strips-disagree',
    at: 'three',
    message:
      '3 strips give at most 27 pieces of 2½" × 4½", 9 from each length of 44", but 30 are cut from them; that takes 4 strips.',
    against: ['30'],
  },
  {
    situation: 'a strip narrower than its pieces',
    lines: ['From Fabric B:', '', '- Cut 6 strips 3" × WOF; sub-cut 60 squares 3½"'],
    code: 'strips-disagree',
    at: '3"',
    message: 'Strips 3" wide are too narrow for pieces of 3½".',
    against: ['3½"'],
  },
  {
    situation: 'triangles once diagonally',
    lines: [
      '**Cutting: teal**',
      '',
      '- 18--4-7/8" squares, cutting each in half diagonally for 18 triangles total',
    ],
    code: 'counts-disagree',
    at: '18',
    message: '18 squares cut once diagonally give 36 triangles, not 18.',
    against: ['18'],
  },
  {
    situation: 'triangles twice diagonally',
    lines: ['Cut three 9¾" squares; cut each twice diagonally to yield 14 setting triangles.'],
    code: 'counts-disagree',
    at: '14',
    message: 'Three squares cut twice diagonally give 12 triangles, not 14.',
    against: ['three'],
  },
  {
    situation: 'units made eight at a time',
    lines: [
      '## Half-square triangles',
      '',
      'Draw both diagonals and sew eight at a time. Use 9 pairs of squares to make 80 HSTs in all.',
    ],
    code: 'counts-disagree',
    at: '80',
    message: '9 pairs of squares, eight units from each, make 72, not 80.',
    against: ['9'],
  },
  {
    situation: 'rows by columns in one sentence',
    lines: ['Arrange the 42 blocks in 7 rows of 7 blocks each, turning every second one.'],
    code: 'counts-disagree',
    at: '42',
    message: '7 rows of 7 make 49 blocks, not 42.',
    against: ['7', '7'],
  },
  {
    situation: 'across and down, blocks told before',
    lines: ['You need 48 blocks.', '', 'Lay them out, 6 blocks across and 9 blocks down.'],
    code: 'counts-disagree',
    at: '48',
    message: '9 rows of 6 make 54 blocks, not 48.',
    against: ['9', '6'],
  },
  {
    situation: 'metres for yards',
    lines: ['## You need', '', '- Night sky: 2½m (2¾yd)', '- Backing: 3½yd (3.75m)'],
    code: 'units-disagree',
    at: '3.75m',
    message: '3½yd is about 3.2 m, not 3.75m; with the two units exchanged they would agree.',
    against: ['3½yd'],
  },
  {
    situation: 'centimetres that are no conversion',
    lines: ['Trim the unit to 8½in (24cm) square and press.'],
    code: 'units-disagree',
    at: '24cm',
    message: '8½in is about 21.6 cm, not 24cm; both stand for one length.',
    against: ['8½in'],
  },
  {
    situation: 'words and digits',
    lines: ['Cut twelve (10) squares from the plum and four (4) from the fig.'],
    code: 'counts-disagree',
    at: '10',
    message: 'Twelve and 10 stand for the same count, but are different numbers.',
    against: ['twelve'],
  },
  {
    situation: 'block half an inch short',
    lines: [
      '**Finished block:** 12" square',
      '',
      '## Make the blocks',
      '',
      'Join the three rows. Each block should measure 12" square.',
    ],
    code: 'sizes-disagree',
    at: '12"',
    message: 'What finishes at 12" is 12½" unfinished with two seam allowances of ¼", not 12".',
    against: ['12"'],
  },
  {
    situation: 'finished and unfinished in a table',
    lines: [
      '| Unit | Unfinished | Finished |',
      '|---|---|---|',
      '| Nine-patch | 6½" | 6" |',
      '| Rail | 6½" | 6¼" |',
    ],
    code: 'sizes-disagree',
    at: '6½"',
    message: 'What finishes at 6¼" is 6¾" unfinished with two seam allowances of ¼", not 6½".',
    against: ['6¼"'],
  },
  {
    situation: 'a sash cut too narrow',
    lines: ['Cut the sashes 1¾" wide; they finish at 1½".'],
    code: 'sizes-disagree',
    at: '1¾"',
    message: 'What finishes at 1½" is 2" cut with two seam allowances of ¼", not 1¾".',
    against: ['1½"'],
  },
  {
    situation: 'the centre from its rows',
    lines: [
      'Blocks finish at 8" square.',
      '',
      'Lay out 6 rows of 5 blocks and join them. The quilt center should measure 40½" × 46½".',
    ],
    code: 'sizes-disagree',
    at: '46½"',
    message: '6 rows of 5 blocks of 8", seam allowance included, are 40½" × 48½", not 40½" × 46½".',
    against: ['6', '5', '8"'],
  },
  {
    situation: 'a quilt with a border',
    lines: [
      'Finished size: 43" × 52"',
      '',
      'Each block finishes at 9". Make 20 blocks.',
      '',
      'Sew them into five rows of four blocks.',
      '',
      'From the border fabric, cut 5 strips 4½" × WOF for the borders.',
    ],
    code: 'sizes-disagree',
    at: '52"',
    message: 'Five rows of four blocks of 9" with borders of 4" make 44" × 53", not 43" × 52".',
    against: ['five', 'four', '9"'],
  },
  {
    situation: 'side borders',
    lines: [
      '## Borders',
      '',
      'Your quilt top should now measure 42½" x 54½".',
      '',
      '1. Cut two strips 3½" x 52½" for the side borders.',
      '2. Cut two strips 3½" x 48½" for the top and bottom borders.',
    ],
    code: 'sizes-disagree',
    at: '52½"',
    message:
      'The border is cut 52½" long, but the sides of the top that it is sewn to are 54½": the top measures 42½" × 54½".',
    against: ['54½"'],
  },
  {
    situation: 'binding strips',
    lines: [
      '**Finished quilt:** 72" x 84"',
      '',
      '## Binding',
      '',
      'Cut six 2¼" x WOF strips and join them end to end.',
    ],
    code: 'not-enough',
    at: 'six',
    message:
      'Six strips of binding give at most 261½" when joined, and the quilt of 72" × 84" is 312" around.',
    against: ['72"', '84"'],
  },
  {
    situation: 'binding length',
    lines: [
      'The finished quilt is 50" x 60".',
      '',
      'Sew the binding strips together to make a strip 210" long.',
    ],
    code: 'not-enough',
    at: '210"',
    message: '210" of binding does not reach around the quilt of 50" × 60", which is 220" around.',
    against: ['50"', '60"'],
  },
  {
    situation: 'backing',
    lines: ['Finished quilt size: 56" × 70"', '', '**Backing:** 64" × 68"'],
    code: 'not-enough',
    at: '68"',
    message: 'The backing of 64" × 68" is smaller than the quilt, which is 56" × 70".',
    against: ['56"', '70"'],
  },
  {
    situation: 'batting with overhang',
    lines: [
      'Finished quilt: 48" x 48"',
      '',
      'Cut the batting 52" x 52", 4" larger than the quilt on all sides.',
    ],
    code: 'not-enough',
    at: '52"',
    message: 'The quilt is 48" × 48"; with 4" more on every side the batting must reach 56", not 52".',
    against: ['48"', '48"', '4"'],
  },
  {
    situation: 'backing yardage',
    lines: ['Quilt size: 68" x 80"', '', '- 3 yards backing'],
    code: 'not-enough',
    at: '3 yards',
    message:
      '3 yards of backing is 108" of fabric, too little for a quilt of 68" × 80", which takes at least 136".',
    against: ['68"', '80"'],
  },
  {
    situation: 'cut and sewn at different size',
    lines: [
      'From rust, cut:',
      '',
      '- 16 squares 2⅞"',
      '',
      '## Piecing',
      '',
      'Draw a diagonal line on each rust 2⅜" square.',
    ],
    code: 'sizes-disagree',
    at: '2⅜"',
    message: 'The rust squares are cut 2⅞", but here a rust square of 2⅜" is sewn.',
    against: ['2⅞"'],
  },
  {
    situation: 'yardage against strips',
    lines: [
      '| Fabric | Buy |',
      '|---|---|',
      '| Fabric A | ¾ yd |',
      '| Fabric B | 1 yd |',
      '',
      'From Fabric A, cut:',
      '',
      '- 8 strips 2½" × WOF',
      '- 3 strips 4½" × WOF',
    ],
    code: 'not-enough',
    at: '¾ yd',
    message: '¾ yd is 27" of fabric, but the strips cut from it take 8 × 2½" + 3 × 4½" = 33½".',
    against: ['8', '3'],
  },
  {
    situation: 'exact need',
    lines: ['- ⅞ yard fern (33" needed)'],
    code: 'not-enough',
    at: '⅞ yard',
    message: '⅞ yard is only 31½", but exactly 33" are needed.',
    against: ['33"'],
  },
  {
    situation: 'made and used',
    lines: [
      'Make 24 four-patch units.',
      '',
      'Each block uses 4 four-patch units and one plain square.',
      '',
      'Make 9 blocks.',
    ],
    code: 'counts-disagree',
    at: '24',
    message: '24 four-patches are made, but 9 blocks with 4 each use 36.',
    against: ['4', '9'],
  },
  {
    situation: 'a sash as in print, finished size where the cut size belongs',
    lines: ['Cut 12 sashing strips 1½" wide (they finish at 1½") from the grey.'],
    code: 'sizes-disagree',
    at: '1½"',
    message: 'What finishes at 1½" is 2" cut with two seam allowances of ¼", not 1½".',
    against: ['1½"'],
  },
  {
    situation: 'half a yard for a width of strips, from the fabric by its colour',
    lines: [
      '## Materials',
      '',
      '- ½ yard gold print',
      '- 1 yard blue print',
      '',
      '## Cutting',
      '',
      'From the gold print, cut:',
      '',
      '- 4 strips 3½" x WOF',
      '- 3 strips 2½" x WOF',
    ],
    code: 'not-enough',
    at: '½ yard',
    message: '½ yard is 18" of fabric, but the strips cut from it take 4 × 3½" + 3 × 2½" = 21½".',
    against: ['4', '3'],
  },
  {
    situation: 'pairs that are not doubled',
    lines: ['Sew the HSTs two at a time: 24 pairs of squares make 24 HSTs.'],
    code: 'counts-disagree',
    at: '24',
    message: '24 pairs of squares, two units from each, make 48, not 24.',
    against: ['24'],
  },
];

describe('a manuscript without a block', () => {
  it.each(WRONG)('has one finding, with both places: $situation', ({ lines, code, at, message, against }) => {
    const source = lines.join('\n');
    const found = proofread({ source }).findings.map((finding) => ({
      code: finding.code,
      severity: finding.severity,
      at: source.slice(finding.start, finding.end),
      message: finding.message,
      against: finding.related.map(({ start, end }) => source.slice(start, end)),
      fixes: finding.fixes,
    }));
    expect(found).toEqual([{ code, severity: 'error', at, message, against, fixes: [] }]);
  });

  it.each(WRONG)('calls that number wrong, and no other: $situation', ({ lines, code, at }) => {
    const { accounts, coverage } = proofread({ source: lines.join('\n') });
    const wrong = accounts.filter(({ kind }) => kind === 'wrong');
    expect(wrong.map((account) => [account.code, account.number.text, account.tie])).toEqual([
      [code, at, undefined],
    ]);
    expect(coverage.wrong).toBe(1);
  });
});
