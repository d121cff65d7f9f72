/**
 * A real VS Code for the checks: code-server brings the workbench and the extension host, Debian's Chromium shows it.
 *
 * `openVisualStudioCode` starts both on a copy of a workspace, in fresh folders; `dispose` leaves neither a
 * process nor a file behind. What a person does in the window is in `workbench.ts`.
 */
import { cp, mkdir, rm, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { type Browser, chromium as playwright } from 'playwright-core';
import { beforeEach } from 'vitest';
import { artefacts, chromium, codeServer, requireEditor } from './places.ts';
import { freePort, Program, removeFolder, run, temporaryFolder, until } from './programs.ts';
import { patience, Workbench } from './workbench.ts';

export type Theme = 'light' | 'dark';

export interface OpenOptions {
  /** The folder to open. The editor works on a copy. */
  workspace: string;
  /** An extension package to install. */
  vsix?: string;
  theme?: Theme;
  /** User settings on top of the harness's own. */
  settings?: Record<string, unknown>;
  /** CSS pixels of the window. Default 1280 x 800. */
  viewport?: { width: number; height: number };
  /** Screen pixels per CSS pixel, for sharper screenshots. Default 1. */
  deviceScaleFactor?: number;
}

/** A quiet window: nothing asks, nothing blinks, nothing is shown that is not about the manuscript. */
const quietSettings = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.layoutControl.enabled': false,
  'window.commandCenter': false,
  'window.menuBarVisibility': 'hidden',
  'chat.disableAIFeatures': true,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'security.workspace.trust.enabled': false,
  'git.enabled': false,
  'remote.autoForwardPorts': false,
  // The checks decide when a file is written.
  'files.autoSave': 'off',
  'editor.fontSize': 16,
  'editor.wordWrap': 'on',
  'editor.minimap.enabled': false,
  'editor.cursorBlinking': 'solid',
};
const themes: Record<Theme, { name: string; className: string }> = {
  light: { name: 'Light Modern', className: 'vs' },
  dark: { name: 'Dark Modern', className: 'vs-dark' },
};

const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export async function openVisualStudioCode(options: OpenOptions): Promise<VisualStudioCode> {
  requireEditor(codeServer.node, codeServer.entry, chromium);
  const home = await temporaryFolder('vscode');
  const editor = new VisualStudioCode(home, options);
  try {
    await editor.start();
    return editor;
  } catch (error) {
    await editor.keepEvidence('failed-to-open').catch(() => {});
    await editor.dispose();
    throw error;
  }
}

export class VisualStudioCode extends Workbench {
  readonly #options: OpenOptions;
  readonly #home: string;
  #server: Program | undefined;
  #browser: Browser | undefined;

  constructor(home: string, options: OpenOptions) {
    super(join(home, basename(options.workspace)));
    this.#home = home;
    this.#options = options;
  }

  /** @internal Called once, by `openVisualStudioCode`. */
  async start(): Promise<void> {
    const { workspace, vsix } = this.#options;
    await cp(workspace, this.folder, { recursive: true });
    await this.#writeSettings();
    if (vsix !== undefined) await this.#codeServer('--install-extension', vsix);
    const address = await this.#startServer();
    await this.#openPage(`${address}/?folder=${encodeURIComponent(this.folder)}`);
  }

  /** Changes the colour theme as a person does, and waits until the window shows it. */
  async setTheme(theme: Theme): Promise<void> {
    await this.runCommand('Preferences: Color Theme');
    await this.pick(themes[theme].name);
    await this.page.locator(`.monaco-workbench.${themes[theme].className}`).waitFor();
  }

  /** Writes `tests/editor/artefacts/<name>.png` and returns its path. */
  async screenshot(name: string): Promise<string> {
    await this.settle();
    const path = join(artefacts, `${name}.png`);
    await this.page.screenshot({ path });
    return path;
  }

