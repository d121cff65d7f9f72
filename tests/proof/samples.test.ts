import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { manuscriptsIn, sample as read, SAMPLES } from '../support/manuscripts.ts';
import { useOfSamples as use } from '../support/samples.ts';

const clean = manuscriptsIn(SAMPLES).map(({ name }) => name);

type Mistake = readonly [code: string, line: string, wrong: string, right: string];

/** The planted mistakes: the code, a part of the line, the number as it stands there, and what the fix writes. */
const MISTAKES: readonly [name: string, mistakes: readonly Mistake[]][] = [
  [
    'long-ferry-throw.md',
    [
      ['wrong-figure', '| Finished quilt', '68"', '66"'],
      ['wrong-figure', '| Planks', '180', '108'],
      ['short-figure', '| Fabric B, grey water', '½ yd', '⅝ yd'],
      ['short-figure', '| Fabric C, rope', '3½ yd', '6¾ yd'],
      ['short-figure', '| Batting', '66"', '72"'],
      ['wrong-figure', 'From Fabric A, cut', '3"', '3½"'],
      ['wrong-figure', 'each strip into', '11¼"', '11¾"'],
      ['wrong-figure', '2 <!-- = backing.panels @ twin', '2', '3'],
      ['short-figure', 'Cut six', 'six', 'seven'],
      ['short-figure', '<!-- = binding.strips @ twin', '324"', '336"'],
    ],
  ],
  [
    'slack-water-bed-quilt.md',
    [
      // The outer border is forgotten in the length.
      ['wrong-figure', '| Finished quilt', '99"', '108"'],
      // Short by an eighth of a yard, however closely it is cut.
      ['short-figure', '| Fabric C, buoy red', '2 yd', '2¼ yd'],
      // The length of the quilt, without the overhang.
      ['short-figure', '| Batting', '94"', '102"'],
      // One inch for the seams of a quarter-square triangle, which takes 1¼".
      ['short-figure', 'unit.Eddy.2.large-square.cut', '7"', '7¼"'],
      // Finished sizes printed where the cut size and the unfinished size belong.
      ['wrong-figure', '<!-- = sashing.count --> sashes', '12"', '12½"'],
      // The twin's number again.
      ['short-figure', 'unit.Eddy.3.square-1.count', '48', '84'],
      // One strip short by an inch: eleven strips joined give 415" of the 416".
      ['short-figure', '<!-- = binding.strips --> strips', '11', '12'],
      ['wrong-figure', '<!-- = block.Eddy.unfinished', '12"', '12½"'],
      // The width of the centre, before the sides are on.
      ['wrong-figure', 'top and a bottom', '82½"', '85½"'],
    ],
  ],
];

/** What the patterns print and nothing in their blocks fixes, in reading order. */
const UNFIXED: readonly [name: string, numbers: readonly string[]][] = [
  // Two sides, two of top and bottom, for both borders; and how far the sleeve stays away from the edge.
  ['gull-wing-wall-quilt.md', ['two', 'two', 'two', 'two', '1"']],
  // Squares laid on a large one, rows of patches in the block, and two sides for both borders.
  ['slack-water-bed-quilt.md', ['two', 'three', 'two', 'two']],
  // The size of a fat quarter where fabric is sold by the metre, and by the yard.
  ['tide-table-placemats.md', ['50 cm', '55 cm', '18"', '21"']],
];

describe('the sample line', () => {
  it.each(clean)('has no finding in %s, and most of its numbers are verified', (name) => {
    const { findings, coverage } = proofread({ use, source: read(name) });
    expect(findings).toEqual([]);
    expect(coverage.verified).toBeGreaterThan(coverage.unaccounted);
  });

  it.each(UNFIXED)('leaves no number of %s unchecked that its block fixes', (name, numbers) => {
    const { accounts } = proofread({ use, source: read(name) });
    const unchecked = accounts.filter(({ kind }) => kind === 'unaccounted');
    expect(unchecked.map(({ number }) => number.text)).toEqual(numbers);
  });

  it.each(MISTAKES)(
    'has planted mistakes in %s, each found at its number with one preferred fix',
    (name, mistakes) => {
      const flawed = read(`before-proofreading/${name}`);
      const found = proofread({ use, source: flawed }).findings.map(({ code, start, end, fixes }) => ({
        code,
        wrong: flawed.slice(start, end),
        line: flawed.slice(flawed.lastIndexOf('\n', start) + 1, flawed.indexOf('\n', end)),
        right: fixes
          .filter(({ preferred }) => preferred)
          .flatMap(({ edits }) => edits.map(({ text }) => text)),
      }));
      expect(found).toEqual(
        mistakes.map(([code, line, wrong, right]) => ({
          code,
          wrong,
          line: expect.stringContaining(line),
          right: [right],
        })),
      );
    },
  );

  it.each(MISTAKES)('is itself again when every preferred fix is applied to %s', (name) => {
    const flawed = read(`before-proofreading/${name}`);
    const edits = proofread({ use, source: flawed }).findings.flatMap(({ fixes }) =>
      fixes.filter(({ preferred }) => preferred).flatMap((fix) => fix.edits),
    );
    expect(applyEdits(flawed, edits)).toBe(read(name));
  });

  it('has no flawed pattern whose mistakes are not listed here', () => {
    const flawed = readdirSync(new URL('../../shared/samples/before-proofreading/', import.meta.url));
    expect(flawed.sort()).toEqual(MISTAKES.map(([name]) => name));
  });
});
