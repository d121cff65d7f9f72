/** Edits of one or many documents as the protocol wants them, with annotations for clients that show a preview. */
import type {
  AnnotatedTextEdit,
  ChangeAnnotation,
  TextDocumentEdit,
  TextEdit,
  WorkspaceEdit,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Edit } from '../core/findings/finding.ts';
import type { ClientAbilities } from './abilities.ts';
import { toTextEdit } from './positions.ts';

/** Edits that belong together in a preview. */
export interface EditGroup {
  /** The key of their annotation. */
  readonly annotation: string;
  readonly edits: readonly Edit[];
}

export interface DocumentEdits {
  readonly document: TextDocument;
  /** Whether the document is open: a client refuses the edit when an open document has moved on. */
  readonly isOpen: boolean;
  readonly groups: readonly EditGroup[];
}

/** @param annotations what each group is called, and whether the author confirms it; left out where the client shows none */
export function toWorkspaceEdit(
  documents: readonly DocumentEdits[],
  annotations: Readonly<Record<string, ChangeAnnotation>>,
  client: ClientAbilities,
): WorkspaceEdit {
  if (!client.versionedEdits) {
    const plain = ({ document, groups }: DocumentEdits): [string, TextEdit[]] => [
      document.uri,
      groups.flatMap(({ edits }) => edits.map((edit) => toTextEdit(document, edit))),
    ];
    return { changes: Object.fromEntries(documents.map(plain)) };
  }
  const documentChanges = documents.map(({ document, isOpen, groups }): TextDocumentEdit => {
    const edits = groups.flatMap(({ annotation, edits }) =>
      edits.map((edit): TextEdit | AnnotatedTextEdit => {
        const text = toTextEdit(document, edit);
        return client.changeAnnotations ? { ...text, annotationId: annotation } : text;
      }),
    );
    const { uri, version } = document;
    return { textDocument: { uri, version: isOpen ? version : null }, edits };
  });
  const used = new Set(documents.flatMap(({ groups }) => groups.map(({ annotation }) => annotation)));
  const changeAnnotations = Object.fromEntries(Object.entries(annotations).filter(([key]) => used.has(key)));
  return client.changeAnnotations ? { documentChanges, changeAnnotations } : { documentChanges };
}