  /** A picture of the window as it is, and what the extensions logged, in `tests/editor/artefacts/<name>…`. */
  async keepEvidence(name: string): Promise<void> {
    await this.page.screenshot({ path: join(artefacts, `${name}.png`) });
    await cp(join(this.#home, 'user-data/logs'), join(artefacts, name), { recursive: true });
  }

  /** Closes the window, ends the server with all its children, and removes the folders. */
  async dispose(): Promise<void> {
    try {
      await this.#browser?.close();
    } finally {
      await this.#server?.stop();
      await removeFolder(this.#home);
    }
  }

  async #writeSettings(): Promise<void> {
    const settings = {
      ...quietSettings,
      'workbench.colorTheme': themes[this.#options.theme ?? 'light'].name,
      ...this.#options.settings,
    };
    await mkdir(join(this.#home, 'user-data/User'), { recursive: true });
    await writeFile(join(this.#home, 'user-data/User/settings.json'), JSON.stringify(settings, null, 2));
  }

  /** The part of the command line that is the same for each use of code-server. */
  #arguments(): string[] {
    return [
      codeServer.entry,
      ...['--config', join(this.#home, 'code-server.yaml')],
      ...['--user-data-dir', join(this.#home, 'user-data')],
      ...['--extensions-dir', join(this.#home, 'extensions')],
    ];
  }

  /** Without these, a check that runs in a terminal of an editor would talk to that editor. */
  #environment(): NodeJS.ProcessEnv {
    const inherited = Object.entries(process.env).filter(
      ([name]) => !/^(VSCODE|CODE_SERVER|VITEST|NODE_OPTIONS)/.test(name),
    );
    return { ...Object.fromEntries(inherited), HOME: this.#home, XDG_RUNTIME_DIR: this.#home };
  }

  async #codeServer(...args: string[]): Promise<void> {
    await run(codeServer.node, [...this.#arguments(), ...args], { env: this.#environment() });
  }

  async #startServer(): Promise<string> {
    const port = await freePort();
    const server = new Program(
      codeServer.node,
      [
        ...this.#arguments(),
        ...['--auth', 'none', '--bind-addr', `127.0.0.1:${port}`],
        ...['--disable-telemetry', '--disable-update-check', '--disable-workspace-trust'],
        this.folder,
      ],
      { env: this.#environment() },
    );
    this.#server = server;
    const address = `http://127.0.0.1:${port}`;
    const answers = async () => (await fetch(`${address}/healthz`).catch(() => undefined))?.ok === true;
    if (!(await until(answers, patience))) throw new Error(`code-server does not answer:\n${server.output}`);
    return address;
  }

  async #openPage(address: string): Promise<void> {
    this.#browser = await playwright.launch({ executablePath: chromium, args: chromiumFlags });
    const context = await this.#browser.newContext({
      viewport: this.#options.viewport ?? { width: 1280, height: 800 },
      deviceScaleFactor: this.#options.deviceScaleFactor ?? 1,
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    // The window offers a marketplace; a check asks nobody outside this machine.
    await context.route(
      (url) => /^https?:$/.test(url.protocol) && url.hostname !== '127.0.0.1',
      (route) => route.abort(),
    );
    this.page = await context.newPage();
    this.page.setDefaultTimeout(patience);
    await this.page.goto(address);
    await this.page.waitForSelector('.explorer-folders-view .monaco-list-row');
  }
}

/** To be called in a `describe`: keeps a picture and the logs of the window for each test that fails. */
export function keepEvidenceOfFailures(editor: () => VisualStudioCode | undefined): void {
  beforeEach(async ({ task, onTestFailed }) => {
    const name = `failed-${task.name.replace(/[^\p{L}\p{N}]+/gu, '-')}`;
    await Promise.all(
      [name, `${name}.png`].map((old) => rm(join(artefacts, old), { recursive: true, force: true })),
    );
    onTestFailed(() => editor()?.keepEvidence(name));
  });
}
