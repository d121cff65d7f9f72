/** The language server on any connection: standard streams, a pipe to an editor, or a browser worker. */
import {
  type Connection,
  Emitter,
  type ServerCapabilities,
  TextDocumentSyncKind,
} from 'vscode-languageserver';
import { clientAbilities } from './abilities.ts';
import type { Context } from './context.ts';
import { Documents } from './documents.ts';
import { FEATURES } from './features/features.ts';
import { guarded } from './guard.ts';
import type { Proofread } from './manuscripts.ts';
import { SettingsStore } from './settings.ts';
import type { WorkspaceFiles } from './workspace.ts';

export interface Host {
  readonly name: string;
  readonly version: string;
  readonly proofread: Proofread;
  readonly files?: WorkspaceFiles;
}

/** Serves one client until the connection ends. */
export function serve(connection: Connection, host: Host): void {
  const documents = new Documents(host.proofread);
  const didShutdown = new Emitter<void>();
  let settings: SettingsStore | undefined;

  connection.onInitialize((params) => {
    const client = clientAbilities(params);
    settings = new SettingsStore(connection, client);
    const { proofread, files } = host;
    const onShutdown = didShutdown.event;
    const context: Context = { connection, documents, settings, client, proofread, files, onShutdown };
    for (const feature of FEATURES) feature.register(context);
    return {
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        ...(client.workspaceFolderChanges ? { workspace: { workspaceFolders: { supported: true } } } : {}),
        ...Object.assign({}, ...FEATURES.map((feature): ServerCapabilities => feature.capabilities(context))),
      },
      serverInfo: { name: host.name, version: host.version },
    };
  });
  connection.onInitialized(() => guarded(connection, 'The start', undefined, async () => settings?.start()));

  connection.onShutdown(() => didShutdown.fire());

  documents.listen(connection);
  connection.listen();
}
