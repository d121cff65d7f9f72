/**
 * Blocks that are cut whole from strip sets: as many strips of each fabric as there are sets, together as wide as the
 * block, and just so many sets as give all the blocks.
 */
import type { Range } from '../findings/finding.ts';
import { ceil, floor, type Rational, rational, ZERO } from '../quantity/rational.ts';
import { isCutting, isForParts, isSame } from './cutList.ts';
import type { OneBlock } from './parts.ts';
import { withoutSeams } from './seams.ts';
import type { Text, Told } from './text.ts';
import type { FoundUnit } from './units.ts';
import { writeName, writeTold } from './write.ts';

interface Strip extends Range {
  readonly fabric: string;
  readonly count: Told;
  /** Finished. */
  readonly width: Told;
}

export function findStripSet(text: Text, { made, side }: OneBlock): FoundUnit | undefined {
  if (!side || !/\bsets?\b/i.test(text.words)) return undefined;
  const strips = stripsIn(text);
  const sets = setsFor(side, made, text);
  const alike = strips.filter(({ count }) => isSame(count.values, sets));
  const width = alike.reduce((sum, strip) => sum.add(strip.width.values[0]), ZERO);
  const fabrics = new Set(alike.map(({ fabric }) => fabric));
  if (alike.length < 2 || fabrics.size < alike.length || !width.equals(side)) return undefined;
  const [first] = alike;
  const whole = first && writeTold({ ...first.width, values: [side] }, text.pattern);
  const widths = alike.map((strip) => writeTold(strip.width, text.pattern)).join(', ');
  const from = alike.map(({ fabric }) => writeName(fabric)).join(', ');
  return {
    text: `{ unit: strip sets, finished: ${whole}, strips: [${widths}], count: 1, from: [${from}] }`,
    area: side.mul(side),
    from: alike.map(({ start, end }) => ({ start, end })),
    cuts: [],
  };
}

/** Sets, per size, of which each gives as many blocks as lie side by side in the width of the fabric. */
function setsFor(side: Rational, made: readonly Rational[], { pattern: { house } }: Text): Rational[] {
  const each = floor(house['usable width'].div(side.add(house.seam.mul(2n))));
  return each > 0n ? made.map((blocks) => rational(ceil(blocks.div(each)))) : [];
}

function stripsIn(text: Text): Strip[] {
  return text.clauses.flatMap((clause): Strip[] => {
    const { count, sides } = clause;
    const fabric = clause.nearest('fabric');
    const [side, second] = sides;
    if (!count || !fabric || !side?.unit || second || side.values.length > 1) return [];
    if (clause.nearest('form', 0.85) !== 'strip' || !isCutting(clause) || !isForParts(clause)) return [];
    const width = withoutSeams(side, text);
    return width ? [{ fabric, count, width, start: count.start, end: side.end }] : [];
  });
}
