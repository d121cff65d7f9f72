/**
 * Programs that a check starts, and folders that it makes for them.
 * Each program leads a process group of its own, so that ending it ends its children too.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

export interface StartOptions {
  cwd?: string;
  env?: NodeJS.ProcessEnv;
}

const running = new Set<Program>();
const folders = new Set<string>();

// A check that is cut short must leave neither an editor nor its files behind.
process.once('exit', () => {
  for (const program of running) program.kill();
  for (const folder of folders) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});
// The test runner itself is gone, so nobody waits for this process any longer.
process.once('disconnect', () => process.exit(1));

/** A fresh folder in the system's place for temporary files, for `removeFolder` to remove. */
export async function temporaryFolder(name: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), `measure-twice-${name}-`));
  folders.add(folder);
  return folder;
}

export async function removeFolder(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  folders.delete(folder);
}

export class Program {
  /** Everything the program printed, both streams in the order of arrival. */
  output = '';
  stdout = '';
  /** The exit status, or null after a signal. */
  readonly ended: Promise<number | null>;
  readonly #child: ChildProcess;

  constructor(command: string, args: readonly string[], options: StartOptions = {}) {
    this.#child = spawn(command, args, { ...options, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
    const { stdout, stderr } = this.#child;
    stdout?.setEncoding('utf8').on('data', (chunk: string) => {
      this.stdout += chunk;
      this.output += chunk;
    });
    stderr?.setEncoding('utf8').on('data', (chunk: string) => {
      this.output += chunk;
    });
    running.add(this);
    this.ended = new Promise((resolve, reject) => {
      this.#child.once('error', reject);
      this.#child.once('close', resolve);
    });
    // Whoever awaits `ended` still gets the error; nobody has to.
    this.ended.catch(() => {});
  }

  kill(): void {
    this.#signal('SIGKILL');
  }

  /** Ends the program and all its children, and returns when none of them is left. */
  async stop(): Promise<void> {
    this.#signal('SIGTERM');
    if (!(await this.#groupEnds(5_000))) {
      this.kill();
      if (!(await this.#groupEnds(5_000))) throw new Error(`Process group ${this.#child.pid} does not end.`);
    }
    running.delete(this);
  }

  async #groupEnds(milliseconds: number): Promise<boolean> {
    // Signal 0 reaches nobody; it only asks whether there is somebody.
    return until(() => !this.#signal(0), milliseconds, 50);
  }

  /** Whether anybody is left in the process group to receive it. */
  #signal(signal: NodeJS.Signals | 0): boolean {
    if (this.#child.pid === undefined) return false;
    try {
      return process.kill(-this.#child.pid, signal);
    } catch {
      return false;
    }
  }
}

export interface RunOptions extends StartOptions {
  /** In milliseconds. Default two minutes. */
  timeout?: number;
  /** Exit statuses that are no failure. Default 0 alone. */
  accept?: readonly number[];
}

/** Runs a program to its end and returns its standard output. Throws with all it printed, if it fails or takes too long. */
export async function run(
  command: string,
  args: readonly string[],
  { timeout = 120_000, accept = [0], ...rest }: RunOptions = {},
): Promise<string> {
  const program = new Program(command, args, rest);
  const timer = setTimeout(() => program.kill(), timeout);
  try {
    const status = await program.ended;
    if (status !== null && accept.includes(status)) return program.stdout;
    const how =
      status === null ? `was stopped (it may take ${timeout / 1000} s)` : `ended with status ${status}`;
    throw new Error(`${[command, ...args].join(' ')} ${how}:\n${program.output}`);
  } finally {
    clearTimeout(timer);
    await program.stop();
  }
}

/** Asks again and again until the answer is yes (true) or the time is over (false). */
export async function until(
  condition: () => boolean | Promise<boolean>,
  milliseconds: number,
  interval = 100,
): Promise<boolean> {
  const deadline = performance.now() + milliseconds;
  while (!(await condition())) {
    if (performance.now() > deadline) return false;
    await sleep(interval);
  }
  return true;
}

/** A port on the loopback interface that nothing listens on at this moment. */
export async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => {
        if (address !== null && typeof address === 'object') resolve(address.port);
        else reject(new Error('The system gave no port.'));
      });
    });
  });
}
