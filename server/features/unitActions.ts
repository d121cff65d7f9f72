/** Refactorings at a length: the same length in the other system of units for all of the manuscript, or none any more. */
import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import type { Proof } from '../../core/proof/proof.ts';
import type { Read } from '../../core/revise/revision.ts';
import { reviseUnits, type UnitsRequest } from '../../core/revise/units/reviseUnits.ts';
import { systemOf } from '../../core/revise/units/system.ts';
import type { ClientAbilities } from '../abilities.ts';
import { toWorkspaceEdit } from '../workspaceEdits.ts';

const ADD = {
  metric: 'Add metric equivalents to all lengths',
  inch: 'Add equivalents in inches to all lengths',
} as const;
const REMOVE = {
  metric: 'Remove the metric equivalents',
  inch: 'Remove the equivalents in inches',
} as const;

/** @param read proofreads a text that stands where the document stands */
export function unitActions(
  document: TextDocument,
  proof: Proof,
  offset: number,
  read: Read,
  client: ClientAbilities,
): CodeAction[] {
  const isAtLength = proof.manuscript.numbers.some(
    ({ unit, ranges }) =>
      unit !== undefined && ranges.some(({ start, end }) => start <= offset && offset <= end),
  );
  if (!isAtLength) return [];
  const system = systemOf(proof) === 'metric' ? 'inch' : 'metric';
  const offers: readonly { readonly title: string; readonly request: UnitsRequest }[] = [
    { title: ADD[system], request: { kind: 'add', system } },
    { title: REMOVE[system], request: { kind: 'remove' } },
  ];
  return offers.flatMap(({ title, request }) => {
    const revision = reviseUnits(document.getText(), request, read);
    if ('refusal' in revision || revision.edits.length === 0) return [];
    const groups = [{ annotation: request.kind, edits: revision.edits }];
    const annotations = { [request.kind]: { label: title, needsConfirmation: false } };
    const edit = toWorkspaceEdit([{ document, isOpen: true, groups }], annotations, client);
    return [{ title, kind: CodeActionKind.RefactorRewrite, edit }];
  });
}
