/** What is cut from a fabric, and how much of it to buy: small patterns that one can count by hand, and published ones. */
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { complaints, figureOf, patternOf, shown } from '../support/pattern.ts';

const working = (block: string, id: string) => [
  ...(figureOf(patternOf(block).ledger, id).values.get('')?.working ?? []),
];
const value = (block: string, id: string) => shown(patternOf(block).ledger, id)[''];
const has = (block: string, id: string) => patternOf(block).ledger.figure(id) !== undefined;
const lines = (...text: string[]) => text.join('\n');

const QUILT = lines(
  'fabrics: { A: Chalk, B: Flint, C: Lichen }',
  'blocks:',
  '  Star:',
  '    finished: 6"',
  '    make: 20',
  '    of:',
  '      - { unit: half-square triangles, finished: 3", count: 2, from: [A, B] }',
  '      - { piece: plain, finished: 3", count: 2, from: A }',
  'layout: { grid: 4 x 5 }',
  'borders:',
  '  - { finished: 3", from: B }',
  'binding: { from: A, strip: 2 1/4", grain: straight }',
  'backing: { from: C }',
);

describe('the yardage of a fabric', () => {
  it('adds up the strips for every kind of piece and rounds up once', () => {
    // 20 squares 3⅞" at 10 from a strip; 40 of 3½" at 11; 30" × 36" are 132" around, 144" with joining, in 4 strips.
    expect(working(QUILT, 'fabric.A.yardage')).toEqual([
      '2 strips 3⅞" wide for 20 squares of Star, 10 from each: 7¾".',
      '4 strips 3½" wide for 40 “plain” of Star, 11 from each: 14".',
      '4 strips 2¼" wide for the binding: 9".',
      'Together they take 30¾".',
      '30¾", rounded up to the next ⅛ yd, is ⅞ yd.',
    ]);
    expect(value(QUILT, 'fabric.A.cut-length')).toBe('30¾"');
  });

  it('counts the strips of one width over everything that is cut so wide', () => {
    expect(value(QUILT, 'fabric.A.strips.3 1/2')).toBe('4');
    const both = `${QUILT}\npieces: { tab: { cut: 3 1/2" x 10", count: 5, from: A, along: width } }`;
    expect(value(both, 'fabric.A.strips.3 1/2')).toBe('6');
    expect(working(both, 'fabric.A.strips.3 1/2')).toEqual([
      '4 strips 3½" wide for 40 “plain” of Star, 11 from each: 14".',
      '2 strips 3½" wide for 5 “tab”, 4 from each: 7".',
      'Together they are 6 strips.',
    ]);
  });

  it('takes the strips of a border from the border, and the panels of a backing from the backing', () => {
    // Sides 30½" and top 30½" leave no room for each other: four strips 3½" wide, and two of squares 3⅞".
    expect(working(QUILT, 'fabric.B.cut-length')).toEqual([
      '2 strips 3⅞" wide for 20 squares of Star, 10 from each: 7¾".',
      '4 strips 3½" wide for the border: 14".',
      'Together they take 21¾".',
    ]);
    expect(working(QUILT, 'fabric.C.yardage').slice(0, 1)).toEqual([
      '1 panel 44" long for the backing: 44".',
    ]);
  });

  it('adds what straightening the end takes, once for each fabric', () => {
    const squared = lines('house: { squaring: 1" }', QUILT);
    expect(value(squared, 'fabric.A.cut-length')).toBe('31¾"');
    expect(working(squared, 'fabric.A.yardage')).toContain('Straightening the end takes 1": 31¾" in all.');
  });

  it('counts a fabric of its own width by that width', () => {
    const wide = QUILT.replace('A: Chalk', 'A: { name: Chalk, usable width: 35" }');
    expect(working(wide, 'fabric.A.yardage').slice(0, 2)).toEqual([
      '3 strips 3⅞" wide for 20 squares of Star, 9 from each: 11⅝".',
      '4 strips 3½" wide for 40 “plain” of Star, 10 from each: 14".',
    ]);
  });

  it('takes a wide backing in one panel', () => {
    const wide = lines(
      'fabrics: { D: { name: Wide, cut from: wide 108" } }',
      'finished: 80" x 90"',
      'backing: { from: D }',
    );
    expect(value(wide, 'fabric.D.yardage')).toBe('2½ yd');
  });

  it('is counted for each size by itself, and in metres in a metric house', () => {
    const sizes = lines(
      'sizes: [small, large]',
      'house: { seam: 0.75 cm, usable width: 100 cm }',
      'fabrics: { A: Chalk }',
      'pieces: { patch: { cut: 10 cm x 10 cm, count: { small: 10, large: 25 }, from: A } }',
    );
    expect(shown(patternOf(sizes).ledger, 'fabric.A.yardage')).toEqual({ small: '0.1 m', large: '0.3 m' });
    expect(shown(patternOf(sizes).ledger, 'fabric.A.strips.10')).toEqual({ small: '1', large: '3' });
  });

  it('lays borders that run along the length side by side', () => {
    // Forum post on borders cut along the length, quiltingboard.com 511807 (individual): 90 in are 2½ yd; four of
    // 12 in are 48 in side by side, wider than the fabric, and take a second length.
    const along = (width: string) =>
      lines(
        'house: { usable width: 42" }',
        'fabrics: { A: Chalk }',
        'layout: { centre: 89 1/2" x 89 1/2" }',
        `borders: [{ finished: ${width}", from: A, along: length, corners: corner squares }]`,
      );
    expect(working(along('9 1/2'), 'fabric.A.yardage')).toEqual([
      '4 strips 10" wide along the length for the border: 90".',
      '90" is 2½ yd.',
    ]);
    expect(value(along('11 1/2'), 'fabric.A.yardage')).toBe('5 yd');
  });
});

