/**
 * What is remembered of each open manuscript, so that a number can be told stale: the last state in which nothing in it
 * contradicted its block, or else the state in which it was opened; and the state in which it was last signed off.
 *
 * Going on from the last good state keeps the memory true while the author works: once everything is right with strips
 * of 2½", a change to 3" makes numbers stale that were right with 2½".
 */
import { type Earlier, earlierState } from '../core/proof/earlier/earlier.ts';
import type { Proof } from '../core/proof/proof.ts';

export class OpenedStates {
  readonly #states = new Map<string, Earlier>();
  readonly #signed = new Map<string, Earlier>();

  /** What to proofread the next text of a document against. */
  get(uri: string): Earlier[] {
    return [this.#states.get(uri), this.#signed.get(uri)].filter((state) => state !== undefined);
  }

  /** Takes note of what came of the newest text; the first proof of a document is the state at its opening. */
  note(uri: string, proof: Proof): void {
    if (this.#states.has(uri) && !isRight(proof)) return;
    this.#states.set(uri, earlierState(proof));
  }

  /** What was right when it was last signed off. */
  sign(uri: string, state: Earlier): void {
    this.#signed.set(uri, state);
  }

  forget(uri: string): void {
    this.#states.delete(uri);
    this.#signed.delete(uri);
  }
}

/** Half-typed blocks make no numbers wrong, as nothing is known: they are no good state. */
function isRight({ findings, coverage }: Proof): boolean {
  return coverage.verified > 0 && findings.every(({ severity }) => severity === 'hint');
}
