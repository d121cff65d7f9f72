/** Quick fixes for single findings, `source.fixAll` for all that have one clear fix, and refactorings of sizes and units. */
import {
  type CodeAction,
  CodeActionKind,
  type CodeActionParams,
  CodeActionTriggerKind,
  type Diagnostic,
} from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Fix } from '../../core/findings/finding.ts';
import type { Proof } from '../../core/proof/proof.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { type ReportedFinding, unaccountedFindings } from '../../core/report/unaccounted.ts';
import { unaccountedFixes } from '../../core/report/unaccountedFixes.ts';
import type { ClientAbilities } from '../abilities.ts';
import type { Feature } from '../context.ts';
import { guarded } from '../guard.ts';
import { toOffsets, touches } from '../positions.ts';
import { isDiagnosticOf } from './diagnosing.ts';
import { documentEdit } from './documentEdit.ts';
import { draftAction, draftedDocument, editOf } from './draftAction.ts';
import { sizeActions } from './sizeActions.ts';
import { unitActions } from './unitActions.ts';

export const FIX_ALL = `${CodeActionKind.SourceFixAll}.measureTwice`;

export const codeActions: Feature = {
  // Without action literals a client could only run commands, and a fix is an edit.
  capabilities: ({ client }) =>
    client.codeActionLiterals
      ? {
          codeActionProvider: {
            codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, FIX_ALL],
            ...(client.resolvesEdits ? { resolveProvider: true } : {}),
          },
        }
      : {},
  register({ connection, documents, client }) {
    // A revision proofreads the manuscript anew: not at every move of the cursor.
    const isAsked = ({ context: { only, triggerKind } }: CodeActionParams) =>
      triggerKind !== CodeActionTriggerKind.Automatic && isWanted(CodeActionKind.RefactorRewrite, only);
    const refactorings = async (document: TextDocument, proof: Proof, params: CodeActionParams) => {
      if (!isAsked(params)) return [];
      const read = await documents.reader(document.uri);
      const offset = document.offsetAt(params.range.start);
      return [
        ...sizeActions(document, proof, offset, read, client),
        ...unitActions(document, proof, offset, read, client),
      ];
    };
    connection.onCodeAction((params, token) =>
      guarded(connection, 'Looking for fixes', null, async () => {
        const proofreading = await documents.proofreading(params.textDocument.uri, token);
        if (!proofreading) return null;
        const { document, proof } = proofreading;
        const drafts = isAsked(params) ? draftAction(document, client) : [];
        if (!proof) return drafts;
        return [
          ...quickFixes(document, proof, params, client),
          ...fixAllAction(document, proof, params, client),
          ...(await refactorings(document, proof, params)),
          ...drafts,
        ];
      }),
    );
    if (!client.resolvesEdits) return;
    connection.onCodeActionResolve((action, token) =>
      guarded(connection, 'Drafting a block', action, async () => {
        const uri = draftedDocument(action);
        const proofreading = uri === undefined ? undefined : await documents.proofreading(uri, token);
        const edit = proofreading && editOf(proofreading.document, client);
        return edit ? { ...action, edit } : action;
      }),
    );
  },
};

function quickFixes(
  document: TextDocument,
  proof: Proof,
  params: CodeActionParams,
  client: ClientAbilities,
): CodeAction[] {
  const { only, diagnostics: shown } = params.context;
  if (!isWanted(CodeActionKind.QuickFix, only)) return [];
  const range = toOffsets(document, params.range);
  const actions = (finding: ReportedFinding, index: number, fixes: readonly Fix[]) => {
    const diagnostics = shown.filter((diagnostic) => isDiagnosticOf(diagnostic, finding, index, document));
    return fixes.map((fix) => quickFix(document, fix, diagnostics, client));
  };
  return [
    ...proof.findings.flatMap((finding, index) =>
      touches(finding, range) ? actions(finding, index, finding.fixes) : [],
    ),
    // What a number may state can be said whether or not the author has hints shown.
    ...unaccountedFindings(proof, 'hint').flatMap((finding, index) =>
      touches(finding, range)
        ? actions(finding, proof.findings.length + index, unaccountedFixes(proof, finding))
        : [],
    ),
  ];
}

function quickFix(
  document: TextDocument,
  fix: Fix,
  diagnostics: Diagnostic[],
  client: ClientAbilities,
): CodeAction {
  return {
    title: fix.title,
    kind: CodeActionKind.QuickFix,
    ...(diagnostics.length > 0 ? { diagnostics } : {}),
    ...(client.preferredActions && fix.preferred ? { isPreferred: true } : {}),
    edit: documentEdit(document, fix.edits, client),
  };
}

function fixAllAction(
  document: TextDocument,
  proof: Proof,
  params: CodeActionParams,
  client: ClientAbilities,
): CodeAction[] {
  if (!isWanted(FIX_ALL, params.context.only)) return [];
  const { edits, mended } = fixAll(proof.findings);
  if (mended === 0) return [];
  const title =
    mended === 1
      ? 'Correct the one mistake with a clear fix'
      : `Correct all ${mended} mistakes with a clear fix`;
  return [{ title, kind: FIX_ALL, edit: documentEdit(document, edits, client) }];
}

/** `source` and `source.fixAll` ask for everything below them; a client that names no kind asks for all. */
function isWanted(kind: string, only: readonly string[] | undefined): boolean {
  return !only || only.some((wanted) => wanted === '' || kind === wanted || kind.startsWith(`${wanted}.`));
}