describe('the working', () => {
  it('tells where pieces from the ends of strips save fabric', () => {
    // A strip with four of 9 in has 4 in left, room for one of 3 in; the ten of them need no strip of their own.
    const block = lines(
      'fabrics: { A: Chalk }',
      'pieces:',
      '  large: { cut: 9" x 9", count: 40, from: A }',
      '  small: { cut: 3" x 3", count: 10, from: A }',
    );
    expect(working(block, 'fabric.A.yardage')).toEqual([
      '10 strips 9" wide for 40 “large”, 4 from each: 90".',
      '1 strip 3" wide for 10 “small”, 13 from each: 3".',
      'Together they take 93".',
      '93", rounded up to the next ⅛ yd, is 2⅝ yd.',
      'Cut more closely, with smaller pieces from what larger ones leave, it could be done with 90".',
    ]);
    // So nobody who plans that well is called short, nor who cuts no strip for the small pieces.
    expect(stated(block, '2 1/2 yd <!-- = fabric.A.yardage -->')).toEqual([]);
    expect(stated(block, '2 3/8 yd <!-- = fabric.A.yardage -->')[0]?.[0]).toBe('short-figure');
    expect(figureOf(patternOf(block).ledger, 'fabric.A.strips.3').values.get('')?.least?.valueOf()).toBe(0);
  });

  it('says how much shorter another way could be, where a long list is not settled', () => {
    const sizes =
      '7 of 3 1/8 x 5 3/8; 9 of 2 7/8 x 11 1/2; 5 of 4 1/4 x 6 1/8; 6 of 5 7/8 x 9 3/8; 4 of 7 1/4 x 8 5/8; 11 of 1 7/8 x 13 1/4; 7 of 6 3/4 x 10 1/8; 5 of 3 5/8 x 12 7/8; 3 of 8 1/8 x 9 7/8; 13 of 2 3/8 x 7 5/8; 5 of 4 7/8 x 14 1/8; 8 of 5 1/8 x 6 7/8; 2 of 9 1/4 x 11 3/8; 17 of 3 3/8 x 4 5/8; 3 of 6 1/4 x 15 3/8; 3 of 7 7/8 x 13 5/8; 19 of 2 1/8 x 3 7/8; 2 of 10 1/8 x 12 1/8';
    const pieces = sizes.split('; ').map((size, index) => {
      const [count, sides = ''] = size.split(' of ');
      const [width, length] = sides.split(' x ');
      return `  p${index}: { cut: ${width}" x ${length}", count: ${count}, from: A }`;
    });
    const block = lines('house: { usable width: 42" }', 'fabrics: { A: Chalk }', 'pieces:', ...pieces);
    expect(working(block, 'fabric.A.yardage').at(-1)).toMatch(
      /^Cut more closely, .* it could be done with 117⅜"; in strips across the fabric it takes at least 114¾"\.$/,
    );
  });
});

