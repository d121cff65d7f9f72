/** The folders of the workspace, as the client has them now. */
import { type Connection, Emitter, type Event, type InitializeParams } from 'vscode-languageserver';
import type { ClientAbilities } from '../abilities.ts';
import { logFailure } from '../guard.ts';

export class Folders {
  readonly #connection: Connection;
  readonly #asks: boolean;
  readonly #didChange = new Emitter<void>();
  #now: readonly string[];
  #asked: Promise<void> | undefined;

  constructor(connection: Connection, client: ClientAbilities, params: InitializeParams) {
    this.#connection = connection;
    this.#asks = client.workspaceFolderChanges;
    this.#now = params.workspaceFolders?.map(({ uri }) => uri) ?? (params.rootUri ? [params.rootUri] : []);
  }

  get onDidChange(): Event<void> {
    return this.#didChange.event;
  }

  /** For when the client is ready to be asked. */
  start(): void {
    if (!this.#asks) return;
    this.#connection.workspace.onDidChangeWorkspaceFolders(() => {
      this.#asked = this.#ask();
      this.#didChange.fire();
    });
  }

  /** Their URIs. */
  async now(): Promise<readonly string[]> {
    if (this.#asks) {
      this.#asked ??= this.#ask();
      await this.#asked;
    }
    return this.#now;
  }

  async #ask(): Promise<void> {
    try {
      const folders = await this.#connection.workspace.getWorkspaceFolders();
      if (folders) this.#now = folders.map(({ uri }) => uri);
    } catch (error) {
      logFailure(this.#connection, 'Asking for the folders', error);
    }
  }
}
