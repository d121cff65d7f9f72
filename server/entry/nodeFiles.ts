/** Manuscripts on disk. */
import { readFile, realpath } from 'node:fs/promises';
import { globby } from 'globby';
import { URI } from 'vscode-uri';
import type { WorkspaceFiles } from '../workspace/files.ts';

const MARKDOWN = '**/*.{md,markdown}';

/** Absolute paths of the Markdown files below a folder that Git does not ignore, in order. @throws when the folder cannot be read */
export async function findManuscripts(folder: string): Promise<string[]> {
  const found = await globby(MARKDOWN, {
    cwd: folder,
    absolute: true,
    gitignore: true,
    ignore: ['**/node_modules/**'],
    caseSensitiveMatch: false,
    expandDirectories: false,
  });
  return found.sort();
}

/**
 * The text of a file, exactly: a byte order mark stays in it.
 *
 * @throws when the file cannot be read; NotText when it is no text in UTF-8
 */
export async function readText(path: string): Promise<string> {
  const bytes = await readFile(path);
  if (bytes.includes(0)) throw new NotText();
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new NotText();
  }
}

export class NotText extends Error {
  constructor() {
    super('it is not a text file in UTF-8');
  }
}

export const nodeFiles: WorkspaceFiles = {
  async list(folders) {
    const paths = folders.map((folder) => URI.parse(folder)).filter(({ scheme }) => scheme === 'file');
    const found = await Promise.all(paths.map(({ fsPath }) => findManuscripts(fsPath)));
    return [...new Set(found.flat())].map((path) => URI.file(path).toString());
  },
  read: (uri) => readText(URI.parse(uri).fsPath),
  async realUri(uri) {
    try {
      return URI.file(await realpath(URI.parse(uri).fsPath)).toString();
    } catch {
      return undefined;
    }
  },
};
