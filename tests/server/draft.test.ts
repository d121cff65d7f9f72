import { describe, expect, it } from 'vitest';
import {
  type CodeAction,
  CodeActionResolveRequest,
  type TextDocumentEdit,
} from 'vscode-languageserver-protocol/node';
import { draftBlock } from '../../core/draft/draft.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { PULLING } from './client.ts';
import { startInProcess } from './inProcess.ts';

const uri = 'file:///p/row.md';
const text = '# Row\n\nThe quilt finishes at 16" × 48".\n';
const RESOLVING = {
  ...PULLING,
  textDocument: {
    ...PULLING.textDocument,
    codeAction: {
      ...PULLING.textDocument?.codeAction,
      dataSupport: true,
      resolveSupport: { properties: ['edit'] },
    },
  },
};
const nowhere = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

async function opened(source: string, capabilities = PULLING) {
  const client = startInProcess({ proofread });
  await client.initialize(capabilities);
  await client.open(uri, source);
  return client;
}

function inserted(action: CodeAction | undefined): string | undefined {
  const [change] = (action?.edit?.documentChanges ?? []) as TextDocumentEdit[];
  const [edit] = change?.edits ?? [];
  return edit && 'newText' in edit ? edit.newText : undefined;
}

const draft = draftBlock(text);
const block = typeof draft === 'string' ? draft : draft.edit.text;

describe('A manuscript without a block', () => {
  it('offers to draft one, whose edit waits until it is chosen', async () => {
    const client = await opened(text, RESOLVING);
    const [action, ...others] = await client.actions(uri, nowhere);

    expect(others).toEqual([]);
    expect(action).toEqual({
      title: 'Draft a measure block from this manuscript',
      kind: 'refactor.rewrite',
      data: { draft: uri },
    });
    const resolved = await client.connection.sendRequest(CodeActionResolveRequest.type, action as CodeAction);
    expect(inserted(resolved)).toBe(block);
  });

  it('hands the edit out at once to a client that cannot ask for it later', async () => {
    const client = await opened(text);
    const [action] = await client.actions(uri, nowhere);
    expect(inserted(action)).toBe(block);
  });

  it('offers nothing where a block stands already, or nothing is measured', async () => {
    for (const source of [
      `${text}\n\`\`\`measure\nfinished: 16" x 48"\n\`\`\`\n`,
      '# Notes\n\nSee page 3.\n',
    ]) {
      const client = await opened(source, RESOLVING);
      const actions = (await client.actions(uri, nowhere)) ?? [];
      expect(actions.filter(({ title }) => title.startsWith('Draft'))).toEqual([]);
    }
  });
});
