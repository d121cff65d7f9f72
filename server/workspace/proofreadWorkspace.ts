/** The command that proofreads all manuscripts of the workspace, also those that are not open. */
import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Context } from '../context.ts';
import { logFailure } from '../guard.ts';
import { tell, tellFailure } from '../messages.ts';
import { showProgress } from './progress.ts';
import type { WorkspaceRoom } from './room.ts';
import { LineTotals, survey } from './survey.ts';

/** Tells the result in a message; ends quietly when the author cancels it. */
export async function proofreadWorkspace(
  context: Context,
  { workspace, diagnostics }: WorkspaceRoom,
  request: CancellationToken,
): Promise<null> {
  const { connection, client } = context;
  const progress = await showProgress(context, 'Proofreading the workspace', request);
  try {
    if (!client.watchedFilesRegistration) await workspace.forgetFiles();
    const totals = new LineTotals();
    for await (const surveyed of survey(workspace, progress.token)) {
      const { uri, place, total, result } = surveyed;
      progress.report(place, total);
      totals.add(surveyed);
      if ('failure' in result) logFailure(connection, `Proofreading ${uri}`, result.failure);
      else await diagnostics.push(uri, result);
    }
    tell(connection, totals.sentence);
  } catch (error) {
    if (error instanceof ResponseError && error.code === LSPErrorCodes.RequestCancelled) return null;
    tellFailure(connection, 'The workspace could not be proofread. The log says more.');
    throw error;
  } finally {
    progress.done();
  }
  return null;
}
