import { describe, expect, it } from 'vitest';
import {
  type ClientCapabilities,
  type CodeAction,
  PrepareRenameRequest,
  RenameRequest,
  type TextDocumentEdit,
  type TextEdit,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { proofread } from '../../core/proof/proofread.ts';
import { PULLING } from './client.ts';
import { startInProcess } from './inProcess.ts';

const uri = 'file:///p/wall.md';
const ANNOTATING: ClientCapabilities = {
  ...PULLING,
  workspace: { workspaceEdit: { documentChanges: true, changeAnnotationSupport: {} } },
  textDocument: { ...PULLING.textDocument, rename: { prepareSupport: true } },
};
const text = [
  '```measure',
  'sizes: [wall, throw]',
  'finished: { wall: 36" x 48", throw: 54" x 66" }',
  '```',
  '',
  '| 🧵 | Wall | Throw |',
  '|---|---|---|',
  '| Edge | 168" <!-- = finished.edge --> | 240" <!-- = finished.edge --> |',
  '',
].join('\r\n');
const at = (line: number, character: number) => ({ line, character });
const range = (line: number, character: number) => ({
  start: at(line, character),
  end: at(line, character),
});

async function opened(capabilities = ANNOTATING) {
  const client = startInProcess({ proofread });
  const { capabilities: announced } = await client.initialize(capabilities);
  await client.open(uri, text);
  return { client, announced };
}

function applied(edit: WorkspaceEdit | null | undefined): string {
  const [change] = (edit?.documentChanges ?? []) as TextDocumentEdit[];
  return TextDocument.applyEdits(
    TextDocument.create(uri, 'markdown', 1, text),
    (change?.edits ?? []) as TextEdit[],
  );
}

describe('At the name of a size', () => {
  const refactorings = (actions: CodeAction[]) => actions.map(({ title, kind }) => [title, kind]);

  it.each([
    ['in the list of sizes', 1, 16],
    ['at a value of the block', 2, 33],
    ['in the head of a table', 5, 17],
  ])('%s it can be dropped, moved, or have another added behind it', async (_, line, character) => {
    const { client } = await opened();
    const actions = await client.actions(uri, range(line, character), { only: ['refactor'] });

    expect(refactorings(actions)).toEqual([
      ['Add a size behind “throw”', 'refactor.rewrite'],
      ['Drop the size “throw”', 'refactor.rewrite'],
      ['Put the size “throw” before “wall”', 'refactor.rewrite'],
    ]);
    const [added, dropped, moved] = actions.map(({ edit }) => applied(edit).split('\r\n'));
    expect(added?.slice(1, 3)).toEqual([
      'sizes: [wall, throw, new size]',
      'finished: { wall: 36" x 48", throw: 54" x 66", new size: … }',
    ]);
    expect(added?.[7]).toContain('| [new size: …] |');
    expect(dropped?.slice(5)).toEqual([
      '| 🧵 | Wall |',
      '|---|---|',
      '| Edge | 168" <!-- = finished.edge --> |',
      '',
    ]);
    expect(moved?.[5]).toBe('| 🧵 | Throw | Wall |');
  });

  it('each change says what it is for, so that it can be previewed', async () => {
    const { client } = await opened();
    const [added] = await client.actions(uri, range(1, 16), { only: ['refactor'] });

    expect(added?.edit?.changeAnnotations).toMatchObject({
      computed: { label: 'Add a size behind “throw”' },
      'left to write': { label: 'Left to write' },
    });
  });

  it('elsewhere nothing is offered', async () => {
    const { client } = await opened();

    expect(await client.actions(uri, range(0, 0), { only: ['refactor'] })).toEqual([]);
    expect(await client.actions(uri, range(2, 2), { only: ['refactor'] })).toEqual([]);
    expect(await client.actions(uri, range(1, 16), { only: ['quickfix'] })).toEqual([]);
    expect(await client.actions(uri, range(1, 16), { triggerKind: 2 })).toEqual([]);
  });
});

describe('Renaming a size', () => {
  const params = { textDocument: { uri }, position: at(5, 9) };

  it('starts from its name and writes the new one everywhere', async () => {
    const { client, announced } = await opened();
    expect(announced.renameProvider).toEqual({ prepareProvider: true });
    expect(await client.connection.sendRequest(PrepareRenameRequest.type, params)).toEqual({
      range: { start: at(5, 7), end: at(5, 11) },
      placeholder: 'wall',
    });
    const edit = await client.connection.sendRequest(RenameRequest.type, { ...params, newName: 'mini' });

    expect(applied(edit)).toBe(text.replaceAll('wall', 'mini').replace('Wall', 'Mini'));
  });

  it('says in a sentence why a name cannot be taken', async () => {
    const { client } = await opened();
    const renaming = client.connection.sendRequest(RenameRequest.type, { ...params, newName: 'throw' });

    await expect(renaming).rejects.toThrow('The pattern has a size “throw” already.');
  });
});
