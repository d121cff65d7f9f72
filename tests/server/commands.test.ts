import { describe, expect, it } from 'vitest';
import {
  DidChangeWatchedFilesNotification,
  ExecuteCommandRequest,
  FileChangeType,
  WorkDoneProgress,
  WorkDoneProgressCancelNotification,
  WorkDoneProgressCreateRequest,
} from 'vscode-languageserver-protocol/node';
import { COMMANDS, COVERAGE_NOTIFICATION, type CoverageParams } from '../../shared/messages.ts';
import { CAPABILITIES, PULLING, type TestClient } from './client.ts';
import { FENCE, startInProcess, wordProof } from './inProcess.ts';
import { MemoryFiles } from './memoryFiles.ts';

const run = (client: TestClient, command: string, ...args: unknown[]) =>
  client.connection.sendRequest(ExecuteCommandRequest.type, { command, arguments: args });

const FILES = {
  'file:///p/clean.md': FENCE,
  'file:///p/note.md': 'Nothing but a wrong note.',
  'file:///p/runner%20%281%29.md': `${FENCE}wrong`,
  'file:///elsewhere/other.md': `${FENCE}wrong`,
};

async function workspace(capabilities = CAPABILITIES) {
  const files = new MemoryFiles(FILES);
  const client = startInProcess({ proofread: wordProof, files });
  client.folders = ['file:///p'];
  const result = await client.initialize(capabilities);
  return { client, files, result };
}

const runner = 'file:///p/runner%20%281%29.md';

describe('Proofreading the workspace', () => {
  it('publishes what is found in files that are not open, and tells the result', async () => {
    const { client, result } = await workspace();
    expect(result.capabilities.executeCommandProvider?.commands?.toSorted()).toEqual(
      Object.values(COMMANDS)
        .filter((command) => command !== COMMANDS.signOff)
        .sort(),
    );
    await run(client, COMMANDS.proofreadWorkspace);

    expect(client.messages).toEqual([
      '1 of 2 manuscripts needs a second look. 6 of 7 measurements are checked and right, and 1 is wrong.',
    ]);
    expect(
      client.published.map(({ uri, diagnostics }) => [uri, diagnostics.map(({ code }) => code)]),
    ).toEqual([
      ['file:///p/clean.md', []],
      [runner, ['wrong-figure']],
    ]);
  });

  it('reads an open document as it stands in the editor, and publishes nothing for it', async () => {
    const { client } = await workspace(PULLING);
    // Editors spell the same address in different ways.
    await client.open('file:///p/runner (1).md', FENCE);
    await run(client, COMMANDS.proofreadWorkspace);

    expect(client.messages).toEqual([
      'No mistake found in 2 manuscripts. All 6 measurements are checked and right.',
    ]);
    expect(client.published.map(({ uri }) => uri)).toEqual(['file:///p/clean.md']);
  });

  it('takes its findings back when the file is opened, so that none is shown twice', async () => {
    const { client } = await workspace(PULLING);
    await run(client, COMMANDS.proofreadWorkspace);
    await client.open(runner, `${FENCE}wrong`);
    expect(await client.pull(runner)).toMatchObject({ items: [{ code: 'wrong-figure' }] });

    expect(client.published.at(-1)).toEqual({ uri: runner, diagnostics: [] });
  });

  it('follows a file that changes or goes away on disk', async () => {
    const { client, files } = await workspace({
      ...CAPABILITIES,
      workspace: { ...CAPABILITIES.workspace, didChangeWatchedFiles: { dynamicRegistration: true } },
    });
    await run(client, COMMANDS.proofreadWorkspace);
    expect(client.registered).toContain('workspace/didChangeWatchedFiles');
    const changed = (type: FileChangeType) =>
      client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
        changes: [{ uri: runner, type }],
      });

    files.texts.set(runner, `${FENCE}wrong and wrong`);
    await changed(FileChangeType.Changed);
    await client.until(() => client.published.at(-1)?.diagnostics.length === 2);

    files.texts.delete(runner);
    await changed(FileChangeType.Deleted);
    await client.until(() => client.published.at(-1)?.diagnostics.length === 0);
    expect(client.published.at(-1)?.uri).toBe(runner);
  });

  it('goes on after a file that cannot be read, and says so', async () => {
    const { client, files } = await workspace();
    files.read = async (uri) => {
      if (uri === 'file:///p/clean.md') throw new Error('the disk is gone');
      return FILES[uri as keyof typeof FILES];
    };
    await run(client, COMMANDS.proofreadWorkspace);

    expect(client.messages).toEqual([
      '1 of 1 manuscript needs a second look. 3 of 4 measurements are checked and right, and 1 is wrong. 1 file could not be read.',
    ]);
    expect(client.logged.join()).toContain('the disk is gone');
  });

  it('shows its progress, and stops when it is cancelled there', async () => {
    const { client, files } = await workspace({ ...CAPABILITIES, window: { workDoneProgress: true } });
    const seen: string[] = [];
    // No file can be read before the server knows that it is cancelled.
    let release = () => {};
    const isCancelled = new Promise<void>((resolve) => {
      release = resolve;
    });
    files.read = async (uri) => {
      await isCancelled;
      return FILES[uri as keyof typeof FILES];
    };
    client.connection.onRequest(WorkDoneProgressCreateRequest.type, ({ token }) => {
      client.connection.onProgress(WorkDoneProgress.type, token, ({ kind }) => {
        seen.push(kind);
        if (kind === 'begin') {
          client.connection.sendNotification(WorkDoneProgressCancelNotification.type, { token });
          client.hover(runner, 0, 0).then(release);
        }
        client.wake();
      });
    });
    await run(client, COMMANDS.proofreadWorkspace);
    await client.until(() => seen.includes('end'));

    expect(seen[0]).toBe('begin');
    expect(client.published).toEqual([]);
    expect(client.messages).toEqual([]);
  });

  it('is not offered where there are no files to reach', async () => {
    const client = startInProcess({ proofread: wordProof });
    const { capabilities } = await client.initialize();

    expect(capabilities.executeCommandProvider?.commands).toEqual([
      COMMANDS.proofreadFile,
      COMMANDS.restateFile,
    ]);
    await expect(run(client, COMMANDS.proofreadWorkspace)).rejects.toThrow('There is no command');
  });
});

