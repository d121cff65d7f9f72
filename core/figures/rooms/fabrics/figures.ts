/** The figures of one fabric: how much of it to buy, and the strips that it is cut into. */
import { listed } from '../../../block/words.ts';
import { type Rational, rational } from '../../../quantity/rational.ts';
import { Real } from '../../../quantity/real.ts';
import { usualCut } from '../../../trade/plan/plain.ts';
import type { Definition, Derived } from '../../definition.ts';
import type { Derivation } from '../../derivation.ts';
import { type CuttingList, cuttingList, fits, leastOfRoll, plainLength, plainLines } from './cuttingList.ts';
import { keptPlan, MOST_PIECES } from './plans.ts';
import type { Sources } from './sources.ts';
import { stripsOf } from './strips.ts';
import type { StripWidth } from './widths.ts';
import { allStrips, lineStep, longestAlong } from './words.ts';

/** Fabric by the yard: how long a piece is cut, and how much is bought. */
export function rollFigures(label: string, sources: Sources): Definition[] {
  const length = (at: Derivation) => {
    return at.once(`the length of ${label}`, (inner) => {
      const list = cuttingList(inner, sources, label);
      return list && fits(list) ? fabricLength(inner, list, sources) : undefined;
    });
  };
  return [
    {
      id: `fabric.${label}.yardage`,
      title: `The yardage of fabric ${label}`,
      kind: 'yardage',
      rule: 'at least',
      derive: (at) => {
        const found = length(at);
        return found && { ...found, step: at.house['sell by'] };
      },
    },
    {
      id: `fabric.${label}.cut-length`,
      title: `The length of fabric ${label} that is cut up`,
      kind: 'length',
      rule: 'at least',
      derive: length,
    },
  ];
}

function fabricLength(at: Derivation, list: CuttingList, { all }: Sources): Derived {
  const { show } = at;
  const { squaring } = list.fabric;
  // Whoever buys must not be told less than the strips of the pattern take, however closely one might cut.
  const lines = plainLines(list, usualCut);
  const cut = plainLength(lines);
  const need = cut.add(squaring);
  const least = leastOfRoll(list, plainLength(plainLines(list)));
  const steps = lines.map((line) => lineStep(line, show));
  if (lines.length > 1) steps.push(`Together they take ${show.length(cut)}.`);
  if (squaring.n !== 0n)
    steps.push(`Straightening the end takes ${show.length(squaring)}: ${show.length(need)} in all.`);
  const straightened = squaring.n === 0n ? '' : `, with ${show.length(squaring)} to straighten the end,`;
  const takes = lines.length > 1 || (lines[0]?.strips.count ?? 0) > 1 ? 'take' : 'takes';
  return {
    need: Real.of(need),
    least,
    steps,
    because: `${allStrips(lines, show)}${straightened} ${takes} ${show.length(need)}`,
    against: (stated) => tooLittle(at, stated, list, least),
    remarks: () => closerPlan(at, list, need),
    // Where an entry does not say its fabric, more may be meant to be bought than is counted here.
    ...(all.some(isSilent) ? { spare: 'any' as const } : {}),
  };
}

function isSilent({ kind, fabrics }: Sources['all'][number]): boolean {
  return fabrics.length === 0 && (kind === 'unit' || kind === 'block piece' || kind === 'own piece');
}

/** What a stated length lacks. */
function tooLittle(
  { show }: Derivation,
  stated: Rational,
  { lines, fabric }: CuttingList,
  least: Rational,
): string | undefined {
  const longest = longestAlong(lines.flatMap(({ pieces }) => pieces));
  if (longest && stated.compare(longest.length.add(fabric.squaring)) < 0)
    return `${longest.id} must run ${show.length(longest.length)} along the length`;
  if (stated.compare(least) >= 0) return undefined;
  return `however it is cut, it takes at least ${show.length(least)}`;
}

/** Where one can do with less than the plain count. */
function closerPlan({ show }: Derivation, { fabric, lines }: CuttingList, need: Rational): string[] {
  const pieces = lines.flatMap((line) => line.pieces);
  if (pieces.reduce((sum, { count }) => sum + count, 0) > MOST_PIECES) return [];
  const plan = keptPlan(fabric, pieces);
  if (plan.kind !== 'roll' || plan.best.length.compare(need) >= 0) return [];
  const more = lines.length > 1 ? ', with smaller pieces from what larger ones leave' : '';
  // A list of many kinds is not always settled: then it is said how much shorter another way could be.
  const open =
    plan.gap.n > 0n ? `; in strips across the fabric it takes at least ${show.length(plan.bound)}` : '';
  return [`Cut more closely${more}, it could be done with ${show.length(plan.best.length)}${open}.`];
}

/** Strips across a fabric by the yard, one figure for each width. */
export function stripFigures(label: string, sources: Sources, { inches, id, shown }: StripWidth): Definition {
  return {
    id: `fabric.${label}.strips.${id}`,
    title: `The number of strips ${shown} wide from fabric ${label}`,
    kind: 'count',
    rule: 'at least',
    derive: (at) => {
      const list = cuttingList(at, sources, label);
      const strips = list && fits(list) ? stripsOf(list, plainLines(list), inches) : undefined;
      if (!strips) return undefined;
      const { show } = at;
      const parts = strips.lines.map(({ what, strips: { count }, pieces }) =>
        pieces
          ? `${listed(what, 'and')} at ${pieces.perStrip} from a strip take ${count}`
          : `${listed(what, 'and')} takes ${count}`,
      );
      const because = listed(parts, 'and');
      const steps = strips.lines.map((line) => lineStep(line, show));
      return {
        need: Real.of(strips.count),
        least: rational(strips.least),
        steps: strips.lines.length > 1 ? [...steps, `Together they are ${strips.count} strips.`] : steps,
        because,
      };
    },
  };
}
