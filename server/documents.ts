/** The open documents, and the proof of each: computed when it is first asked for, once for every version. */
import {
  type CancellationToken,
  type Connection,
  type Disposable,
  Emitter,
  type Event,
  TextDocuments,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Earlier } from '../core/proof/earlier/earlier.ts';
import type { Proof } from '../core/proof/proof.ts';
import type { Use } from '../core/proof/uses.ts';
import { canonicalUri, type Proofread, proofreadManuscript } from './manuscripts.ts';
import { OpenedStates } from './openedStates.ts';
import { throwIfCancelled, turn } from './turn.ts';

/** A document as it was when it was proofread, with what came of it. */
export interface Proofreading {
  readonly document: TextDocument;
  /** `undefined` for a Markdown file that is no manuscript. */
  readonly proof: Proof | undefined;
  /** Tells this proofreading from every other one, also of another document. */
  readonly id: number;
}

type Outcome = { readonly version: number } & (
  | { readonly done: Proofreading }
  | { readonly failure: unknown }
);

/** @param uri of the document, as the client spells it */
export type FetchUse = (uri: string, source: string) => Promise<Use>;

export class Documents {
  readonly #open = new TextDocuments(TextDocument);
  readonly #outcomes = new Map<string, Outcome>();
  readonly #opened = new OpenedStates();
  readonly #proofread: Proofread;
  readonly #fetch: FetchUse;
  /** How often each document was forgotten: what was fetched before that is old. */
  readonly #forgotten = new Map<string, number>();
  readonly #didForget = new Emitter<string>();
  readonly #didProofread = new Emitter<Proofreading>();
  #lastId = 0;

  /** @param fetch finds what a text uses, before it is proofread */
  constructor(proofread: Proofread, fetch: FetchUse) {
    this.#proofread = proofread;
    this.#fetch = fetch;
    this.#open.onDidClose(({ document: { uri } }) => {
      this.#outcomes.delete(uri);
      this.#opened.forget(uri);
      this.#forgotten.delete(uri);
    });
  }

  listen(connection: Connection): Disposable {
    return this.#open.listen(connection);
  }

  get onDidOpen(): Event<{ document: TextDocument }> {
    return this.#open.onDidOpen;
  }

  /** Also fires when a document is opened. */
  get onDidChangeContent(): Event<{ document: TextDocument }> {
    return this.#open.onDidChangeContent;
  }

  get onDidClose(): Event<{ document: TextDocument }> {
    return this.#open.onDidClose;
  }

  /** Fires with the URI of a document that is to be proofread again. */
  get onDidForget(): Event<string> {
    return this.#didForget.event;
  }

  /** Fires for every new proofreading of an open document. */
  get onDidProofread(): Event<Proofreading> {
    return this.#didProofread.event;
  }

  get(uri: string): TextDocument | undefined {
    return this.#open.get(uri);
  }

  all(): TextDocument[] {
    return this.#open.all();
  }

  /** The open document of a file, however its URI is spelled. */
  find(uri: string): TextDocument | undefined {
    const canonical = canonicalUri(uri);
    return this.#open.all().find((document) => canonicalUri(document.uri) === canonical);
  }

  /**
   * The proofreading of the newest text; `undefined` when the document is not open.
   *
   * @throws ResponseError when the request was cancelled, and whatever the proofreading threw
   */
  async proofreading(uri: string, token: CancellationToken): Promise<Proofreading | undefined> {
    if (!this.#current(uri)) await turn(token);
    for (;;) {
      const document = this.#open.get(uri);
      if (!document) return undefined;
      const outcome = this.#current(uri) ?? (await this.#compute(document));
      throwIfCancelled(token);
      if (!outcome) continue;
      if ('failure' in outcome) throw outcome.failure;
      return outcome.done;
    }
  }

  /** Takes note of what was right when a document was signed off, and has it proofread again. */
  signed(uri: string, state: Earlier): void {
    this.#opened.sign(uri, state);
    this.forget(uri);
  }

  /** Proofreads other texts that would stand in the place of a document, with the files that it uses. */
  async reader(uri: string): Promise<(source: string) => Proof> {
    const use = await this.#fetch(uri, this.#open.get(uri)?.getText() ?? '');
    return (source) => this.#proofread({ source, use });
  }

  /** The next request proofreads the text again, although it did not change. */
  forget(uri: string): void {
    this.#outcomes.delete(uri);
    this.#forgotten.set(uri, (this.#forgotten.get(uri) ?? 0) + 1);
    this.#didForget.fire(uri);
  }

  #current(uri: string): Outcome | undefined {
    const outcome = this.#outcomes.get(uri);
    return outcome?.version === this.#open.get(uri)?.version ? outcome : undefined;
  }

  /** @returns `undefined` when the text, or something that it uses, changed in the meantime */
  async #compute(document: TextDocument): Promise<Outcome | undefined> {
    const { uri, version } = document;
    const forgotten = this.#forgotten.get(uri);
    const use = await this.#fetch(uri, document.getText());
    const isOld = document.version !== version || this.#open.get(uri) !== document;
    if (isOld || this.#forgotten.get(uri) !== forgotten) return undefined;
    const known = this.#current(uri);
    if (known) return known;
    const outcome = this.#attempt(document, use);
    this.#outcomes.set(uri, outcome);
    if ('done' in outcome) this.#didProofread.fire(outcome.done);
    return outcome;
  }

  /** A failure is kept as well: the same text would only fail again. */
  #attempt(open: TextDocument, use: Use): Outcome {
    const { uri, languageId, version } = open;
    try {
      const source = open.getText();
      const proof = proofreadManuscript(source, this.#proofread, { use, before: this.#opened.get(uri) });
      if (proof) this.#opened.note(uri, proof);
      // The open document changes under our hands with the next keystroke; its places must not.
      const document = TextDocument.create(uri, languageId, version, source);
      return { version, done: { document, proof, id: ++this.#lastId } };
    } catch (failure) {
      return { version, failure };
    }
  }
}
