import { describe, expect, it } from 'vitest';
import type { CodeAction, Diagnostic, TextDocumentEdit } from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { proofread } from '../../core/proof/proofread.ts';
import { CAPABILITIES, PULLING, type TestClient } from './client.ts';
import { FENCE, startInProcess, wordProof } from './inProcess.ts';

const uri = 'file:///patterns/runner.md';
const at = (line: number, start: number, end: number) => ({
  start: { line, character: start },
  end: { line, character: end },
});

async function opened(text: string, capabilities = PULLING): Promise<TestClient> {
  const client = startInProcess({ proofread: wordProof });
  await client.initialize(capabilities);
  await client.open(uri, text);
  return client;
}

async function shown(client: TestClient): Promise<Diagnostic[]> {
  const report = await client.pull(uri);
  return report.kind === 'full' ? report.items : [];
}

/** The text after the edits of an action. */
function applied(text: string, action: CodeAction | undefined): string {
  const [change] = (action?.edit?.documentChanges ?? []) as TextDocumentEdit[];
  if (!change) throw new Error('the action has no edit');
  const edits = change.edits.map((edit) => {
    if (!('newText' in edit)) throw new Error('not a text edit');
    return edit;
  });
  return TextDocument.applyEdits(TextDocument.create(uri, 'markdown', 1, text), edits);
}

describe('A quick fix', () => {
  it('changes only the number, in the version that was proofread, and is linked to its diagnostic', async () => {
    const text = `${FENCE}🧵 wrong ½\r\n`;
    const client = await opened(text);
    const diagnostics = await shown(client);
    const [first, second, ...others] = await client.actions(uri, at(2, 5, 5), { diagnostics });

    expect(first).toEqual({
      title: 'Write right',
      kind: 'quickfix',
      isPreferred: true,
      diagnostics,
      edit: {
        documentChanges: [
          { textDocument: { uri, version: 1 }, edits: [{ range: at(2, 3, 8), newText: 'right' }] },
        ],
      },
    });
    expect(applied(text, first)).toBe(`${FENCE}🧵 right ½\r\n`);
    expect(second).toMatchObject({ title: 'Leave it out', kind: 'quickfix' });
    expect(second).not.toHaveProperty('isPreferred');
    expect(others.map(({ kind }) => kind)).toEqual(['source.fixAll.measureTwice']);
  });

  it('is offered for what stands at the cursor only', async () => {
    const client = await opened(`${FENCE}wrong wrong`);
    const only = { only: ['quickfix'] };

    expect(await client.actions(uri, at(2, 6, 6), only)).toHaveLength(2);
    expect(await client.actions(uri, at(2, 0, 11), only)).toHaveLength(4);
    expect(await client.actions(uri, at(0, 0, 3), only)).toEqual([]);
  });

  it('finds its diagnostic again although the editor has moved it, or keeps no data', async () => {
    const client = await opened(`${FENCE}wrong wrong`);
    const [first, second] = await shown(client);
    if (!first || !second) throw new Error('two diagnostics are needed');

    const moved = { ...second, range: at(2, 0, 5) };
    const [linked] = await client.actions(uri, at(2, 6, 6), { diagnostics: [moved] });
    expect(linked?.diagnostics).toEqual([moved]);

    const { data, ...bare } = second;
    const [bareLinked] = await client.actions(uri, at(2, 6, 6), { diagnostics: [first, bare] });
    expect(data).toBeDefined();
    expect(bareLinked?.diagnostics).toEqual([bare]);
  });

  it('is a plain change for a client without versioned edits', async () => {
    const client = await opened(`${FENCE}wrong`, { ...PULLING, workspace: {} });
    const [fix] = await client.actions(uri, at(2, 0, 0));

    expect(fix?.edit).toEqual({ changes: { [uri]: [{ range: at(2, 0, 5), newText: 'right' }] } });
  });

  it('is not announced to a client that takes commands only', async () => {
    const client = startInProcess({ proofread: wordProof });
    const { capabilities } = await client.initialize({ ...CAPABILITIES, textDocument: {} });

    expect(capabilities.codeActionProvider).toBeUndefined();
  });
});

describe('Fix all', () => {
  const text = `${FENCE}wrong ½ wrong\r\n🧵 wrong\r\n`;

  it.each([['source.fixAll.measureTwice'], ['source.fixAll'], ['source']])(
    'answers a request for %s',
    async (kind) => {
      const client = await opened(text);
      const actions = await client.actions(uri, at(0, 0, 0), { only: [kind] });

      expect(actions.map(({ title, kind }) => [title, kind])).toEqual([
        ['Correct all 3 mistakes with a clear fix', 'source.fixAll.measureTwice'],
      ]);
      expect(applied(text, actions[0])).toBe(`${FENCE}right ½ right\r\n🧵 right\r\n`);
    },
  );

  it('stays away when another kind is asked for, or nothing is to be fixed', async () => {
    const client = await opened(text);
    expect(await client.actions(uri, at(0, 0, 0), { only: ['refactor'] })).toEqual([]);
    expect(
      await client.actions(uri, at(0, 0, 0), { only: ['source.fixAll.other', 'source.organizeImports'] }),
    ).toEqual([]);

    await client.change(uri, { text: FENCE });
    expect(await client.actions(uri, at(0, 0, 0), { only: ['source.fixAll'] })).toEqual([]);
  });
});

describe('A number that no figure accounts for', () => {
  const text =
    '```measure\nfinished: 60" x 72"\nbinding: { strip: 2 1/4" }\n```\n\nKeep the 8 long strips.\n';
  const titles = ['This is the number of binding strips: 8', 'Leave “8” alone'];

  async function proofreading(settings?: object): Promise<TestClient> {
    const client = startInProcess({ proofread });
    if (settings) client.settings = settings;
    await client.initialize(PULLING);
    await client.open(uri, text);
    return client;
  }

  it('is linked to its hint where the author has hints shown', async () => {
    const client = await proofreading({ unaccounted: 'hint' });
    await client.until(() => client.refreshes === 1);
    const diagnostics = await shown(client);
    expect(diagnostics.map(({ code, range }) => [code, range])).toEqual([['unaccounted', at(5, 9, 10)]]);
    const actions = await client.actions(uri, at(5, 9, 9), { diagnostics });

    expect(actions.map((action) => [action.title, action.diagnostics])).toEqual(
      titles.map((title) => [title, diagnostics]),
    );
  });

  it('can be tied or left alone, also where it is not shown as a hint', async () => {
    const client = await proofreading();
    expect(await shown(client)).toEqual([]);
    const actions = await client.actions(uri, at(5, 9, 9));

    expect(actions.map(({ title, kind }) => [title, kind])).toEqual(
      titles.map((title) => [title, 'quickfix']),
    );
    expect(actions.map((action) => applied(text, action).split('\n')[5])).toEqual([
      'Keep the 8 <!-- = binding.strips --> long strips.',
      'Keep the 8 <!-- measure skip --> long strips.',
    ]);
    expect(await client.actions(uri, at(5, 0, 0))).toEqual([]);
    expect(await client.actions(uri, at(5, 9, 9), { only: ['source'] })).toEqual([]);
  });
});
