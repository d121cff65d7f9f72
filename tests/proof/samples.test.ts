import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';

const SAMPLES = new URL('../../shared/samples/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, SAMPLES), 'utf8');
const clean = readdirSync(SAMPLES).filter((name) => name.endsWith('.md'));

/** The ten mistakes: the code, the number as it stands in its own line, and what the fix writes. */
const MISTAKES: readonly [code: string, line: string, wrong: string, right: string][] = [
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
];

/** What the patterns print and nothing in their blocks fixes, in reading order. */
const UNFIXED: readonly [name: string, numbers: readonly string[]][] = [
  // Two sides, two of top and bottom, for both borders; and how far the sleeve stays away from the edge.
  ['gull-wing-wall-quilt.md', ['two', 'two', 'two', 'two', '1"']],
];

describe('the sample line', () => {
  it.each(clean)('has no finding in %s, and most of its numbers are verified', (name) => {
    const { findings, coverage } = proofread({ source: read(name) });
    expect(findings).toEqual([]);
    expect(coverage.verified).toBeGreaterThan(coverage.unaccounted);
  });

  it.each(UNFIXED)('leaves no number of %s unchecked that its block fixes', (name, numbers) => {
    const { accounts } = proofread({ source: read(name) });
    const unchecked = accounts.filter(({ kind }) => kind === 'unaccounted');
    expect(unchecked.map(({ number }) => number.text)).toEqual(numbers);
  });

  const flawed = read('before-proofreading/long-ferry-throw.md');

  it('has ten planted mistakes, each found at its number with one preferred fix', () => {
    const { findings } = proofread({ source: flawed });
    const found = findings.map(({ code, start, end, fixes }) => ({
      code,
      wrong: flawed.slice(start, end),
      line: flawed.slice(flawed.lastIndexOf('\n', start) + 1, flawed.indexOf('\n', end)),
      right: fixes.filter(({ preferred }) => preferred).flatMap(({ edits }) => edits.map(({ text }) => text)),
    }));
    expect(found).toEqual(
      MISTAKES.map(([code, line, wrong, right]) => ({
        code,
        wrong,
        line: expect.stringContaining(line),
        right: [right],
      })),
    );
  });

  it('is itself again when every preferred fix is applied', () => {
    const edits = proofread({ source: flawed }).findings.flatMap(({ fixes }) =>
      fixes.filter(({ preferred }) => preferred).flatMap((fix) => fix.edits),
    );
    expect(applyEdits(flawed, edits)).toBe(read('long-ferry-throw.md'));
  });
});
