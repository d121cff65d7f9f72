/** What a person does and sees in the window of VS Code, in terms of its keyboard and its document tree. */
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Frame, Locator, Page } from 'playwright-core';
import { copyProblems, listProblems, type Place, type Problem, type Severity } from './problems.ts';
import { until } from './programs.ts';

/** How long a language server may take to answer. It is no measure of speed: only what never comes fails. */
export const patience = 60_000;

export class Workbench {
  /** The copy of the workspace that the window has open. */
  readonly folder: string;
  #page: Page | undefined;
  #file: string | undefined;

  constructor(folder: string) {
    this.folder = folder;
  }

  get page(): Page {
    if (this.#page === undefined) throw new Error('The window is not open.');
    return this.#page;
  }

  protected set page(page: Page) {
    this.#page = page;
  }

  /** Opens a file of the workspace by quick open. `path` is relative to the workspace folder. */
  async openFile(path: string): Promise<void> {
    const name = basename(path);
    await this.page.keyboard.press('Control+P');
    await this.#fillQuickInput(path);
    await this.#click(this.page.locator('.quick-input-list .monaco-list-row').filter({ hasText: name }));
    await this.page.locator('.tab.active').filter({ hasText: name }).first().waitFor();
    await this.page.locator('.editor-instance .view-line').first().waitFor();
    this.#file = path;
  }

  /** Runs a command by its title in the command palette, such as "View: Toggle Word Wrap". */
  async runCommand(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    await this.#fillQuickInput(`>${title}`);
    await this.#clickQuickInputRow(title);
  }

  /** Picks a row by its label, from the list that a command has opened. */
  async pick(label: string): Promise<void> {
    await this.#fillQuickInput(label);
    await this.#clickQuickInputRow(label);
  }

  /** Puts the cursor before the first `text` in the open file, or `into` characters further right. Saves the file. */
  async placeCursor(text: string, into = 0): Promise<void> {
    const whole = await this.text();
    const offset = whole.indexOf(text);
    if (offset < 0) throw new Error(`The open file has no ${JSON.stringify(text)}.`);
    const lines = whole.slice(0, offset + into).split(/\r\n|\r|\n/);
    await this.placeCursorAt({ line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 });
  }

  async placeCursorAt({ line, column }: Place): Promise<void> {
    await this.page.keyboard.press('Control+G');
    await this.#fillQuickInput(`:${line}:${column}`);
    await this.page.keyboard.press('Enter');
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    await this.waitForStatus(new RegExp(`^Ln ${line}, `));
  }

  /** The open file's text as the editor has it: what is not yet on disk is saved first. */
  async text(): Promise<string> {
    if (this.#file === undefined) throw new Error('No file was opened.');
    if (await this.page.locator('.tab.active.dirty').isVisible()) await this.save();
    return readFile(join(this.folder, this.#file), 'utf8');
  }

  async save(): Promise<void> {
    await this.page.keyboard.press('Control+S');
    await this.page.locator('.tab.active:not(.dirty)').waitFor();
  }

  /** Waits for a squiggle of this severity on the visible part of the open file. */
  async waitForSquiggle(severity: Severity): Promise<void> {
    await this.page.locator(`.editor-instance .squiggly-${severity}`).first().waitFor();
  }

  /** The rows of the Problems panel, sorted by file and place. */
  async problems(): Promise<Problem[]> {
    return this.#inProblemsPanel(() => copyProblems(this.page, this.folder));
  }

  /** Waits until the Problems panel satisfies the condition, and returns its rows. */
  async waitForProblems(condition: (problems: readonly Problem[]) => boolean): Promise<Problem[]> {
    return this.#inProblemsPanel(async () => {
      let problems: Problem[] = [];
      const satisfied = await until(async () => {
        problems = await copyProblems(this.page, this.folder);
        return condition(problems);
      }, patience);
      if (!satisfied)
        throw new Error(`The problems waited for did not come; there are:\n${listProblems(problems)}`);
      return problems;
    });
  }

  /** Waits for the first problem with this text in its message. */
  async waitForProblem(message: string): Promise<Problem> {
    const has = (problem: Problem) => problem.message.includes(message);
    const found = (await this.waitForProblems((problems) => problems.some(has))).find(has);
    if (found === undefined) throw new Error('unreachable');
    return found;
  }

  /** Asks for the hover at the cursor, and returns its text once it contains all that is expected. It stays open. */
  async hover(...expected: (string | RegExp)[]): Promise<string> {
    await this.page.keyboard.press('Control+K');
    await this.page.keyboard.press('Control+I');
    const hover = this.page.locator('.monaco-hover:not(.hidden)');
    // Its parts come one by one: from the problem, from each server, and last the offer of a quick fix.
    const complete = (text: string) =>
      !text.includes('Checking for quick fixes') && containsAll(text, expected);
    return this.#waitForText('hover', hover, complete);
  }

  /** Opens the quick-fix menu at the cursor and returns the titles in it. */
  async quickFixes(): Promise<string[]> {
    const rows = this.#quickFixRows();
    if (!(await rows.first().isVisible())) await this.page.keyboard.press('Control+.');
    await this.#waitForText('quick fix', rows, (title) => title !== '');
    return visibleTexts(rows);
  }

  /** Chooses a fix from the quick-fix menu at the cursor. */
  async chooseQuickFix(title: string): Promise<void> {
    const titles = await this.quickFixes();
    if (!titles.includes(title))
      throw new Error(`There is no quick fix "${title}", only: ${titles.join(' | ')}`);
    await this.#click(this.#quickFixRows().getByText(title, { exact: true }));
    await this.#quickFixRows().first().waitFor({ state: 'detached' });
  }

  /** The texts in the status bar, from left to right. */
  async statusBar(): Promise<string[]> {
    return (await visibleTexts(this.#statusEntries())).filter((text) => text !== '');
  }

  /** Waits for an entry in the status bar, and returns its text. */
  async waitForStatus(pattern: RegExp): Promise<string> {
    return this.#waitForText('entry in the status bar', this.#statusEntries(), (text) => pattern.test(text));
  }

  /** Waits for a notification with this text, and returns all of its text. */
  async waitForNotification(text: string | RegExp): Promise<string> {
    const toasts = this.page.locator('.notification-toast');
    return this.#waitForText('notification', toasts, (shown) => containsAll(shown, [text]));
  }

  /** Waits for a webview, such as the Markdown preview, that shows this text. */
  async waitForWebview(text: string): Promise<Frame> {
    let found: Frame | undefined;
    await until(async () => {
      for (const frame of this.page.frames()) {
        if ((await isShownWebview(frame)) && (await frame.getByText(text).first().isVisible())) found = frame;
      }
      return found !== undefined;
    }, patience);
    if (found === undefined) throw new Error(`No webview shows ${JSON.stringify(text)}.`);
    return found;
  }

  /** Closes what floats over the editor: a hover, a menu, the quick input. */
  async escape(): Promise<void> {
    await this.page.keyboard.press('Escape');
  }

  /** Waits until the window says that it has nothing more to do. */
  async settle(): Promise<void> {
    await this.page.locator('[id="status.progress"]').waitFor({ state: 'hidden' });
  }

  async #fillQuickInput(value: string): Promise<void> {
    const input = this.page.locator('.quick-input-widget:visible .quick-input-box input');
    await input.waitFor();
    await input.fill(value);
  }

  async #clickQuickInputRow(label: string): Promise<void> {
    await this.#click(this.page.locator('.quick-input-list .label-name').getByText(label, { exact: true }));
  }

  /** Clicks the first of these, and takes the pointer out of the way, so that it brings up no tooltip. */
  async #click(elements: Locator): Promise<void> {
    await elements.first().click();
    await this.page.mouse.move(0, 0);
  }

  /** Waits until one of the elements has a fitting text, and returns it as it was at that moment. */
  async #waitForText(what: string, elements: Locator, fits: (text: string) => boolean): Promise<string> {
    let texts: string[] = [];
    await until(async () => {
      texts = await visibleTexts(elements);
      return texts.some(fits);
    }, patience);
    const found = texts.find(fits);
    if (found === undefined)
      throw new Error(`The ${what} waited for did not come; there is: ${texts.join(' | ')}`);
    return found;
  }

