import { describe, expect, it, vi } from 'vitest';
import {
  DiagnosticSeverity,
  DidChangeConfigurationNotification,
  DocumentDiagnosticRequest,
} from 'vscode-languageserver-protocol/node';
import { CAPABILITIES, PULLING } from './client.ts';
import { FENCE, startInProcess, wordProof } from './inProcess.ts';

const uri = 'file:///patterns/runner.md';
const at = (line: number, start: number, end: number) => ({
  start: { line, character: start },
  end: { line, character: end },
});

describe('Diagnostics of a client that does not pull', () => {
  it('are pushed with code, range, severity, source and related places', async () => {
    const client = startInProcess({ proofread: wordProof });
    const { capabilities } = await client.initialize();
    await client.open(uri, `${FENCE}🧵 ½ wrong\r\n`);

    expect(capabilities.diagnosticProvider).toBeUndefined();
    expect(await client.pushed(uri, 1)).toEqual([
      {
        code: 'wrong-figure',
        source: 'Measure Twice',
        severity: DiagnosticSeverity.Error,
        message: 'This is wrong.',
        range: at(2, 5, 10),
        relatedInformation: [{ location: { uri, range: at(0, 0, 3) }, message: 'The block says so.' }],
        data: { version: 1, finding: 0 },
      },
    ]);
  });

  it('follow incremental changes', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize();
    await client.open(uri, `${FENCE}a wrong\r\n🧵 wrong`);
    expect(await client.pushed(uri, 1)).toHaveLength(2);

    await client.change(uri, { range: at(2, 2, 7), text: 'fine' }, { range: at(3, 0, 2), text: '🧵🧵' });

    expect((await client.pushed(uri, 2)).map(({ range }) => range)).toEqual([at(3, 5, 10)]);
  });

  it('are taken back when the document is closed', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize();
    await client.open(uri, `${FENCE}wrong`);
    await client.pushed(uri, 1);
    await client.close(uri);

    expect(await client.pushed(uri, undefined)).toEqual([]);
  });

  it('are computed once when the author types without a pause', async () => {
    const proofread = vi.fn(wordProof);
    const client = startInProcess({ proofread });
    await client.initialize();
    await client.open(uri, FENCE);
    for (const letter of 'wrong') await client.change(uri, { range: at(2, 0, 0), text: letter });
    await client.pushed(uri, 6);

    expect(proofread.mock.calls.length).toBeLessThan(6);
    expect(client.published.every(({ version }) => version === 1 || version === 6)).toBe(true);
  });

  it('stay as they were when a text cannot be proofread, and the failure is logged', async () => {
    const client = startInProcess({
      proofread: (document) => {
        if (document.source.includes('boom')) throw new Error('a fault of ours');
        return wordProof(document);
      },
    });
    await client.initialize();
    await client.open(uri, `${FENCE}wrong`);
    await client.pushed(uri, 1);
    await client.change(uri, { range: at(2, 0, 0), text: 'boom ' });
    await client.until(() => client.logged.some((line) => line.includes('a fault of ours')));
    await client.change(uri, { range: at(2, 0, 5), text: '' });
    await client.pushed(uri, 3);

    expect(client.published.map(({ version, diagnostics }) => [version, diagnostics.length])).toEqual([
      [1, 1],
      [3, 1],
    ]);
  });

  it('are empty for a Markdown file without a measure block, which is not even read', async () => {
    const proofread = vi.fn(wordProof);
    const client = startInProcess({ proofread });
    await client.initialize();
    await client.open(uri, 'Everything is wrong.');

    expect(await client.pushed(uri, 1)).toEqual([]);
    expect(proofread).not.toHaveBeenCalled();
  });

  it('are empty where the words of a fence stand, but no measure block does', async () => {
    const client = startInProcess({
      proofread: (document) => ({ ...wordProof(document), pattern: { stated: false } as never }),
    });
    await client.initialize();
    await client.open(uri, `    ${FENCE}wrong`);

    expect(await client.pushed(uri, 1)).toEqual([]);
  });

  it('leave related places out for a client that does not show them', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize({});
    await client.open(uri, `${FENCE}wrong`);

    expect((await client.pushed(uri, 1))[0]).not.toHaveProperty('relatedInformation');
  });
});

