/** Blocks and their units: how many, how large, and what is cut for them. */
import type { Entries, Pattern } from '../../block/pattern.ts';
import { rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import type { CutRequirement } from '../../trade/units/requirement.ts';
import type { UnitKind } from '../../trade/units/unit.ts';
import type { Definition, Derived, Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { counted, sentence } from '../sentence.ts';
import { checkBlocks } from './blockChecks.ts';
import {
  blocksMade,
  type CutName,
  cutNames,
  isUnit,
  type PartPlace,
  partsOf,
  requirementOf,
  unitPart,
} from './parts.ts';
import { blockCount } from './quilt.ts';
import { cutYields, setFigures } from './sets.ts';
import { bothSides, sizeFigures } from './sizes.ts';
import { SAYS_SO, stated } from './stated.ts';
import { withSeams } from './withSeams.ts';

export const blocksRoom: Room = {
  define: (pattern) => [
    ...Object.keys(pattern.entries.blocks ?? {}).flatMap((name) => blockFigures(name)),
    ...unitPlaces(pattern.entries).flatMap((place) => unitFigures(place, pattern)),
  ],
  check: checkBlocks,
};

/** The places of all units of all blocks. */
export function unitPlaces(entries: Entries): PartPlace[] {
  return partsOf(entries).filter(({ part }) => isUnit(part));
}

export function unitId({ block, index }: PartPlace): string {
  return `unit.${block}.${index + 1}`;
}

function blockFigures(name: string): Definition[] {
  return [
    {
      id: `block.${name}.count`,
      title: `The number of ${name} blocks`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const made = blocksMade(at, name);
        if (made === undefined) return undefined;
        if (at.entries.blocks?.[name]?.make !== undefined) return stated(made);
        const because = blockCount(at)?.because ?? SAYS_SO;
        return { need: Real.of(made), steps: [sentence(because)], because };
      },
    },
    ...sizeFigures(`block.${name}`, `the ${name} block`, (at) => at.entries.blocks?.[name]?.finished),
  ];
}

function unitFigures(place: PartPlace, pattern: Pattern): Definition[] {
  const id = unitId(place);
  const part = pattern.entries.blocks?.[place.block]?.of?.[place.index];
  if (!part || !isUnit(part)) return [];
  const { kind } = part.unit;
  const name = kind.several ?? kind.name;
  const what = `${name} of ${place.block}`;
  return [
    {
      id: `${id}.each`,
      title: `The number of ${name} in one ${place.block} block`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => {
        const each = at.entries.blocks?.[place.block]?.of?.[place.index]?.count;
        return each && stated(each);
      },
    },
    {
      id: `${id}.count`,
      title: `The number of ${what}`,
      kind: 'count',
      rule: 'exact',
      derive: (at) => perBlock(at, place, at.figure(`${id}.each`)?.need),
    },
    ...sizeFigures(
      id,
      `one ${kind.one} of ${place.block}`,
      (at) => at.entries.blocks?.[place.block]?.of?.[place.index]?.finished,
      (at) => {
        const unit = unitPart(at, place);
        return (
          unit && { width: unit.kind.finished(unit.spec).width, length: unit.kind.finished(unit.spec).length }
        );
      },
      (at) => {
        const unit = unitPart(at, place);
        return unit?.kind.unfinished(unit.spec, at.house.seam);
      },
    ),
    ...setFigures(id, place, what, kind.set ?? 'set of pieces'),
    ...squareFigures(place, kind, what),
    ...cutNames(pattern, place).flatMap((names, index) => cutFigures(place, index, names, kind, what)),
  ];
}

/** Where a unit takes squares of one size only, whatever their fabric: that size, and how many in all. */
function squareFigures(place: PartPlace, kind: UnitKind, what: string): Definition[] {
  const alike = (at: Derivation) => {
    const requirement = requirementOf(at, place);
    const [first] = requirement?.cuts ?? [];
    const same = requirement?.cuts.every(
      ({ cutWidth, cutLength }) => cutWidth.equals(cutLength) && first?.cutWidth.equals(cutWidth),
    );
    return first && same ? requirement : undefined;
  };
  return [
    {
      id: `${unitId(place)}.cut`,
      title: `The cut size of ${isPatch('square', kind) ? `the ${what}` : `the squares for the ${what}`}`,
      kind: 'length',
      rule: 'at least',
      derive: (at) => {
        const requirement = alike(at);
        const [first] = requirement?.cuts ?? [];
        return first && cutSide(at, place, first, 'width');
      },
    },
    {
      id: `${unitId(place)}.squares`,
      title: isPatch('square', kind)
        ? `The number of ${what} to cut`
        : `The number of squares for the ${what}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const requirement = alike(at);
        if (!requirement) return undefined;
        const total = requirement.cuts.reduce((sum, { count }) => sum + count, 0);
        const squares = requirement.cuts.map(({ count }) => count).join(' + ');
        const because = `${unitsTake(requirement.units)} ${squares} ${total === 1 ? 'square' : 'squares'}`;
        return { need: Real.of(total), steps: [sentence(because)], because, spare: spareCount(total) };
      },
    },
  ];
}

/** Whether what is cut is the unit itself, and nothing is sewn: a plain square. */
function isPatch(role: string, { one }: UnitKind): boolean {
  return role === one;
}

function cutFigures(
  place: PartPlace,
  index: number,
  { id, role, trimmable }: CutName,
  kind: UnitKind,
  what: string,
): Definition[] {
  const base = `${unitId(place)}.${id}`;
  const cutOf = (at: Derivation) => requirementOf(at, place)?.cuts[index];
  const title = isPatch(role, kind) ? `one ${role} of ${place.block}` : `the ${role} for the ${what}`;
  const side =
    (which: 'width' | 'length'): Definition['derive'] =>
    (at) => {
      const cut = cutOf(at);
      return cut && !(which === 'length' && cut.fullWidth) ? cutSide(at, place, cut, which) : undefined;
    };
  return [
    ...cutYields(base, place, role, what, cutOf),
    ...bothSides(base, `The cut size of ${title}`, trimmable ? 'at least' : 'exact', side, (at) => {
      const cut = cutOf(at);
      return cut && !cut.fullWidth && cut.cutWidth.equals(cut.cutLength);
    }),
    {
      id: `${base}.count`,
      title: isPatch(role, kind) ? `The number of ${what} to cut` : `The number of ${role}s for the ${what}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const cut = cutOf(at);
        return cut && cutCount(at, cut, place);
      },
    },
  ];
}