describe('published yardage', () => {
  it('of 300 rectangles 3 x 2 in (Bobbin In Quilts, trade): 1 1/2 yd, 48 in as the page cuts them', () => {
    const block = (along: string) =>
      `house: { sell by: 1/4 yd }\nfabrics: { A: Chalk }\npieces: { p: { cut: 3" x 2", count: 300, from: A${along} } }`;
    // The page lays the 3 in across: 13 across, 24 rows, 48 in. The other way it is 45 in, or 1¼ yd.
    expect(value(block(', along: length'), 'fabric.A.cut-length')).toBe('48"');
    expect(value(block(''), 'fabric.A.cut-length')).toBe('48"');
    expect(value(block(''), 'fabric.A.yardage')).toBe('1½ yd');
  });

  it('is offered as the strips of the pattern take it, and what turned pieces take is not called short', () => {
    const block =
      'house: { sell by: 1/4 yd }\nfabrics: { A: Chalk }\npieces: { p: { cut: 3" x 2", count: 300, from: A } }';
    expect(stated(block, '1¼ yd <!-- = fabric.A.yardage -->')).toEqual([]);
    expect(
      stated(block, '3 yd <!-- = fabric.A.yardage -->').map(([code, message]) => [code, message]),
    ).toEqual([
      [
        'generous-figure',
        'The yardage of fabric A need only be 1½ yd, and 3 yd is well above it: 24 strips 2" wide take 48" (with 40" of usable width, unless the block says otherwise).',
      ],
    ]);
  });

  it('of 80 squares 2 1/2 in (Feathered Star, trade, author): 5 strips, 3/8 yd', () => {
    const block = 'fabrics: { A: Chalk }\npieces: { p: { cut: 2 1/2" x 2 1/2", count: 80, from: A } }';
    expect(value(block, 'fabric.A.strips.2 1/2')).toBe('5');
    expect(value(block, 'fabric.A.yardage')).toBe('⅜ yd');
  });

  it('of 144 squares 8 1/2 in (Chain of Faith, Moda Bake Shop, trade): 36 strips at 40 in, not the printed 29', () => {
    const block = 'fabrics: { A: Chalk }\npieces: { p: { cut: 8 1/2" x 8 1/2", count: 144, from: A } }';
    expect(value(block, 'fabric.A.strips.8 1/2')).toBe('36');
    expect(complaints(`${block}\nstates: { fabric.A.strips.8 1/2: 29 }`)).toEqual([]);
    const { findings } = proofread({
      source: `\`\`\`measure\n${block}\nstates: { fabric.A.strips.8 1/2: 29 }\n\`\`\`\n`,
    });
    expect(findings.map(({ message }) => message)).toEqual([
      'The number of strips 8½" wide from fabric A should be 36, not 29: 144 “p” at 4 from a strip take 36 (with 40" of usable width, unless the block says otherwise); 29 would be right with 44" of usable width.',
    ]);
  });

  it('of binding for 46 x 46 in (Sylvia’s Quilt Depot, trade): 5 strips 2 1/2 in, 3/8 yd are enough', () => {
    const block = lines(
      'house: { joining allowance: 0", join: straight }',
      'fabrics: { A: Chalk }',
      'finished: 46" x 46"',
      'binding: { from: A, strip: 2 1/2", grain: straight }',
    );
    expect(value(block, 'fabric.A.strips.2 1/2')).toBe('5');
    expect(value(block, 'fabric.A.yardage')).toBe('⅜ yd');
  });

  it('of 72 squares 7 1/2 in from fat quarters (Garden Girl, Moda Bake Shop, trade): no more than 24', () => {
    const block =
      'fabrics: { A: { name: Chalk, cut from: fat quarters } }\npieces: { p: { cut: 7 1/2" x 7 1/2", count: 72, from: A } }';
    expect(value(block, 'fabric.A.fat-quarters')).toBe('18');
  });

  it('of blocks from precut strips (Fat Quarterly, magazine): 40 strips do, 35 would', () => {
    const block = lines(
      'house: { usable width: 42" }',
      'fabrics: { A: { name: Chalk, cut from: strips 2 1/2" } }',
      'pieces:',
      '  square: { cut: 2 1/2" x 2 1/2", count: 160, from: A }',
      '  bar: { cut: 2 1/2" x 6 1/2", count: 160, from: A }',
    );
    expect(figureOf(patternOf(block).ledger, 'fabric.A.strips').values.get('')?.least?.valueOf()).toBe(35);
    expect(Number(value(block, 'fabric.A.strips'))).toBeLessThanOrEqual(40);
  });
});

