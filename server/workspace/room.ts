/** Everything that the server knows of the files around the open documents, put together. */
import type { Connection, InitializeParams } from 'vscode-languageserver';
import type { ClientAbilities } from '../abilities.ts';
import type { BaseContext } from '../context.ts';
import type { Documents, FetchUse } from '../documents.ts';
import { canonicalUri, type Proofread } from '../manuscripts.ts';
import { fetchChain } from './chain.ts';
import { ClosedDiagnostics } from './closedDiagnostics.ts';
import { ClosedManuscripts } from './closedManuscripts.ts';
import { Dependencies } from './dependencies.ts';
import type { WorkspaceFiles } from './files.ts';
import { Folders } from './folders.ts';
import { Reach } from './reach.ts';
import { watch } from './watching.ts';
import { Workspace } from './workspace.ts';

/** What features see of it. */
export interface WorkspaceRoom {
  readonly workspace: Workspace;
  readonly diagnostics: ClosedDiagnostics;
}

interface Around {
  readonly connection: Connection;
  readonly client: ClientAbilities;
  readonly params: InitializeParams;
  readonly proofread: Proofread;
  readonly files: WorkspaceFiles | undefined;
}

/** The part that stands before there are features. */
export interface Ground {
  /** For the open documents. */
  readonly fetch: FetchUse;
  /** `undefined` where no files can be reached, so that documents are alone. */
  readonly workspace: Workspace | undefined;
}

export function layGround(documents: Documents, around: Around): Ground {
  const { connection, client, params, proofread, files } = around;
  const folders = new Folders(connection, client, params);
  const reach = new Reach(
    files,
    () => folders.now(),
    (uri) => documents.find(uri)?.getText(),
  );
  const dependencies = new Dependencies();
  const fetch: FetchUse = async (uri, source) => {
    const chain = await fetchChain(uri, source, reach);
    dependencies.note(canonicalUri(uri), chain);
    return chain.use;
  };
  if (!files) return { fetch, workspace: undefined };
  const closed = new ClosedManuscripts(files, proofread, fetch);
  return {
    fetch,
    workspace: new Workspace({ connection, documents, files, folders, closed, fetch, dependencies }),
  };
}

/** Watches the files, and looks through them once the client is ready. */
export function openRoom(context: BaseContext, workspace: Workspace): WorkspaceRoom {
  watch(context, workspace);
  context.onInitialized(() => workspace.start());
  return { workspace, diagnostics: new ClosedDiagnostics(context, workspace) };
}
