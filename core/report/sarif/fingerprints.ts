/** What a finding is recognised by after its lines have moved: code hosts tell new findings from known ones by it. */
import fnv1a from '@sindresorhus/fnv1a';

/** One for each manuscript; the same finding twice on lines that read the same is told apart by its order. */
export class Fingerprints {
  readonly #seen = new Map<string, number>();

  /**
   * @param marked the text that the finding stands at
   * @param line the line of the manuscript on which it begins; its indentation and its place do not count
   */
  next(code: string, marked: string, line: string): string {
    const key = [code, marked, line].map((text) => text.replace(/\s+/g, ' ').trim()).join('\n');
    const before = this.#seen.get(key) ?? 0;
    this.#seen.set(key, before + 1);
    return fnv1a(`${key}\n${before}`, { size: 64 }).toString(16).padStart(16, '0');
  }
}
