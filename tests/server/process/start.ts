/** Starts the built server as an editor does: a process of its own, spoken to over standard streams. */
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { inject, onTestFinished } from 'vitest';
import { StreamMessageReader, StreamMessageWriter } from 'vscode-languageserver-protocol/node';
import { TestClient } from '../client.ts';

const folder = inject('programs');

/** The two ways to start the server; both speak the same protocol. */
export const WAYS = {
  'the server of the extension': [join(folder, 'server.cjs'), '--stdio'],
  'measure-twice serve': [join(folder, 'measure-twice.mjs'), 'serve', '--stdio'],
} as const;

export interface Started {
  readonly client: TestClient;
  readonly process: ChildProcess;
  /** The exit status; `null` when a signal ended the process. */
  readonly ended: Promise<number | null>;
}

export function start(args: readonly string[] = WAYS['the server of the extension']): Started {
  const child = spawn(process.execPath, args, { stdio: ['pipe', 'pipe', 'inherit'] });
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const client = new TestClient(new StreamMessageReader(child.stdout), new StreamMessageWriter(child.stdin));
  onTestFinished(() => {
    client.connection.dispose();
    child.kill('SIGKILL');
  });
  return { client, process: child, ended };
}
