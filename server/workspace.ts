/** The files around the open documents. The entry point supplies them, so that the server itself needs no Node.js. */
import type { CancellationToken } from 'vscode-languageserver';

export interface WorkspaceFiles {
  /** URIs of all manuscripts in these folders, in a stable order. @throws when a folder cannot be read */
  list(folders: readonly string[], token: CancellationToken): Promise<readonly string[]>;
  /** The text of a file. @throws when it cannot be read, or is no text */
  read(uri: string): Promise<string>;
}
