import { describe, expect, it } from 'vitest';
import { figureOf, patternOf, shown } from '../support/pattern.ts';

const THROW = `finished: 54" x 77"
binding: { strip: 2 1/4", grain: straight }
backing: {}
batting: { overhang: 3" }
sleeve: { finished depth: 4", short of edge: 1" }
`;

describe('the ledger', () => {
  it('counts eight strips for 262 inches around, joined diagonally from 40 inch fabric', () => {
    const { ledger } = patternOf(THROW);
    const strips = figureOf(ledger, 'binding.strips').values.get('');
    expect(shown(ledger, 'binding.strips')).toEqual({ '': '8' });
    expect(strips?.working).toEqual([
      '2 × (54" + 77") = 262" around.',
      '262" around plus 12" to join is 274".',
      'A strip is 40" long; each diagonal join takes 2¼".',
      '8 strips joined give 304¼".',
    ]);
  });

  it('says what a wrong number of strips would give', () => {
    const { ledger } = patternOf(THROW);
    const value = figureOf(ledger, 'binding.strips').values.get('');
    expect(value?.against(value.shown.sub(1n))).toBe('7 strips joined give 266½"');
  });

  it('names the inputs that the author wrote, and none that the house fills in', () => {
    const { ledger } = patternOf(`${THROW}house: { usable width: 42" }\n`);
    const value = figureOf(ledger, 'binding.strips').values.get('');
    expect(value?.inputs).toEqual([
      ['binding', 'grain'],
      ['house', 'usable width'],
    ]);
    expect(value?.uses).toEqual(['binding.length', 'binding.strip']);
  });

  it('computes backing with the seams that take less fabric', () => {
    const { ledger } = patternOf('finished: 56" x 70"\nbacking: {}');
    expect(shown(ledger, 'backing.panels')).toEqual({ '': '2' });
    expect(shown(ledger, 'backing.yardage')).toEqual({ '': '3⅝ yd' });
    expect(figureOf(ledger, 'backing.yardage').values.get('')?.working).toEqual([
      'The backing must reach 78" down, and 2 widths of 40", joined, give 79".',
      '2 panels of 64" take 128".',
      'With vertical seams, 2 panels of 78" take 156".',
      '128", rounded up to the next ⅛ yd, is 3⅝ yd.',
    ]);
  });

  it('takes a wide backing in one piece', () => {
    const { ledger } = patternOf(
      'fabrics: { D: { name: Wide, cut from: wide 108" } }\nfinished: 80" x 90"\nbacking: { from: D }',
    );
    expect(shown(ledger, 'backing.panels')).toEqual({ '': '1' });
    expect(shown(ledger, 'backing.yardage')).toEqual({ '': '2½ yd' });
  });

  it('gives every size its own value, from a mapping or from a list', () => {
    const { ledger } = patternOf(`sizes: [wall, throw]
finished: { wall: 36" x 48", throw: 54" x 72" }
binding: { strip: [2", 2 1/2"] }
`);
    expect(shown(ledger, 'finished.edge')).toEqual({ wall: '168"', throw: '252"' });
    expect(shown(ledger, 'binding.strip')).toEqual({ wall: '2"', throw: '2½"' });
    expect(figureOf(ledger, 'binding.strip').values.get('throw')?.inputs).toEqual([['binding', 'strip', 1]]);
  });

  it('keeps the size that can be read when the value of another cannot', () => {
    const { ledger, pattern } = patternOf(
      'sizes: [wall, throw]\nfinished: { wall: 36 x 48, throw: 54" x 72" }',
    );
    expect(pattern.findings.map(({ code }) => code)).toEqual(['bad-value']);
    expect(shown(ledger, 'finished.edge')).toEqual({ throw: '252"' });
  });

  it('takes bias binding for a curved edge unless the block says otherwise', () => {
    const { ledger } = patternOf('finished: circle 24"\nbinding: { strip: 2 1/4" }');
    expect(ledger.ids).toContain('binding.square');
    expect(ledger.ids).not.toContain('binding.strips');
  });

  it('gives no yardage for a bias square that the fabric is too narrow for', () => {
    const { ledger } = patternOf(
      'finished: 90" x 108"\nbinding: { strip: 2 1/2", grain: bias }\nhouse: { usable width: 30" }',
    );
    expect(ledger.figure('binding.square')).toBeDefined();
    expect(ledger.figure('binding.yardage')).toBeUndefined();
  });

  it('works a metric pattern in centimetres and sells it by ten', () => {
    const { ledger } = patternOf(
      'house: { seam: 0.75 cm }\nfinished: 30 cm x 45 cm\nbinding: { strip: 6 cm }',
    );
    expect(shown(ledger, 'finished.edge')).toEqual({ '': '150 cm' });
    expect(shown(ledger, 'binding.length')).toEqual({ '': '180 cm' });
    expect(shown(ledger, 'binding.strips')).toEqual({ '': '2' });
    expect(shown(ledger, 'binding.yardage')).toEqual({ '': '0.2 m' });
  });

  it('computes own figures from lengths, counts and other figures', () => {
    const { ledger } = patternOf(`finished: 36" x 48"
figures:
  ribbon: finished.edge + 18"
  bows: ceil(ribbon / 20")
  tape: ribbon round up to 1/2 yd
  half: floor(finished.width / 5) * 2
  wider: max(finished.width, finished.length) - 12 1/2"
`);
    expect(shown(ledger, 'ribbon')).toEqual({ '': '186"' });
    expect(shown(ledger, 'bows')).toEqual({ '': '10' });
    expect(shown(ledger, 'tape')).toEqual({ '': '198"' });
    expect(shown(ledger, 'half')).toEqual({ '': '14"' });
    expect(shown(ledger, 'wider')).toEqual({ '': '35½"' });
  });
});
