/** The figures of a fabric that comes in equal sheets: fat quarters, precut strips and squares. */
import type { FabricForm } from '../../../block/values/fabricForm.ts';
import { rational } from '../../../quantity/rational.ts';
import { Real } from '../../../quantity/real.ts';
import type { Definition, Derived } from '../../definition.ts';
import type { Derivation } from '../../derivation.ts';
import { sentence } from '../../sentence.ts';
import { type CuttingList, cuttingList, fits, leastOfSheets } from './cuttingList.ts';
import { keptPlan, MOST_PIECES } from './plans.ts';
import { plainSheets } from './sheets.ts';
import type { Sources } from './sources.ts';
import { sheetName, sheetStep } from './words.ts';

/** Fabric in equal sheets: how many of them. */
export function sheetFigures(label: string, form: FabricForm['kind'], sources: Sources): Definition[] {
  return [
    {
      id: `fabric.${label}.${form.replace(' ', '-')}`,
      title: `The number of ${form} of fabric ${label}`,
      kind: 'count',
      rule: 'at least',
      derive: (at) => {
        const list = cuttingList(at, sources, label);
        return list && fits(list) ? sheetCount(at, list) : undefined;
      },
    },
  ];
}

function sheetCount({ show }: Derivation, list: CuttingList): Derived | undefined {
  const { fabric, lines } = list;
  const { stock } = fabric;
  const pieces = lines.flatMap((line) => line.pieces);
  const plain = plainSheets(fabric, pieces);
  if (stock.kind !== 'sheets' || !plain) return undefined;
  const size = show.size(stock);
  const because = `the pieces fill ${sheetName(stock, plain.count)} of ${size}`;
  return {
    need: Real.of(plain.count),
    least: rational(leastOfSheets(list)),
    steps: [...plain.lines.map((line) => sheetStep(line, show)), sentence(because)],
    because,
    remarks: () => {
      if (pieces.reduce((sum, { count }) => sum + count, 0) > MOST_PIECES) return [];
      const plan = keptPlan(fabric, pieces);
      if (plan.kind !== 'sheets' || plan.best.count >= plain.count) return [];
      const open = plan.gap > 0 ? `; it takes at least ${plan.bound}` : '';
      return [`Cut more closely, it could be done with ${sheetName(stock, plan.best.count)}${open}.`];
    },
  };
}
