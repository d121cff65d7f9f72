/** What the client can do, in the words of this server; asked once, when the client introduces itself. */
import { type InitializeParams, MarkupKind } from 'vscode-languageserver';
import type { InitializationOptions } from '../shared/messages.ts';

export interface ClientAbilities {
  /** The client asks for diagnostics when it wants them, so they are never pushed for an open document. */
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly relatedInformation: boolean;
  readonly versionedEdits: boolean;
  /** The client shows what an edit is for, and lets its author confirm it. */
  readonly changeAnnotations: boolean;
  /** The server may ask the client to edit. */
  readonly appliesEdits: boolean;
  readonly codeActionLiterals: boolean;
  readonly preferredActions: boolean;
  /** The client asks for the edit of an action only when its author chooses it. */
  readonly resolvesEdits: boolean;
  readonly preparesRename: boolean;
  readonly hoverFormat: MarkupKind;
  readonly configuration: boolean;
  readonly configurationRegistration: boolean;
  readonly watchedFilesRegistration: boolean;
  readonly workspaceFolderChanges: boolean;
  readonly progress: boolean;
  readonly showsCoverage: boolean;
}

export function clientAbilities({ capabilities, initializationOptions }: InitializeParams): ClientAbilities {
  const { textDocument, workspace, window } = capabilities;
  const formats = textDocument?.hover?.contentFormat ?? [MarkupKind.Markdown];
  const options = initializationOptions as InitializationOptions | undefined;
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    relatedInformation:
      textDocument?.publishDiagnostics?.relatedInformation === true ||
      textDocument?.diagnostic?.relatedInformation === true,
    versionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    changeAnnotations: workspace?.workspaceEdit?.changeAnnotationSupport !== undefined,
    appliesEdits: workspace?.applyEdit === true,
    codeActionLiterals: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    preparesRename: textDocument?.rename?.prepareSupport === true,
    resolvesEdits:
      textDocument?.codeAction?.dataSupport === true &&
      textDocument.codeAction.resolveSupport?.properties.includes('edit') === true,
    preferredActions: textDocument?.codeAction?.isPreferredSupport === true,
    hoverFormat: formats.includes(MarkupKind.Markdown) ? MarkupKind.Markdown : MarkupKind.PlainText,
    configuration: workspace?.configuration === true,
    configurationRegistration: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    watchedFilesRegistration: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    workspaceFolderChanges: workspace?.workspaceFolders === true,
    progress: window?.workDoneProgress === true,
    showsCoverage: options?.coverage === true,
  };
}
