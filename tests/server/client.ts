/** The client side of the protocol, for tests: it remembers what the server says and can wait for it. */
import {
  type ClientCapabilities,
  type CodeAction,
  type CodeActionContext,
  CodeActionRequest,
  type ConfigurationParams,
  ConfigurationRequest,
  createProtocolConnection,
  type Diagnostic,
  DiagnosticRefreshRequest,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  type DocumentDiagnosticReport,
  DocumentDiagnosticRequest,
  type FileChangeType,
  type Hover,
  HoverRequest,
  InitializedNotification,
  InitializeRequest,
  type InitializeResult,
  LogMessageNotification,
  type MessageReader,
  type MessageWriter,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  type Range,
  RegistrationRequest,
  ShowMessageNotification,
  type TextDocumentContentChangeEvent,
  WorkDoneProgressCreateRequest,
  type WorkspaceDiagnosticReport,
  WorkspaceDiagnosticRequest,
  WorkspaceFoldersRequest,
} from 'vscode-languageserver-protocol/node';

/** What most editors can do. */
export const CAPABILITIES: ClientCapabilities = {
  workspace: {
    workspaceEdit: { documentChanges: true },
    configuration: true,
    workspaceFolders: true,
    diagnostics: { refreshSupport: true },
  },
  textDocument: {
    codeAction: {
      isPreferredSupport: true,
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix', 'source.fixAll'] } },
    },
    publishDiagnostics: { relatedInformation: true },
    hover: { contentFormat: ['markdown', 'plaintext'] },
  },
};

/** The same, for an editor that pulls its diagnostics. */
export const PULLING: ClientCapabilities = {
  ...CAPABILITIES,
  textDocument: { ...CAPABILITIES.textDocument, diagnostic: { relatedDocumentSupport: false } },
};

export class TestClient {
  readonly connection: ProtocolConnection;
  readonly published: PublishDiagnosticsParams[] = [];
  readonly logged: string[] = [];
  readonly messages: string[] = [];
  readonly registered: string[] = [];
  refreshes = 0;
  settings: unknown = {};
  folders: string[] = [];
  readonly #versions = new Map<string, number>();
  readonly #waiting = new Set<() => void>();

  constructor(reader: MessageReader, writer: MessageWriter) {
    this.connection = createProtocolConnection(reader, writer);
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) =>
      this.#note(this.published, params),
    );
    this.connection.onNotification(LogMessageNotification.type, ({ message }) =>
      this.#note(this.logged, message),
    );
    this.connection.onNotification(ShowMessageNotification.type, ({ message }) =>
      this.#note(this.messages, message),
    );
    this.connection.onRequest(RegistrationRequest.type, ({ registrations }) => {
      for (const { method } of registrations) this.#note(this.registered, method);
    });
    this.connection.onRequest(DiagnosticRefreshRequest.type, () => {
      this.refreshes++;
      this.wake();
    });
    this.connection.onRequest(ConfigurationRequest.type, ({ items }: ConfigurationParams) =>
      items.map(() => this.settings),
    );
    this.connection.onRequest(WorkspaceFoldersRequest.type, () =>
      this.folders.map((uri) => ({ uri, name: uri })),
    );
    this.connection.onRequest(WorkDoneProgressCreateRequest.type, () => {});
    this.connection.listen();
  }

  async initialize(
    capabilities = CAPABILITIES,
    initializationOptions: unknown = undefined,
  ): Promise<InitializeResult> {
    const result = await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: null,
      workspaceFolders: null,
      capabilities,
      initializationOptions,
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
    return result;
  }

  open(uri: string, text: string): Promise<void> {
    this.#versions.set(uri, 1);
    const textDocument = { uri, languageId: 'markdown', version: 1, text };
    return this.connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument });
  }

  change(uri: string, ...contentChanges: TextDocumentContentChangeEvent[]): Promise<void> {
    const version = (this.#versions.get(uri) ?? 0) + 1;
    this.#versions.set(uri, version);
    const textDocument = { uri, version };
    return this.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument,
      contentChanges,
    });
  }

  close(uri: string): Promise<void> {
    return this.connection.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
  }

  pull(uri: string, previousResultId?: string): Promise<DocumentDiagnosticReport> {
    const params = { textDocument: { uri }, ...(previousResultId === undefined ? {} : { previousResultId }) };
    return this.connection.sendRequest(DocumentDiagnosticRequest.type, params);
  }

  pullWorkspace(
    previousResultIds: readonly { uri: string; value: string }[] = [],
  ): Promise<WorkspaceDiagnosticReport> {
    const params = { previousResultIds: [...previousResultIds] };
    return this.connection.sendRequest(WorkspaceDiagnosticRequest.type, params);
  }

  filesChanged(type: FileChangeType, ...uris: string[]): Promise<void> {
    const changes = uris.map((uri) => ({ uri, type }));
    return this.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes });
  }

  async actions(uri: string, range: Range, context: Partial<CodeActionContext> = {}): Promise<CodeAction[]> {
    const params = { textDocument: { uri }, range, context: { diagnostics: [], ...context } };
    return ((await this.connection.sendRequest(CodeActionRequest.type, params)) ?? []) as CodeAction[];
  }

  hover(uri: string, line: number, character: number): Promise<Hover | null> {
    const params = { textDocument: { uri }, position: { line, character } };
    return this.connection.sendRequest(HoverRequest.type, params);
  }

  /** The diagnostics that are pushed for this version of a document. */
  async pushed(uri: string, version: number | undefined): Promise<Diagnostic[]> {
    const isIt = (params: PublishDiagnosticsParams) => params.uri === uri && params.version === version;
    await this.until(() => this.published.some(isIt));
    return this.published.findLast(isIt)?.diagnostics ?? [];
  }

  /** Waits for what the server says; the test runner's own limit ends a wait in vain. */
  async until(condition: () => boolean): Promise<void> {
    while (!condition()) await new Promise<void>((resolve) => this.#waiting.add(resolve));
  }

  wake(): void {
    for (const resolve of this.#waiting) resolve();
    this.#waiting.clear();
  }

  #note<T>(list: T[], item: T): void {
    list.push(item);
    this.wake();
  }
}
