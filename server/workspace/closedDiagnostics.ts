/**
 * Pushes the diagnostics of manuscripts that are not open, to a client that does not ask for those of the whole
 * workspace. They are taken back when the file is opened, so that no finding is shown twice.
 */
import { CancellationToken } from 'vscode-languageserver';
import type { BaseContext } from '../context.ts';
import type { Proofreading } from '../documents.ts';
import { toDiagnostics } from '../features/diagnosing.ts';
import { logFailure, sent } from '../guard.ts';
import { canonicalUri } from '../manuscripts.ts';
import type { Workspace } from './workspace.ts';

/** How long nothing must change before diagnostics are pushed, in milliseconds. */
const PAUSE = 150;

export class ClosedDiagnostics {
  readonly #context: BaseContext;
  readonly #workspace: Workspace;
  /** Files for which the client shows diagnostics, by canonical URI. */
  readonly #shown = new Set<string>();
  readonly #waiting = new Set<string>();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #isPulled = false;

  constructor(context: BaseContext, workspace: Workspace) {
    this.#context = context;
    this.#workspace = workspace;
    context.documents.onDidOpen(({ document }) => this.#takeBack(canonicalUri(document.uri)));
    workspace.onDidOutdate(({ uri, byUse }) => {
      if (byUse || this.#shown.has(uri)) this.#pushSoon(uri);
    });
    context.settings.onDidChange(() => {
      for (const uri of this.#shown) this.#pushSoon(uri);
    });
    context.onShutdown(() => clearTimeout(this.#timer));
  }

  /** From now on the client asks for all of them, so nothing is pushed any more. */
  pulled(): void {
    this.#isPulled = true;
    for (const uri of [...this.#shown]) this.#takeBack(uri);
  }

  /** @returns when the client has them */
  async push(uri: string, { document, proof }: Proofreading): Promise<void> {
    const { connection, documents, settings, client } = this.#context;
    // An open document has its own way to the client, and its diagnostics are newer.
    if (this.#isPulled || documents.find(uri)) return;
    if (!proof) {
      this.#takeBack(uri);
      return;
    }
    const diagnostics = toDiagnostics(document, proof, settings.now, client.relatedInformation);
    this.#shown.add(uri);
    await connection.sendDiagnostics({ uri, diagnostics });
  }

  #pushSoon(uri: string): void {
    if (this.#isPulled) return;
    this.#waiting.add(uri);
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#pushWaiting(), PAUSE);
  }

  async #pushWaiting(): Promise<void> {
    for (const uri of [...this.#waiting]) {
      this.#waiting.delete(uri);
      try {
        await this.push(uri, await this.#workspace.proofreading(uri, CancellationToken.None));
      } catch (error) {
        this.#takeBack(uri);
        if (await this.#workspace.isListed(uri))
          logFailure(this.#context.connection, `Proofreading ${uri}`, error);
      }
    }
  }

  #takeBack(uri: string): void {
    if (!this.#shown.delete(uri)) return;
    const { connection } = this.#context;
    sent(connection, 'Taking back diagnostics', connection.sendDiagnostics({ uri, diagnostics: [] }));
  }
}