describe('Diagnostics of a client that pulls', () => {
  it('come when they are asked for, and are never pushed', async () => {
    const client = startInProcess({ proofread: wordProof });
    const { capabilities } = await client.initialize(PULLING);
    await client.open(uri, `${FENCE}wrong`);
    const report = await client.pull(uri);
    await client.close(uri);
    await client.pull(uri);

    expect(capabilities.diagnosticProvider).toEqual({
      identifier: 'measure-twice',
      interFileDependencies: true,
      workspaceDiagnostics: false,
    });
    expect(report).toMatchObject({ kind: 'full', items: [{ code: 'wrong-figure', range: at(2, 0, 5) }] });
    expect(client.published).toEqual([]);
  });

  it('are reported as unchanged while the text is the same', async () => {
    const proofread = vi.fn(wordProof);
    const client = startInProcess({ proofread });
    await client.initialize(PULLING);
    await client.open(uri, `${FENCE}wrong`);
    const { resultId } = await client.pull(uri);

    expect(await client.pull(uri, resultId)).toEqual({ kind: 'unchanged', resultId });
    expect(proofread).toHaveBeenCalledTimes(1);

    await client.change(uri, { range: at(2, 0, 0), text: 'wrong ' });
    expect(await client.pull(uri, resultId)).toMatchObject({ kind: 'full', items: [{}, {}] });
  });

  it('are not unchanged when a document is opened anew with another text', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize(PULLING);
    await client.open(uri, `${FENCE}wrong`);
    const { resultId } = await client.pull(uri);
    await client.close(uri);
    await client.open(uri, FENCE);

    expect(await client.pull(uri, resultId)).toMatchObject({ kind: 'full', items: [] });
  });

  it('stay as they were when a text cannot be proofread', async () => {
    const client = startInProcess({
      proofread: (document) => {
        if (document.source.includes('boom')) throw new Error('a fault of ours');
        return wordProof(document);
      },
    });
    await client.initialize(PULLING);
    await client.open(uri, `${FENCE}wrong`);
    const { resultId } = await client.pull(uri);
    await client.change(uri, { range: at(2, 0, 0), text: 'boom ' });

    expect(await client.pull(uri, resultId)).toEqual({ kind: 'unchanged', resultId });
    expect(client.logged.join()).toContain('a fault of ours');
  });

  it('are no empty list when the very first text cannot be proofread', async () => {
    const client = startInProcess({
      proofread: () => {
        throw new Error('a fault of ours');
      },
    });
    await client.initialize(PULLING);
    await client.open(uri, FENCE);

    await expect(client.pull(uri)).rejects.toMatchObject({ code: -32802, data: { retriggerRequest: false } });
  });

  it('are not computed for a request that was cancelled', async () => {
    const proofread = vi.fn(wordProof);
    const client = startInProcess({ proofread });
    await client.initialize(PULLING);
    await client.open(uri, `${FENCE}wrong`);
    const { CancellationTokenSource } = await import('vscode-languageserver-protocol/node');
    const source = new CancellationTokenSource();
    const request = client.connection.sendRequest(
      DocumentDiagnosticRequest.type,
      { textDocument: { uri } },
      source.token,
    );
    source.cancel();

    await expect(request).rejects.toMatchObject({ code: -32800 });
    expect(proofread).not.toHaveBeenCalled();
  });
});

describe('The setting for numbers that no figure accounts for', () => {
  const changed = (settings: unknown) => ({ settings });

  it('is off by default, and shows them as hints when the author asks for it', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize();
    await client.open(uri, `${FENCE}loose`);
    expect(await client.pushed(uri, 1)).toEqual([]);

    client.settings = { unaccounted: 'hint' };
    await client.connection.sendNotification(DidChangeConfigurationNotification.type, changed(null));
    await client.until(() => client.published.length === 2);

    expect(client.published[1]?.diagnostics).toEqual([
      {
        code: 'unaccounted',
        source: 'Measure Twice',
        severity: DiagnosticSeverity.Hint,
        message: 'Nobody has checked “loose”: nothing in the measure block says what it should be.',
        range: at(2, 0, 5),
        data: { version: 1, finding: 0 },
      },
    ]);
  });

  it('is read at the start, and a change of it makes a pulling client ask again', async () => {
    const client = startInProcess({ proofread: wordProof });
    client.settings = { unaccounted: 'hint' };
    await client.initialize(PULLING);
    await client.until(() => client.refreshes === 1);
    await client.open(uri, `${FENCE}loose`);
    const { resultId } = await client.pull(uri);

    client.settings = { unaccounted: 'off' };
    await client.connection.sendNotification(DidChangeConfigurationNotification.type, changed(null));
    await client.until(() => client.refreshes === 2);

    expect(await client.pull(uri, resultId)).toMatchObject({ kind: 'full', items: [] });
  });

  it('is taken from the notification of a client that cannot be asked', async () => {
    const client = startInProcess({ proofread: wordProof });
    await client.initialize({ ...CAPABILITIES, workspace: {} });
    await client.open(uri, `${FENCE}loose`);
    await client.pushed(uri, 1);
    const settings = { measureTwice: { unaccounted: 'hint' } };
    await client.connection.sendNotification(DidChangeConfigurationNotification.type, changed(settings));
    await client.until(() => client.published.length === 2);

    expect(client.published[1]?.diagnostics).toHaveLength(1);
  });
});
