import type { WorkspaceFiles } from '../../server/workspace/files.ts';

/** Folders whose files a test can change. */
export class MemoryFiles implements WorkspaceFiles {
  readonly texts: Map<string, string>;
  /** Where links lead, by their URI. */
  readonly links = new Map<string, string>();

  constructor(texts: Readonly<Record<string, string>>) {
    this.texts = new Map(Object.entries(texts));
  }

  async list(folders: readonly string[]): Promise<string[]> {
    return [...this.texts.keys()].filter((uri) => folders.some((folder) => uri.startsWith(folder)));
  }

  async read(uri: string): Promise<string> {
    const text = this.texts.get(uri);
    if (text === undefined) throw new Error('no such file');
    return text;
  }

  async realUri(uri: string): Promise<string | undefined> {
    const real = this.links.get(uri) ?? uri;
    const isThere = [...this.texts.keys()].some((file) => file === real || file.startsWith(`${real}/`));
    return isThere ? real : undefined;
  }
}
