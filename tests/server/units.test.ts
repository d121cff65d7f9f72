import { describe, expect, it } from 'vitest';
import {
  type ClientCapabilities,
  type CodeAction,
  CodeActionTriggerKind,
  type TextDocumentEdit,
  type TextEdit,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { proofread } from '../../core/proof/proofread.ts';
import { PULLING } from './client.ts';
import { startInProcess } from './inProcess.ts';

const uri = 'file:///p/wall.md';
const ANNOTATING: ClientCapabilities = {
  ...PULLING,
  workspace: { workspaceEdit: { documentChanges: true, changeAnnotationSupport: {} } },
};
const text = '```measure\nfinished: 36" x 48"\n```\n\n🧵 Bind 168" <!-- = finished.edge --> of edge.\n';
const both = text.replace('--> of', '--> (426.5 cm) of');

async function offered(source: string, character: number, triggerKind?: CodeActionTriggerKind) {
  const client = startInProcess({ proofread });
  await client.initialize(ANNOTATING);
  await client.open(uri, source);
  const position = { line: 4, character };
  const context = { only: ['refactor'], ...(triggerKind ? { triggerKind } : {}) };
  return client.actions(uri, { start: position, end: position }, context);
}

function applied(source: string, action: CodeAction | undefined): string {
  const [change] = (action?.edit?.documentChanges ?? []) as TextDocumentEdit[];
  const document = TextDocument.create(uri, 'markdown', 1, source);
  return TextDocument.applyEdits(document, (change?.edits ?? []) as TextEdit[]);
}

describe('At a length', () => {
  it('equivalents are added as a refactoring, annotated for the preview, and removed again', async () => {
    const [add, ...others] = await offered(text, 10);
    expect([add?.title, add?.kind, others]).toEqual([
      'Add metric equivalents to all lengths',
      'refactor.rewrite',
      [],
    ]);
    expect(add?.edit?.changeAnnotations).toEqual({
      add: { label: 'Add metric equivalents to all lengths', needsConfirmation: false },
    });
    expect(applied(text, add)).toBe(both);

    const [remove, ...more] = await offered(both, 10);
    expect([remove?.title, more]).toEqual(['Remove the metric equivalents', []]);
    expect(applied(both, remove)).toBe(text);
  });

  it('nothing is offered elsewhere, nor at every move of the cursor', async () => {
    expect(await offered(text, 1)).toEqual([]);
    expect(await offered(text, 10, CodeActionTriggerKind.Automatic)).toEqual([]);
  });
});
