/** The commands of the server, for any client that can send `workspace/executeCommand`. */
import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import { coverageSentence } from '../../core/report/coverage.ts';
import { COMMANDS } from '../../shared/messages.ts';
import type { Context, Feature } from '../context.ts';
import { guarded } from '../guard.ts';
import { tell, tellFailure } from '../messages.ts';
import { proofreadWorkspace } from '../workspace/proofreadWorkspace.ts';
import { restateFile, restateShared, restateWorkspace } from './restating.ts';

export const commands: Feature = {
  capabilities: ({ room, signatures }) => ({
    executeCommandProvider: {
      commands: [
        COMMANDS.proofreadFile,
        COMMANDS.restateFile,
        ...(signatures ? [COMMANDS.signOff] : []),
        ...(room ? [COMMANDS.proofreadWorkspace, COMMANDS.restateShared, COMMANDS.restateWorkspace] : []),
      ],
    },
  }),
  register(context) {
    const { connection, room, signatures } = context;
    connection.onExecuteCommand(({ command, arguments: args }, token) =>
      guarded(connection, 'The command', null, async () => {
        if (command === COMMANDS.proofreadFile) return proofreadFile(args?.[0], context, token);
        if (command === COMMANDS.restateFile) return restateFile(args?.[0], context, token);
        if (command === COMMANDS.restateShared && room) return restateShared(args?.[0], context, room, token);
        if (command === COMMANDS.restateWorkspace && room) return restateWorkspace(context, room, token);
        if (command === COMMANDS.proofreadWorkspace && room) return proofreadWorkspace(context, room, token);
        if (command === COMMANDS.signOff && signatures)
          return signatures.signOff(args?.[0], args?.[1], token);
        throw new ResponseError(ErrorCodes.InvalidParams, `There is no command ${command}.`);
      }),
    );
  },
};

/** Proofreads an open document again and tells its coverage. */
async function proofreadFile(
  uri: unknown,
  { connection, documents }: Context,
  token: Parameters<typeof documents.proofreading>[1],
) {
  if (typeof uri !== 'string' || !documents.get(uri)) {
    tell(connection, 'Open a manuscript first, then proofread it.');
    return null;
  }
  documents.forget(uri);
  const proof = await documents.proofreading(uri, token).then(
    (proofreading) => proofreading?.proof,
    (error) => {
      tellFailure(connection, 'This manuscript could not be proofread. The log says more.');
      throw error;
    },
  );
  const sentence = proof
    ? coverageSentence(proof.coverage)
    : 'This file has no measure block, so there is nothing to check it against.';
  tell(connection, sentence);
  return null;
}
