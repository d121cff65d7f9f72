/** All manuscripts of the workspace, open or not, and what becomes of them when a file changes. */
import { CancellationToken, type Connection, Emitter, type Event } from 'vscode-languageserver';
import type { Documents, FetchUse, Proofreading } from '../documents.ts';
import { logFailure } from '../guard.ts';
import { canonicalUri, mayBeManuscript } from '../manuscripts.ts';
import { turn } from '../turn.ts';
import type { ClosedManuscripts } from './closedManuscripts.ts';
import type { Dependencies } from './dependencies.ts';
import type { WorkspaceFiles } from './files.ts';
import type { Folders } from './folders.ts';

/** A manuscript that is not open, whose proof is no longer true. */
export interface Outdated {
  /** Canonical. */
  readonly uri: string;
  /** Whether a file changed that it uses, rather than the manuscript itself. */
  readonly byUse: boolean;
}

interface Parts {
  readonly connection: Connection;
  readonly documents: Documents;
  readonly files: WorkspaceFiles;
  readonly folders: Folders;
  readonly closed: ClosedManuscripts;
  readonly dependencies: Dependencies;
  readonly fetch: FetchUse;
}

export class Workspace {
  readonly #parts: Parts;
  readonly #didOutdate = new Emitter<Outdated>();
  #listed: Promise<readonly string[]> | undefined;
  /** Settled when it is known who uses whom. */
  #learned: Promise<void> = Promise.resolve();
  /** Of the files that were listed before. */
  #known: ReadonlySet<string> = new Set();

  constructor(parts: Parts) {
    this.#parts = parts;
    const { documents, folders } = parts;
    documents.onDidChangeContent(({ document }) => this.#touch(document.uri, document.getText()));
    documents.onDidOpen(({ document }) => parts.closed.forget(canonicalUri(document.uri)));
    documents.onDidClose(({ document }) => this.changed(document.uri));
    folders.onDidChange(() => this.relist());
  }

  /** Fires for manuscripts that are not open. Open ones are forgotten, which their own listeners hear. */
  get onDidOutdate(): Event<Outdated> {
    return this.#didOutdate.event;
  }

  /** Canonical URIs of all Markdown files, in a stable order. @throws when a folder cannot be read */
  list(): Promise<readonly string[]> {
    this.#listed ??= this.#list().catch((error) => {
      this.#listed = undefined;
      throw error;
    });
    return this.#listed;
  }

  async isListed(uri: string): Promise<boolean> {
    return (await this.list()).includes(canonicalUri(uri));
  }

  /** A manuscript of the workspace, what it uses, and all that use it or the same files. @throws as `list` does */
  async sharing(uri: string): Promise<readonly string[]> {
    const known = new Set(await this.list());
    await this.#learned;
    const file = canonicalUri(uri);
    return this.#parts.dependencies.sharing(file).filter((one) => one === file || known.has(one));
  }

  /**
   * As the manuscript stands now: in the editor if it is open there, or else on disk.
   *
   * @throws when it cannot be read, and whatever the proofreading threw
   */
  async proofreading(uri: string, token: CancellationToken): Promise<Proofreading> {
    const open = this.#parts.documents.find(uri);
    const proofreading = open && (await this.#parts.documents.proofreading(open.uri, token));
    return proofreading ?? this.#parts.closed.proofreading(uri);
  }

  /** Learns who uses whom, so that a change is felt in manuscripts that nobody has proofread yet. */
  start(): Promise<void> {
    this.#parts.folders.start();
    this.#learned = this.#learn();
    return this.#learned;
  }

  async #learn(): Promise<void> {
    try {
      for (const uri of await this.list()) {
        await turn(CancellationToken.None);
        await this.#learnFrom(uri);
      }
    } catch (error) {
      logFailure(this.#parts.connection, 'Looking through the workspace', error);
    }
  }

  /** A file has another text on disk, or its text in the editor no longer counts. */
  async changed(uri: string): Promise<void> {
    const file = canonicalUri(uri);
    if (this.#parts.documents.find(file)) return;
    this.#outdate(file, false);
    const text = await this.#textOf(file);
    this.#touch(file, text);
    if (text !== undefined) await this.#learnFrom(file);
  }

  /** Files came or went, or other ones are ignored. */
  async relist(): Promise<void> {
    const before = this.#known;
    this.#listed = undefined;
    try {
      const now = new Set(await this.list());
      for (const uri of before) if (!now.has(uri)) this.#parts.dependencies.forget(uri);
      for (const uri of new Set([...before, ...now]))
        if (before.has(uri) !== now.has(uri)) await this.changed(uri);
    } catch (error) {
      logFailure(this.#parts.connection, 'Looking through the workspace', error);
    }
  }

  /** For a client that tells of no changes: what is known of files may be old. */
  async forgetFiles(): Promise<void> {
    this.#listed = undefined;
    for (const uri of await this.list()) this.#parts.closed.forget(uri);
  }

  async #list(): Promise<readonly string[]> {
    const { files, folders } = this.#parts;
    const found = (await files.list(await folders.now())).map(canonicalUri);
    this.#known = new Set(found);
    return found;
  }

  async #learnFrom(uri: string): Promise<void> {
    const { dependencies, fetch, documents } = this.#parts;
    const text = documents.find(uri)?.getText() ?? (await this.#textOf(uri));
    if (text === undefined || !mayBeManuscript(text)) dependencies.forget(uri);
    else await fetch(uri, text);
  }

  async #textOf(uri: string): Promise<string | undefined> {
    try {
      return await this.#parts.files.read(uri);
    } catch {
      return undefined;
    }
  }

  #touch(uri: string, text: string | undefined): void {
    for (const dependent of this.#parts.dependencies.touchedBy(canonicalUri(uri), text)) {
      const open = this.#parts.documents.find(dependent);
      if (open) this.#parts.documents.forget(open.uri);
      else this.#outdate(dependent, true);
    }
  }

  #outdate(uri: string, byUse: boolean): void {
    this.#parts.closed.forget(uri);
    this.#didOutdate.fire({ uri, byUse });
  }
}
