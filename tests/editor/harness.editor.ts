/**
 * Proves the harness itself with a tiny extension and a tiny language server of its own (`fixtures/`).
 * When this fails, the editors or the harness are broken; when only `proofread.editor.ts` fails, the product is.
 */
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type NeovimReport, runInNeovim } from './neovim.ts';
import { fixtures, repository } from './places.ts';
import { removeFolder, run, temporaryFolder } from './programs.ts';
import { keepEvidenceOfFailures, openVisualStudioCode, type VisualStudioCode } from './vscode.ts';

const workspace = join(fixtures, 'workspace');
const file = 'patterns/probe.md';
const message = 'Cut 3⅜" here, not 3½".';

describe('the harness in VS Code', () => {
  let temporary: string;
  let editor: VisualStudioCode;
  keepEvidenceOfFailures(() => editor);

  beforeAll(async () => {
    temporary = await temporaryFolder('probe');
    editor = await openVisualStudioCode({ workspace, vsix: await packageProbe(temporary) });
  });

  afterAll(async () => {
    await editor?.dispose();
    await removeFolder(temporary);
  });

  it('opens a file in a subfolder and sees its squiggle', async () => {
    await editor.openFile(file);
    await editor.waitForSquiggle('error');
    expect(await editor.text()).toContain('🟦 blue, cut two strips 3½" × 4¼″');
  });

  it('reads the Problems panel with columns in UTF-16 code units', async () => {
    const shared = { file, severity: 'error', message, source: 'Harness Probe', code: 'probe' };
    expect(await editor.waitForProblems((problems) => problems.length === 2)).toEqual([
      { ...shared, start: { line: 3, column: 30 }, end: { line: 3, column: 33 } },
      { ...shared, start: { line: 7, column: 11 }, end: { line: 7, column: 14 } },
    ]);
  });

  it('reads the status bar', async () => {
    expect(await editor.waitForStatus(/^Probe:/)).toBe('Probe: 2 found');
  });

  it('shows the hover at a text, in a light and in a dark window', async () => {
    await editor.placeCursor('3½"');
    expect(await editor.hover('The probe knows')).toContain(message);
    await editor.screenshot('harness-hover-light');
    await editor.escape();
    await editor.setTheme('dark');
    await editor.hover('The probe knows');
    await editor.screenshot('harness-hover-dark');
    await editor.escape();
    await editor.setTheme('light');
  });

  it('applies a quick fix by its title, once, and leaves the rest of the file alone', async () => {
    const before = await editor.text();
    await editor.placeCursor('3½"');
    expect(await editor.quickFixes()).toEqual(['Write 3⅜"']);
    await editor.screenshot('harness-quick-fix');
    await editor.chooseQuickFix('Write 3⅜"');
    const problems = await editor.waitForProblems((problems) => problems.length === 1);
    expect(problems.map(({ start }) => start.line)).toEqual([7]);
    expect(await editor.text()).toBe(before.replace('3½"', '3⅜"'));
  });

  it('says which quick fixes there are when the wanted one is missing', async () => {
    await editor.placeCursor('3½"');
    await expect(editor.chooseQuickFix('Write 4"')).rejects.toThrow('only: Write 3⅜"');
    await editor.escape();
  });

  it('runs a command by its title and reads the changed text', async () => {
    await editor.runCommand('Harness Probe: Append a Line');
    await expect.poll(() => editor.text()).toMatch(/Appended by a command\.\n$/);
  });

  it('reads a notification', async () => {
    await editor.runCommand('Harness Probe: Greet');
    expect(await editor.waitForNotification('Greetings')).toContain('Greetings from the probe.');
  });

  it('sees an empty Problems panel after the last fix', async () => {
    await editor.placeCursor('3½"');
    await editor.chooseQuickFix('Write 3⅜"');
    expect(await editor.waitForProblems((problems) => problems.length === 0)).toEqual([]);
  });

  it('reads the Markdown preview', async () => {
    await editor.runCommand('Markdown: Open Preview to the Side');
    const preview = await editor.waitForWebview('From 🟦 blue, cut two strips 3⅜" × 4¼″');
    expect(await preview.locator('td').allInnerTexts()).toEqual(['side', '3⅜"']);
    await editor.screenshot('harness-preview');
  });
});

describe('the harness in Neovim', () => {
  let report: NeovimReport;

  beforeAll(async () => {
    const server = [
      process.execPath,
      '--import',
      import.meta.resolve('tsx'),
      join(fixtures, 'plain-server.ts'),
    ];
    report = await runInNeovim({ workspace, file, server: [...server, '--stdio'] });
  });

  it('reads diagnostics with characters in UTF-16 code units', () => {
    const shared = { severity: 'error', message, source: 'Harness Probe', code: 'probe' };
    expect(report.diagnostics).toEqual([
      { ...shared, start: { line: 2, character: 29 }, end: { line: 2, character: 32 } },
      { ...shared, start: { line: 6, character: 10 }, end: { line: 6, character: 13 } },
    ]);
  });

  it('reads the hover and the titles of the code actions', () => {
    expect(report.hover).toBe('The **probe** knows this number.');
    expect(report.actions).toEqual(['Write 3⅜"']);
  });

  it('applies the first code action, and sees that diagnostic go', () => {
    expect(report.diagnosticsAfter.map(({ start }) => start.line)).toEqual([6]);
    expect(report.after).toBe(report.before.replace('3½"', '3⅜"'));
  });

  it('sees the server end in good order', () => {
    expect(report.exit).toEqual({ code: 0, signal: 0 });
  });
});

/** Makes an extension package of `fixtures/extension` in the folder, and returns its path. */
async function packageProbe(folder: string): Promise<string> {
  const source = join(folder, 'extension');
  await cp(join(fixtures, 'extension'), source, { recursive: true });
  const vsix = join(folder, 'probe.vsix');
  const vsce = join(repository, 'node_modules/@vscode/vsce/vsce');
  const options = ['--no-dependencies', '--skip-license', '--allow-missing-repository', '--out', vsix];
  await run(process.execPath, [vsce, 'package', ...options], { cwd: source });
  return vsix;
}
