/** Whether the finished parts of a block fill it: by their areas, and laid side by side. */
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { canBeFilled, type Laid } from '../../trade/packing.ts';
import type { Size } from '../../trade/units/unit.ts';
import type { Objection } from '../definition.ts';
import { Derivation } from '../derivation.ts';
import { isUnit, unitPart } from './parts.ts';

/** The finished areas of a block's parts must add up to the block, and no part may be larger than it. */
export function fillObjections(pattern: Pattern, name: string): Objection[] {
  const parts = pattern.entries.blocks?.[name]?.of;
  if (!parts || parts.length === 0) return [];
  for (const size of pattern.sizes) {
    const at = Derivation.unrecorded(pattern, size);
    const finished = at.entries.blocks?.[name]?.finished;
    if (!finished) continue;
    const block = { width: Real.of(finished.width), length: Real.of(finished.length) };
    let filled = Real.of(0);
    let known = true;
    const found: SizedPart[] = [];
    for (const index of parts.keys()) {
      const part = sizedPart(at, name, index);
      if (!part) {
        known = false;
        continue;
      }
      if (part.tooLarge(block)) {
        const message = `This part is larger than the block, which finishes ${at.show.size(block)}.`;
        return [{ code: 'block-not-filled', path: ['blocks', name, 'of', index, 'finished'], message }];
      }
      filled = filled.add(part.area);
      found.push(part);
    }
    const area = block.width.mul(block.length);
    const difference = filled.compare(area);
    if (!known) continue;
    const path: BlockPath = ['blocks', name, 'of'];
    const forSize = size.name === '' ? '' : ` for the size “${size.name}”`;
    if (difference === 0) {
      if (!cannotBeLaid(finished, found)) continue;
      const message = `The parts have the area of the block${forSize}, but they cannot be laid side by side so that they fill its ${at.show.size(block)}.`;
      return [{ code: 'block-not-filled', path, message }];
    }
    const amount = (value: Real) =>
      at.show.count(at.house.system === 'inch' ? value : value.mul(Real.of(rational(64516, 10000))));
    const unit = at.house.system === 'inch' ? 'square inches' : 'square centimetres';
    const message = `The parts fill ${amount(filled)} ${unit}${forSize}, but the block has ${amount(area)}: something is ${difference < 0 ? 'missing' : 'too much'}.`;
    return [{ code: 'block-not-filled', path, message }];
  }
  return [];
}

interface SizedPart {
  /** Of the finished parts together. */
  readonly area: Real;
  /** One of them, finished, in the rectangle round it. */
  readonly box: Size;
  readonly count: number;
  tooLarge(block: Size): boolean;
}

function sizedPart(at: Derivation, block: string, index: number): SizedPart | undefined {
  const part = at.entries.blocks?.[block]?.of?.[index];
  if (!part?.count) return undefined;
  const count = Number(part.count.valueOf());
  const sized = (box: Size, one: Real): SizedPart => ({
    area: one.mul(Real.of(count)),
    box,
    count,
    tooLarge: (room) => larger(box, room),
  });
  if (isUnit(part)) {
    const unit = unitPart(at, { block, index });
    return unit && sized(unit.kind.finished(unit.spec), unit.kind.area(unit.spec));
  }
  const seams = at.house.seam.mul(2n);
  const width = part.finished?.width ?? part.cut?.width.sub(seams);
  const length = part.finished?.length ?? part.cut?.length.sub(seams);
  if (!width || !length) return undefined;
  return sized({ width: Real.of(width), length: Real.of(length) }, Real.of(width.mul(length)));
}

function larger({ width, length }: Size, room: Size): boolean {
  const fits = (a: Real, b: Real) => a.compare(room.width) <= 0 && b.compare(room.length) <= 0;
  return !fits(width, length) && !fits(length, width);
}

/** Only of rectangles that a ruler measures; whoever lays triangles and hexagons knows more ways than are tried. */
function cannotBeLaid(block: { width: Rational; length: Rational }, parts: readonly SizedPart[]): boolean {
  const laid: Laid[] = [];
  for (const { area, box, count } of parts) {
    if (area.sign() === 0) continue;
    const [width, length] = [box.width.exact, box.length.exact];
    const whole = width && length && area.exact?.equals(width.mul(length).mul(BigInt(count), 1n));
    if (!whole || width.compare(0) <= 0) return false;
    laid.push({ width, length, count });
  }
  return canBeFilled(block, laid) === false;
}
