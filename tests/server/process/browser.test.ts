/** The server as a web worker: run with nothing but what a worker has, so that anything of Node.js would fail. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createContext, runInContext } from 'node:vm';
import { expect, inject, it } from 'vitest';
import {
  AbstractMessageReader,
  AbstractMessageWriter,
  type DataCallback,
  type Message,
} from 'vscode-languageserver-protocol/node';
import { PULLING, TestClient } from '../client.ts';

type Listener = (event: { readonly data: Message }) => void;

/** What messages pass through: a copy arrives, later, as between a page and its worker. */
class Channel {
  listener: Listener = () => {};

  post(message: Message): void {
    const data = structuredClone(message);
    setTimeout(() => this.listener({ data }), 0);
  }
}

class Reader extends AbstractMessageReader {
  readonly #channel: Channel;

  constructor(channel: Channel) {
    super();
    this.#channel = channel;
  }

  listen(callback: DataCallback) {
    this.#channel.listener = ({ data }) => callback(data);
    return { dispose: () => {} };
  }
}

class Writer extends AbstractMessageWriter {
  readonly #channel: Channel;

  constructor(channel: Channel) {
    super();
    this.#channel = channel;
  }

  async write(message: Message): Promise<void> {
    this.#channel.post(message);
  }

  end(): void {}
}

it('proofreads in a worker of a browser', async () => {
  const [toWorker, toEditor] = [new Channel(), new Channel()];
  const self = {
    postMessage: (message: Message) => toEditor.post(message),
    addEventListener: () => {}, // for errors only
    set onmessage(listener: Listener) {
      toWorker.listener = listener;
    },
  };
  const script = await readFile(join(inject('programs'), 'server.browser.js'), 'utf8');
  const timers = { setTimeout, clearTimeout, setInterval, clearInterval, queueMicrotask };
  const web = { TextEncoder, TextDecoder, URL, crypto, performance, structuredClone, console };
  runInContext(script, createContext({ ...timers, ...web, self }));

  const client = new TestClient(new Reader(toEditor), new Writer(toWorker));
  const { capabilities } = await client.initialize(PULLING);
  const uri = 'memfs:/wall.md';
  await client.open(
    uri,
    '```measure\nfinished: 36" x 48"\n```\n\n🧵 Bind 160" <!-- = finished.edge --> of edge.',
  );

  expect(capabilities.executeCommandProvider).toEqual({
    commands: ['measureTwice.proofreadFile', 'measureTwice.restateFile'],
  });
  expect(await client.pull(uri)).toMatchObject({
    kind: 'full',
    items: [
      { code: 'wrong-figure', range: { start: { line: 4, character: 8 }, end: { line: 4, character: 12 } } },
    ],
  });
  client.connection.dispose();
});
