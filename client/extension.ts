/** The extension: starts the server when the first Markdown file is opened, and shows what it says. */
import { type ExtensionContext, Uri } from 'vscode';
import { type LanguageClient, State } from 'vscode-languageclient/node';
import { COVERAGE_NOTIFICATION, type CoverageParams } from '../shared/messages.ts';
import { CoverageItem } from './coverageItem.ts';
import { createLanguageClient } from './languageClient.ts';

let client: LanguageClient | undefined;

export async function activate({ extensionUri, subscriptions }: ExtensionContext): Promise<void> {
  client = createLanguageClient(extensionUri);
  const item = new CoverageItem();
  subscriptions.push(
    item,
    client.onNotification(COVERAGE_NOTIFICATION, ({ uri, coverage }: CoverageParams) =>
      item.update(Uri.parse(uri).toString(), coverage),
    ),
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Stopped) item.clear();
    }),
  );
  await client.start();
}

export async function deactivate(): Promise<void> {
  await client?.stop();
}
