/** Starts the server and connects the editor to it. */
import { Uri, window } from 'vscode';
import {
  LanguageClient,
  type LanguageClientOptions,
  type ServerOptions,
  TransportKind,
} from 'vscode-languageclient/node';
import { COMMANDS, type InitializationOptions } from '../shared/messages.ts';
import { SECTION } from '../shared/settings.ts';

/** Text that the author edits: not the read-only past that version control shows. */
const SCHEMES = ['file', 'untitled', 'vscode-vfs'];

/** Commands about the document in front of the author. */
const OF_A_FILE: ReadonlySet<string> = new Set([
  COMMANDS.proofreadFile,
  COMMANDS.restateFile,
  COMMANDS.restateShared,
]);

export function createLanguageClient(extensionUri: Uri): LanguageClient {
  const module = Uri.joinPath(extensionUri, 'dist', 'server.cjs').fsPath;
  const server: ServerOptions = { module, transport: TransportKind.ipc };
  const initializationOptions: InitializationOptions = { coverage: true };
  const options: LanguageClientOptions = {
    documentSelector: SCHEMES.map((scheme) => ({ scheme, language: 'markdown' })),
    diagnosticCollectionName: SECTION,
    initializationOptions,
    middleware: {
      executeCommand: async (command, args, next) => {
        if (command !== COMMANDS.signOff)
          return next(command, OF_A_FILE.has(command) ? [activeDocument()] : args);
        const uri = activeDocument();
        const name = await window.showInputBox({
          title: 'Sign Off This Manuscript',
          prompt: 'Who signs it off?',
        });
        return name === undefined ? undefined : next(command, [uri, name]);
      },
    },
  };
  return new LanguageClient(SECTION, 'Measure Twice', server, options);
}

/** The server wants to know which document is meant; the author means the one in front of her. */
function activeDocument(): string | undefined {
  return window.activeTextEditor?.document.uri.toString();
}
