/** What can be wrong with blocks and their units: units that cannot be sewn, and parts that do not fill the block. */
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import { listed } from '../../block/words.ts';
import { type Rational, rational } from '../../quantity/rational.ts';
import { unitMethod } from '../../trade/units/kinds.ts';
import type { Objection } from '../definition.ts';
import { Derivation } from '../derivation.ts';
import type { Ledger } from '../ledger.ts';
import { fillObjections } from './blockFill.ts';
import { isUnit, partsOf, specOf } from './parts.ts';
import { blockCount } from './quilt.ts';
import { usableWidth } from './usableWidth.ts';

export function checkBlocks(pattern: Pattern, ledger: Ledger): Objection[] {
  return [
    ...unitObjections(pattern),
    ...Object.keys(pattern.entries.blocks ?? {}).flatMap((name) => fillObjections(pattern, name)),
    ...countObjections(pattern, ledger),
  ];
}

/** Units that cannot be sewn as the block says. */
function unitObjections(pattern: Pattern): Objection[] {
  return partsOf(pattern.entries).flatMap(({ block, index, part }): Objection[] => {
    const path: BlockPath = ['blocks', block, 'of', index];
    if (!isUnit(part)) {
      if (part.finished || part.cut) return [];
      return [
        {
          code: 'missing-entry',
          path,
          atKey: true,
          message: 'A piece needs its size: finished, or cut.',
        },
      ];
    }
    const { kind } = part.unit;
    if (part.method !== undefined && !unitMethod(kind, part.method)) {
      const names = kind.methods.map(({ name }) => name);
      const message = `${capital(kind.name)} are made ${listed(names, 'or')}.`;
      return [{ code: 'bad-value', path: [...path, 'method'], message }];
    }
    const missing = kind.needs.find((need) => part[need] === undefined);
    if (missing)
      return [
        {
          code: 'missing-entry',
          path,
          atKey: true,
          message: `${capital(kind.name)} need “${missing}”.`,
        },
      ];
    const fabrics = part.from?.length ?? 1;
    for (const size of pattern.sizes) {
      const at = Derivation.unrecorded(pattern, size);
      const settled = at.entries.blocks?.[block]?.of?.[index];
      if (!settled || !isUnit(settled) || !settled.finished) continue;
      const spec = specOf(settled, settled.finished, kind);
      const rules = {
        seam: at.house.seam,
        oversize: rational(0),
        usableWidth: usableWidth(at, settled.from?.[0]),
      };
      const problem = kind.problem(spec, rules);
      const where = [...path, 'finished', ...part.finished.pathAt(size)];
      if (problem !== undefined) return [{ code: 'bad-value', path: where, message: problem }];
      const wanted = kind.fabrics(spec);
      if (fabrics > wanted) {
        const message = `${capital(kind.name)} take ${wanted === 1 ? 'one fabric' : `${wanted} fabrics`}, not ${fabrics}.`;
        return [{ code: 'bad-value', path: [...path, 'from'], message }];
      }
    }
    return [];
  });
}

/** Blocks made against blocks laid out: made and used. */
function countObjections(pattern: Pattern, ledger: Ledger): Objection[] {
  const blocks = Object.entries(pattern.entries.blocks ?? {});
  if (!pattern.entries.layout?.grid || blocks.length === 0) return [];
  for (const size of pattern.sizes) {
    const laid = blockCount(Derivation.unrecorded(pattern, size));
    const made = blocks.map(
      ([name]) => ledger.figure(`block.${name}.count`)?.values.get(size.name)?.need.exact,
    );
    const stated = blocks.find(([, { make }]) => make);
    if (!laid || !stated) continue;
    const total = made.reduce<Rational>((a, b) => (b ? a.add(b) : a), rational(0));
    const silent = blocks.filter((_, index) => !made[index]).map(([name]) => `“${name}”`);
    // However few are made of the blocks that do not say: too many stay too many.
    const isOff = silent.length > 0 ? total.compare(laid.count) > 0 : !total.equals(laid.count);
    if (!isOff) continue;
    const without = silent.length > 0 ? `, even without any ${listed(silent, 'or')}` : '';
    const forSize = size.name === '' ? '' : ` for the size “${size.name}”`;
    const short = total.compare(laid.count) < 0;
    const message = `The layout takes ${laid.count} blocks${forSize}, but ${total.toString()} ${total.equals(1) ? 'is' : 'are'} made${without}: ${laid.because}.`;
    const path = ['blocks', stated[0], 'make', ...(stated[1].make?.pathAt(size) ?? [])];
    return [{ code: short ? 'too-few-made' : 'too-many-made', path, message }];
  }
  return [];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
