import { describe, expect, it } from 'vitest';
import {
  type AnnotatedTextEdit,
  type ApplyWorkspaceEditParams,
  ApplyWorkspaceEditRequest,
  type ClientCapabilities,
  ExecuteCommandRequest,
  type TextDocumentEdit,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { proofread } from '../../core/proof/proofread.ts';
import { COMMANDS } from '../../shared/messages.ts';
import { PULLING } from './client.ts';
import { startInProcess } from './inProcess.ts';
import { MemoryFiles } from './memoryFiles.ts';

const ANNOTATING: ClientCapabilities = {
  ...PULLING,
  workspace: {
    ...PULLING.workspace,
    applyEdit: true,
    workspaceEdit: { documentChanges: true, changeAnnotationSupport: {} },
  },
};

const HOUSE = 'file:///p/house.md';
const WALL = 'file:///p/wall.md';
const house = (strip: string) => `\`\`\`measure\nhouse: { binding strip: ${strip} }\n\`\`\`\n`;
/** One number is tagged, one is read from its sentence, and one was wrong before. */
const wall = [
  '```measure',
  'use: house.md',
  'finished: 36" x 48"',
  'binding: {}',
  '```',
  '',
  '🧵 Cut strips 2¼" <!-- = binding.strip --> wide. Trim the binding strips to 2¼" wide.',
  'Bind 160" <!-- = finished.edge --> of edge.\r',
  '',
].join('\n');

async function line(capabilities: ClientCapabilities, others: Readonly<Record<string, string>> = {}) {
  const files = new MemoryFiles({ [HOUSE]: house('2 1/4"'), [WALL]: wall, ...others });
  const client = startInProcess({ proofread, files });
  client.folders = ['file:///p'];
  const asked: ApplyWorkspaceEditParams[] = [];
  client.connection.onRequest(ApplyWorkspaceEditRequest.type, (params) => {
    asked.push(params);
    return { applied: true };
  });
  await client.initialize(capabilities);
  const run = (command: string, ...args: unknown[]) =>
    client.connection.sendRequest(ExecuteCommandRequest.type, { command, arguments: args });
  return { client, asked, run };
}

/** What the edits of a document write, each with its annotation, and the text after all of them. */
function changes({ edit }: ApplyWorkspaceEditParams, text: string) {
  const [change] = (edit.documentChanges ?? []) as TextDocumentEdit[];
  const edits = (change?.edits ?? []) as AnnotatedTextEdit[];
  return {
    document: change?.textDocument,
    edits: edits.map(({ newText, annotationId }) => [newText, annotationId]),
    text: TextDocument.applyEdits(TextDocument.create('', '', 0, text), edits),
  };
}

describe('Restating all numbers', () => {
  it('of the workspace follows a house file that is not saved, and asks where a look is needed', async () => {
    const { client, asked, run } = await line(ANNOTATING);
    await client.open(WALL, wall);
    await client.pull(WALL);
    await client.open(HOUSE, house('2 1/4"'));
    await client.change(HOUSE, { text: house('2 1/2"') });
    await run(COMMANDS.restateWorkspace);

    expect(asked).toHaveLength(1);
    const [params] = asked as [ApplyWorkspaceEditParams];
    expect(params.label).toBe('Restate all numbers');
    expect(changes(params, wall)).toEqual({
      document: { uri: WALL, version: 1 },
      edits: [
        ['2½"', 'beyond doubt'],
        ['2½"', 'needs a look'],
        ['168"', 'needs a look'],
      ],
      text: wall.replaceAll('2¼"', '2½"').replace('160"', '168"'),
    });
    expect(params.edit.changeAnnotations).toMatchObject({
      'beyond doubt': { label: 'Out of date', needsConfirmation: false },
      'needs a look': { label: 'Look at it first', needsConfirmation: true },
    });
    expect(client.messages).toEqual(['3 numbers restated.']);
  });

  it('of those that share a house file reaches them all, from any of them, and no other', async () => {
    for (const open of [HOUSE, WALL]) {
      const { client, asked, run } = await line(ANNOTATING, {
        'file:///p/lap.md': wall,
        'file:///p/other.md': wall.replace('use: house.md', 'house: { binding strip: 2 1/2" }'),
      });
      await client.open(open, open === HOUSE ? house('2 1/2"') : wall);
      await run(COMMANDS.restateShared, open);

      const changed = (asked[0]?.edit.documentChanges ?? []) as TextDocumentEdit[];
      expect(changed.map(({ textDocument }) => textDocument.uri)).toEqual(['file:///p/lap.md', WALL]);
    }
  });

  it('of one manuscript restates what was wrong before only when the author confirms it', async () => {
    const { client, asked, run } = await line(ANNOTATING);
    await client.open(WALL, wall);
    await run(COMMANDS.restateFile, WALL);

    expect(asked.map((params) => changes(params, wall).edits)).toEqual([[['168"', 'needs a look']]]);
    expect(client.messages).toEqual(['One number restated.']);
  });

  it('of a file that is not open names no version', async () => {
    const { asked, run } = await line(ANNOTATING);
    await run(COMMANDS.restateWorkspace);

    expect(asked.map((params) => changes(params, wall).document)).toEqual([{ uri: WALL, version: null }]);
  });

  it('goes without annotations to a client that shows none', async () => {
    const { client, asked, run } = await line({
      ...PULLING,
      workspace: { ...PULLING.workspace, applyEdit: true },
    });
    await client.open(WALL, wall);
    await run(COMMANDS.restateFile, WALL);

    expect(asked[0]?.edit).not.toHaveProperty('changeAnnotations');
    expect(asked.map((params) => changes(params, wall).edits)).toEqual([[['168"', undefined]]]);
  });

  it('is told when there is nothing to restate, no manuscript, or no way to edit', async () => {
    const { client, asked, run } = await line(PULLING);
    await run(COMMANDS.restateFile, WALL);
    await run(COMMANDS.restateShared, WALL);
    await client.open(HOUSE, house('2 1/4"'));
    await run(COMMANDS.restateFile, HOUSE);
    await client.open(WALL, wall);
    await run(COMMANDS.restateFile, WALL);

    expect(asked).toEqual([]);
    expect(client.messages).toEqual([
      'Open a manuscript first, then restate its numbers.',
      'Open a manuscript first, then restate its numbers.',
      'No number needs to be restated.',
      'This editor lets no server change texts.',
    ]);
  });
});
