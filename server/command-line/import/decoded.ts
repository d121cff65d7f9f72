import { CannotRun } from '../cannotRun.ts';

/** How far into a page its encoding may be told, by the HTML standard. */
const HEAD = 1024;

/**
 * The text of a file in UTF-8, UTF-16 with a byte order mark, or the encoding that a web page names.
 *
 * @throws CannotRun when it is none of these
 */
export function decoded(bytes: Uint8Array, file: string): string {
  const head = new TextDecoder('latin1').decode(bytes.subarray(0, HEAD));
  const named = /<meta[^>]+charset\s*=\s*["']?([\w-]+)/i.exec(head)?.[1];
  const marked = head.startsWith('ÿþ') ? 'utf-16le' : head.startsWith('þÿ') ? 'utf-16be' : undefined;
  for (const encoding of [marked ?? 'utf-8', named]) {
    try {
      if (encoding === undefined) continue;
      const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
      if (!text.includes('\0')) return text;
    } catch {
      // Not in this encoding, or in none that is known.
    }
  }
  throw new CannotRun(`Cannot read ${file}: it is not a text in UTF-8. Save it with this encoding first.`);
}
