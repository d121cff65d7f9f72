/**
 * Proofreads all manuscripts of the workspace, also those that are not open.
 *
 * Diagnostics of files that are not open are pushed, whatever the client can do: nobody would ever pull them.
 * They are taken back when the file is opened, so that no finding is shown twice.
 */
import {
  type CancellationToken,
  DidChangeWatchedFilesNotification,
  FileChangeType,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Context } from './context.ts';
import { toDiagnostics } from './features/diagnosing.ts';
import { logFailure, sent } from './guard.ts';
import { canonicalUri, proofreadManuscript } from './manuscripts.ts';
import { tell, tellFailure } from './messages.ts';
import { turn } from './turn.ts';
import type { WorkspaceFiles } from './workspace.ts';

/** What came of one file. */
type Result = 'clean' | 'findings' | 'no manuscript' | 'unreadable';

export class WorkspaceProof {
  readonly #context: Context;
  readonly #files: WorkspaceFiles;
  /** Files that are not open and for which the client shows diagnostics, by canonical URI. */
  readonly #shown = new Set<string>();
  #watching = false;

  constructor(context: Context, files: WorkspaceFiles) {
    this.#context = context;
    this.#files = files;
    context.documents.onDidOpen(({ document }) => this.#takeBack(document.uri));
    context.connection.onDidChangeWatchedFiles(async ({ changes }) => {
      for (const { uri, type } of changes) await this.#changed(uri, type);
    });
  }

  /** Tells the result in a message; ends quietly when the author cancels it. */
  async run(requestToken: CancellationToken): Promise<null> {
    const { connection } = this.#context;
    const progress = await this.#progress();
    try {
      const token = either(requestToken, progress.token);
      const folders = await connection.workspace.getWorkspaceFolders();
      const uris = await this.#files.list(folders?.map(({ uri }) => uri) ?? [], token);
      this.#watch();
      const results: Result[] = [];
      for (const [index, uri] of uris.entries()) {
        progress.report(Math.floor((100 * index) / uris.length), `${index + 1} of ${uris.length}`);
        await turn(token);
        results.push(await this.#proofreadFile(uri));
      }
      tell(connection, summary(results));
    } catch (error) {
      if (error instanceof ResponseError && error.code === LSPErrorCodes.RequestCancelled) return null;
      tellFailure(connection, 'The workspace could not be proofread. The log says more.');
      throw error;
    } finally {
      progress.done();
    }
    return null;
  }

  async #progress() {
    const { connection, client } = this.#context;
    if (!client.progress) return { token: undefined, report: () => {}, done: () => {} };
    const reporter = await connection.window.createWorkDoneProgress();
    reporter.begin('Proofreading the workspace', 0, undefined, true);
    return {
      token: reporter.token,
      report: (percentage: number, message: string) => reporter.report(percentage, message),
      done: () => reporter.done(),
    };
  }

  async #proofreadFile(uri: string): Promise<Result> {
    const { connection, documents, settings, client, proofread } = this.#context;
    try {
      const open = documents.find(uri);
      const source = open?.getText() ?? (await this.#files.read(uri));
      const proof = proofreadManuscript(source, proofread);
      if (!proof) {
        this.#takeBack(uri);
        return 'no manuscript';
      }
      const isFine = proof.findings.every(({ severity }) => severity === 'hint');
      // An open document has its own way to the client, and its diagnostics are newer.
      if (!open && !documents.find(uri)) {
        const document = TextDocument.create(uri, 'markdown', 0, source);
        const diagnostics = toDiagnostics(document, proof, settings.now, client.relatedInformation);
        await connection.sendDiagnostics({ uri, diagnostics });
        this.#shown.add(canonicalUri(uri));
      }
      return isFine ? 'clean' : 'findings';
    } catch (error) {
      logFailure(connection, `Proofreading ${uri}`, error);
      return 'unreadable';
    }
  }

  #watch(): void {
    const { connection, client } = this.#context;
    if (this.#watching || !client.watchedFilesRegistration) return;
    this.#watching = true;
    const watchers = [{ globPattern: '**/*.{md,markdown}' }];
    const registration = connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
    sent(connection, 'Registering for changed files', registration);
  }

  async #changed(uri: string, type: FileChangeType): Promise<void> {
    if (!this.#shown.has(canonicalUri(uri))) return;
    if (type === FileChangeType.Deleted) this.#takeBack(uri);
    else await this.#proofreadFile(uri);
  }

  #takeBack(uri: string): void {
    if (!this.#shown.delete(canonicalUri(uri))) return;
    const { connection } = this.#context;
    sent(connection, 'Taking back diagnostics', connection.sendDiagnostics({ uri, diagnostics: [] }));
  }
}

/** Cancelled as soon as one of the two is. */
function either(a: CancellationToken, b: CancellationToken | undefined): CancellationToken {
  if (!b) return a;
  return {
    get isCancellationRequested() {
      return a.isCancellationRequested || b.isCancellationRequested;
    },
    onCancellationRequested: (...args) => {
      const [first, second] = [a.onCancellationRequested(...args), b.onCancellationRequested(...args)];
      return {
        dispose: () => {
          first.dispose();
          second.dispose();
        },
      };
    },
  };
}

function summary(results: readonly Result[]): string {
  const count = (result: Result) => results.filter((one) => one === result).length;
  const [clean, findings, unreadable] = [count('clean'), count('findings'), count('unreadable')];
  const manuscripts = clean + findings;
  const sentences = [];
  if (manuscripts === 0)
    sentences.push('No file of the workspace has a measure block, so there is nothing to check.');
  else if (findings === 0)
    sentences.push(
      `No mistake found in ${manuscripts === 1 ? '1 manuscript' : `${manuscripts} manuscripts`}.`,
    );
  else
    sentences.push(
      `${findings} of ${manuscripts} ${manuscripts === 1 ? 'manuscript' : 'manuscripts'} ${findings === 1 ? 'needs' : 'need'} a second look.`,
    );
  if (unreadable > 0)
    sentences.push(`${unreadable} ${unreadable === 1 ? 'file' : 'files'} could not be read.`);
  return sentences.join(' ');
}
