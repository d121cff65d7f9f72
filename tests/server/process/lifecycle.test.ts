import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { describe, expect, it } from 'vitest';
import { ExitNotification, InitializeRequest, ShutdownRequest } from 'vscode-languageserver-protocol/node';
import { start, WAYS } from './start.ts';

describe.each(Object.entries(WAYS))('The life of %s', (_name, args) => {
  it('begins with its name and what it can do', async () => {
    const { client } = start(args);
    const { serverInfo, capabilities } = await client.initialize();

    expect(serverInfo).toEqual({ name: 'Measure Twice', version: expect.stringMatching(/^\d+\.\d+\.\d+$/) });
    expect(capabilities).toMatchObject({
      textDocumentSync: { openClose: true, change: 2 },
      hoverProvider: true,
      codeActionProvider: {
        codeActionKinds: ['quickfix', 'refactor.rewrite', 'source.fixAll.measureTwice'],
      },
      renameProvider: true,
      workspace: { workspaceFolders: { supported: true } },
    });
  });

  it('ends with status 0 after shutdown and exit', async () => {
    const { client, ended } = start(args);
    await client.initialize();
    await client.connection.sendRequest(ShutdownRequest.type);
    await client.connection.sendNotification(ExitNotification.type);

    expect(await ended).toBe(0);
  });

  it('ends with status 1 on exit without shutdown, as the protocol asks', async () => {
    const { client, ended } = start(args);
    await client.initialize();
    await client.connection.sendNotification(ExitNotification.type);

    expect(await ended).toBe(1);
  });

  it('ends when the client closes the stream', async () => {
    const { client, process, ended } = start(args);
    await client.initialize();
    process.stdin?.end();

    expect(await ended).toBe(1);
  });

  it('ends when the process of the client is gone, although the stream is open', async () => {
    const short = spawn(process.execPath, ['--eval', '']);
    await once(short, 'exit');
    const { client, ended } = start(args);
    const processId = short.pid ?? null;
    await client.connection.sendRequest(InitializeRequest.type, {
      processId,
      rootUri: null,
      capabilities: {},
    });

    expect(await ended).toBe(1);
  });
});