describe('a fabric of which the pattern does not say enough', () => {
  it('has no yardage: not even for the rest of its cutting list', () => {
    const gap = QUILT.replace('    make: 20\n', '').replace('layout: { grid: 4 x 5 }\n', '');
    expect(has(gap, 'fabric.A.yardage')).toBe(false);
    const split = `${QUILT}\npieces: { tab: { cut: 3 1/2" x 10", count: 5, from: A } }`;
    expect(has(split.replace('from: A }\nlayout', 'from: [A, C] }\nlayout'), 'fabric.C.yardage')).toBe(false);
  });

  it('has none in the size for which it does not say enough', () => {
    const block = lines(
      'sizes: [small, large]',
      'fabrics: { A: Chalk }',
      'pieces:',
      '  patch: { cut: 4" x 4", count: { small: 10 }, from: A }',
      '  other: { cut: 4" x 4", count: 3, from: A }',
    );
    expect(shown(patternOf(block).ledger, 'fabric.A.yardage')).toEqual({ small: '¼ yd' });
  });

  it('has none while any entry cannot be read that might be cut from it', () => {
    expect(has(QUILT.replace('finished: 3", from: B }', 'finished: 3, from: B }'), 'fabric.B.yardage')).toBe(
      false,
    );
    expect(has(QUILT.replace('count: 2, from: A }', 'count: 2, form: A }'), 'fabric.A.yardage')).toBe(false);
  });

  it('has none when nothing is cut from it', () => {
    expect(has(`${QUILT}`.replace('C: Lichen', 'C: Lichen, D: Spare'), 'fabric.D.yardage')).toBe(false);
  });
});

const stated = (block: string, text: string) => {
  const { findings } = proofread({ source: `\`\`\`measure\n${block}\n\`\`\`\n\nBuy ${text}.\n` });
  return findings.map(({ code, message, fixes }) => [code, message, fixes[0]?.title]);
};

describe('a stated yardage', () => {
  it('is short below what any way of cutting takes, with the plain reason and the plain yardage as the fix', () => {
    expect(stated(QUILT, '5/8 yd <!-- = fabric.A.yardage -->')).toEqual([
      [
        'short-figure',
        'The yardage of fabric A should be 7/8 yd, not 5/8 yd: 2 strips 3⅞" wide, 4 strips 3½" wide and 4 strips 2¼" wide take 30¾"; however it is cut, it takes at least 27⅞" (with 40" of usable width and 12" to join, unless the block says otherwise).',
        'Change to 7/8 yd',
      ],
    ]);
  });

  it('says when it is the need rounded down', () => {
    const block = 'fabrics: { A: Chalk }\npieces: { p: { cut: 10" x 10", count: 8, from: A } }';
    expect(stated(block, '1/2 yd <!-- = fabric.A.yardage -->')).toEqual([
      [
        'short-figure',
        'The yardage of fabric A should be 5/8 yd, not 1/2 yd: 2 strips 10" wide take 20"; however it is cut, it takes at least 20" (with 40" of usable width, unless the block says otherwise); 1/2 yd is rounded down, and it must be rounded up.',
        'Change to 5/8 yd',
      ],
    ]);
  });

  it('says which piece is longer than it', () => {
    const block =
      'fabrics: { A: Chalk }\npieces: { sash: { cut: 3" x 60", count: 2, along: length, from: A } }';
    expect(stated(block, '1 yd <!-- = fabric.A.yardage -->')[0]?.[1]).toBe(
      'The yardage of fabric A should be 1¾ yd, not 1 yd: 2 strips 3" wide along the length take 60"; 2 “sash” must run 60" along the length (with 40" of usable width, unless the block says otherwise).',
    );
  });

  it('is right from what a clever plan may take up to the plain count, and worth a hint well above it', () => {
    const block = QUILT.replace('count: 2, from: A }', 'count: 2, from: B }');
    expect(stated(block, '1/2 yd <!-- = fabric.A.yardage -->')).toEqual([]);
    expect(stated(block, '7/8 yd <!-- = fabric.A.yardage -->')).toEqual([]);
    expect(stated(block, '2 yd <!-- = fabric.A.yardage -->')[0]?.[0]).toBe('generous-figure');
  });

  it('is never called generous while some piece does not say its fabric', () => {
    const block = `${QUILT}\npieces: { tab: { cut: 3 1/2" x 10", count: 5 } }`;
    expect(stated(block, '3 yd <!-- = fabric.A.yardage -->')).toEqual([]);
  });
});