describe('Proofreading one manuscript', () => {
  it('tells its coverage', async () => {
    const { client } = await workspace();
    await client.open(runner, `${FENCE}wrong`);
    await run(client, COMMANDS.proofreadFile, runner);

    expect(client.messages).toEqual(['3 of 4 measurements are checked and right, and 1 is wrong.']);
  });

  it('says why there is nothing to tell', async () => {
    const { client } = await workspace();
    await client.open('file:///p/note.md', 'A note.');
    await run(client, COMMANDS.proofreadFile, 'file:///p/note.md');
    await run(client, COMMANDS.proofreadFile, 'file:///p/closed.md');
    await run(client, COMMANDS.proofreadFile);

    expect(client.messages).toEqual([
      'This file has no measure block, so there is nothing to check it against.',
      'Open a manuscript first, then proofread it.',
      'Open a manuscript first, then proofread it.',
    ]);
  });
});

describe('The coverage', () => {
  it('is sent to a client that shows it, whenever a manuscript was proofread', async () => {
    const client = startInProcess({ proofread: wordProof });
    const seen: CoverageParams[] = [];
    client.connection.onNotification(COVERAGE_NOTIFICATION, (params: CoverageParams) => {
      seen.push(params);
      client.wake();
    });
    await client.initialize(CAPABILITIES, { coverage: true });
    await client.open(runner, `${FENCE}wrong`);
    await client.open('file:///p/note.md', 'A note.');
    await client.until(() => seen.length === 2);

    expect(seen).toEqual([
      {
        uri: runner,
        coverage: {
          verified: 3,
          measured: 4,
          mistakes: 1,
          label: '3 of 4 checked',
          sentence: '3 of 4 measurements are checked and right, and 1 is wrong.',
        },
      },
      { uri: 'file:///p/note.md', coverage: null },
    ]);
  });

  it('is not sent to a client that did not ask', async () => {
    const client = startInProcess({ proofread: wordProof });
    const seen: unknown[] = [];
    client.connection.onNotification(COVERAGE_NOTIFICATION, (params: unknown) => void seen.push(params));
    await client.initialize();
    await client.open(runner, `${FENCE}wrong`);
    await client.pushed(runner, 1);

    expect(seen).toEqual([]);
  });
});
