/** The units and pieces that blocks are made of, as the trade's arithmetic wants them. */
import type { BlockPiece, BlockUnit } from '../../block/entries/blocks.ts';
import type { Entries, Pattern } from '../../block/pattern.ts';
import type { Sides } from '../../block/values/sides.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import { unitMethod } from '../../trade/units/kinds.ts';
import { type UnitRequirement, unitRequirement } from '../../trade/units/requirement.ts';
import { USUAL_OVERSIZE } from '../../trade/units/seams.ts';
import type { CuttingRules, Method, NextCut, UnitKind, UnitSpec } from '../../trade/units/unit.ts';
import { Derivation, type Settled } from '../derivation.ts';
import { blockCount } from './quilt.ts';
import { usableWidth } from './usableWidth.ts';

/** Where a part stands: the block's name and the part's place in it, from 0. */
export interface PartPlace {
  readonly block: string;
  readonly index: number;
}

export function isUnit(part: BlockUnit | BlockPiece): part is BlockUnit;
export function isUnit(part: Settled<BlockUnit | BlockPiece>): part is Settled<BlockUnit>;
export function isUnit(part: object): boolean {
  return 'unit' in part;
}

/** Every part of every block, with its place. */
export function partsOf(entries: Entries): (PartPlace & { readonly part: BlockUnit | BlockPiece })[] {
  return Object.entries(entries.blocks ?? {}).flatMap(([block, { of }]) =>
    (of ?? []).map((part, index) => ({ block, index, part })),
  );
}

/** How many of a block are made: as stated, or as the layout takes when it has one block. */
export function blocksMade(at: Derivation, name: string): number | undefined {
  const blocks = at.entries.blocks;
  const stated = blocks?.[name]?.make;
  if (stated) return Number(stated.valueOf());
  if (Object.keys(blocks ?? {}).length !== 1) return undefined;
  return blockCount(at)?.count;
}

export interface UnitPart {
  readonly kind: UnitKind;
  readonly method: Method;
  readonly spec: UnitSpec;
  readonly rules: CuttingRules;
}

/** A unit ready to be computed; `undefined` when the block does not say enough, or no such unit can be sewn. */
export function unitPart(at: Derivation, place: PartPlace): UnitPart | undefined {
  return at.once(`unit ${place.block} ${place.index}`, (inner) => readyUnit(inner, place));
}

function readyUnit(at: Derivation, { block, index }: PartPlace): UnitPart | undefined {
  const part = at.entries.blocks?.[block]?.of?.[index];
  if (!part || !isUnit(part) || !part.finished) return undefined;
  const { kind } = part.unit;
  const named =
    part.method === undefined ? { method: kind.methods[0], trimmed: false } : unitMethod(kind, part.method);
  if (!named) return undefined;
  const spec = specOf(part, part.finished, kind);
  if (kind.needs.some((need) => spec[need] === undefined)) return undefined;
  const rules = {
    seam: at.house.seam,
    oversize: named.trimmed ? trimmingOversize(at) : rational(0),
    usableWidth: usableWidth(at, part.from?.[0]),
  };
  if (kind.problem(spec, rules) !== undefined) return undefined;
  return { kind, method: named.method, spec, rules };
}

export function specOf(part: Settled<BlockUnit>, finished: Sides, kind: UnitKind): UnitSpec {
  const [width, length] = [Real.of(finished.width), Real.of(finished.length)];
  const strips = part.strips?.map(({ inches }) => Real.of(inches));
  return {
    width,
    length: finished.single ? secondSide(kind, width, strips) : length,
    ...(part.corner && { corner: Real.of(part.corner.inches) }),
    ...(part.corners && { corners: Number(part.corners.valueOf()) }),
    ...(strips && { strips }),
    ...(part.radius && { radius: Real.of(part.radius.inches) }),
  };
}

/** What one length means: geese are half as high as wide, a segment is as long as its strips together. */
function secondSide({ name }: UnitKind, width: Real, strips: readonly Real[] | undefined): Real {
  if (name === 'flying geese') return width.div(Real.of(2));
  if (name === 'strip sets' && strips) return strips.reduce((a, b) => a.add(b), Real.of(0));
  return width;
}

/** What is added for trimming down afterwards: an eighth of an inch, or half a centimetre (common practice). */
function trimmingOversize(at: Derivation): Rational {
  return at.house.system === 'inch' ? USUAL_OVERSIZE : toInches(rational(1, 2), 'cm');
}

/** The pieces to cut for all units of a part. */
export function requirementOf(at: Derivation, place: PartPlace): Requirement | undefined {
  return at.once(`cuts ${place.block} ${place.index}`, (inner) => requireUnits(inner, place));
}

export type Requirement = UnitRequirement & UnitPart;

function requireUnits(at: Derivation, place: PartPlace): Requirement | undefined {
  const unit = unitPart(at, place);
  const each = at.entries.blocks?.[place.block]?.of?.[place.index]?.count;
  const made = blocksMade(at, place.block);
  if (!unit || !each || made === undefined) return undefined;
  const units = Number(each.valueOf()) * made;
  return { ...unit, ...unitRequirement(unit.method, unit.spec, unit.rules, units, at.house['cut to']) };
}

/** One of the cuts of a unit: how it is called in ids and in sentences. */
export interface CutName {
  /** `large-square`, or `strip-2` where several cuts have the same role. */
  readonly id: string;
  readonly role: string;
  /** Position in the unit's list of fabrics, from 0. */
  readonly from: number;
  /** What happens to the piece next. */
  readonly next: NextCut;
  readonly trimmable: boolean;
}

/** The cuts of a unit in the order of its method, named from the first size in which it can be computed. */
export function cutNames(pattern: Pattern, place: PartPlace): CutName[] {
  const unit = pattern.sizes
    .map((size) => unitPart(Derivation.unrecorded(pattern, size), place))
    .find((found) => found !== undefined);
  const cuts = unit?.method.cuts(unit.spec, unit.rules) ?? [];
  return cuts.map(({ role, from, next }, index) => {
    const alike = cuts.filter((cut) => cut.role === role).length > 1;
    const number = cuts.slice(0, index + 1).filter((cut) => cut.role === role).length;
    const id = role.replace(/\s+/g, '-') + (alike ? `-${number}` : '');
    return { id, role, from, next, trimmable: unit?.method.trimmable ?? false };
  });
}
