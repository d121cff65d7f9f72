/** Signatures of the open manuscripts: who signed them off, what that still covers, and a new one on request. */
import {
  type CancellationToken,
  type Connection,
  MessageType,
  ShowMessageRequest,
} from 'vscode-languageserver';
import { covers } from '../core/record/covers.ts';
import type { SignatureRecord } from '../core/record/read.ts';
import { sign } from '../core/record/sign.ts';
import type { Signature } from '../core/record/signature.ts';
import { signedState } from '../core/record/signedState.ts';
import { coveringSentence, signedSentence } from '../core/report/signed.ts';
import type { Documents, Proofreading } from './documents.ts';
import { guarded } from './guard.ts';
import { tell, tellFailure } from './messages.ts';

/** Where signatures are kept. The entry point supplies it, so that the server itself needs no Node.js. */
export interface SignatureStore {
  /** What was signed of the manuscript with this URI. @throws when the record cannot be read */
  read(uri: string): Promise<SignatureRecord>;
  /** @throws when it cannot be written, with a message for the author */
  add(uri: string, signature: Signature): Promise<void>;
  /** The text of the manuscript as it is saved; `undefined` when it never was. */
  saved(uri: string): Promise<string | undefined>;
  digest(source: string): string;
  /** `2026-11-25` */
  today(): string;
}

const AS_IT_STANDS = 'Sign Off as It Stands';

export class Signatures {
  readonly #connection: Connection;
  readonly #documents: Documents;
  readonly #store: SignatureStore;
  readonly #last = new Map<string, Signature>();

  constructor(connection: Connection, documents: Documents, store: SignatureStore) {
    this.#connection = connection;
    this.#documents = documents;
    this.#store = store;
    documents.onDidOpen(({ document: { uri } }) =>
      guarded(connection, 'Reading the record of signatures', undefined, () => this.#load(uri)),
    );
    documents.onDidClose(({ document: { uri } }) => this.#last.delete(uri));
  }

  /** Who signed a manuscript, and what of it the signature does not cover; `undefined` where nobody has signed. */
  sentence({ document, proof }: Proofreading): string | undefined {
    const signature = this.#last.get(document.uri);
    if (!signature || !proof) return undefined;
    const source = document.getText();
    return coveringSentence(covers(signature, proof, this.#store.digest(source)), source);
  }

  /** Signs an open manuscript off, and tells what came of it. */
  async signOff(uri: unknown, name: unknown, token: CancellationToken): Promise<null> {
    const document = typeof uri === 'string' ? this.#documents.get(uri) : undefined;
    const by = typeof name === 'string' ? name.replace(/\s+/g, ' ').trim() : '';
    if (!document) return this.#say('Open a manuscript first, then sign it off.');
    if (by === '') return this.#say('Say who signs the manuscript off.');
    const proofreading = await this.#documents.proofreading(document.uri, token);
    const proof = proofreading?.proof;
    if (!proof) return this.#say('This file has no measure block, so there is nothing to sign off.');
    const source = proofreading.document.getText();
    if ((await this.#store.saved(document.uri)) !== source)
      return this.#say('Save the manuscript first, then sign it off.');
    const isFine = proof.findings.every(({ severity }) => severity === 'hint');
    if (!isFine && !(await this.#isAccepted())) return null;
    const signature = sign(proof, { by, on: this.#store.today(), digest: this.#store.digest(source) });
    try {
      await this.#store.add(document.uri, signature);
    } catch (error) {
      tellFailure(this.#connection, error instanceof Error ? error.message : String(error));
      return null;
    }
    await this.#load(document.uri);
    return this.#say(signedSentence(signature, 'this manuscript'));
  }

  async #isAccepted(): Promise<boolean> {
    const answer = await this.#connection.sendRequest(ShowMessageRequest.type, {
      type: MessageType.Warning,
      message: 'This manuscript has mistakes or warnings. Sign it off all the same?',
      actions: [{ title: AS_IT_STANDS }],
    });
    return answer?.title === AS_IT_STANDS;
  }

  async #load(uri: string): Promise<void> {
    const { signatures, problems } = await this.#store.read(uri);
    for (const { message } of problems) this.#connection.console.warn(`The record of ${uri}: ${message}`);
    const last = signatures.at(-1);
    if (!last || !this.#documents.get(uri)) return;
    this.#last.set(uri, last);
    this.#documents.signed(uri, signedState(last));
  }

  #say(message: string): null {
    tell(this.#connection, message);
    return null;
  }
}
