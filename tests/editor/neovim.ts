/** A second real client: Debian's Neovim with its own language client. The session itself is in `neovim.lua`. */
import { cp, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { nvim, requireEditor } from './places.ts';
import type { Severity } from './problems.ts';
import { removeFolder, run, temporaryFolder } from './programs.ts';

export interface NeovimSession {
  /** The folder to open. Neovim works on a copy. */
  workspace: string;
  /** The manuscript, relative to the workspace folder. */
  file: string;
  /** The program that speaks the Language Server Protocol over standard input and output, with its arguments. */
  server: readonly string[];
}

/** Lines and characters as in the protocol: from 0, in UTF-16 code units; `end` is exclusive. */
export interface Diagnostic {
  start: { line: number; character: number };
  end: { line: number; character: number };
  severity: Severity;
  message: string;
  source?: string;
  code?: string | number;
}

export interface NeovimReport {
  /** Sorted by place. */
  diagnostics: Diagnostic[];
  /** What the hover at the first error says, in Markdown; null if it says nothing. */
  hover: string | null;
  /** The titles of the code actions at the first error. The first one was applied. */
  actions: string[];
  diagnosticsAfter: Diagnostic[];
  /** How the server ended when Neovim asked it to. */
  exit: { code: number; signal: number };
  /** The manuscript on disk, before and after. */
  before: string;
  after: string;
}

/** Opens a manuscript in Neovim, hovers over its first error, applies the first code action there, and saves. */
export async function runInNeovim({ workspace, file, server }: NeovimSession): Promise<NeovimReport> {
  requireEditor(nvim);
  const home = await temporaryFolder('neovim');
  try {
    const root = join(home, basename(workspace));
    await cp(workspace, root, { recursive: true });
    const path = join(root, file);
    const before = await readFile(path, 'utf8');
    const script = join(import.meta.dirname, 'neovim.lua');
    const output = await run(
      nvim,
      ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '-c', `luafile ${script}`],
      {
        cwd: root,
        env: {
          ...process.env,
          ...Object.fromEntries(
            ['CONFIG', 'DATA', 'STATE', 'CACHE'].map((kind) => [`XDG_${kind}_HOME`, home]),
          ),
          EDITOR_CHECK: JSON.stringify({ root, file: path, server }),
        },
        timeout: 200_000,
      },
    );
    const report = JSON.parse(output) as Omit<NeovimReport, 'before' | 'after'> | { error: string };
    if ('error' in report) throw new Error(`Neovim: ${report.error}\n${await serverLog(home)}`);
    return { ...report, before, after: await readFile(path, 'utf8') };
  } finally {
    await removeFolder(home);
  }
}

/** What the server wrote to its standard error, as Neovim keeps it. */
async function serverLog(home: string): Promise<string> {
  return readFile(join(home, 'nvim', 'lsp.log'), 'utf8').catch(() => '(no log of the language client)');
}
