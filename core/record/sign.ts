/** Signs a manuscript off as it was proofread. */
import { seenLines } from '../proof/earlier/keptLine.ts';
import { type Input, writtenInputs } from '../proof/inputs.ts';
import type { Proof } from '../proof/proof.ts';
import type { Signature, SignedFigure } from './signature.ts';

/** @param who the name, the day as `2026-11-25`, and the digest of what `digestible` makes of the text */
export function sign(proof: Proof, who: Pick<Signature, 'by' | 'on' | 'digest'>): Signature {
  const { pattern, ledger, manuscript, accounts } = proof;
  const inputs = new Map<string, { readonly input: Input; readonly index: number }>();
  const indexOf = (input: Input) => {
    const key = input.path.join('\u0000');
    const known = inputs.get(key) ?? { input, index: inputs.size };
    inputs.set(key, known);
    return known.index;
  };
  const figures = ledger.ids.flatMap((id): [string, SignedFigure][] => {
    const figure = ledger.figure(id);
    if (!figure) return [];
    const values = [...figure.values].map(([size, value]): [string, string] => [
      size,
      ledger.show.figure(value, figure.kind),
    ]);
    const from = values.flatMap(([size]) => writtenInputs(id, size, pattern, ledger)).map(indexOf);
    return [[id, { rule: figure.rule, values: new Map(values), from: [...new Set(from)].sort(ascending) }]];
  });
  return {
    ...who,
    system: pattern.house.system,
    sizes: pattern.sizes.map(({ name }) => name),
    inputs: [...inputs.values()].map(({ input }) => input),
    figures: new Map(figures),
    lines: seenLines(manuscript, accounts),
  };
}

function ascending(a: number, b: number): number {
  return a - b;
}
