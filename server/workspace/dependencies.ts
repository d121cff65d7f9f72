/** Which manuscripts rest on which files, so that a change of one is felt in all of them. All URIs are canonical. */
import { blocksOf } from '../../core/proof/uses.ts';
import type { Chain } from './chain.ts';

export class Dependencies {
  readonly #uses = new Map<string, ReadonlySet<string>>();
  /** What the measure blocks of the used files said when they were last read. */
  readonly #said = new Map<string, string>();

  note(uri: string, { uris, texts }: Chain): void {
    if (uris.length > 0) this.#uses.set(uri, new Set(uris));
    else this.#uses.delete(uri);
    for (const [used, text] of texts) this.#said.set(used, blocksOf(text));
  }

  forget(uri: string): void {
    this.#uses.delete(uri);
  }

  /** A manuscript, what it uses, and all that use it or the same files, in a stable order. */
  sharing(uri: string): string[] {
    const files = new Set([uri, ...(this.#uses.get(uri) ?? [])]);
    const others = [...this.#uses].flatMap(([dependent, uses]) =>
      [...uses].some((used) => files.has(used)) ? [dependent] : [],
    );
    return [...new Set([...files, ...others])].sort();
  }

  /**
   * The manuscripts that use a file, directly or by way of others, in a stable order.
   *
   * @param text of the file: none of them feels a change outside of its measure blocks
   */
  touchedBy(uri: string, text: string | undefined): string[] {
    const dependents = [...this.#uses].flatMap(([dependent, uses]) => (uses.has(uri) ? [dependent] : []));
    if (dependents.length === 0) return [];
    const says = text === undefined ? undefined : blocksOf(text);
    if (says !== undefined && says === this.#said.get(uri)) return [];
    this.#said.delete(uri);
    return dependents.sort();
  }
}
