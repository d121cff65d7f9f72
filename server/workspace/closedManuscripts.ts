/** The manuscripts that are not open: the proof of each, kept until the file or one that it uses changes. */
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { FetchUse, Proofreading } from '../documents.ts';
import { type Proofread, proofreadManuscript } from '../manuscripts.ts';
import { OpenedStates } from '../openedStates.ts';
import type { WorkspaceFiles } from './files.ts';

export class ClosedManuscripts {
  readonly #files: WorkspaceFiles;
  readonly #proofread: Proofread;
  readonly #fetch: FetchUse;
  readonly #known = new Map<string, Promise<Proofreading>>();
  readonly #states = new OpenedStates();
  #lastId = 0;

  constructor(files: WorkspaceFiles, proofread: Proofread, fetch: FetchUse) {
    this.#files = files;
    this.#proofread = proofread;
    this.#fetch = fetch;
  }

  /** @param uri canonical @throws when the file cannot be read, and whatever the proofreading threw */
  proofreading(uri: string): Promise<Proofreading> {
    const known = this.#known.get(uri);
    if (known) return known;
    const proofreading = this.#compute(uri);
    this.#known.set(uri, proofreading);
    // A failure is not kept: the file may be there again.
    proofreading.catch(() => {
      if (this.#known.get(uri) === proofreading) this.#known.delete(uri);
    });
    return proofreading;
  }

  /** The next request proofreads the file again. */
  forget(uri: string): void {
    this.#known.delete(uri);
  }

  async #compute(uri: string): Promise<Proofreading> {
    const source = await this.#files.read(uri);
    const document = TextDocument.create(uri, 'markdown', 0, source);
    const use = await this.#fetch(uri, source);
    const proof = proofreadManuscript(source, this.#proofread, { use, before: this.#states.get(uri) });
    if (proof) this.#states.note(uri, proof);
    // Below zero, so that no proofreading of an open document is taken for one of these.
    return { document, proof, id: --this.#lastId };
  }
}
