/** The commands that write all numbers anew: of one manuscript, of all that share a house file with it, or of the whole line. */
import type { CancellationToken, ChangeAnnotation, Connection } from 'vscode-languageserver';
import { type Restated, restate } from '../../core/revise/restate.ts';
import type { Context } from '../context.ts';
import type { Proofreading } from '../documents.ts';
import { logFailure } from '../guard.ts';
import { canonicalUri } from '../manuscripts.ts';
import { tell, tellFailure } from '../messages.ts';
import { showProgress } from '../workspace/progress.ts';
import type { WorkspaceRoom } from '../workspace/room.ts';
import { survey } from '../workspace/survey.ts';
import { type DocumentEdits, toWorkspaceEdit } from '../workspaceEdits.ts';

const ANNOTATIONS: Readonly<Record<Restated['trust'], ChangeAnnotation>> = {
  'beyond doubt': {
    label: 'Out of date',
    description: 'Right before the block changed, and tied to its figure.',
    needsConfirmation: false,
  },
  'needs a look': {
    label: 'Look at it first',
    description: 'Wrong rather than out of date, or read from its sentence alone.',
    needsConfirmation: true,
  },
};

const NOT_OPEN = 'Open a manuscript first, then restate its numbers.';

/** @param uri of an open manuscript */
export async function restateFile(uri: unknown, context: Context, token: CancellationToken): Promise<null> {
  const { connection, documents } = context;
  if (typeof uri !== 'string' || !documents.get(uri)) {
    tell(connection, NOT_OPEN);
    return null;
  }
  const proofreading = await documents.proofreading(uri, token);
  return apply(proofreading ? [proofreading] : [], context);
}

/**
 * An open manuscript, what it uses, and all that use it or the same files, also those that are not open.
 *
 * @param uri of the manuscript
 */
export async function restateShared(
  uri: unknown,
  context: Context,
  room: WorkspaceRoom,
  request: CancellationToken,
): Promise<null> {
  if (typeof uri !== 'string' || !context.documents.get(uri)) {
    tell(context.connection, NOT_OPEN);
    return null;
  }
  return restateMany(await room.workspace.sharing(uri), context, room, request);
}

/** All manuscripts of the workspace, also those that are not open. */
export function restateWorkspace(
  context: Context,
  room: WorkspaceRoom,
  request: CancellationToken,
): Promise<null> {
  return restateMany(undefined, context, room, request);
}

/** @param uris canonical; `undefined` for all */
async function restateMany(
  uris: readonly string[] | undefined,
  context: Context,
  { workspace }: WorkspaceRoom,
  request: CancellationToken,
): Promise<null> {
  const progress = await showProgress(context, 'Restating all numbers', request);
  const found: Proofreading[] = [];
  try {
    for await (const { uri, place, total, result } of survey(workspace, progress.token, uris)) {
      progress.report(place, total);
      if ('failure' in result) logFailure(context.connection, `Proofreading ${uri}`, result.failure);
      else found.push(result);
    }
  } finally {
    progress.done();
  }
  return apply(found, context);
}

async function apply(proofreadings: readonly Proofreading[], context: Context): Promise<null> {
  const { connection, documents, client } = context;
  const edits = proofreadings.flatMap(({ document, proof }): DocumentEdits[] => {
    const restated = proof ? restate(proof) : [];
    if (restated.length === 0) return [];
    const isOpen = documents.find(canonicalUri(document.uri)) !== undefined;
    return [{ document, isOpen, groups: restated.map(({ trust, edits }) => ({ annotation: trust, edits })) }];
  });
  const numbers = edits.reduce((sum, { groups }) => sum + groups.length, 0);
  if (numbers === 0) {
    tell(connection, 'No number needs to be restated.');
    return null;
  }
  if (!client.appliesEdits) {
    tellFailure(connection, 'This editor lets no server change texts.');
    return null;
  }
  return ask(connection, numbers, toWorkspaceEdit(edits, ANNOTATIONS, client));
}

async function ask(
  connection: Connection,
  numbers: number,
  edit: ReturnType<typeof toWorkspaceEdit>,
): Promise<null> {
  const { applied } = await connection.workspace.applyEdit({ label: 'Restate all numbers', edit });
  const what = numbers === 1 ? 'One number' : `${numbers} numbers`;
  if (applied) tell(connection, `${what} restated.`);
  else tellFailure(connection, 'The numbers stay as they are: the editor did not take the changes.');
  return null;
}
