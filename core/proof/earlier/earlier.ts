/** What is known of an earlier state of a manuscript: enough to tell that a number was right then, and what changed. */
import type { BlockPath } from '../../block/place.ts';
import { type Input, writtenInputs } from '../inputs.ts';
import { judge, type Stated } from '../judge.ts';
import type { Proof } from '../proof.ts';
import { type KeptLine, seenLines } from './keptLine.ts';

export interface Earlier {
  readonly lines: readonly KeptLine[];
  /**
   * Whether a number was right for a figure.
   *
   * @param size its name; `undefined` where the sizes do not differ
   */
  agrees(stated: Stated, figure: string, size: string | undefined): boolean;
  /** The entries of the block that a figure followed from, the nearest first. */
  inputs(figure: string, size: string | undefined): readonly Input[];
  /** What the block said at a place, or at the nearest value around it; `undefined` where it said nothing. */
  textAt(path: BlockPath): string | undefined;
}

/** The state in which a manuscript was proofread. Everything is worked out when it is first asked for. */
export function earlierState({ pattern, ledger, manuscript, accounts }: Proof): Earlier {
  let lines: readonly KeptLine[] | undefined;
  return {
    get lines() {
      lines ??= seenLines(manuscript, accounts);
      return lines;
    },
    agrees(stated, id, size) {
      const figure = ledger.figure(id);
      const value = figure?.values.get(size ?? pattern.sizes[0]?.name ?? '');
      return figure && value ? judge(stated, figure, value, pattern.house) === 'verified' : false;
    },
    inputs: (id, size) => writtenInputs(id, size, pattern, ledger),
    textAt: (path) => pattern.textAt(path),
  };
}
