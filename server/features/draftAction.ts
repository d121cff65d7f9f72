/** A refactoring of a manuscript without a block: one is drafted from what it says. */
import { type CodeAction, CodeActionKind, type WorkspaceEdit } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { canBeDrafted, draftBlock } from '../../core/draft/draft.ts';
import type { ClientAbilities } from '../abilities.ts';
import { documentEdit } from './documentEdit.ts';

const TITLE = 'Draft a measure block from this manuscript';

/** What the client hands back when its author chooses the action. */
interface DraftData {
  readonly draft: string;
}

/** Drafting proofreads many times over: it waits until somebody chooses it, where the client can wait. */
export function draftAction(document: TextDocument, client: ClientAbilities): CodeAction[] {
  if (!canBeDrafted(document.getText())) return [];
  const action = { title: TITLE, kind: CodeActionKind.RefactorRewrite };
  if (client.resolvesEdits) return [{ ...action, data: { draft: document.uri } satisfies DraftData }];
  const edit = editOf(document, client);
  return edit ? [{ ...action, edit }] : [];
}

/** The document that an action would draft a block for; nothing for other actions. */
export function draftedDocument({ data }: CodeAction): string | undefined {
  const uri = (data as Partial<DraftData> | undefined)?.draft;
  return typeof uri === 'string' ? uri : undefined;
}

/** Nothing where the text has a block by now, or says nothing. */
export function editOf(document: TextDocument, client: ClientAbilities): WorkspaceEdit | undefined {
  const draft = draftBlock(document.getText());
  return typeof draft === 'string' ? undefined : documentEdit(document, [draft.edit], client);
}
