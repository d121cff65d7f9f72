import { floor, ONE, ZERO } from '../../quantity/rational.ts';
import { Real, roundDown } from '../../quantity/real.ts';
import { bothSeams } from './seams.ts';
import { type CuttingRules, piece, rectangular, type UnitKind, type UnitSpec } from './unit.ts';

/**
 * Strips sewn side by side along their length and cut across into segments. `strips` are the finished widths;
 * the finished unit is a segment: `width` is what is cut off, `length` is the sum of the strips.
 *
 * Strips are cut f + 2q wide across the whole usable width U; a segment is cut g + 2q, so a strip set gives
 * floor(U / (g + 2q)) of them.
 */
export const stripSets: UnitKind = {
  ...rectangular,
  name: 'strip sets',
  one: 'strip-set segment',
  several: 'strip-set segments',
  set: 'strip set',
  otherNames: ['strip set', 'strip-set segments'],
  fabrics: (spec) => strips(spec).length,
  needs: ['strips'],
  oneLength: 'the width of a segment',
  problem: (spec, rules) => {
    const sum = strips(spec).reduce((a, b) => a.add(b), Real.of(ZERO));
    if (sum.compare(spec.length) !== 0)
      return 'The finished strips do not add up to the finished length of a segment.';
    return segments(spec, rules) > 0 ? undefined : 'A segment is wider than the usable width of the fabric.';
  },
  methods: [
    {
      name: 'strip sets',
      unitsPerSet: segments,
      wholeSets: true,
      trimmable: false,
      cuts: (spec, rules) =>
        strips(spec).map((f, from) =>
          piece(
            'strip',
            from,
            { width: f.add(bothSeams(rules.seam)), length: Real.of(rules.usableWidth) },
            { next: 'into segments', fullWidth: true, patches: segments(spec, rules) },
          ),
        ),
    },
  ],
};

function segments(spec: UnitSpec, { seam, usableWidth }: CuttingRules): number {
  return Number(floor(roundDown(Real.of(usableWidth).div(spec.width.add(bothSeams(seam))), ONE)));
}

function strips(spec: UnitSpec): readonly Real[] {
  if (!spec.strips?.length) throw new RangeError('a strip set needs the finished widths of its strips');
  return spec.strips;
}
