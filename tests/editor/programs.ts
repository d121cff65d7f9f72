/** Programs that a check starts. Each leads a process group of its own, so that ending it ends its children too. */
import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { setTimeout as sleep } from 'node:timers/promises';

export interface StartOptions {
  cwd?: string;
  env?: NodeJS.ProcessEnv;
}

const running = new Set<Program>();
// A check that is cut short must not leave an editor behind.
process.once('exit', () => {
  for (const program of running) program.kill();
});

export class Program {
  /** Everything the program printed, both streams in the order of arrival. */
  output = '';
  stdout = '';
  /** The exit status, or null after a signal. */
  readonly ended: Promise<number | null>;
  readonly #child: ChildProcess;

  constructor(command: string, args: readonly string[], options: StartOptions = {}) {
    this.#child = spawn(command, args, { ...options, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
    this.#child.stdout?.on('data', (chunk: Buffer) => {
      this.stdout += chunk;
      this.output += chunk;
    });
    this.#child.stderr?.on('data', (chunk: Buffer) => {
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

  kill(signal: NodeJS.Signals = 'SIGKILL'): void {
    if (this.#groupIsAlive()) process.kill(-(this.#child.pid as number), signal);
  }

  /** Ends the program and all its children, and returns when none of them is left. */
  async stop(): Promise<void> {
    this.kill('SIGTERM');
    if (!(await this.#groupEnds(5_000))) {
      this.kill('SIGKILL');
      if (!(await this.#groupEnds(5_000))) throw new Error(`Process group ${this.#child.pid} does not end.`);
    }
    running.delete(this);
  }

  async #groupEnds(milliseconds: number): Promise<boolean> {
    return until(() => !this.#groupIsAlive(), milliseconds, 50);
  }

  #groupIsAlive(): boolean {
    if (this.#child.pid === undefined) return false;
    try {
      return process.kill(-this.#child.pid, 0);
    } catch {
      return false;
    }
  }
}

/** Runs a program to its end and returns its standard output. Throws with all it printed, if it fails or takes too long. */
export async function run(
  command: string,
  args: readonly string[],
  options: StartOptions & { timeout?: number } = {},
): Promise<string> {
  const { timeout = 120_000, ...rest } = options;
  const program = new Program(command, args, rest);
  const timer = setTimeout(() => program.kill(), timeout);
  try {
    const status = await program.ended;
    if (status === 0) return program.stdout;
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
