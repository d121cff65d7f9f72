/** Which size a number that is read is about: what its list or column says, or the size that is named nearest. */
import type { Pattern } from '../block/pattern.ts';
import type { Figure } from '../figures/figure.ts';
import type { SizedSpot } from '../reading/amount.ts';
import type { Evidence } from '../reading/evidence.ts';
import type { Tie } from './proof.ts';
import { isSame } from './sizeOf.ts';

/** @returns `undefined` where nothing tells, or the figure has no value in this size */
export function readSize(
  figure: Figure,
  { size, sizedBy }: Pick<SizedSpot, 'size' | 'sizedBy'>,
  evidence: Evidence,
  pattern: Pattern,
): Pick<Tie, 'value' | 'size' | 'evidence'> | undefined {
  const names = pattern.sizes.map(({ name }) => name);
  if (names.length === 1 || isSame(figure, pattern)) {
    const value = [...figure.values.values()][0];
    return value && { value, size: null, evidence: [] };
  }
  if (size !== undefined) {
    const value = figure.values.get(size);
    return value && { value, size, evidence: sizedBy ? [sizedBy] : [] };
  }
  const named = names
    .map((name) => ({ name, clue: evidence.clue([`size:${name}`]) }))
    .filter(({ clue }) => clue !== undefined)
    .sort((a, b) => (b.clue?.strength ?? 0) - (a.clue?.strength ?? 0));
  const [first, second] = named;
  if (!first?.clue || first.clue.strength === second?.clue?.strength) return undefined;
  const value = figure.values.get(first.name);
  return value && { value, size: first.name, evidence: [first.clue.words()] };
}
