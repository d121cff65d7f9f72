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
import { type SignatureStore, Signatures } from './signatures.ts';
import type { WorkspaceFiles } from './workspace/files.ts';
import { type Ground, layGround, openRoom } from './workspace/room.ts';
import { FILE_OPERATIONS } from './workspace/watching.ts';

export interface Host {
  readonly name: string;
  readonly version: string;
  readonly proofread: Proofread;
  readonly files?: WorkspaceFiles;
  readonly signatures?: SignatureStore;
}

/** Serves one client until the connection ends. */
export function serve(connection: Connection, host: Host): void {
  let ground: Ground | undefined;
  const documents = new Documents(host.proofread, async (uri, source) => {
    if (!ground) throw new TypeError('a document was opened before the client introduced itself');
    return ground.fetch(uri, source);
  });
  const didInitialize = new Emitter<void>();
  const didShutdown = new Emitter<void>();
  let settings: SettingsStore | undefined;

  connection.onInitialize((params) => {
    const client = clientAbilities(params);
    settings = new SettingsStore(connection, client);
    const { proofread, files } = host;
    ground = layGround(documents, { connection, client, params, proofread, files });
    const [onInitialized, onShutdown] = [didInitialize.event, didShutdown.event];
    const base = { connection, documents, settings, client, onInitialized, onShutdown };
    const room = ground.workspace && openRoom(base, ground.workspace);
    const signatures = host.signatures && new Signatures(connection, documents, host.signatures);
    const context: Context = { ...base, room, signatures };
    for (const feature of FEATURES) feature.register(context);
    return {
      capabilities: {
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        workspace: {
          ...(client.workspaceFolderChanges
            ? { workspaceFolders: { supported: true, changeNotifications: true } }
            : {}),
          ...(room ? FILE_OPERATIONS : {}),
        },
        ...Object.assign({}, ...FEATURES.map((feature): ServerCapabilities => feature.capabilities(context))),
      },
      serverInfo: { name: host.name, version: host.version },
    };
  });
  connection.onInitialized(() =>
    guarded(connection, 'The start', undefined, async () => {
      didInitialize.fire();
      await settings?.start();
    }),
  );

  connection.onShutdown(() => didShutdown.fire());

  documents.listen(connection);
  connection.listen();
}
