/** Edits of one document as the client takes them. */
import type { WorkspaceEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit } from '../../core/findings/finding.ts';
import type { ClientAbilities } from '../abilities.ts';
import { toTextEdit } from '../positions.ts';

/** Bound to the version that was proofread, so that a client refuses it when the text has moved on. */
export function documentEdit(
  document: TextDocument,
  edits: readonly Edit[],
  client: ClientAbilities,
): WorkspaceEdit {
  const { uri, version } = document;
  const textEdits = edits.map((edit) => toTextEdit(document, edit));
  return client.versionedEdits
    ? { documentChanges: [{ textDocument: { uri, version }, edits: textEdits }] }
    : { changes: { [uri]: textEdits } };
}
