/** The coverage of the active manuscript in the status bar; nothing there for any other file. */
import {
  type Disposable,
  StatusBarAlignment,
  type StatusBarItem,
  ThemeColor,
  window,
  workspace,
} from 'vscode';
import { COMMANDS, type CoverageParams } from '../shared/messages.ts';
import { statusBarText } from './statusBar.ts';

export class CoverageItem implements Disposable {
  readonly #item: StatusBarItem;
  /** The last word of the server about each open document, by URI. */
  readonly #known = new Map<string, CoverageParams['coverage']>();
  readonly #subscriptions: readonly Disposable[];

  constructor() {
    this.#item = window.createStatusBarItem('measureTwice.coverage', StatusBarAlignment.Right, 100);
    this.#item.name = 'Measure Twice: Checked Numbers';
    this.#item.command = COMMANDS.proofreadFile;
    this.#subscriptions = [
      window.onDidChangeActiveTextEditor(() => this.#show()),
      workspace.onDidCloseTextDocument(({ uri }) => this.#known.delete(uri.toString())),
    ];
  }

  /** @param uri in the spelling of this editor */
  update(uri: string, coverage: CoverageParams['coverage']): void {
    this.#known.set(uri, coverage);
    this.#show();
  }

  /** The server is gone: what it said may no longer be true. */
  clear(): void {
    this.#known.clear();
    this.#show();
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
    this.#item.dispose();
  }

  #show(): void {
    const active = window.activeTextEditor?.document.uri.toString();
    const coverage = active === undefined ? undefined : this.#known.get(active);
    if (!coverage) {
      this.#item.hide();
      return;
    }
    const { text, tooltip, label, warns } = statusBarText(coverage);
    this.#item.text = text;
    this.#item.tooltip = tooltip;
    this.#item.accessibilityInformation = { label };
    this.#item.backgroundColor = warns ? new ThemeColor('statusBarItem.warningBackground') : undefined;
    this.#item.show();
  }
}
