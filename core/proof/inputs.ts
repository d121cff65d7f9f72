/** The entries of the block that a figure follows from. */
import type { Pattern } from '../block/pattern.ts';
import type { BlockPath } from '../block/place.ts';
import type { FigureValue } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';

/** An entry, and what the author wrote there. */
export interface Input {
  readonly path: BlockPath;
  readonly text: string;
}

/** Every input of a figure, its own and those of the figures that it uses; the nearest first. */
export function inputsOf(id: string, size: string, ledger: Ledger): BlockPath[] {
  const found = new Map<string, FigureValue['inputs'][number]>();
  for (const { inputs } of valuesBehind(id, size, ledger))
    for (const input of inputs) found.set(input.join('\u0000'), input);
  return [...found.values()];
}

/** The value of a figure for a size, and those that it was computed from; the nearest first. */
export function valuesBehind(id: string, size: string, ledger: Ledger): FigureValue[] {
  const found = new Map<string, FigureValue>();
  const queue = [id];
  for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
    const value = found.has(next) ? undefined : ledger.figure(next)?.values.get(size);
    if (!value) continue;
    found.set(next, value);
    queue.push(...value.uses);
  }
  return [...found.values()];
}

/** @param size its name; `undefined` where the sizes do not differ */
export function writtenInputs(
  id: string,
  size: string | undefined,
  pattern: Pattern,
  ledger: Ledger,
): Input[] {
  return inputsOf(id, size ?? pattern.sizes[0]?.name ?? '', ledger).flatMap((path) => {
    const text = pattern.textAt(path);
    return text === undefined ? [] : [{ path, text }];
  });
}
