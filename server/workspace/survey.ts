/** One look at every manuscript of the workspace, and what it comes to. */
import type { CancellationToken } from 'vscode-languageserver';
import type { Coverage } from '../../core/proof/proof.ts';
import { coverageSentence, measured, NO_COVERAGE, sumCoverage } from '../../core/report/coverage.ts';
import type { Proofreading } from '../documents.ts';
import { throwIfCancelled, turn } from '../turn.ts';
import type { Workspace } from './workspace.ts';

/** One file, with its proofreading or with the reason why there is none. */
export interface Surveyed {
  readonly uri: string;
  /** Counted from one. */
  readonly place: number;
  readonly total: number;
  readonly result: Proofreading | { readonly failure: unknown };
}

/**
 * @param of canonical URIs; left out, all manuscripts
 * @throws ResponseError RequestCancelled when the client has lost interest
 */
export async function* survey(
  workspace: Workspace,
  token: CancellationToken,
  of?: readonly string[],
): AsyncGenerator<Surveyed, void> {
  const uris = of ?? (await workspace.list());
  for (const [index, uri] of uris.entries()) {
    await turn(token);
    const result = await workspace.proofreading(uri, token).catch((failure: unknown) => ({ failure }));
    throwIfCancelled(token);
    yield { uri, place: index + 1, total: uris.length, result };
  }
}

/** The whole line in numbers. */
export class LineTotals {
  #clean = 0;
  #findings = 0;
  #unreadable = 0;
  #coverage: Coverage = NO_COVERAGE;

  add({ result }: Surveyed): void {
    if ('failure' in result) this.#unreadable++;
    else if (result.proof) {
      const isClean = result.proof.findings.every(({ severity }) => severity === 'hint');
      if (isClean) this.#clean++;
      else this.#findings++;
      this.#coverage = sumCoverage([this.#coverage, result.proof.coverage]);
    }
  }

  get manuscripts(): number {
    return this.#clean + this.#findings;
  }

  get needWork(): number {
    return this.#findings;
  }

  get coverage(): Coverage {
    return this.#coverage;
  }

  /** `2 of 30 manuscripts need a second look. 841 of 850 measurements are checked and right …` */
  get sentence(): string {
    const { manuscripts, needWork } = this;
    const noun = manuscripts === 1 ? 'manuscript' : 'manuscripts';
    const sentences = [
      manuscripts === 0
        ? 'No file of the workspace has a measure block, so there is nothing to check.'
        : needWork === 0
          ? `No mistake found in ${manuscripts} ${noun}.`
          : `${needWork} of ${manuscripts} ${noun} ${needWork === 1 ? 'needs' : 'need'} a second look.`,
    ];
    if (measured(this.#coverage) > 0) sentences.push(coverageSentence(this.#coverage));
    if (this.#unreadable > 0)
      sentences.push(`${this.#unreadable} ${this.#unreadable === 1 ? 'file' : 'files'} could not be read.`);
    return sentences.join(' ');
  }
}