function cutSide(
  at: Derivation,
  place: PartPlace,
  cut: CutRequirement,
  side: 'width' | 'length',
): Derived | undefined {
  const requirement = requirementOf(at, place);
  if (!requirement) return undefined;
  const { show } = at;
  const finished = requirement.kind.finished(requirement.spec);
  if (isPatch(cut.role, requirement.kind) && cut.next === 'none') return withSeams(at, finished[side], []);
  const isSquare = finished.width.compare(finished.length) === 0;
  const unit = isSquare ? show.length(finished.width) : show.size(finished);
  const square = !cut.fullWidth && cut.cutWidth.equals(cut.cutLength);
  const size = show.length(cut[side]);
  const takes = square ? `of ${size}` : `${size} ${side === 'width' ? 'wide' : 'long'}`;
  const next = cut.next === 'none' ? '' : `, which is cut ${cut.next}`;
  const because = `a unit that finishes ${unit} takes, with its seams, a ${cut.role} ${takes}${next}`;
  const step = isOnStep(cut[side], at) ? undefined : at.house['cut to'];
  return {
    need: cut[side],
    step,
    steps: [sentence(because)],
    because,
    spare: requirement.method.trimmable ? trimSpare(at) : undefined,
  };
}

function isOnStep(side: Real, at: Derivation): boolean {
  return side.exact !== undefined && side.exact.div(at.house['cut to']).d === 1n;
}

/** Cutting a little larger to trim down is good practice; up to a quarter inch, or half a centimetre, goes without a word. */
function trimSpare(at: Derivation) {
  return at.house.system === 'inch' ? rational(1, 4) : toInches(rational(1, 2), 'cm');
}

function cutCount(at: Derivation, cut: CutRequirement, place: PartPlace): Derived {
  const requirement = requirementOf(at, place);
  const units = requirement?.units ?? 0;
  const sets = requirement?.sets ?? 0;
  const per = requirement?.unitsPerSet ?? 1;
  const each = counted(cut.perSet, cut.role);
  const because =
    per > 1
      ? `${counted(units, 'unit')} at ${per} from a set ${units === 1 ? 'takes' : 'take'} ${counted(sets, 'set')} with ${each}${sets === 1 ? '' : ' each'}`
      : `${unitsTake(units)} ${each}${units === 1 ? '' : ' each'}`;
  const left = cut.spare > 0 ? [`${patches(cut)} will be left over.`] : [];
  return {
    need: Real.of(cut.count),
    steps: [sentence(because), ...left],
    because,
    spare: spareCount(cut.count),
  };
}

function patches({ spare, next }: CutRequirement): string {
  if (next === 'into segments') return counted(spare, 'segment');
  return next.endsWith('diagonally') ? counted(spare, 'triangle') : counted(spare, 'patch', 'patches');
}

function unitsTake(units: number): string {
  return `${counted(units, 'unit')} ${units === 1 ? 'takes' : 'take'}`;
}

/** A few spare pieces go without a word: two, or a tenth. */
export function spareCount(count: number) {
  return rational(Math.max(2, Math.ceil(count / 10)));
}

export function perBlock(at: Derivation, { block }: PartPlace, each: Real | undefined): Derived | undefined {
  const blocks = at.figure(`block.${block}.count`);
  if (!blocks || !each) return undefined;
  const need = each.mul(blocks.need);
  const one = blocks.need.compare(Real.of(1)) === 0;
  const because = one
    ? `one ${block} block has ${at.show.count(each)}`
    : `${at.show.count(each)} in each of ${at.show.count(blocks.need)} ${block} blocks ${each.compare(Real.of(1)) === 0 ? 'makes' : 'make'} ${at.show.count(need)}`;
  return { need, steps: [sentence(because)], because };
}
