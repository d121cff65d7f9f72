/**
 * Diagnostics of open documents. A client that pulls gets them when it asks; to every other client they are
 * pushed when the author pauses. No client gets both.
 */
import {
  CancellationToken,
  type DocumentDiagnosticReport,
  DocumentDiagnosticReportKind,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver';
import type { Context, Feature } from '../context.ts';
import type { Proofreading } from '../documents.ts';
import { guarded, logFailure, sent } from '../guard.ts';
import { toDiagnostics } from './diagnosing.ts';

/** How long the author must pause before diagnostics are pushed or refreshed, in milliseconds. */
const PAUSE = 150;

export const diagnostics: Feature = {
  capabilities: ({ client, room }) =>
    client.pullsDiagnostics
      ? {
          diagnosticProvider: {
            identifier: 'measure-twice',
            interFileDependencies: true,
            workspaceDiagnostics: room !== undefined,
          },
        }
      : {},
  register: (context) => (context.client.pullsDiagnostics ? registerPull(context) : registerPush(context)),
};

function registerPull(context: Context): void {
  const { connection, documents, settings, client, room, onShutdown } = context;
  connection.languages.diagnostics.on(async ({ textDocument, previousResultId }, token) => {
    const failed = Symbol('failed');
    const report = await guarded<DocumentDiagnosticReport | typeof failed>(
      connection,
      'Proofreading',
      failed,
      async () => {
        const proofreading = await documents.proofreading(textDocument.uri, token);
        return fullOrUnchanged(proofreading, previousResultId, context);
      },
    );
    return report === failed ? whatWasBefore(previousResultId) : report;
  });
  if (client.refreshesDiagnostics) {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const refresh = () =>
      sent(connection, 'Refreshing diagnostics', connection.languages.diagnostics.refresh());
    // One rule of the house may make many manuscripts old at once.
    const refreshSoon = () => {
      clearTimeout(timer);
      timer = setTimeout(refresh, PAUSE);
    };
    settings.onDidChange(refresh);
    documents.onDidForget(refreshSoon);
    room?.workspace.onDidOutdate(refreshSoon);
    onShutdown(() => clearTimeout(timer));
  }
}

export function fullOrUnchanged(
  proofreading: Proofreading | undefined,
  previousResultId: string | undefined,
  context: Context,
): DocumentDiagnosticReport {
  if (!proofreading) return { kind: DocumentDiagnosticReportKind.Full, items: [] };
  const resultId = `${proofreading.id}-${context.settings.now.unaccounted}`;
  if (resultId === previousResultId) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId };
  return { kind: DocumentDiagnosticReportKind.Full, resultId, items: itemsOf(proofreading, context) };
}

/** Nothing could be computed: an empty report would say that all is well, so the client keeps what it has. */
function whatWasBefore(resultId: string | undefined): DocumentDiagnosticReport {
  if (resultId !== undefined) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId };
  throw new ResponseError(LSPErrorCodes.ServerCancelled, 'This manuscript could not be proofread.', {
    retriggerRequest: false,
  });
}

function registerPush(context: Context): void {
  const { connection, documents, settings, onShutdown } = context;
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();

  const stopWaiting = (uri: string) => {
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
  };
  const push = async (uri: string) => {
    waiting.delete(uri);
    try {
      const proofreading = await documents.proofreading(uri, CancellationToken.None);
      // Closed in the meantime, or changed: then the next push is on its way.
      if (!proofreading || documents.get(uri)?.version !== proofreading.document.version) return;
      const { version } = proofreading.document;
      await connection.sendDiagnostics({ uri, version, diagnostics: itemsOf(proofreading, context) });
    } catch (error) {
      logFailure(connection, 'Proofreading', error);
    }
  };
  const pushSoon = (uri: string) => {
    stopWaiting(uri);
    waiting.set(uri, setTimeout(push, PAUSE, uri));
  };

  documents.onDidChangeContent(({ document }) => pushSoon(document.uri));
  documents.onDidForget((uri) => pushSoon(uri));
  documents.onDidClose(({ document }) => {
    stopWaiting(document.uri);
    const nothing = connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    sent(connection, 'Taking back diagnostics', nothing);
  });
  onShutdown(() => {
    for (const uri of waiting.keys()) stopWaiting(uri);
  });
  settings.onDidChange(() => {
    for (const { uri } of documents.all()) pushSoon(uri);
  });
}

function itemsOf({ document, proof }: Proofreading, { settings, client }: Context) {
  return proof ? toDiagnostics(document, proof, settings.now, client.relatedInformation) : [];
}
