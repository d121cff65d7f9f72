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
import type { Proof } from '../core/proof/proof.ts';
import { canonicalUri, type Proofread, proofreadManuscript } from './manuscripts.ts';
import { OpenedStates } from './openedStates.ts';
import { turn } from './turn.ts';

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

export class Documents {
  readonly #open = new TextDocuments(TextDocument);
  readonly #outcomes = new Map<string, Outcome>();
  readonly #opened = new OpenedStates();
  readonly #proofread: Proofread;
  readonly #didForget = new Emitter<string>();
  readonly #didProofread = new Emitter<Proofreading>();
  #lastId = 0;

  constructor(proofread: Proofread) {
    this.#proofread = proofread;
    this.#open.onDidClose(({ document: { uri } }) => {
      this.#outcomes.delete(uri);
      this.#opened.forget(uri);
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
    const document = this.#open.get(uri);
    if (!document) return undefined;
    const outcome = this.#current(uri) ?? this.#compute(document);
    if ('failure' in outcome) throw outcome.failure;
    return outcome.done;
  }

  /** The next request proofreads the text again, although it did not change. */
  forget(uri: string): void {
    this.#outcomes.delete(uri);
    this.#didForget.fire(uri);
  }

  #current(uri: string): Outcome | undefined {
    const outcome = this.#outcomes.get(uri);
    return outcome?.version === this.#open.get(uri)?.version ? outcome : undefined;
  }

  #compute(document: TextDocument): Outcome {
    const outcome = this.#attempt(document);
    this.#outcomes.set(document.uri, outcome);
    if ('done' in outcome) this.#didProofread.fire(outcome.done);
    return outcome;
  }

  /** A failure is kept as well: the same text would only fail again. */
  #attempt(open: TextDocument): Outcome {
    const { uri, languageId, version } = open;
    try {
      const source = open.getText();
      const proof = proofreadManuscript(source, this.#proofread, this.#opened.get(uri));
      if (proof) this.#opened.note(uri, proof);
      // The open document changes under our hands with the next keystroke; its places must not.
      const document = TextDocument.create(uri, languageId, version, source);
      return { version, done: { document, proof, id: ++this.#lastId } };
    } catch (failure) {
      return { version, failure };
    }
  }
}
