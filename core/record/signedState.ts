/** A signature as an earlier state of the manuscript: what was right when it was signed. */

import { completeHouse, type House } from '../block/house.ts';
import type { BlockPath } from '../block/place.ts';
import type { FigureKind } from '../figures/figure.ts';
import type { Earlier } from '../proof/earlier/earlier.ts';
import type { KeptLine } from '../proof/earlier/keptLine.ts';
import { judge, type Stated } from '../proof/judge.ts';
import { type Rational, rational } from '../quantity/rational.ts';
import { readCount, readLength, readNumberAt } from '../quantity/read.ts';
import { Real } from '../quantity/real.ts';
import { toInches } from '../quantity/units.ts';
import type { Signature } from './signature.ts';

export function signedState(signature: Signature): Earlier {
  const { lines, inputs, figures, sizes } = signature;
  const house = houseOf(signature);
  const signedValue = (id: string, size: string | undefined) =>
    figures.get(id)?.values.get(size ?? sizes[0] ?? '');
  return {
    lines,
    agrees(stated, id, size) {
      const value = signedValue(id, size);
      const rule = figures.get(id)?.rule;
      const read = value && readValue(value);
      if (!read || !rule) return false;
      const { amount, kind } = read;
      const judged = {
        need: Real.of(amount),
        shown: amount,
        round: 'up',
        least: undefined,
        spare: undefined,
      } as const;
      return judge(stated, { kind, rule }, judged, house) === 'verified' || isSigned(stated, id, size, lines);
    },
    inputs: (id) => (figures.get(id)?.from ?? []).flatMap((index) => inputs[index] ?? []),
    textAt: (path) => inputs.find((input) => isAround(input.path, path))?.text,
  };
}

/** Whether it stood somewhere as a verified number: the file tells figures rounded, so that it may be right in another way. */
function isSigned(
  { value, unit }: Stated,
  figure: string,
  size: string | undefined,
  lines: readonly KeptLine[],
): boolean {
  return lines.some(({ text, numbers }) =>
    numbers.some((number) => {
      if (number.account !== 'verified' || number.figure !== figure || number.size !== size) return false;
      const read = readNumberAt(text, number.start);
      return read?.value.equals(value) === true && (read.unit ?? unit) === unit;
    }),
  );
}

function readValue(text: string): { readonly amount: Rational; readonly kind: FigureKind } | undefined {
  const count = readCount(text);
  if (!('problem' in count)) return { amount: count.value, kind: 'count' };
  const length = readLength(text, { zero: true });
  if ('problem' in length) return undefined;
  return { amount: length.inches, kind: length.unit === 'yd' || length.unit === 'm' ? 'yardage' : 'length' };
}

/** Only the system matters for numbers that are written without a unit, or in the other one. */
function houseOf({ system }: Signature): House {
  if (system === 'inch') return completeHouse({});
  return completeHouse({ seam: { inches: toInches(rational(3, 4), 'cm'), unit: 'cm' } });
}

function isAround(outer: BlockPath, path: BlockPath): boolean {
  return outer.every((step, index) => path[index] === step);
}