  #statusEntries(): Locator {
    return this.page.locator('.statusbar-item:visible');
  }

  #quickFixRows(): Locator {
    return this.page.locator('.action-widget .monaco-list-row.action');
  }

  /** Opens the Problems panel, and closes it again if it was closed before. */
  async #inProblemsPanel<T>(look: () => Promise<T>): Promise<T> {
    const panel = this.page.locator('.markers-panel');
    const wasOpen = await panel.isVisible();
    if (wasOpen) await this.runCommand('Problems: Focus on Problems View');
    else await this.page.keyboard.press('Control+Shift+M');
    await panel.waitFor();
    const seen = await look();
    if (!wasOpen) {
      await this.page.keyboard.press('Control+J');
      await panel.waitFor({ state: 'hidden' });
    }
    // Back to the editor.
    await this.page.keyboard.press('Control+1');
    return seen;
  }
}

/** The text of each element as a person reads it: hidden parts left out, all white space one space. */
async function visibleTexts(elements: Locator): Promise<string[]> {
  return (await elements.allInnerTexts()).map((text) => text.replace(/\s+/g, ' ').trim());
}

function containsAll(text: string, expected: readonly (string | RegExp)[]): boolean {
  return expected.every((part) => (typeof part === 'string' ? text.includes(part) : part.test(text)));
}

/** A webview loads in a pending frame, which becomes the active one when it is complete. */
async function isShownWebview(frame: Frame): Promise<boolean> {
  if (frame.parentFrame() === null) return false;
  const element = await frame.frameElement().catch(() => undefined);
  return (await element?.getAttribute('id')) === 'active-frame';
}
