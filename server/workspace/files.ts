/** The files around the open documents. The entry point supplies them, so that the server itself needs no Node.js. */
export interface WorkspaceFiles {
  /** URIs of all Markdown files in these folders, in a stable order. @throws when a folder cannot be read */
  list(folders: readonly string[]): Promise<readonly string[]>;
  /** The text of a file. @throws when it cannot be read, or is no text */
  read(uri: string): Promise<string>;
  /** The URI of a file or folder when all links are followed; `undefined` when it is not there. */
  realUri(uri: string): Promise<string | undefined>;
}
