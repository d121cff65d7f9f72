/** Diagnostics of all manuscripts of the workspace, for a client that pulls them. */
import {
  DocumentDiagnosticReportKind,
  type ResultProgressReporter,
  type WorkspaceDiagnosticReport,
  type WorkspaceDiagnosticReportPartialResult,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import type { Feature } from '../context.ts';
import { guarded, logFailure } from '../guard.ts';
import { canonicalUri } from '../manuscripts.ts';
import type { WorkspaceRoom } from '../workspace/room.ts';
import { survey } from '../workspace/survey.ts';
import { fullOrUnchanged } from './diagnostics.ts';

export const workspaceDiagnostics: Feature = {
  // Announced together with the diagnostics of documents.
  capabilities: () => ({}),
  register(context) {
    const { connection, client, room } = context;
    if (!room || !client.pullsDiagnostics) return;
    connection.languages.diagnostics.onWorkspace(({ previousResultIds }, token, _, partial) =>
      guarded<WorkspaceDiagnosticReport>(
        connection,
        'Proofreading the workspace',
        { items: [] },
        async () => {
          room.diagnostics.pulled();
          const before = new Map(previousResultIds.map(({ uri, value }) => [canonicalUri(uri), value]));
          const out = new Output(partial);
          for await (const { uri, result } of survey(room.workspace, token)) {
            const previous = before.get(uri);
            if ('failure' in result) {
              logFailure(connection, `Proofreading ${uri}`, result.failure);
              continue;
            }
            before.delete(uri);
            const { document, proof, id } = result;
            // Nobody was told of a file that is no manuscript, unless it was one before.
            if (!proof && previous === undefined) continue;
            const report = fullOrUnchanged(result, previous, context);
            out.add({ ...report, uri: document.uri, version: id < 0 ? null : document.version });
          }
          // Files that are gone.
          await forGone(before, out, room);
          return out.end();
        },
      ),
    );
  },
};

async function forGone(before: ReadonlyMap<string, string>, out: Output, { workspace }: WorkspaceRoom) {
  for (const uri of before.keys())
    if (!(await workspace.isListed(uri)))
      out.add({ kind: DocumentDiagnosticReportKind.Full, uri, version: null, items: [] });
}

/** Piece by piece to a client that takes pieces, and all at once to every other one. */
class Output {
  readonly #items: WorkspaceDocumentDiagnosticReport[] = [];
  readonly #partial: ResultProgressReporter<WorkspaceDiagnosticReportPartialResult> | undefined;

  constructor(partial: ResultProgressReporter<WorkspaceDiagnosticReportPartialResult> | undefined) {
    this.#partial = partial;
  }

  add(report: WorkspaceDocumentDiagnosticReport): void {
    if (this.#partial) this.#partial.report({ items: [report] });
    else this.#items.push(report);
  }

  end(): WorkspaceDiagnosticReport {
    return { items: this.#items };
  }
}
