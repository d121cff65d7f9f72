/** Fabrics whose print has an up and a down: small patterns that one can count by hand. */
import { describe, expect, it } from 'vitest';
import { complaints, figureOf, patternOf, shown } from '../support/pattern.ts';

const working = (block: string, id: string) => [
  ...(figureOf(patternOf(block).ledger, id).values.get('')?.working ?? []),
];
const value = (block: string, id: string) => shown(patternOf(block).ledger, id)[''];
const lines = (...text: string[]) => text.join('\n');

const printed = (more: string) => `fabrics: { A: { name: Herons, directional: ${more} } }`;

describe('a directional fabric', () => {
  const flag = 'pieces: { flag: { cut: 4" x 12", count: 9, from: A } }';

  it('is cut with the length of its pieces along the selvage', () => {
    // 40" gives 10 of 4" in a strip 12" wide; turned, 3 of 12" in a strip 4" wide take as much: 3 strips, 12".
    expect(working(lines(printed('yes'), flag), 'fabric.A.cut-length')).toEqual([
      '1 strip 12" wide for 9 “flag”, 10 from each: 12".',
    ]);
    expect(value(lines(printed('yes'), flag), 'piece.flag.per-strip')).toBe('10');
    expect(value(lines(printed('yes'), flag), 'piece.flag.strips')).toBe('1');
    // Twelve would lie in four strips of 4", but stand in two of 12".
    const twelve = flag.replace('count: 9', 'count: 12');
    expect(value(lines(printed('no'), twelve), 'fabric.A.cut-length')).toBe('16"');
    expect(value(lines(printed('yes'), twelve), 'fabric.A.cut-length')).toBe('24"');
    expect(value(lines(printed('no'), twelve), 'piece.flag.per-strip')).toBe('3');
  });

  it('is cut across where the author says so', () => {
    const across = flag.replace('from: A', 'from: A, along: width');
    expect(working(lines(printed('yes'), across), 'fabric.A.cut-length')).toEqual([
      '3 strips 4" wide for 9 “flag”, 3 from each: 12".',
    ]);
    expect(value(lines(printed('yes'), across), 'piece.flag.per-strip')).toBe('3');
  });

  it('stands upright in upright and in lying sashes', () => {
    // 3 × 3 blocks: 6 upright sashes 2½" × 8½" stand, 2 lying ones 2½" × 28½" lie.
    const sashed = (print: string) =>
      lines(
        printed(print),
        'blocks: { Reed: { finished: 8" } }',
        'layout: { grid: 3 x 3, sashing: { finished: 2", from: A } }',
      );
    expect(working(sashed('yes'), 'fabric.A.cut-length')).toEqual([
      '1 strip 8½" wide for 6 sashes, 16 from each: 8½".',
      '2 strips 2½" wide for 2 sashes, 1 from each: 5".',
      'Together they take 13½".',
    ]);
    expect(value(sashed('no'), 'fabric.A.cut-length')).toBe('10"');
  });

  it('keeps its borders and its sleeve in strips across', () => {
    const quilt = (print: string) =>
      lines(
        printed(print),
        'blocks: { Reed: { finished: 8" } }',
        'layout: { grid: 3 x 3 }',
        'borders: [{ finished: 3", from: A }]',
        'sleeve: { from: A, finished depth: 4" }',
      );
    expect(working(quilt('yes'), 'fabric.A.cut-length')).toEqual(working(quilt('no'), 'fabric.A.cut-length'));
  });

  it('cannot give a piece that would fit only with its print lying', () => {
    const banner = lines(printed('yes'), 'pieces: { banner: { cut: 45" x 12", count: 1, from: A } }');
    expect(complaints(banner)).toEqual([
      [
        'too-wide',
        '45" x 12"',
        'A piece of 45" × 12" cannot be cut from fabric A, which is 40" wide and whose print has a direction.',
      ],
    ]);
    const strips = lines(
      'fabrics: { A: { name: Herons, directional: yes, cut from: strips 2 1/2" } }',
      'pieces: { post: { cut: 2 1/2" x 4 1/2", count: 1, from: A } }',
    );
    expect(complaints(strips)).toEqual([
      [
        'precut-too-small',
        '2 1/2" x 4 1/2"',
        'A strip of 40" × 2½" is too small for a piece of 2½" × 4½" whose print has a direction.',
      ],
    ]);
    expect(complaints(strips.replace('directional: yes', 'directional: no'))).toEqual([]);
  });

  it('may be cut into pieces longer than it is wide', () => {
    const runner = lines(printed('yes'), 'pieces: { runner: { cut: 12" x 45", count: 2, from: A } }');
    expect(complaints(runner)).toEqual([]);
    expect(value(runner, 'fabric.A.cut-length')).toBe('45"');
  });

  it('is directional or not, and nothing else', () => {
    expect(complaints(printed('perhaps'))).toEqual([
      ['bad-value', 'perhaps', 'Write yes or no here, not “perhaps”.'],
    ]);
  });
});
