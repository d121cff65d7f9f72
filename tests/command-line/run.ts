/** Runs the built program as a person or a script would. */
import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { inject, onTestFinished } from 'vitest';

export const program = join(inject('programs'), 'measure-twice.mjs');

export interface Outcome {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export function run(folder: string, args: readonly string[], env: NodeJS.ProcessEnv = {}): Promise<Outcome> {
  const { FORCE_COLOR, NO_COLOR, ...inherited } = process.env;
  const child = spawn(process.execPath, [program, ...args], { cwd: folder, env: { ...inherited, ...env } });
  child.stdin.end();
  let [stdout, stderr] = ['', ''];
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    stdout += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    stderr += text;
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (status) => resolve({ status, stdout, stderr }));
  });
}

/** A new folder with these files, which goes away after the test. */
export async function folderWith(files: Readonly<Record<string, string | Uint8Array>>): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'measure-twice-test-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) {
    const file = join(folder, name);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, content);
  }
  return folder;
}

/** A manuscript of a wall hanging; its edge is 168 in around. */
export function manuscript(edge: string): string {
  return `# Wall hanging\n\n\`\`\`measure\nfinished: 36" x 48"\n\`\`\`\n\nBind ${edge} <!-- = finished.edge --> of edge.\n`;
}
