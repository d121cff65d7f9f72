/** The sentences in which figures are worked out, each quoted once. */
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { figureOf, patternOf, summary } from '../support/pattern.ts';

const lines = (...text: string[]) => text.join('\n');

const WORKINGS: readonly [title: string, block: string, workings: Readonly<Record<string, string[]>>][] = [
  [
    'an oval that is bound from one square',
    lines('finished: oval 14" x 20"', 'binding: { strip: 2 1/4", grain: bias }', 'piping: { cord: 1/4" }'),
    {
      'finished.edge': [
        'An oval of 14" by 20" measures 53.82" around.',
        '53.82", rounded up to the next ⅛", is 53⅞".',
      ],
      'binding.strip': ['The measure block says so.'],
      'binding.finished-width': ['Double-fold binding sewn with a ¼" seam shows ¼" on the front.'],
      'binding.square': [
        '65.82" of binding is needed.',
        'Sewn into a tube, a 14" square gives 76.37" in 4 passes of 19.09" each.',
        'By the rule of thumb, √(length × width), the square would be 13", which really gives 53.03".',
      ],
      'binding.passes': ['Lines 2¼" apart fit 4 times on a 14" square after its seams.'],
      'binding.yield': ['4 passes of 19.09" make 76.37".', '76.37", rounded down to the last ⅛", is 76¼".'],
      'binding.yardage': ['The bias square is 14".', '14", rounded up to the next ⅛ yd, is ½ yd.'],
      'piping.strip': [
        'Once around a ¼" cord is π × ¼" = 0.79".',
        'Two ¼" seams and 0.79" around the cord make 1.29".',
        '1.29", rounded up to the next ⅛", is 1⅜".',
      ],
      'piping.length': [
        'An oval of 14" by 20" measures 53.82" around.',
        '53.82" around plus 12" to join is 65.82".',
        '65.82", rounded up to the next ⅛", is 65⅞".',
      ],
    },
  ],
  [
    'round corners that are bound from bias strips',
    lines(
      'fabrics: { A: Mist }',
      'finished: rounded 50" x 60", corners 4"',
      'house: { squaring: 1" }',
      'binding: { from: A, strip: 2 1/4", grain: bias, cut as: strips }',
    ),
    {
      'finished.edge': [
        'With square corners it would be 2 × (50" + 60") = 220".',
        'Each corner saves 2 × 4" and adds a quarter circle; together they make 213.13" around.',
        '213.13", rounded up to the next ⅛", is 213¼".',
      ],
      'finished.corner': ['The measure block says so.'],
      'binding.strips': [
        'With square corners it would be 2 × (50" + 60") = 220".',
        'Each corner saves 2 × 4" and adds a quarter circle; together they make 213.13" around.',
        '213.13" around plus 12" to join is 225.13".',
        'No bias strip is longer than 40" × √2 = 56.57"; each join takes 0.71".',
        '5 bias strips joined give 280.01" at the most.',
      ],
      'binding.yardage': [
        '13½" of fabric gives 16 bias strips, which join to 227.29".',
        'Straightening the end takes 1": 14½" in all.',
        '14½", rounded up to the next ⅛ yd, is ½ yd.',
      ],
      'fabric.A.cut-length': [
        '13½" of the whole width for bias strips for the binding: 13½".',
        'Straightening the end takes 1": 14½" in all.',
      ],
    },
  ],
  [
    'a hexagon',
    lines('finished: hexagon 10"'),
    {
      'finished.edge': ['6 sides × 10" = 60" around.'],
      'finished.side': ['The measure block says so.'],
    },
  ],
  [
    'scallops',
    lines('finished: scalloped 60" x 80", 28 scallops 2" deep'),
    {
      'finished.edge': [
        'The inner points of 28 scallops stand 9.43" apart.',
        'The arc over 9.43", 2" deep, is 10.52".',
        '28 arcs make 294.62" around.',
        '294.62", rounded up to the next ⅛", is 294⅝".',
      ],
      'finished.scallops': ['The measure block says so.'],
      'finished.scallop-depth': ['The measure block says so.'],
      'finished.quarter-width': ['60" ÷ 4 is 15".'],
    },
  ],
  [
    'an edge that was taped around',
    lines('finished: measured 217"'),
    {
      'finished.edge': ['Taped around, the edge measures 217".'],
    },
  ],
  [
    'a circle',
    lines('finished: circle 24"'),
    {
      'finished.edge': ['π × 24" = 75.4" around.', '75.4", rounded up to the next ⅛", is 75½".'],
      'finished.diameter': ['The measure block says so.'],
      'finished.radius': ['Half of 24" is 12".'],
    },
  ],
  [
    'what lies behind the top',
    lines(
      'house: { squaring: 1" }',
      'finished: 56" x 70"',
      'backing: {}',
      'batting: { overhang: 3" }',
      'sleeve: { finished depth: 4", short of edge: 1" }',
    ),
    {
      'backing.overhang': ['This is usual, and holds unless the measure block says otherwise.'],
      'backing.width': ['56" plus 4" on each side is 64".'],
      'backing.panels': ['The backing must reach 78" down, and 2 widths of 40", joined, give 79".'],
      'backing.seams': ['2 panels are joined by 1 horizontal seam.'],
      'backing.panel-length': [
        'With horizontal seams each panel runs the whole way of the backing, which is 64" wide.',
      ],
      'backing.yardage': [
        'The backing must reach 78" down, and 2 widths of 40", joined, give 79".',
        '2 panels of 64" take 128".',
        'With vertical seams, 2 panels of 78" take 156".',
        'Straightening the end takes another 1".',
        '129", rounded up to the next ⅛ yd, is 3⅝ yd.',
      ],
      'batting.width': ['56" plus 3" on each side is 62".'],
      'sleeve.cut-depth': ['Twice 4" plus two ¼" seams is 8½".'],
      'sleeve.length': ['56" wide less 1" on each side is 54".'],
      'sleeve.cut-length': ['54" plus ¼" turned under twice at each end is 55".'],
      'house.squaring': ['The measure block says so.'],
    },
  ],
  [
    'a wide backing',
    lines('fabrics: { D: { cut from: wide 108" } }', 'finished: 56" x 70"', 'backing: { from: D }'),
    {
      'backing.panels': ['The backing must reach 78" down, and one width of 108" is enough.'],
      'backing.seams': ['A single panel has no seam.'],
      'backing.panel-length': ['The single panel runs the whole way of the backing, which is 64" wide.'],
    },
  ],
  [
    'a straight set with sashing and borders',
    lines(
      'fabrics: { A: Mist, B: Reed }',
      'blocks:',
      '  Star:',
      '    finished: 6"',
      '    of:',
      '      - { unit: half-square triangles, finished: 3", count: 2, from: [A, B] }',
      '      - { piece: plain, finished: 3", count: 2, from: A }',
      'layout: { grid: 4 x 5, sashing: { finished: 2", from: B, cornerstones: A, around: yes } }',
      'borders: [{ finished: 3", from: B, corners: corner squares, corners from: A }, { finished: 5" }]',
    ),
    {
      'block.Star.count': ['4 across × 5 down = 20 blocks.'],
      'block.Star.unfinished': ['6" plus two ¼" seams is 6½".'],
      'unit.Star.1.each': ['The measure block says so.'],
      'unit.Star.1.count': ['2 in each of 20 Star blocks make 40.'],
      'unit.Star.1.cut': [
        'A unit that finishes 3" takes, with its seams, a square of 3.85".',
        '3.85", rounded up to the next ⅛", is 3⅞".',
      ],
      'unit.Star.1.per-set': ['One set of pieces gives 2 units.'],
      'unit.Star.1.sets': ['40 units at 2 from one set of pieces take 20 sets.'],
      'unit.Star.1.spare': ['20 × 2 = 40 units, of which 40 are needed.'],
      'unit.Star.1.square-1.per-set': ['One set has 1 square.'],
      'unit.Star.1.square-1.per-strip': ['A strip of 40" gives 10 of 3⅞".'],
      'piece.plain.each': ['The measure block says so.'],
      'piece.plain.cut': ['3" finished plus two ¼" seams is 3½".'],
      'piece.plain.per-strip': ['A strip of 40" gives 11 of 3½".'],
      'piece.plain.strips': ['40 pieces at 11 from a strip take 4 strips.'],
      'sashing.finished': ['The measure block says so.'],
      'sashing.upright.count': [
        'A set of 4 × 5 with sashing around it has 25 sashes between the blocks of a row.',
      ],
      'sashing.count': ['25 between the blocks of a row and 24 between the rows make 49 sashes.'],
      'sashing.cornerstones.count': ['A set of 4 × 5 with sashing around it has 30 crossings of its sashes.'],
      'centre.width': ['4 × 6" + 5 × 2" by 5 × 6" + 6 × 2" is 34" × 42".'],
      'border.1.finished': ['The measure block says so.'],
      'border.1.strips': ['Two sides of 42½" and two of 34½" are joined from 5 strips of 40".'],
      'border.1.joined': ['Two sides of 42½" and two of 34½" together measure 154".'],
      'border.1.corner.count': ['One in each corner makes 4.'],
      'border.1.finished-width': ['34" × 42" and 3" on each side make 40" × 48".'],
      'border.2.side': ['The sides finish 48" long.', '48" plus two ¼" seams is 48½".'],
      'border.2.quilt-width': ['50" plus two ¼" seams is 50½".'],
      'finished.width': [
        '4 × 6" + 5 × 2" by 5 × 6" + 6 × 2" is 34" × 42".',
        'The inner border, 3" on each side, makes it 40" × 48".',
        'The outer border, 5" on each side, makes it 50" × 58".',
      ],
      'fabric.A.cut-length': [
        '2 strips 3⅞" wide for 20 squares of Star, 10 from each: 7¾".',
        '4 strips 3½" wide for 40 “plain” of Star and 4 corner squares of the inner border, 11 from each: 14".',
        '2 strips 2½" wide for 30 cornerstones, 16 from each: 5".',
        'Together they take 26¾".',
      ],
      'fabric.B.cut-length': [
        '2 strips 3⅞" wide for 20 squares of Star, 10 from each: 7¾".',
        '9 strips 2½" wide for 49 sashes, 6 from each: 22½".',
        '5 strips 3½" wide for the inner border: 17½".',
        'Together they take 47¾".',
        'Cut more closely, with smaller pieces from what larger ones leave, it could be done with 43¾".',
      ],
    },
  ],
  [
    'blocks on point',
    lines(
      'fabrics: { A: Mist, B: { cut from: fat quarters } }',
      'blocks: { Wave: { finished: 12" } }',
      'layout: { set: on point, grid: 4 x 5, triangles: { from: A } }',
      'pieces: { patch: { cut: 4 1/2" x 4 1/2", count: 30, from: B }, slip: { cut: 2" x 7", count: 3, from: B } }',
      'borders: [{ finished: 2" }]',
    ),
    {
      'layout.blocks': ['4 × 5 = 20 blocks in the main rows and 3 × 4 = 12 between them make 32.'],
      'layout.columns': ['The grid has 4 blocks across.'],
      'layout.diagonal-rows': ['Along the diagonal a set of 4 × 5 has 4 + 5 − 1 = 8 rows.'],
      'layout.main': ['4 × 5 = 20 blocks.'],
      'layout.between': ['3 × 4 = 12 blocks.'],
      'finished.width': [
        'A 12" block on point is 12" × √2 = 16.97" across.',
        '4 × 16.97" by 5 × 16.97" is 67.88" × 84.85".',
        'The border, 2" on each side, makes it 71.88" × 88.85".',
        '71.88", rounded up to the next ⅛", is 72".',
      ],
      'setting.side.count': ['The layout has 14 side setting triangles.'],
      'setting.side.squares': ['14 triangles at 4 from a square take 4 squares.'],
      'setting.side.per-square': ['A square cut twice diagonally gives 4 triangles.'],
      'setting.side.square': [
        'The finished long side is 16.97", and its seams make the square 18.18", cut twice diagonally.',
        '18.18", rounded up to the next ⅛", is 18¼".',
      ],
      'setting.corner.square': [
        'The finished short side is 8.49", and its seams make the square 9.34", cut once diagonally.',
        '9.34", rounded up to the next ⅛", is 9⅜".',
      ],
      'piece.patch.count': ['The measure block says so.'],
      'piece.patch.cut': ['The measure block says so.'],
      'fabric.A.yardage': [
        '2 strips 18¼" wide for 4 squares for side setting triangles, 2 from each: 36½".',
        '1 strip 9⅜" wide for 2 squares for corner triangles, 4 from each: 9⅜".',
        'Together they take 45⅞".',
        '45⅞", rounded up to the next ⅛ yd, is 1⅜ yd.',
      ],
      'fabric.B.fat-quarters': [
        '30 “patch”: 4 from a strip, 8 strips 4½" wide.',
        '3 “slip”: 2 from a strip, 2 strips 2" wide.',
        'The pieces fill 2 fat quarters of 21" × 18".',
      ],
    },
  ],
  [
    'borders around a centre',
    lines('layout: { centre: 10" }', 'borders: [{ finished: 3" }]'),
    {
      'centre.width': ['The centre finishes 10" × 10".'],
      'finished.width': [
        'The centre finishes 10" × 10".',
        'The border, 3" on each side, makes it 16" × 16".',
      ],
      'finished.edge': ['2 × (16" + 16") = 64" around.'],
      'border.1.strips': ['Two sides of 10½" and two of 16½" are cut from 2 strips of 40".'],
      'border.1.side.strips': ['It is cut 10½" long, and one strip of 40" is enough.'],
    },
  ],
  [
    'strip sets and triangles',
    lines(
      'fabrics: { A: Mist, B: Reed }',
      'blocks:',
      '  Wave:',
      '    finished: 6"',
      '    make: 7',
      '    of:',
      '      - { unit: strip sets, finished: 3" x 3", strips: [1 1/2", 1 1/2"], count: 2, from: [A, B] }',
      '      - { unit: half-square triangle patches, finished: 3", count: 4, from: A }',
    ),
    {
      'block.Wave.count': ['The measure block says so.'],
      'unit.Wave.1.count': ['2 in each of 7 Wave blocks make 14.'],
      'unit.Wave.1.sets': ['14 units at 11 from one strip set take 2 sets.'],
      'unit.Wave.1.strip-1.width': [
        'A unit that finishes 3" takes, with its seams, a strip 2" wide, which is cut into segments.',
      ],
      'unit.Wave.2.square.triangles': ['A square cut once diagonally gives 2 triangles.'],
      'unit.Wave.2.square.count': ['28 units at 2 from a set take 14 sets with 1 square each.'],
      'unit.Wave.2.square.cut': [
        'A unit that finishes 3" takes, with its seams, a square of 3.85", which is cut once diagonally.',
        '3.85", rounded up to the next ⅛", is 3⅞".',
      ],
    },
  ],
  [
    'a backing whose seams the author turns',
    lines('finished: 30" x 70"', 'backing: { seams: horizontal }'),
    {
      'backing.yardage': [
        'The backing must reach 78" down, and 2 widths of 40", joined, give 79".',
        '2 panels of 38" take 76".',
        'Turned the other way, 1 panel of 78" takes 78".',
        '76", rounded up to the next ⅛ yd, is 2⅛ yd.',
      ],
    },
  ],
  [
    'fat quarters that can be cut more closely',
    // A strip 9" wide holds 12" and 9", another two of 9": one fat quarter of 21" × 18".
    lines(
      'fabrics: { B: { cut from: fat quarters } }',
      'pieces: { door: { cut: 12" x 9", count: 1, from: B }, pane: { cut: 9" x 9", count: 3, from: B } }',
    ),
    {
      'fabric.B.fat-quarters': [
        '1 “door”: 1 from a strip, 1 strip 9" wide.',
        '3 “pane”: 2 from a strip, 2 strips 9" wide.',
        'The pieces fill 2 fat quarters of 21" × 18".',
        'Cut more closely, it could be done with 1 fat quarter.',
      ],
    },
  ],
];

describe('the working', () => {
  it.each(WORKINGS)('of %s says every step', (_, block, workings) => {
    const { ledger } = patternOf(block);
    const found = Object.keys(workings).map((id) => [
      id,
      [...(figureOf(ledger, id).values.get('')?.working ?? [])],
    ]);
    expect(Object.fromEntries(found)).toEqual(workings);
  });

  it('of a bias square says what the stated one gives, and what the rule of thumb promises', () => {
    const source = lines(
      '```measure',
      'finished: measured 218"',
      'binding: { strip: 2", grain: bias }',
      '```',
      '',
      'Cut a 22" <!-- = binding.square --> square.',
    );
    expect(proofread({ source }).findings.map((finding) => summary(finding, source))).toEqual([
      [
        'short-figure',
        '22"',
        'The square for the bias binding must be at least 24", not 22": 230" of binding is needed, and a 24" square gives 265.87" in 8 passes; a 22" square gives 212.84" in 7 passes; the rule of thumb promises 242", but forgets the seams and what is left beside the last line (with 12" to join, unless the block says otherwise).',
      ],
    ]);
  });
});
