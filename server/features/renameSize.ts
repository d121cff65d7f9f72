/** Renaming a size by its name, wherever it stands. */
import { ErrorCodes, ResponseError } from 'vscode-languageserver';
import { reviseSizes } from '../../core/revise/sizes/reviseSizes.ts';
import { sizeAt } from '../../core/revise/sizes/sizeAt.ts';
import type { Feature } from '../context.ts';
import { guarded } from '../guard.ts';
import { toRange } from '../positions.ts';
import { toWorkspaceEdit } from '../workspaceEdits.ts';

export const renameSize: Feature = {
  capabilities: ({ client }) => ({
    renameProvider: client.preparesRename ? { prepareProvider: true } : true,
  }),
  register({ connection, documents, client }) {
    connection.onPrepareRename(({ textDocument, position }, token) =>
      guarded(connection, 'Looking for a size', null, async () => {
        const proofreading = await documents.proofreading(textDocument.uri, token);
        if (!proofreading?.proof) return null;
        const { document, proof } = proofreading;
        const place = sizeAt(proof, document.offsetAt(position));
        return place ? { range: toRange(document, place), placeholder: place.size } : null;
      }),
    );
    connection.onRenameRequest(({ textDocument, position, newName }, token) =>
      guarded(connection, 'Renaming a size', null, async () => {
        const proofreading = await documents.proofreading(textDocument.uri, token);
        if (!proofreading?.proof) return null;
        const { document, proof } = proofreading;
        const place = sizeAt(proof, document.offsetAt(position));
        if (!place) return null;
        const request = { kind: 'rename', name: place.size, to: newName.trim() } as const;
        const revision = reviseSizes(document.getText(), request, () => proof);
        if ('refusal' in revision) throw new ResponseError(ErrorCodes.InvalidParams, revision.refusal);
        const label = `Rename the size “${place.size}”`;
        const groups = [{ annotation: 'rename', edits: revision.edits }];
        return toWorkspaceEdit([{ document, isOpen: true, groups }], { rename: { label } }, client);
      }),
    );
  },
};
