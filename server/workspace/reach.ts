/** From a path under `use` to a file: inside the workspace, whatever links stand on the way, or not at all. */
import { URI, Utils } from 'vscode-uri';
import type { Refusal } from '../../core/block/used.ts';
import { canonicalUri } from '../manuscripts.ts';
import type { WorkspaceFiles } from './files.ts';

export type Reached =
  | { readonly uri: string; readonly name: string; readonly source: string }
  /** With the place where a file may one day stand, or be reached. */
  | { readonly refused: Refusal; readonly uri?: string };

export class Reach {
  readonly #files: WorkspaceFiles | undefined;
  readonly #folders: () => Promise<readonly string[]>;
  readonly #openText: (uri: string) => string | undefined;

  /**
   * @param folders of the workspace
   * @param openText the text of a file as it stands in the editor, if it is open there
   */
  constructor(
    files: WorkspaceFiles | undefined,
    folders: () => Promise<readonly string[]>,
    openText: (uri: string) => string | undefined,
  ) {
    this.#files = files;
    this.#folders = folders;
    this.#openText = openText;
  }

  /** @param from the URI of the file that names the path */
  async follow(from: string, path: string): Promise<Reached> {
    const files = this.#files;
    const origin = URI.parse(from);
    if (!files || origin.scheme !== 'file') return { refused: 'unreachable' };
    const uri = Utils.resolvePath(Utils.dirname(origin), path).toString();
    const roots = await this.#rootsAround(from);
    const root = roots.find((folder) => isInside(uri, folder));
    if (root === undefined) return { refused: 'outside', uri };
    const name = decodeURIComponent(uri.slice(withSlash(root).length));
    const real = await files.realUri(uri);
    if (real === undefined) {
      const source = this.#openText(uri);
      return source === undefined ? { refused: 'missing', uri } : { uri, name, source };
    }
    const realRoots = await Promise.all(roots.map((folder) => files.realUri(folder)));
    if (!realRoots.some((folder) => folder !== undefined && isInside(real, folder)))
      return { refused: 'outside', uri };
    try {
      const source = this.#openText(uri) ?? this.#openText(real) ?? (await files.read(real));
      return { uri: canonicalUri(real), name, source };
    } catch {
      return { refused: 'unreadable', uri };
    }
  }

  /** All folders of the workspace; for a file outside of them the one that it stands in. */
  async #rootsAround(uri: string): Promise<string[]> {
    const folders = (await this.#folders()).map(canonicalUri);
    const isAround = folders.some((folder) => isInside(canonicalUri(uri), folder));
    return isAround ? folders : [Utils.dirname(URI.parse(uri)).toString()];
  }
}

function isInside(uri: string, folder: string): boolean {
  return uri.startsWith(withSlash(folder));
}

function withSlash(folder: string): string {
  return folder.endsWith('/') ? folder : `${folder}/`;
}