describe('pieces that a fabric cannot give', () => {
  it('are wider than it whichever way they lie', () => {
    expect(
      complaints('fabrics: { A: Chalk }\npieces: { centre: { cut: 41" x 50", count: 1, from: A } }'),
    ).toEqual([
      ['too-wide', '41" x 50"', 'A piece of 41" × 50" cannot be cut from fabric A, which is 40" wide.'],
    ]);
    expect(
      complaints(
        'fabrics: { A: Chalk }\nfinished: circle 240"\nbinding: { from: A, strip: 2 1/4", grain: bias, cut as: one square }',
      ),
    ).toEqual([
      ['too-wide', '2 1/4"', 'A piece of 43" × 43" cannot be cut from fabric A, which is 40" wide.'],
    ]);
  });

  it('are longer than it is wide, when they do not say that they are cut along its length', () => {
    const block = (along: string) =>
      `fabrics: { A: Chalk }\npieces: { sash: { cut: 2 1/2" x 50", count: 3, from: A${along} } }`;
    const message =
      'The piece is 50" long, but fabric A is only 40" wide; write “along: length” if it is cut along the length of the fabric.';
    expect(complaints(block(''))).toEqual([['longer-than-width', '2 1/2" x 50"', message]]);
    expect(complaints(block(', along: width'))).toEqual([['longer-than-width', '2 1/2" x 50"', message]]);
    expect(complaints(block(', along: length'))).toEqual([]);
    expect(value(block(', along: length'), 'fabric.A.yardage')).toBe('1½ yd');
    expect(has(block(', along: width'), 'fabric.A.yardage')).toBe(false);
  });

  it('are larger than the precut they come from, at the size for which they are', () => {
    const block = lines(
      'sizes: [small, large]',
      'fabrics: { A: { name: Foam, cut from: squares 5" } }',
      'pieces: { patch: { cut: { small: 5" x 5", large: 6" x 6" }, count: 4, from: A } }',
    );
    expect(complaints(block)).toEqual([
      ['precut-too-small', '6" x 6"', 'A square of 5" × 5" is too small for a piece of 6" × 6".'],
    ]);
    expect(shown(patternOf(block).ledger, 'fabric.A.squares')).toEqual({ small: '4' });
  });
});

describe('a bias square that the block states larger than the least', () => {
  it('counts in its fabric as it counts in the binding', () => {
    // By the published yield of The Button Ship's tube (2014) 98" need 17" at least; the pattern cuts 20".
    const block = lines(
      'fabrics: { A: Chalk }',
      'finished: measured 86"',
      'binding: { from: A, strip: 2 1/4", grain: bias, cut as: one square }',
      'states: { binding.square: 20" }',
    );
    expect(value(block, 'binding.square')).toBe('17"');
    expect(value(block, 'fabric.A.cut-length')).toBe('20"');
    expect([value(block, 'binding.yardage'), value(block, 'fabric.A.yardage')]).toEqual(['⅝ yd', '⅝ yd']);
    expect(value(block.replace('20"', '15"'), 'fabric.A.cut-length')).toBe('17"');
  });
});

describe('pieces that the layout also takes', () => {
  const block = (count: string, from = ', from: C') =>
    lines(
      'fabrics: { B: Flint, C: Lichen }',
      'blocks: { Star: { finished: 12" } }',
      `pieces: { sash: { cut: 2 1/2" x 12 1/2", count: ${count}${from} } }`,
      'layout: { grid: 3 x 4, sashing: { finished: 2", from: C, cornerstones: B } }',
    );

  it('are counted once', () => {
    // Two uprights in each of four rows and three lying in each of three columns: 17 sashes, three from a strip.
    expect(working(block('17'), 'fabric.C.cut-length')).toEqual([
      '6 strips 2½" wide for 17 sashes, 3 from each: 15".',
    ]);
  });

  it('must be as many as it takes, with a few to spare', () => {
    expect(complaints(block('19'))).toEqual([]);
    expect(complaints(block('12'))).toEqual([
      ['too-few-made', '12', 'The layout takes 17 sashes, but 12 are cut.'],
    ]);
    expect(complaints(block('31', ''))).toEqual([
      ['too-many-made', '31', 'The layout takes 17 sashes, but 31 are cut.'],
    ]);
  });

  it('are others when they come from another fabric or have another size', () => {
    expect(complaints(block('12', ', from: B'))).toEqual([]);
    expect(complaints(block('12').replace('12 1/2"', '12"'))).toEqual([]);
  });
});
